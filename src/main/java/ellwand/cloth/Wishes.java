package ellwand.cloth;

import ellwand.problem.InputException;
import java.util.List;

/**
 * What a cutter wishes of a marker on a cloth, and how much longer it may get for that.
 *
 * @param asked each once
 * @param price of them all together
 */
public record Wishes(List<Wish> asked, Price price) {

  /**
   * Cloth that may be spent.
   *
   * @param share of the shortest length known, 0 or more
   * @param mm of cloth length on top of that, 0 or more
   */
  public record Price(double share, double mm) {

    public Price {
      if (!(share >= 0 && mm >= 0)) {
        throw InputException.of(
            "wishes cannot cost less than no cloth", "Write wish-price: as 0 or more");
      }
    }
  }

  /** What may be spent unless the user says otherwise. */
  public static final Price USUAL_PRICE = new Price(0.05, 0);

  /** The shortest marker will do. */
  public static final Wishes NONE = new Wishes(List.of(), USUAL_PRICE);

  public Wishes {
    asked = List.copyOf(asked);
    if (asked.stream().distinct().count() < asked.size()) {
      throw InputException.of("the same wish is named twice", "Name it once");
    }
  }

  public boolean any() {
    return !asked.isEmpty();
  }

  /** How long a marker may be where the shortest known takes so much cloth, mm. */
  public double longestMm(double shortestMm) {
    return shortestMm * (1 + price.share) + price.mm;
  }
}
