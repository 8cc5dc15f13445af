package ellwand.cloth;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import java.util.List;
import java.util.Optional;

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
    Optional<Stock> stock) {

  /** Shops that think in metres cut to 10 cm; common practice. */
  public static final double USUAL_SHOP_STEP_MM = 100;

  /** Cloth without flaws, bought by length. */
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
        Optional.empty());
  }

  public Cloth {
    folds = List.copyOf(folds);
    flaws = List.copyOf(flaws);
    require(widthMm > 0, name, "its width must be more than 0");
    require(selvedgeMm >= 0, name, "its selvedge cannot be less than 0");
    require(gapMm >= 0, name, "the gap between pieces cannot be less than 0");
    require(endsMm >= 0, name, "the ends cannot be less than 0");
    require(shopStepMm > 0, name, "the shop's step must be more than 0");
    require(pricePerMetre >= 0, name, "its price cannot be less than 0");
    require(!folds.isEmpty(), name, "it must lie in some way: open or lengthwise fold");
    require(
        shrinkage.laidWidth(widthMm) - 2 * selvedgeMm > 0,
        name,
        "nothing is left of its width between the selvedges");
    require(
        repeat.isEmpty() || !repeat.get().headingShows() || direction != Direction.ANY_WAY,
        name,
        "a repeat without mirror line is cut one way");
  }

  private static void require(boolean holds, String name, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException("cloth " + name + ": " + otherwise);
    }
  }

  /** What may be cut across the open cloth as it comes to the table, mm. */
  public double usableWidthMm() {
    return shrinkage.laidWidth(widthMm) - 2 * selvedgeMm;
  }

  /** How much of it there is, mm; infinite for cloth that is bought by length. */
  public double lengthMm() {
    return stock.map(Stock::lengthMm).orElse(Double.POSITIVE_INFINITY);
  }

  /** The same as long as need be. */
  public Cloth endless() {
    return with(folds, flaws, repeat, Optional.empty());
  }

  /** The same as long as need be, and without flaws. */
  public Cloth whole() {
    return with(folds, List.of(), repeat, Optional.empty());
  }

  /** The same, to lie only so. */
  public Cloth lying(List<Fold> ways) {
    return with(ways, flaws, repeat, stock);
  }

  /** The same with these flaws. */
  public Cloth flawed(List<Flaw> found) {
    return with(folds, found, repeat, stock);
  }

  /** The same with a repeat. */
  public Cloth repeating(Repeat woven) {
    return with(folds, flaws, Optional.of(woven), stock);
  }

  private Cloth with(
      List<Fold> ways, List<Flaw> found, Optional<Repeat> woven, Optional<Stock> shelf) {
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
        shelf);
  }

  /**
   * Where a lengthwise fold lies across, from the first cuttable line, mm: in the middle, or on the
   * bar's middle nearest to it.
   */
  double foldLineMm() {
    double middle = usableWidthMm() / 2;
    return repeat.map(r -> r.nearestAcross(middle + selvedgeMm) - selvedgeMm).orElse(middle);
  }

  /** Why it cannot lie so, and the way out; empty if it can. */
  public Optional<String> barred(Fold fold) {
    return repeat.flatMap(r -> r.barred(fold));
  }

  /** An outline measured from the edge of the open cloth, in the frame of the open marker. */
  public Outline fromFirstCuttable(Outline fromEdge) {
    return fromEdge.moved(new Motion(false, 0, 0, -selvedgeMm));
  }
}
