package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.pattern.Extent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads lengths of computed pieces: {@code 30}, {@code {"98": 30, ..}}, {@code [front.waist]}. */
final class ExtentReader {

  private ExtentReader() {}

  /**
   * The length, or nothing if it is wrong or missing in a size.
   *
   * @param sizes that there are
   */
  static Optional<Extent> read(Spot spot, List<String> sizes) {
    if (spot.node().isArray()) {
      return Optional.of(
          new Extent.OfEdges(spot.items().stream().flatMap(i -> i.text().stream()).toList()));
    }
    return spot.node().isObject()
        ? bySize(spot, sizes)
        : spot.lengthAbove0().map(Extent.Given::new);
  }

  private static Optional<Extent> bySize(Spot spot, List<String> sizes) {
    Map<String, Double> bySize = new LinkedHashMap<>();
    for (String size : sizes) {
      Spot own = spot.get(size);
      spot.holds(own.present(), "no length is given for size " + size, "Give one for each size");
      own.lengthAbove0().ifPresent(mm -> bySize.put(size, mm));
    }
    return bySize.size() == sizes.size()
        ? Optional.of(new Extent.BySize(bySize))
        : Optional.empty();
  }
}
