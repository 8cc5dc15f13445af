package ellwand.file.job;

import ellwand.cloth.Cloth;
import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.order.Cost;
import ellwand.order.Limits;
import ellwand.order.Order;
import ellwand.order.Tolerance;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads how one cloth of an order is cut: as the order has it unless said for the cloth. */
final class TermsReader {

  private final Spot order;
  private final Optional<Cloth> cloth;
  private final Spot own;

  TermsReader(Spot order, Optional<Cloth> cloth) {
    this.order = order;
    this.cloth = cloth;
    this.own = order.get("cloths").get(cloth.map(Cloth::name).orElse(""));
  }

  /** An entry of the cloth, or else of the order. */
  Spot term(String key) {
    Spot said = own.get(key);
    return said.present() ? said : order.get(key);
  }

  /** A whole number of 0 or more; reported otherwise as that many of what it counts. */
  static int whole(Spot spot, int unlessSaid, String what) {
    if (!spot.present()) {
      return unlessSaid;
    }
    long number = spot.node().asLong();
    return spot.holds(number >= 0, "there cannot be " + number + " " + what, "Write 0 or more")
            && spot.holds(
                number <= Order.MOST_GARMENTS,
                number + " " + what + " are more than any order has",
                "Write at most " + Order.MOST_GARMENTS)
        ? (int) number
        : unlessSaid;
  }

  Optional<Tolerance> tolerance() {
    Spot tolerance = order.get("tolerance");
    return order.attempt(
        () ->
            new Tolerance(
                whole(tolerance.get("over"), 0, "garments over"),
                whole(tolerance.get("under"), 0, "garments under")));
  }

  Optional<Limits> limits() {
    Spot table = term("table");
    Optional<Double> tableMm =
        table.present() ? table.lengthAbove0() : Optional.of(Double.POSITIVE_INFINITY);
    Spot ends = term("end-loss");
    Optional<Double> endLoss = ends.present() ? ends.lengthFrom0() : Optional.of(0.0);
    if (tableMm.isEmpty() || endLoss.isEmpty()) {
      return Optional.empty();
    }
    int plies = whole(term("max-plies"), 1, "plies");
    int garments = whole(term("max-garments"), 1, "garments in a marker");
    term("max-plies")
        .holds(plies > 0, "a lay of no plies cuts nothing", "Set max-plies: to 1 or more");
    term("max-garments")
        .holds(
            garments > 0, "a marker of no garments cuts nothing", "Set max-garments: to 1 or more");
    return plies > 0 && garments > 0
        ? order.attempt(() -> new Limits(plies, garments, tableMm.get(), endLoss.get()))
        : Optional.empty();
  }

  /**
   * What the cloth costs.
   *
   * @param first whether it is the order's first cloth, whose price the order may say
   */
  ClothPrice price(boolean first) {
    Spot said = own.get("cost").get("cloth");
    Spot spot = said.present() || !first ? said : order.get("cost").get("cloth");
    ClothPrice ofCloth =
        cloth.map(c -> new ClothPrice(c.pricePerMetre(), c.currency())).orElse(ClothPrice.NONE);
    return spot.text().flatMap(t -> spot.attempt(() -> ClothPrice.parse(t))).orElse(ofCloth);
  }

  Optional<Cost> cost(ClothPrice price) {
    Spot minute = order.get("cost").get("minute");
    double perMinute = minute.present() ? minute.node().asDouble() : 0;
    Spot said = own.get("cost").get("lay");
    Spot lay = said.present() ? said : order.get("cost").get("lay");
    Optional<Double> perLay =
        lay.present()
            ? lay.attempt(() -> LayCost.parse(lay.node().asText()).money(perMinute))
            : Optional.of(0.0);
    return perLay.flatMap(l -> order.attempt(() -> new Cost(l, price.perMetre(), cloth)));
  }

  /** The cloth's colour by that of the garment, where it is another. */
  Map<String, String> colours(Set<String> ofGarments) {
    Map<String, String> colours = new LinkedHashMap<>();
    Spot one = own.get("colour");
    one.text()
        .ifPresent(
            colour -> {
              Names.check(one, colour);
              ofGarments.forEach(garment -> colours.put(garment, colour));
            });
    own.get("colours")
        .entries()
        .forEach(
            (garment, colour) -> {
              colour.holds(
                  ofGarments.contains(garment),
                  "no garment is ordered in colour " + Names.shown(garment),
                  "Use one of " + String.join(", ", ofGarments));
              Names.check(colour, colour.node().asText());
              colours.put(garment, colour.node().asText());
            });
    return colours;
  }
}
