package ellwand.pattern.block;

import ellwand.geometry.Point;
import ellwand.pattern.Extent;
import ellwand.pattern.Others;
import ellwand.pattern.PieceSet;
import ellwand.problem.InputException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Half the front or back of a skirt that is cut from a ring, or part of one: the waist is an arc
 * whose radius is its length by the angle [geometry].
 *
 * @param length from waist to hem, the same all round
 */
public record CircleSkirt(Side side, Ring ring, Extent length) implements Block {

  /** How much of a whole ring the skirt is. */
  public enum Ring {
    FULL(1),
    HALF(0.5),
    QUARTER(0.25);

    private final double share;

    Ring(double share) {
      this.share = share;
    }

    /** The one that words begin with: {@code half circle skirt}. */
    public static Ring of(String words) {
      return Arrays.stream(values())
          .filter(r -> words.startsWith(r.word() + " "))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException(words + " is no circle skirt"));
    }

    /** As in a job. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** An arc is drawn as one curve up to this, so that it is round to 0.001 % of its radius. */
  private static final double LONGEST_ARC = Math.PI / 4;

  @Override
  public String words() {
    return ring.word() + " circle skirt " + side.word();
  }

  @Override
  public List<String> measures() {
    return List.of("waist");
  }

  @Override
  public Map<String, Double> usualEaseMm() {
    return Map.of("waist", 0.0);
  }

  /** Of the waist's sewing line, mm. */
  double radiusMm(double waistMm) {
    return waistMm / (2 * Math.PI * ring.share);
  }

  @Override
  public BlockLines lines(Measured measured, Others others) {
    double lengthMm = length.mm(measured.size(), PieceSet.NONE);
    double radius = radiusMm(measured.eased("waist"));
    InputException.unless(
        radius > 0, "with its ease the waist is nothing", "Make the ease of waist more");
    // Four halves make the skirt.
    double angle = ring.share * Math.PI / 2;
    Pencil pencil = new Pencil("hem centre", 0, 0).edge("hem");
    Point middle = new Point(lengthMm + radius, 0);
    arc(pencil, "hem side", middle, radius + lengthMm, 0, angle);
    Point waistSide = onArc(middle, radius, angle);
    pencil.edge("side seam").line("waist side", waistSide.x(), waistSide.y()).edge("waist");
    arc(pencil, "waist centre", middle, radius, angle, 0);
    return pencil.closedOnFold("centre " + side.word());
  }

  private static void arc(
      Pencil pencil, String point, Point middle, double radius, double from, double to) {
    int parts = (int) Math.ceil(Math.abs(to - from) / LONGEST_ARC);
    for (int i = 1; i <= parts; i++) {
      double a = from + (to - from) * (i - 1) / parts;
      double b = from + (to - from) * i / parts;
      double handle = 4.0 / 3 * Math.tan((b - a) / 4) * radius;
      pencil.curve(
          i == parts ? Optional.of(point) : Optional.empty(),
          onArc(middle, radius, b),
          onArc(middle, radius, a).plus(alongArc(a).times(handle)),
          onArc(middle, radius, b).minus(alongArc(b).times(handle)));
    }
  }

  /** The place at an angle from the centre line, below the middle. */
  private static Point onArc(Point middle, double radius, double angle) {
    return middle.plus(new Point(-Math.cos(angle), Math.sin(angle)).times(radius));
  }

  private static Point alongArc(double angle) {
    return new Point(Math.sin(angle), Math.cos(angle));
  }
}
