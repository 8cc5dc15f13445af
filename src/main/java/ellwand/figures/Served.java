package ellwand.figures;

import ellwand.cloth.Cloth;
import ellwand.cloth.Wish;
import ellwand.lay.Marker;
import ellwand.rule.Handling;
import java.util.List;
import java.util.Optional;

/**
 * The cutter's wishes and what it costs to serve them, against the shortest marker that was found
 * without them; lengths in mm.
 *
 * @param asked none if the shortest marker is the one to cut
 * @param priceMm cloth length that the wishes take; below 0 where the search for them came upon a
 *     shorter marker
 * @param priceToBuyMm length to buy that they take: often none, since shops sell in steps
 * @param price of that; 0 if the price is unknown
 * @param clothLengthWithoutMm of the shortest marker
 * @param without how handy the shortest marker would be
 */
public record Served(
    List<Wish> asked,
    double priceMm,
    double priceToBuyMm,
    double price,
    double clothLengthWithoutMm,
    Handling without) {

  public Served {
    asked = List.copyOf(asked);
  }

  static Served of(Marker marker, Handling handling, Optional<Marker> shortest) {
    Cloth cloth = marker.lay().cloth();
    Marker other = shortest.orElse(marker);
    double more = marker.clothLengthMm() - other.clothLengthMm();
    double toBuy =
        Buying.lengthMm(cloth, marker.clothLengthMm())
            - Buying.lengthMm(cloth, other.clothLengthMm());
    return new Served(
        shortest.isPresent() ? cloth.wishes().asked() : List.of(),
        more,
        toBuy,
        Buying.cost(cloth, toBuy),
        other.clothLengthMm(),
        shortest.map(Handling::of).orElse(handling));
  }
}
