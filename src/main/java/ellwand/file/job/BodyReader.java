package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Body;
import ellwand.pattern.Sizes;
import ellwand.problem.InputException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code body:}, the measures of each size, and shifts that are shares of their growth. */
final class BodyReader {

  private static final Pattern SHARE =
      Pattern.compile("(-?)(?:(\\d+(?:[.,]\\d+)?)|(\\d+)/(\\d+))\\s+(?:of\\s+)?(\\D.*)");

  private final List<String> sizes;
  private final String base;
  private final Body body;

  /** Reads the table; what is wrong with it is reported. */
  BodyReader(Spot table, List<String> sizes, String base) {
    this.sizes = sizes;
    this.base = base;
    Map<String, Map<String, Double>> measures = new LinkedHashMap<>();
    table
        .entries()
        .forEach(
            (size, row) -> {
              if (row.holds(
                  sizes.contains(size),
                  "there is no size " + Names.shown(size),
                  remedy(size, row))) {
                Map<String, Double> ofSize = new LinkedHashMap<>();
                row.entries()
                    .forEach(
                        (measure, spot) ->
                            spot.lengthAbove0().ifPresent(mm -> ofSize.put(measure, mm)));
                measures.put(size, ofSize);
              }
            });
    this.body = new Body(measures);
  }

  private String remedy(String size, Spot row) {
    Set<String> columns = row.entries().keySet();
    return !columns.isEmpty() && sizes.containsAll(columns)
        ? "Put the size first: '%s': {%s: ..}".formatted(sizes.get(0), Names.shown(size))
        : "Use " + String.join(", ", sizes);
  }

  /** The table as it was read. */
  Body body() {
    return body;
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
    String measure = matcher.group(5);
    List<String> missing = body.without(measure, sizes);
    if (!missing.isEmpty()) {
      throw InputException.of(
          "no " + Names.shown(measure) + " is given for " + Sizes.words(missing),
          "Add it to body:"
              + (body.measures().isEmpty()
                  ? ""
                  : ", or use " + String.join(", ", body.measures())));
    }
    double sign = matcher.group(1).isEmpty() ? 1 : -1;
    growth.replaceAll(
        (size, none) -> sign * share * (body.mm(measure, size) - body.mm(measure, base)));
    return growth;
  }
}
