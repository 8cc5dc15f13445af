package ellwand.cloth;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * A cloth as bought, and how it is to be laid. Lengths in mm.
 *
 * @param name as in the job ("main", "lining")
 * @param widthMm edge to edge, as bought
 * @param selvedgeMm what may not be used along each of the two edges
 * @param gapMm least distance between two pieces; none at fold edge, selvedge or cut end
 * @param folds the ways it may lie, at least one, best liked first
 * @param endsMm what is lost at both cut ends together
 * @param shopStepMm length is sold in multiples of this
 * @param pricePerMetre in whatever money the user reckons in; 0 if unknown
 * @param currency a word or sign shown with money, may be empty
 * @param flaws what of it cannot be used
 * @param repeat what is woven or printed into it again and again
 * @param stock the remnant that it is; empty for cloth that is bought by length
 * @param tubular a knitted tube: its width is that of the tube lying flat, and it has no selvedge
 * @param grainToleranceDegrees how far a piece may turn off its grain
 * @param widthPrices what a metre costs by the width, mm, where it is sold in several
 * @param wishes what its cutter wishes of a marker
 * @param bufferMm what is kept free round each piece, that the gap, selvedges and ends allow for
 */
public record Cloth(
    String name,
    double widthMm,
    double selvedgeMm,
    double gapMm,
    Direction direction,
    List<Fold> folds,
    Shrinkage shrinkage,
    double endsMm,
    double shopStepMm,
    double pricePerMetre,
    String currency,
    List<Flaw> flaws,
    Optional<Repeat> repeat,
    Optional<Stock> stock,
    boolean tubular,
    double grainToleranceDegrees,
    Map<Double, Double> widthPrices,
    Wishes wishes,
    double bufferMm) {

  /** Shops that think in metres cut to 10 cm; common practice. */
  public static final double USUAL_SHOP_STEP_MM = 100;

  private static final double ON_LINE_MM = 0.01;

  /** Farther off it is another grain. */
  public static final double MOST_TOLERANCE_DEGREES = 10;

  /** Woven cloth without flaws, bought by length, on whose grain pieces lie exactly. */
  public Cloth(
      String name,
      double widthMm,
      double selvedgeMm,
      double gapMm,
      Direction direction,
      List<Fold> folds,
      Shrinkage shrinkage,
      double endsMm,
      double shopStepMm,
      double pricePerMetre,
      String currency) {
    this(
        name,
        widthMm,
        selvedgeMm,
        gapMm,
        direction,
        folds,
        shrinkage,
        endsMm,
        shopStepMm,
        pricePerMetre,
        currency,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        false,
        0,
        Map.of(),
        Wishes.NONE,
        0);
  }

  public Cloth {
    folds = List.copyOf(folds);
    flaws = List.copyOf(flaws);
    widthPrices = Map.copyOf(widthPrices);
    require(widthMm > 0, "the width of cloth " + name + " is 0 or less", "Give it more than 0");
    require(
        selvedgeMm >= 0 && gapMm >= 0 && bufferMm >= 0 && endsMm >= 0,
        "a selvedge, gap, buffer or end of cloth " + name + " is less than 0",
        "Give them as 0 or more");
    require(
        shopStepMm > 0,
        "the shop's step of cloth " + name + " is 0 or less",
        "Give it more than 0");
    require(
        pricePerMetre >= 0,
        "the price of cloth " + name + " is less than 0",
        "Give it as 0 or more");
    require(!tubular || selvedgeMm == 0, "a tube has no selvedge", "Leave selvedge: out");
    require(
        grainToleranceDegrees >= 0 && grainToleranceDegrees <= MOST_TOLERANCE_DEGREES,
        "the grain tolerance of cloth " + name + " is not 0 to 10 degrees",
        "Write 10 deg or less");
    require(
        !folds.isEmpty(),
        "it is not said how cloth " + name + " may lie",
        "Write for example fold: lengthwise fold, or open");
    require(
        shrinkage.laidWidth(widthMm) - 2 * selvedgeMm > 0,
        "nothing is left of cloth " + name + " between its selvedges",
        "See that width: and selvedge: are right");
    require(
        repeat.isEmpty() || !repeat.get().headingShows() || direction != Direction.ANY_WAY,
        "the repeat of cloth " + name + " has no mirror line, so that its heading shows",
        "Write direction: one way, or one way per garment");
  }

  private static void require(boolean holds, String otherwise, String remedy) {
    if (!holds) {
      throw InputException.of(otherwise, remedy);
    }
  }

  /** What may be cut across the open cloth as it comes to the table, mm. */
  public double usableWidthMm() {
    return (tubular ? 2 : 1) * shrinkage.laidWidth(widthMm) - 2 * selvedgeMm;
  }

  /** Why it cannot lie so, and the way out; empty if it can. */
  public Optional<Problem> barred(Fold fold) {
    if (tubular && fold != Fold.TUBULAR && fold != Fold.OPEN) {
      return Optional.of(
          Problem.of("a tube is not folded", "Lay it as tubular knit, or cut it open"));
    }
    if (!tubular && fold == Fold.TUBULAR) {
      return Optional.of(
          Problem.of("the cloth is no tube", "Write tubular: true if it is one, else fold it"));
    }
    if (fold != fold.asOnePly() && !flaws.isEmpty()) {
      return Optional.of(
          Problem.of(
              "the plies of an order come from all along the cloth, so that a flaw would"
                  + " bar every one of them",
              "Cut the flaw out and spread the rest"));
    }
    if (fold == Fold.CROSSWISE && direction != Direction.ANY_WAY) {
      return Optional.of(
          Problem.of(
              "the cloth is cut " + direction.words() + " and one ply would head the other way",
              "Cut it across and turn the upper length round (crosswise turned)"));
    }
    Optional<Problem> uneven = repeat.flatMap(r -> r.barred(fold));
    if (uneven.isEmpty()
        && fold == Fold.TUBULAR
        && !(mirrorsAt(0) && mirrorsAt(usableWidthMm() / 2))) {
      return Optional.of(
          Problem.of(
              "its folds are not both on mirror lines of its repeat",
              "Lay the tube so that the middle of a bar is on a fold (start: {across: 0}), or cut it"
                  + " open"));
    }
    return uneven;
  }

  /** Whether it is to lie so, or the plies of an order that is spread from it. */
  public boolean mayLie(Fold fold) {
    return folds.contains(fold.asOnePly());
  }

  /** The ways it may lie that it can lie in. */
  public List<Fold> possibleFolds() {
    return folds.stream().filter(fold -> barred(fold).isEmpty()).toList();
  }

  /** The ways to lie that are worth a trial when any will do, the barred ones among them. */
  public static List<Fold> anyFold(boolean tubular, Direction direction) {
    return Fold.any(tubular, direction);
  }

  /**
   * The flaws wherever they bar: those of a tube, which are measured round it from one of its
   * folds, also where they reach on over that fold.
   */
  public List<Flaw> flawsAllRound() {
    if (!tubular) {
      return flaws;
    }
    return Stream.of(0, -1, 1)
        .flatMap(
            turn -> {
              Motion round = new Motion(false, 0, 0, turn * usableWidthMm());
              return flaws.stream().map(f -> new Flaw(f.name(), f.outline().moved(round)));
            })
        .toList();
  }

  /** How much of it there is, mm; infinite for cloth that is bought by length. */
  public double lengthMm() {
    return stock.map(Stock::lengthMm).orElse(Double.POSITIVE_INFINITY);
  }

  /** The same as long as need be. */
  public Cloth endless() {
    return with(folds, flaws, repeat, Optional.empty(), wishes);
  }

  /** The same as long as need be, and without flaws. */
  public Cloth whole() {
    return with(folds, List.of(), repeat, Optional.empty(), wishes);
  }

  /** The same, to lie only so. */
  public Cloth lying(List<Fold> ways) {
    return with(ways, flaws, repeat, stock, wishes);
  }

  /** The same with these flaws. */
  public Cloth flawed(List<Flaw> found) {
    return with(folds, found, repeat, stock, wishes);
  }

  /** The same with a repeat. */
  public Cloth repeating(Repeat woven) {
    return with(folds, flaws, Optional.of(woven), stock, wishes);
  }

  /** The same for a cutter with other wishes. */
  public Cloth wishing(Wishes other) {
    return with(folds, flaws, repeat, stock, other);
  }

  /** The same sold in another width, at the price of that width if that is known. */
  public Cloth wide(double otherWidthMm) {
    double price =
        widthPrices.isEmpty() ? pricePerMetre : widthPrices.getOrDefault(otherWidthMm, 0.0);
    return new Cloth(
        name,
        otherWidthMm,
        selvedgeMm,
        gapMm,
        direction,
        folds,
        shrinkage,
        endsMm,
        shopStepMm,
        price,
        currency,
        flaws,
        repeat,
        stock,
        tubular,
        grainToleranceDegrees,
        widthPrices,
        wishes,
        bufferMm);
  }

  private Cloth with(
      List<Fold> ways,
      List<Flaw> found,
      Optional<Repeat> woven,
      Optional<Stock> shelf,
      Wishes wished) {
    return new Cloth(
        name,
        widthMm,
        selvedgeMm,
        gapMm,
        direction,
        ways,
        shrinkage,
        endsMm,
        shopStepMm,
        pricePerMetre,
        currency,
        found,
        woven,
        shelf,
        tubular,
        grainToleranceDegrees,
        widthPrices,
        wished,
        bufferMm);
  }

  /** The line nearest a place across at which it may be folded, both from the first cuttable. */
  public double nearestMirrorMm(double mm) {
    return mirror(mm, Math::rint);
  }

  /** The first such line at the place or beyond it. */
  public double mirrorFromMm(double mm) {
    return mirrorStepMm() == 0 ? mm : mirror(mm - ON_LINE_MM, Math::ceil);
  }

  private double mirror(double mm, DoubleUnaryOperator whole) {
    double step = mirrorStepMm();
    if (step == 0) {
      return mm;
    }
    double start = repeat.get().startAcrossMm() - selvedgeMm;
    return start + step * whole.applyAsDouble((mm - start) / step);
  }

  private double mirrorStepMm() {
    return repeat.map(Repeat::mirrorStepAcrossMm).orElse(0.0);
  }

  /** Whether what lies on either side of a place across is alike, to 0.01 mm. */
  boolean mirrorsAt(double mm) {
    return Math.abs(nearestMirrorMm(mm) - mm) <= ON_LINE_MM;
  }

  /**
   * Its repeat as it lies on the table when folded so: a crosswise fold has no cut end to measure
   * from, it lies along the middle of a bar.
   */
  public Optional<Repeat> repeatLaid(Fold fold) {
    return fold == Fold.CROSSWISE ? repeat.map(r -> r.startingAlong(0)) : repeat;
  }

  /**
   * The first place at a length or beyond it at which bars lie on bars when the cloth is folded or
   * cut across there, mm from the cut end that its flaws and bars are measured from.
   */
  public double acrossFromMm(Fold fold, double mm) {
    double bar = fold == Fold.CROSSWISE ? repeat.map(Repeat::startAlongMm).orElse(0.0) : 0;
    return bar + wholeRepeatsMm(mm - bar);
  }

  /**
   * What a length and all before it take when something else has to begin at the same place of the
   * repeat, mm.
   */
  public double wholeRepeatsMm(double mm) {
    double along = repeat.map(Repeat::alongMm).orElse(0.0);
    return along == 0 ? mm : along * Math.ceil(mm / along - 1e-9);
  }

  /** An outline measured from the edge of the open cloth, in the frame of the open marker. */
  public Outline fromFirstCuttable(Outline fromEdge) {
    return fromEdge.moved(new Motion(false, 0, 0, -selvedgeMm));
  }
}
