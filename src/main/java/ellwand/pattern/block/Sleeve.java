package ellwand.pattern.block;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Others;
import ellwand.problem.InputException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A set-in sleeve for given armholes. The cap is as high as the arm is longer outside than inside
 * (emmakespatterns.com); each of its halves is made as wide as its armhole and half the ease ask
 * for.
 *
 * @param front edges of the front armhole, from the underarm up
 * @param back those of the back armhole
 */
public record Sleeve(List<PieceEdge> front, List<PieceEdge> back) implements Block {

  /** The cap line is as long as the armhole asks for within this, mm. */
  private static final double FITS_MM = 0.01;

  /** How far the cap keeps level at the underarm, front and back, as shares of the half width. */
  private static final double FRONT_HOLLOW = 0.52;

  private static final double BACK_HOLLOW = 0.42;

  /** How far it keeps level at the top. */
  private static final double TOP = 0.52;

  public Sleeve {
    front = List.copyOf(front);
    back = List.copyOf(back);
  }

  @Override
  public String words() {
    return "sleeve";
  }

  @Override
  public List<String> measures() {
    return List.of("arm", "inner arm", "wrist");
  }

  @Override
  public Map<String, Double> usualEaseMm() {
    return Map.of("armhole", 10.0, "wrist", 60.0);
  }

  @Override
  public Set<String> needs() {
    return Stream.concat(front.stream(), back.stream())
        .map(PieceEdge::piece)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  @Override
  public BlockLines lines(Measured measured, Others others) {
    double halfEase = measured.ease("armhole") / 2;
    double wrist = measured.eased("wrist") / 2;
    double underarm = measured.mm("inner arm");
    double top = measured.mm("arm");
    InputException.unless(
        top > underarm,
        "the arm is not longer outside than inside",
        "Measure arm: from the shoulder and inner arm: from the armpit, both to the wrist");
    Half frontHalf = new Half(top - underarm, FRONT_HOLLOW);
    Half backHalf = new Half(top - underarm, BACK_HOLLOW);
    Armhole frontArmhole = Armhole.of(front, others);
    Armhole backArmhole = Armhole.of(back, others);
    double frontWidth = frontHalf.widthMm(frontArmhole.mm() + halfEase);
    double backWidth = backHalf.widthMm(backArmhole.mm() + halfEase);
    // The wrist lies below the middle, so that both seams are alike.
    double middle = (backWidth - frontWidth) / 2;
    Pencil pencil =
        new Pencil("wrist back", 0, middle + wrist)
            .edge("hem")
            .line("wrist front", 0, middle - wrist)
            .edge("front seam")
            .line("underarm front", underarm, -frontWidth)
            .edge("front cap");
    Segment.Cubic down = frontHalf.cap(frontWidth);
    pencil.curve(
        Optional.of("cap"),
        new Point(top, 0),
        new Point(underarm, 0).plus(mirrored(down.control1())),
        new Point(underarm, 0).plus(mirrored(down.control2())));
    double frontCap = pencil.drawn().length();
    frontArmhole.notchesUpTo(frontCap).forEach(n -> pencil.notchMm(n.atMm(), n.strokes()));
    Segment.Cubic up = backHalf.cap(backWidth);
    pencil
        .edge("back cap")
        .curve(
            Optional.of("underarm back"),
            new Point(underarm, backWidth),
            new Point(underarm, 0).plus(up.control2()),
            new Point(underarm, 0).plus(up.control1()));
    double backCap = pencil.drawn().length();
    backArmhole.notchesUpTo(backCap).forEach(n -> pencil.notchMm(backCap - n.atMm(), n.strokes()));
    return pencil.closed("back seam");
  }

  private static Point mirrored(Point p) {
    return new Point(p.x(), -p.y());
  }

  /** Half of the cap line, from the underarm at the left (y above 0) up to the top. */
  private record Half(double heightMm, double hollow) {

    Segment.Cubic cap(double widthMm) {
      return new Segment.Cubic(
          new Point(0, widthMm),
          new Point(0, widthMm * (1 - hollow)),
          new Point(heightMm, widthMm * TOP),
          new Point(heightMm, 0));
    }

    /** How wide it must be for its line to be so long. */
    double widthMm(double lineMm) {
      InputException.unless(
          lineMm > heightMm,
          String.format(
              Locale.ROOT,
              "the armhole asks for a cap line of %.1f cm to each side, but the cap is %.1f cm"
                  + " high",
              lineMm / 10,
              heightMm / 10),
          "Measure arm and inner arm again: the cap is as high as they differ");
      double low = 0;
      double high = lineMm;
      while (high - low > FITS_MM / 2) {
        double width = (low + high) / 2;
        if (new Path(List.of(cap(width))).length() < lineMm) {
          low = width;
        } else {
          high = width;
        }
      }
      return high;
    }
  }
}
