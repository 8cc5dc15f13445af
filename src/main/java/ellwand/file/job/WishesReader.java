package ellwand.file.job;

import ellwand.cloth.Wish;
import ellwand.cloth.Wishes;
import ellwand.file.source.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads {@code wishes:} and {@code wish-price:} of a cloth. */
final class WishesReader {

  /** What small pieces away from the ends was called up to 0.1.0; read for one version more. */
  private static final String OLDER = "small off the end";

  private WishesReader() {}

  /** Nothing if there is a problem, which is reported. */
  static Optional<Wishes> read(Spot cloth) {
    List<Wish> asked = new ArrayList<>();
    boolean sound = true;
    for (Spot one : cloth.get("wishes").items()) {
      Wish wish = wish(one.node().asText());
      sound &= one.holds(!asked.contains(wish), "this wish is named twice", "Name it once");
      asked.add(wish);
    }
    Spot spot = cloth.get("wish-price");
    if (!spot.present()) {
      return sound ? Optional.of(new Wishes(asked, Wishes.USUAL_PRICE)) : Optional.empty();
    }
    sound &=
        spot.holds(
            !asked.isEmpty(),
            "there is a price for wishes, but no wish",
            "Add wishes:, or take wish-price: out");
    Optional<Wishes.Price> price = price(spot);
    return sound ? price.map(p -> new Wishes(asked, p)) : Optional.empty();
  }

  /** The schema knows all words. */
  private static Wish wish(String words) {
    return Arrays.stream(Wish.values())
        .filter(w -> w.words().equals(words) || w == Wish.SMALL_OFF_END && words.equals(OLDER))
        .findFirst()
        .orElseThrow();
  }

  /** With a percent sign it is a share, otherwise a length. */
  private static Optional<Wishes.Price> price(Spot spot) {
    String text = spot.node().asText();
    return text.strip().endsWith("%")
        ? spot.attempt(() -> new Wishes.Price(Share.parse(text), 0))
        : spot.lengthFrom0().map(mm -> new Wishes.Price(0, mm));
  }
}
