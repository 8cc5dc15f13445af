package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Extent;
import ellwand.pattern.Gathered;
import ellwand.pattern.Notch;
import ellwand.pattern.PleatedPlan;
import ellwand.pattern.Pleating;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads one rectangle that is computed from what it is pleated onto. */
final class PleatedReader {

  private PleatedReader() {}

  /**
   * The rectangle, or nothing if it is wrong.
   *
   * @param sizes that there are
   */
  static Optional<PleatedPlan> read(String name, Spot spot, PieceHead head, List<String> sizes) {
    int before = spot.problems().size();
    RectangleHead rectangle = new RectangleHead(spot, head, "pleated");
    Optional<Gathered.Seams> seams = rectangle.seams();
    Spot pleated = spot.get("pleated");
    Optional<Extent> joined = ExtentReader.read(pleated.get("from"), sizes);
    Optional<Extent> length = ExtentReader.read(pleated.get("length"), sizes);
    Optional<Double> depth = pleated.get("depth").lengthAbove0();
    Spot pleats = pleated.get("pleats");
    Spot fullness = pleated.get("fullness");
    List<Notch> notches = PieceReader.notches(spot.get("notches"));
    if (spot.problems().size() > before
        || seams.isEmpty()
        || joined.isEmpty()
        || length.isEmpty()) {
      return Optional.empty();
    }
    return spot.attempt(
        () ->
            new PleatedPlan(
                name,
                joined.get(),
                pleated
                    .get("kind")
                    .text()
                    .map(kind -> Pleating.Kind.valueOf(kind.toUpperCase(Locale.ROOT)))
                    .orElse(Pleating.Kind.KNIFE),
                pleats.present() ? Optional.of(pleats.node().asInt()) : Optional.empty(),
                depth,
                fullness.present() ? Optional.of(fullness.node().asDouble()) : Optional.empty(),
                length.get(),
                seams.get(),
                rectangle.panels(),
                head.grain(),
                head.cuts(),
                notches));
  }
}
