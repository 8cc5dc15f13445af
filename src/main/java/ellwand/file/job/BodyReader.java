package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.problem.InputException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code body:}, the measures of each size, and shifts that are shares of their growth. */
final class BodyReader {

  private static final Pattern SHARE =
      Pattern.compile("(-?)(?:(\\d+(?:[.,]\\d+)?)|(\\d+)/(\\d+))\\s+(?:of\\s+)?(\\D.*)");

  private final List<String> sizes;
  private final String base;
  private final Map<String, Map<String, Double>> measures = new LinkedHashMap<>();

  /** Reads the table; what is wrong with it is reported. */
  BodyReader(Spot body, List<String> sizes, String base) {
    this.sizes = sizes;
    this.base = base;
    body.entries()
        .forEach(
            (size, table) -> {
              table.holds(
                  sizes.contains(size),
                  "there is no size " + Names.shown(size),
                  "Use " + String.join(", ", sizes));
              table
                  .entries()
                  .forEach(
                      (measure, spot) ->
                          spot.lengthAbove0()
                              .ifPresent(
                                  mm ->
                                      measures
                                          .computeIfAbsent(measure, m -> new LinkedHashMap<>())
                                          .put(size, mm)));
            });
  }

  /** By size, a share of how much more a measure is than in the base size, mm; 0 if not given. */
  Map<String, Double> growth(Spot spot) {
    Map<String, Double> growth = new LinkedHashMap<>();
    sizes.forEach(size -> growth.put(size, 0.0));
    spot.text()
        .filter(t -> !t.equals("0"))
        .ifPresent(text -> spot.attempt(() -> grow(growth, text)));
    return growth;
  }

  private Map<String, Double> grow(Map<String, Double> growth, String text) {
    Matcher matcher = SHARE.matcher(text.strip());
    if (!matcher.matches()) {
      throw InputException.of(
          "'" + Names.shown(text) + "' is not a share of a body measure",
          "Write for example 1/4 chest");
    }
    double share =
        matcher.group(2) != null
            ? Double.parseDouble(matcher.group(2).replace(',', '.'))
            : Double.parseDouble(matcher.group(3)) / Double.parseDouble(matcher.group(4));
    if (Double.isNaN(share) || "0".equals(matcher.group(4))) {
      throw InputException.of(
          "'" + Names.shown(text) + "' divides by 0", "Write for example 1/4 chest");
    }
    if (Double.isInfinite(share)) {
      throw InputException.of(
          "'" + Names.shown(text) + "' is more than any body grows", "Write for example 1/4 chest");
    }
    Map<String, Double> measure = measures.getOrDefault(matcher.group(5), Map.of());
    List<String> missing = sizes.stream().filter(s -> !measure.containsKey(s)).toList();
    if (!missing.isEmpty()) {
      throw InputException.of(
          "no "
              + Names.shown(matcher.group(5))
              + " is given for size "
              + String.join(", ", missing),
          "Add it to body:"
              + (measures.isEmpty()
                  ? ""
                  : ", or use " + String.join(", ", new TreeSet<>(measures.keySet()))));
    }
    double sign = matcher.group(1).isEmpty() ? 1 : -1;
    growth.replaceAll((size, none) -> sign * share * (measure.get(size) - measure.get(base)));
    return growth;
  }
}
