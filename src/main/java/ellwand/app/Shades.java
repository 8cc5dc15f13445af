package ellwand.app;

import ellwand.cloth.Stock;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Sizes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Garments whose pieces of one cloth come from several bolts or remnants of it. */
final class Shades {

  private Shades() {}

  private record SewnGarment(String cloth, String size, int number) {}

  /** Which piece comes from which, garment by garment, and what to see to. */
  static List<String> cautions(Job job, List<Marker> markers) {
    Map<SewnGarment, Map<String, Map<String, Integer>>> sources =
        new TreeMap<>(
            Comparator.comparing(SewnGarment::cloth)
                .thenComparing(SewnGarment::number)
                .thenComparing(SewnGarment::size));
    for (Marker marker : markers) {
      // Where whole garments come from one bolt each marker counts them from 1.
      boolean mixed = job.severalBolts().contains(marker.lay().cloth().name());
      for (Wanted w : mixed ? marker.lay().wanted() : List.<Wanted>of()) {
        sources
            .computeIfAbsent(
                new SewnGarment(marker.lay().cloth().name(), w.size(), w.garment()),
                g -> new LinkedHashMap<>())
            .computeIfAbsent(source(marker), s -> new LinkedHashMap<>())
            .merge(w.cut().name(), 1, Integer::sum);
      }
    }
    List<String> cautions = new ArrayList<>();
    sources.forEach(
        (garment, pieces) -> {
          if (pieces.size() > 1) {
            cautions.add(
                "Garment "
                    + garment.number
                    + " ("
                    + Sizes.words(garment.size)
                    + ") comes from several pieces of "
                    + garment.cloth
                    + ": "
                    + pieces.entrySet().stream()
                        .map(e -> list(e.getValue()) + " from " + e.getKey())
                        .collect(Collectors.joining("; "))
                    + ".");
          }
        });
    if (!cautions.isEmpty()) {
      // Common practice in cutting rooms.
      cautions.add(
          "Shades differ from bolt to bolt: hold the cloths beside each other in daylight before"
              + " you cut, and mark every piece with the bolt it comes from.");
    }
    return cautions;
  }

  private static String source(Marker marker) {
    return marker.lay().cloth().stock().map(Stock::name).orElse("the cloth to buy");
  }

  private static String list(Map<String, Integer> pieces) {
    return pieces.entrySet().stream()
        .map(e -> e.getValue() == 1 ? e.getKey() : e.getValue() + " x " + e.getKey())
        .collect(Collectors.joining(", "));
  }
}
