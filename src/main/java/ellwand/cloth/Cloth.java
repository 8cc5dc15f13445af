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
 * A cloth and how it is to be laid. Lengths in mm.
 *
 * @param name as in the job ("main", "lining")
 * @param wishes what its cutter wishes of a marker
 */
public record Cloth(String name, Goods goods, Laying laying, Selling selling, Wishes wishes) {

  private static final double ON_LINE_MM = 0.01;

  /** Of which nothing is wished but short markers. */
  public Cloth(String name, Goods goods, Laying laying, Selling selling) {
    this(name, goods, laying, selling, Wishes.NONE);
  }

  public Cloth {
    InputException.unless(
        goods.shrinkage().laidWidth(goods.widthMm()) - 2 * goods.selvedgeMm() > 0,
        "nothing is left of cloth " + name + " between its selvedges",
        "See that width: and selvedge: are right");
    InputException.unless(
        goods.repeat().filter(Repeat::headingShows).isEmpty()
            || laying.direction() != Direction.ANY_WAY,
        "the repeat of cloth " + name + " has no mirror line, so that its heading shows",
        "Write direction: one way, or one way per garment");
  }

  /** Edge to edge, as bought. */
  public double widthMm() {
    return goods.widthMm();
  }

  public double selvedgeMm() {
    return goods.selvedgeMm();
  }

  public boolean tubular() {
    return goods.tubular();
  }

  public Shrinkage shrinkage() {
    return goods.shrinkage();
  }

  public Optional<Repeat> repeat() {
    return goods.repeat();
  }

  public List<Flaw> flaws() {
    return goods.flaws();
  }

  public Optional<Stock> stock() {
    return goods.stock();
  }

  public List<Fold> folds() {
    return laying.folds();
  }

  public Direction direction() {
    return laying.direction();
  }

  public double gapMm() {
    return laying.gapMm();
  }

  public double endsMm() {
    return laying.endsMm();
  }

  public double grainToleranceDegrees() {
    return laying.grainToleranceDegrees();
  }

  public double fusingMarginMm() {
    return laying.fusingMarginMm();
  }

  /** How wide it may lie on the table, mm; infinite where there is room enough. */
  public double withinMm() {
    return laying.withinMm();
  }

  public double shopStepMm() {
    return selling.shopStepMm();
  }

  public double pricePerMetre() {
    return selling.pricePerMetre();
  }

  public String currency() {
    return selling.currency();
  }

  public Map<Double, Double> widthPrices() {
    return selling.widthPrices();
  }

  /**
   * What is needed of it as bought for so much on the table, ends included, mm: with one repeat,
   * since the shop cuts anywhere in it, lengthened by 1/(1 - shrinkage) if it is washed before it
   * is cut.
   */
  public double neededMm(double laidMm) {
    return shrinkage().boughtLength(laidMm + repeat().map(Repeat::alongMm).orElse(0.0));
  }

  /** The same in the shop's steps; nothing for nothing. */
  public double boughtMm(double laidMm) {
    return laidMm == 0 ? 0 : selling.soldMm(neededMm(laidMm));
  }

  /** What may be cut across the open cloth as it comes to the table, mm. */
  public double usableWidthMm() {
    return (tubular() ? 2 : 1) * shrinkage().laidWidth(widthMm()) - 2 * selvedgeMm();
  }

  /** Why it cannot lie so, and the way out; empty if it can. */
  public Optional<Problem> barred(Fold fold) {
    if (tubular() && fold != Fold.TUBULAR && fold != Fold.OPEN) {
      return Optional.of(
          Problem.of("a tube is not folded", "Lay it as tubular knit, or cut it open"));
    }
    if (!tubular() && fold == Fold.TUBULAR) {
      return Optional.of(
          Problem.of("the cloth is no tube", "Write tubular: true if it is one, else fold it"));
    }
    if (fold != fold.asOnePly() && !flaws().isEmpty()) {
      return Optional.of(
          Problem.of(
              "the plies of an order come from all along the cloth, so that a flaw would"
                  + " spoil every one of them",
              "Cut the flaw out and spread the rest"));
    }
    if (fold == Fold.CROSSWISE && direction() != Direction.ANY_WAY) {
      return Optional.of(
          Problem.of(
              "the cloth is cut " + direction().words() + " and one ply would head the other way",
              "Cut it across and turn the upper length round (crosswise turned)"));
    }
    Optional<Problem> uneven = repeat().flatMap(r -> r.barred(fold));
    if (uneven.isEmpty()
        && fold == Fold.TUBULAR
        && !(mirrorsAt(0) && mirrorsAt(usableWidthMm() / 2))) {
      return Optional.of(
          Problem.of(
              "its folds are not both on mirror lines of its repeat",
              "Lay the tube so that the middle of a stripe is on a fold (start: {across: 0}), or"
                  + " cut it open"));
    }
    return uneven;
  }

  /** Whether it is to lie so, or the plies of an order that is spread from it. */
  public boolean mayLie(Fold fold) {
    return folds().contains(fold.asOnePly());
  }

  /** The ways it may lie that it can lie in. */
  public List<Fold> possibleFolds() {
    return folds().stream().filter(fold -> barred(fold).isEmpty()).toList();
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
    if (!tubular()) {
      return flaws();
    }
    return Stream.of(0, -1, 1)
        .flatMap(
            turn -> {
              Motion round = new Motion(false, 0, 0, turn * usableWidthMm());
              return flaws().stream().map(f -> new Flaw(f.name(), f.outline().moved(round)));
            })
        .toList();
  }

  /** How much of it there is, mm; infinite for cloth that is bought by length. */
  public double lengthMm() {
    return stock().map(Stock::lengthMm).orElse(Double.POSITIVE_INFINITY);
  }

  /** The same as long as need be. */
  public Cloth endless() {
    return with(goods.from(Optional.empty()));
  }

  /** The same as long as need be, and without flaws. */
  public Cloth whole() {
    return with(goods.from(Optional.empty()).flawed(List.of()));
  }

  /** The same, to lie only so. */
  public Cloth lying(List<Fold> ways) {
    return new Cloth(name, goods, laying.folded(ways), selling, wishes);
  }

  /** The same, to lie no wider than that. */
  public Cloth within(double mm) {
    return new Cloth(name, goods, laying.within(mm), selling, wishes);
  }

  /** The same with these flaws. */
  public Cloth flawed(List<Flaw> found) {
    return with(goods.flawed(found));
  }

  /** The same with a repeat. */
  public Cloth repeating(Repeat woven) {
    return with(goods.repeating(Optional.of(woven)));
  }

  /** The same for a cutter with other wishes. */
  public Cloth wishing(Wishes other) {
    return new Cloth(name, goods, laying, selling, other);
  }

  /**
   * The same sold in another width, at the price of that width if that is known.
   *
   * @throws InputException if that is no width
   */
  public Cloth wide(double otherWidthMm) {
    InputException.unless(
        otherWidthMm > 0, "the width of cloth " + name + " is 0 or less", "Give it more than 0");
    return new Cloth(
        name, goods.inWidth(otherWidthMm), laying, selling.inWidth(otherWidthMm), wishes);
  }

  /**
   * The same with so much kept free all round each piece, mm: twice as much between two, once along
   * every edge of the cloth.
   */
  public Cloth withFusingMargin(double mm) {
    return new Cloth(
        name, goods.selvedge(goods.selvedgeMm() + mm), laying.fusingMargin(mm), selling, wishes);
  }

  private Cloth with(Goods other) {
    return new Cloth(name, other, laying, selling, wishes);
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
    double start = repeat().get().startAcrossMm() - selvedgeMm();
    return start + step * whole.applyAsDouble((mm - start) / step);
  }

  private double mirrorStepMm() {
    return repeat().map(Repeat::mirrorStepAcrossMm).orElse(0.0);
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
    return fold == Fold.CROSSWISE ? repeat().map(r -> r.startingAlong(0)) : repeat();
  }

  /**
   * The first place at a length or beyond it at which bars lie on bars when the cloth is folded or
   * cut across there, mm from the cut end that its flaws and bars are measured from.
   */
  public double acrossFromMm(Fold fold, double mm) {
    double bar = fold == Fold.CROSSWISE ? repeat().map(Repeat::startAlongMm).orElse(0.0) : 0;
    return bar + wholeRepeatsMm(mm - bar);
  }

  /**
   * What a length and all before it take when something else has to begin at the same place of the
   * repeat, mm.
   */
  public double wholeRepeatsMm(double mm) {
    double along = repeat().map(Repeat::alongMm).orElse(0.0);
    return along == 0 ? mm : along * Math.ceil(mm / along - 1e-9);
  }

  /** An outline measured from the edge of the open cloth, in the frame of the open marker. */
  public Outline fromFirstCuttable(Outline fromEdge) {
    return fromEdge.moved(new Motion(false, 0, 0, -selvedgeMm()));
  }
}
