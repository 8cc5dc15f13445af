package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Extent;
import ellwand.pattern.Fullness;
import ellwand.pattern.Gathered;
import ellwand.pattern.GatheredPlan;
import ellwand.pattern.Notch;
import java.util.List;
import java.util.Optional;

/** Reads one rectangle that is computed from what it is gathered onto. */
final class GatheredReader {

  private GatheredReader() {}

  /**
   * The rectangle, or nothing if it is wrong.
   *
   * @param sizes that there are
   */
  static Optional<GatheredPlan> read(String name, Spot spot, PieceHead head, List<String> sizes) {
    int before = spot.problems().size();
    RectangleHead rectangle = new RectangleHead(spot, head, "gathered");
    Optional<Gathered.Seams> seams = rectangle.seams();
    Spot gathered = spot.get("gathered");
    Optional<Extent> joined = ExtentReader.read(gathered.get("from"), sizes);
    Optional<Extent> length = ExtentReader.read(gathered.get("length"), sizes);
    Spot said = gathered.get("fullness");
    Optional<Fullness> fullness = said.attempt(() -> Fullness.parse(said.node().asText()));
    List<Notch> notches = PieceReader.notches(spot.get("notches"));
    if (spot.problems().size() > before
        || seams.isEmpty()
        || joined.isEmpty()
        || length.isEmpty()
        || fullness.isEmpty()) {
      return Optional.empty();
    }
    return spot.attempt(
        () ->
            new GatheredPlan(
                name,
                joined.get(),
                fullness.get(),
                length.get(),
                seams.get(),
                rectangle.panels(),
                head.grain(),
                head.cuts(),
                notches));
  }
}
