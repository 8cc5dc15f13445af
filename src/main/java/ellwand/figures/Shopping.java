package ellwand.figures;

import ellwand.figures.ToBuy.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Everything to buy for a job or an order; money in the user's.
 *
 * @param items cloths first, then trims
 */
public record Shopping(List<ToBuy> items) {

  public static final Shopping NOTHING = new Shopping(List.of());

  public Shopping {
    items = List.copyOf(items);
  }

  /**
   * For a job.
   *
   * @param cloths what each comes to; those that are on the shelf are not bought
   * @param trims what to buy of them
   */
  static Shopping of(List<Figures> cloths, List<ToBuy> trims) {
    List<ToBuy> items = new ArrayList<>();
    for (Figures f : cloths) {
      if (f.lengths().toBuyMm() > 0) {
        items.add(
            cloth(
                f.lies().cloth(),
                "",
                f.widths().clothMm(),
                f.lengths().toBuyMm(),
                f.money().cost(),
                f.money().currency()));
      }
    }
    items.addAll(trims);
    return new Shopping(items);
  }

  /**
   * A length of cloth.
   *
   * @param colour where it is bought in several; empty otherwise
   */
  public static ToBuy cloth(
      String name, String colour, double widthMm, double lengthMm, double cost, String currency) {
    return new ToBuy(
        Kind.CLOTH,
        name,
        colour,
        Optional.of(widthMm),
        Optional.of(lengthMm),
        OptionalInt.empty(),
        1,
        cost,
        currency);
  }

  /** Cloths, or trims. */
  public List<ToBuy> items(Kind kind) {
    return items.stream().filter(i -> i.kind() == kind).toList();
  }

  /** What has no price, by name. */
  public List<String> unpriced() {
    return items.stream().filter(i -> i.cost() == 0).map(ToBuy::name).distinct().toList();
  }

  /** What all money is in; may be empty. */
  public String currency() {
    return currencies().stream().findFirst().orElse("");
  }

  private List<String> currencies() {
    return items.stream().map(ToBuy::currency).filter(c -> !c.isEmpty()).distinct().toList();
  }

  /** Whether the cost of all of it is known, and in one currency. */
  public boolean known() {
    return unpriced().isEmpty() && currencies().size() <= 1;
  }

  /** Of all that has a price; 0 if that is in several currencies. */
  public double cost() {
    return cost(items);
  }

  /** The same of cloths, or of trims. */
  public double cost(Kind kind) {
    return cost(items(kind));
  }

  private double cost(List<ToBuy> some) {
    return currencies().size() > 1 ? 0 : some.stream().mapToDouble(ToBuy::cost).sum();
  }
}
