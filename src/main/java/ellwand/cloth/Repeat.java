package ellwand.cloth;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What is woven or printed into the cloth again and again. Measured as it comes to the table, mm.
 *
 * @param alongMm from bar to bar along the warp; 0 if nothing changes that way (stripes along)
 * @param acrossMm from bar to bar across; 0 if nothing changes that way (stripes across)
 * @param halfDrop every other column of the repeat is set half of {@code alongMm} further
 * @param evenAlong it looks the same from either end: a mirror line lies across each start place
 * @param evenAcross it looks the same from either side: a mirror line lies along each start place
 * @param startAlongMm from the cut end to the middle of a bar
 * @param startAcrossMm from the edge of the open cloth (selvedge included) to the middle of a bar
 * @param borderMm from the edge of the open cloth to the line of a border, if it has one
 * @param matchWithinMm by so much what matches may miss where it cannot match exactly
 */
public record Repeat(
    double alongMm,
    double acrossMm,
    boolean halfDrop,
    boolean evenAlong,
    boolean evenAcross,
    double startAlongMm,
    double startAcrossMm,
    Optional<Double> borderMm,
    double matchWithinMm) {

  /** What matches may miss unless a job says other, mm: our own choice. */
  private static final double USUAL_WITHIN_MM = 0.5;

  /** And never more than this share of a repeat: our own choice. */
  private static final double USUAL_SHARE = 0.1;

  /** From this share of a repeat on, what misses cannot be told from what matches. */
  private static final double MOST_SHARE = 0.25;

  /** One that is to match as it usually is. */
  public Repeat(
      double alongMm,
      double acrossMm,
      boolean halfDrop,
      boolean evenAlong,
      boolean evenAcross,
      double startAlongMm,
      double startAcrossMm,
      Optional<Double> borderMm) {
    this(
        alongMm,
        acrossMm,
        halfDrop,
        evenAlong,
        evenAcross,
        startAlongMm,
        startAcrossMm,
        borderMm,
        Math.min(USUAL_WITHIN_MM, USUAL_SHARE * least(alongMm, acrossMm)));
  }

  public Repeat {
    if (!(alongMm >= 0 && acrossMm >= 0)) {
      throw InputException.of("a repeat cannot be less than 0", "Write its length");
    }
    if (alongMm == 0 && acrossMm == 0 && borderMm.isEmpty()) {
      throw InputException.of("it is not said what repeats", "Give along:, across: or border:");
    }
    if (halfDrop && !(alongMm > 0 && acrossMm > 0)) {
      throw InputException.of(
          "a half drop repeats both ways", "Give along: and across:, or leave half-drop: out");
    }
    if (!(matchWithinMm >= 0 && matchWithinMm <= MOST_SHARE * least(alongMm, acrossMm))) {
      throw InputException.of(
          "what misses by so much does not match: it is more than a quarter of the repeat",
          "Write less under match-within:, for example 1 mm");
    }
  }

  /** Stripes or checks that look the same from all sides. */
  public static Repeat even(
      double alongMm, double acrossMm, double startAlong, double startAcross) {
    return new Repeat(
        alongMm, acrossMm, false, true, true, startAlong, startAcross, Optional.empty());
  }

  /** The same, but what matches may miss by so much, mm. */
  public Repeat matchingWithin(double mm) {
    return new Repeat(
        alongMm,
        acrossMm,
        halfDrop,
        evenAlong,
        evenAcross,
        startAlongMm,
        startAcrossMm,
        borderMm,
        mm);
  }

  private static double least(double alongMm, double acrossMm) {
    return DoubleStream.of(alongMm, acrossMm)
        .filter(mm -> mm > 0)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether a heading shows, so that the cloth has to be cut one way. */
  public boolean headingShows() {
    return !evenAlong && alongMm > 0 || !evenAcross && acrossMm > 0;
  }

  /**
   * From one line along the cloth at which it may be folded to the next, mm; 0 if it may be folded
   * anywhere. An even repeat mirrors at the middles of its bars and half way between them; columns
   * of a half drop are unlike their neighbours, so that it mirrors at middles only.
   */
  public double mirrorStepAcrossMm() {
    return halfDrop ? acrossMm : acrossMm / 2;
  }

  /**
   * How far two places are from showing the same: in a half drop in one column or in neighbouring
   * ones, mm.
   *
   * @param apartAlongMm how far apart they are along the warp
   * @param apartAcrossMm and across it
   */
  public double offMm(double apartAlongMm, double apartAcrossMm) {
    if (!halfDrop) {
      return Math.max(rest(apartAlongMm, alongMm), rest(apartAcrossMm, acrossMm));
    }
    double same = Math.max(rest(apartAlongMm, alongMm), rest(apartAcrossMm, 2 * acrossMm));
    double next =
        Math.max(
            rest(apartAlongMm - alongMm / 2, alongMm),
            rest(apartAcrossMm - acrossMm, 2 * acrossMm));
    return Math.min(same, next);
  }

  private static double rest(double mm, double period) {
    return period == 0 ? 0 : Math.abs(Math.IEEEremainder(mm, period));
  }

  /** The same repeat on cloth that begins at another place of it along the warp, mm. */
  Repeat startingAlong(double mm) {
    return new Repeat(
        alongMm,
        acrossMm,
        halfDrop,
        evenAlong,
        evenAcross,
        mm,
        startAcrossMm,
        borderMm,
        matchWithinMm);
  }

  /** Which way cloth with it is cut where any way is said: one way if its heading shows. */
  public Direction direction(Direction said) {
    return headingShows() && said == Direction.ANY_WAY ? Direction.ONE_WAY : said;
  }

  /** Why the cloth cannot lie so, and the way out; empty if it can. */
  Optional<Problem> barred(Fold fold) {
    return switch (fold) {
      case OPEN -> Optional.empty();
      case LENGTHWISE, STACKED, PART, DOUBLE, TURNED, TUBULAR ->
          mirrored(acrossMm == 0 || evenAcross);
      case CROSSWISE -> mirrored(alongMm == 0 || evenAlong);
      case FACE_TO_FACE ->
          Optional.of(
              Problem.of(
                  "the stripes of many plies hardly come to lie on one another",
                  "Spread it with all faces up"));
    };
  }

  private static Optional<Problem> mirrored(boolean even) {
    return even
        ? Optional.empty()
        : Optional.of(
            Problem.of(
                "its repeat has no mirror line to fold at, so that the plies would not match",
                "Lay it open"));
  }
}
