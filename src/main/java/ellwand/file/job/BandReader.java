package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Allowance;
import ellwand.pattern.Band;
import ellwand.pattern.BandPlan;
import ellwand.pattern.Extent;
import ellwand.pattern.Notch;
import java.util.List;
import java.util.Optional;

/** Reads one waistband, cuff, casing or strap. */
final class BandReader {

  private BandReader() {}

  /**
   * The band, or nothing if it is wrong.
   *
   * @param sizes that there are
   */
  static Optional<BandPlan> read(String name, Spot spot, PieceHead head, List<String> sizes) {
    int before = spot.problems().size();
    RectangleHead rectangle = new RectangleHead(spot, head, "band");
    rectangle.check(List.of(Band.JOINED, Band.FAR, Band.END));
    Optional<Allowance> joined = rectangle.allowance(Band.JOINED);
    Optional<Allowance> far = rectangle.allowance(Band.FAR);
    Optional<Allowance> ends = rectangle.allowance(Band.END);
    Spot band = spot.get("band");
    Optional<Extent> from = ExtentReader.read(band.get("from"), sizes);
    Optional<Extent> height = ExtentReader.read(band.get("height"), sizes);
    Spot said = band.get("share");
    Optional<Double> share =
        said.present()
            ? said.text().flatMap(text -> said.attempt(() -> Share.ofLength(text)))
            : Optional.of(1.0);
    double overlap = band.get("overlap").lengthFrom0().orElse(0.0);
    List<Notch> notches = PieceReader.notches(spot.get("notches"));
    if (spot.problems().size() > before
        || joined.isEmpty()
        || far.isEmpty()
        || ends.isEmpty()
        || from.isEmpty()
        || height.isEmpty()) {
      return Optional.empty();
    }
    return spot.attempt(
        () ->
            new BandPlan(
                name,
                from.get(),
                share.orElseThrow(),
                overlap,
                height.get(),
                band.get("doubled").isTrue(),
                new Band.Seams(joined.get(), far.get(), ends.get()),
                head.grain(),
                head.cuts(),
                notches));
  }
}
