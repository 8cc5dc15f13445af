package ellwand.cloth;

import ellwand.problem.InputException;
import java.util.List;
import java.util.Optional;

/**
 * What a cloth is, whoever cuts it. Lengths in mm.
 *
 * @param widthMm edge to edge, as bought
 * @param selvedgeMm what may not be used along each of the two edges
 * @param tubular a knitted tube: its width is that of the tube lying flat, and it has no selvedge
 * @param repeat what is woven or printed into it again and again
 * @param flaws what of it cannot be used
 * @param stock the remnant that it is; empty for cloth that is bought by length
 */
public record Goods(
    double widthMm,
    double selvedgeMm,
    boolean tubular,
    Shrinkage shrinkage,
    Optional<Repeat> repeat,
    List<Flaw> flaws,
    Optional<Stock> stock) {

  public Goods {
    flaws = List.copyOf(flaws);
    InputException.unless(widthMm > 0, "the width of a cloth is 0 or less", "Give it more than 0");
    InputException.unless(selvedgeMm >= 0, "a selvedge is less than 0", "Give it as 0 or more");
    InputException.unless(
        !tubular || selvedgeMm == 0, "a tube has no selvedge", "Leave selvedge: out");
  }

  /** Woven cloth without selvedge, repeat or flaws that does not shrink, bought by length. */
  public static Goods wide(double widthMm) {
    return new Goods(
        widthMm, 0, false, Shrinkage.NONE, Optional.empty(), List.of(), Optional.empty());
  }

  /** The same in another width. */
  public Goods inWidth(double otherMm) {
    return new Goods(otherMm, selvedgeMm, tubular, shrinkage, repeat, flaws, stock);
  }

  public Goods selvedge(double mm) {
    return new Goods(widthMm, mm, tubular, shrinkage, repeat, flaws, stock);
  }

  /** Knitted as a tube, or not. */
  public Goods tube(boolean knitted) {
    return new Goods(widthMm, selvedgeMm, knitted, shrinkage, repeat, flaws, stock);
  }

  public Goods shrinking(Shrinkage by) {
    return new Goods(widthMm, selvedgeMm, tubular, by, repeat, flaws, stock);
  }

  public Goods repeating(Optional<Repeat> woven) {
    return new Goods(widthMm, selvedgeMm, tubular, shrinkage, woven, flaws, stock);
  }

  public Goods flawed(List<Flaw> found) {
    return new Goods(widthMm, selvedgeMm, tubular, shrinkage, repeat, found, stock);
  }

  public Goods from(Optional<Stock> shelf) {
    return new Goods(widthMm, selvedgeMm, tubular, shrinkage, repeat, flaws, shelf);
  }
}
