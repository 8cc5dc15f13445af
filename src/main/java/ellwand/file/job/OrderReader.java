package ellwand.file.job;

import ellwand.file.source.JobShape;
import ellwand.file.source.Spot;
import ellwand.pattern.Style;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads {@code order:}. */
final class OrderReader {

  /** More copies than this of one cloth are a slip of the pen. */
  private static final long MAX_PLACEMENTS = 2_000;

  private final JobShape shape;

  OrderReader(JobShape shape) {
    this.shape = shape;
  }

  /**
   * How many garments of each size; one of the drawn size if nothing is said.
   *
   * @param style empty if it could not be read: then its sizes are not checked
   */
  Map<String, Integer> read(Spot order, Optional<Style> style) {
    Map<String, Integer> garments = new LinkedHashMap<>();
    Spot wanted = order.get("garments");
    if (!shape.holds(order)) {
      return garments;
    }
    if (wanted.present() && wanted.node().isObject()) {
      wanted.entries().forEach((size, count) -> add(garments, size, count, style));
      wanted.holds(
          !wanted.entries().isEmpty(), "no garment is wanted", "Write for example garments: 1");
    } else {
      String size = style.map(Style::drawnSize).orElse("");
      if (wanted.present()) {
        add(garments, size, wanted, style);
      } else {
        garments.put(size, 1);
      }
    }
    style.ifPresent(s -> checkPlacements(wanted.present() ? wanted : order, s, garments));
    return garments;
  }

  private static void add(
      Map<String, Integer> garments, String size, Spot count, Optional<Style> style) {
    boolean known =
        style.isEmpty()
            || count.holds(
                style.get().sizes().contains(size) || size.isEmpty(),
                "the style has no size " + size,
                "Use one of " + String.join(", ", style.get().sizes()));
    double number = count.node().asDouble();
    if (known
        && count.holds(
            number >= 1 && number <= MAX_PLACEMENTS,
            count.node().asText() + " garments cannot be laid together",
            "Write 1 to " + MAX_PLACEMENTS + ", and leave out sizes that are not wanted")) {
      garments.put(size, count.node().asInt());
    }
  }

  private static void checkPlacements(Spot spot, Style style, Map<String, Integer> garments) {
    Map<String, Long> byCloth = new LinkedHashMap<>();
    garments.forEach(
        (size, many) ->
            style.pieces(size).stream()
                .flatMap(p -> p.cuts().stream())
                .forEach(cut -> byCloth.merge(cut.cloth(), (long) many * cut.pieces(), Long::sum)));
    long placements = byCloth.values().stream().mapToLong(n -> n).max().orElse(0);
    spot.holds(
        placements <= MAX_PLACEMENTS,
        placements + " pieces are too many to cut together",
        "Split the order so that at most " + MAX_PLACEMENTS + " are");
  }
}
