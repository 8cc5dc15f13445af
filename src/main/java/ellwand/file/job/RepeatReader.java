package ellwand.file.job;

import ellwand.cloth.Repeat;
import ellwand.file.source.Spot;
import java.util.List;
import java.util.Optional;

/** Reads {@code repeat:}. */
final class RepeatReader {

  private RepeatReader() {}

  static Optional<Repeat> read(Spot spot) {
    if (!spot.present()) {
      return Optional.empty();
    }
    int before = spot.problems().size();
    List<String> uneven =
        spot.get("uneven").items().stream().map(item -> item.node().asText()).toList();
    double along = spot.get("along").lengthAbove0().orElse(0.0);
    double across = spot.get("across").lengthAbove0().orElse(0.0);
    double startAlong = spot.get("start").get("along").length().orElse(0.0);
    double startAcross = spot.get("start").get("across").length().orElse(0.0);
    Optional<Double> border = spot.get("border").lengthAbove0();
    Optional<Double> within = spot.get("match-within").lengthFrom0();
    if (spot.problems().size() > before) {
      return Optional.empty();
    }
    return spot.attempt(
            () ->
                new Repeat(
                    along,
                    across,
                    spot.get("half-drop").isTrue(),
                    !uneven.contains("along"),
                    !uneven.contains("across"),
                    startAlong,
                    startAcross,
                    border))
        .flatMap(
            usual ->
                within.isEmpty()
                    ? Optional.of(usual)
                    : spot.get("match-within").attempt(() -> usual.matchingWithin(within.get())));
  }
}
