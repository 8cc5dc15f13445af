package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.pattern.Allowance;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads allowances: {@code 2 cm}, or {@code {main: 2 cm, lining: 1.2 cm}}. */
final class AllowanceReader {

  private AllowanceReader() {}

  /**
   * The allowance, or nothing if it is wrong.
   *
   * @param cloths that it may be said for
   */
  static Optional<Allowance> read(Spot spot, Collection<String> cloths) {
    if (!spot.node().isObject()) {
      return spot.lengthFrom0().map(Allowance::of);
    }
    int before = spot.problems().size();
    Map<String, Double> byCloth = new LinkedHashMap<>();
    spot.entries()
        .forEach(
            (cloth, length) -> {
              if (length.holds(
                  cloths.contains(cloth),
                  "no cloth is called " + Names.shown(cloth),
                  Spelling.nearest(cloth, cloths)
                      .map(c -> "Perhaps " + c + " is meant")
                      .orElse("Use " + String.join(", ", cloths)))) {
                length.lengthFrom0().ifPresent(mm -> byCloth.put(cloth, mm));
              }
            });
    return spot.problems().size() > before
        ? Optional.empty()
        : Optional.of(Allowance.byCloth(byCloth));
  }
}
