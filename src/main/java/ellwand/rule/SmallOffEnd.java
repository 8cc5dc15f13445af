package ellwand.rule;

import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Small pieces keep off both ends of the lay, where plies slip and cloth frays. */
public final class SmallOffEnd {

  /** A piece is small below this share of the lay's mean; our choice. */
  private static final double SMALL = 0.5;

  /** How far off an end is far enough, mm: a hand's breadth, our choice. */
  public static final double ENOUGH_MM = 100;

  /** Amount: how much nearer than a hand's breadth the piece lies, mm. */
  static final Rule RULE =
      new Rule(
          "small-off-end",
          false,
          Rule.Counted.MM,
          "Small pieces keep off the ends of the lay",
          SmallOffEnd::findings);

  private SmallOffEnd() {}

  /**
   * Whether a piece counts as small among others.
   *
   * @param areaMm2 as it lies
   * @param meanMm2 of all that lie there
   */
  public static boolean small(double areaMm2, double meanMm2) {
    return areaMm2 < SMALL * meanMm2;
  }

  static List<Copy> small(Marker marker) {
    double mean = marker.copies().stream().mapToDouble(c -> c.outline().area()).average().orElse(0);
    return marker.copies().stream().filter(c -> small(c.outline().area(), mean)).toList();
  }

  /** How near a copy comes to the nearer end of so long a marker, mm. */
  static double offEndMm(double markerMm, Copy copy) {
    Box box = copy.outline().box();
    return Math.min(box.minX(), markerMm - box.maxX());
  }

  private static List<Finding> findings(Rule rule, Inspection of) {
    List<Copy> small = small(of.marker());
    double length = of.marker().lengthMm();
    return IntStream.range(0, of.marker().copies().size())
        .filter(i -> small.contains(of.marker().copies().get(i)))
        .filter(i -> offEndMm(length, of.marker().copies().get(i)) < ENOUGH_MM)
        .mapToObj(
            i -> {
              Copy c = of.marker().copies().get(i);
              double off = offEndMm(length, c);
              return new Finding(
                  rule,
                  List.of(c.piece()),
                  List.of(i),
                  Optional.of(c.outline().box().centre()),
                  ENOUGH_MM - off,
                  unit ->
                      Say.capital(of.name(c.piece(), c.size(), c.garment()))
                          + " lies "
                          + Say.small(Math.max(0, off), unit)
                          + " from an end "
                          + Say.near(c.outline().box().centre(), unit)
                          + ".");
            })
        .toList();
  }
}
