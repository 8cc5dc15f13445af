package ellwand.file.job;

import ellwand.file.source.Names;
import ellwand.file.source.Spot;
import ellwand.pattern.Extent;
import ellwand.pattern.Style;
import ellwand.pattern.Trim;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code trims:}, what is bought but not cut from cloth. */
final class TrimsReader {

  private static final Pattern FOR_SEVERAL =
      Pattern.compile("(\\d{1,4})\\s+for\\s+([1-9]\\d{0,3})\\s+garments?");

  /** Sold by so much unless said, mm: any length. */
  private static final double ANY_STEP_MM = 1;

  private final Style style;

  private TrimsReader(Style style) {
    this.style = style;
  }

  /**
   * The trims that are right; problems of the others are reported.
   *
   * @param style whose edges they may go along
   */
  static List<Trim> read(Spot trims, Style style) {
    TrimsReader reader = new TrimsReader(style);
    List<Trim> read = new ArrayList<>();
    trims
        .entries()
        .forEach(
            (name, spot) -> {
              Names.check(spot, name);
              reader.trim(name, spot).ifPresent(read::add);
            });
    return read;
  }

  private Optional<Trim> trim(String name, Spot spot) {
    int before = spot.problems().size();
    List<String> sizes = sizes(spot.get("sizes"));
    boolean length = spot.get("length").present();
    if (!spot.holds(
        length != spot.get("count").present(),
        length ? "it is counted and measured" : "it is not said how much of it a garment takes",
        "Give either length: or count:")) {
      return Optional.empty();
    }
    checkKeys(spot, length);
    List<String> all = sizes.isEmpty() ? style.sizes() : sizes;
    Optional<? extends Trim.Need> need = length ? lengths(spot, all) : pieces(spot, all);
    Spot priced = spot.get("price");
    Optional<Trim.Price> price =
        priced
            .text()
            .flatMap(
                text ->
                    priced.attempt(
                        () -> length ? TrimPrice.ofLength(text) : TrimPrice.ofPieces(text)));
    Optional<Double> width = spot.get("width").lengthAbove0();
    if (spot.problems().size() > before || need.isEmpty()) {
      return Optional.empty();
    }
    Trim trim = new Trim(name, need.get(), sizes, width, price.orElse(Trim.Price.UNKNOWN));
    return measured(trim, spot, length ? "length" : "each");
  }

  private static void checkKeys(Spot spot, boolean length) {
    for (String key : length ? List.of("each") : List.of("share", "plus", "shop-step")) {
      spot.get(key)
          .holds(
              !spot.get(key).present(),
              "what is " + (length ? "measured" : "counted") + " has no " + key + ":",
              "Take it out, or give " + (length ? "count:" : "length:"));
    }
  }

  private List<String> sizes(Spot spot) {
    List<String> sizes = new ArrayList<>();
    for (Spot size : spot.items()) {
      String name = size.node().asText();
      if (size.holds(
          style.sizes().contains(name),
          "there is no size " + Names.shown(name),
          "Use " + String.join(", ", style.sizes()))) {
        sizes.add(name);
      }
    }
    return sizes;
  }

  private Optional<Trim.Lengths> lengths(Spot spot, List<String> sizes) {
    Optional<Extent> of = ExtentReader.read(spot.get("length"), sizes);
    Spot said = spot.get("share");
    Optional<Double> share =
        said.present()
            ? said.text().flatMap(text -> said.attempt(() -> Share.ofLength(text)))
            : Optional.of(1.0);
    double plus = spot.get("plus").lengthFrom0().orElse(0.0);
    double step = spot.get("shop-step").lengthAbove0().orElse(ANY_STEP_MM);
    return of.isEmpty() || share.isEmpty()
        ? Optional.empty()
        : Optional.of(new Trim.Lengths(of.get(), share.get(), plus, step));
  }

  private static Optional<Trim.Pieces> pieces(Spot spot, List<String> sizes) {
    Spot count = spot.get("count");
    Spot each = spot.get("each");
    Optional<Extent> length =
        each.present() ? ExtentReader.read(each, sizes).map(TrimsReader::once) : Optional.empty();
    if (!count.node().isObject()) {
      return count.attempt(() -> counted(count.node().asText(), sizes, length));
    }
    Map<String, Integer> bySize = new LinkedHashMap<>();
    for (String size : sizes) {
      Spot own = count.get(size);
      count.holds(own.present(), "no number is given for size " + size, "Give one for each size");
      bySize.put(size, own.present() ? own.node().asInt() : 0);
    }
    count
        .entries()
        .forEach(
            (size, number) ->
                number.holds(
                    sizes.contains(size),
                    "no garment of size " + Names.shown(size) + " takes it",
                    "Use " + String.join(", ", sizes)));
    return count.attempt(() -> new Trim.Pieces(bySize, 1, length));
  }

  /** A zip is as long as the edge that it is sewn to, however often that is cut. */
  private static Extent once(Extent each) {
    return each instanceof Extent.OfEdges of
        ? new Extent.OfEdges(
            of.edges().stream().map(e -> e.matches("\\d+ x .*") ? e : "1 x " + e).toList())
        : each;
  }

  /** {@code 4}, or {@code 1 for 6 garments}. */
  private static Trim.Pieces counted(String text, List<String> sizes, Optional<Extent> each) {
    Matcher matcher = FOR_SEVERAL.matcher(text.strip());
    boolean several = matcher.matches();
    if (!several && !text.strip().matches("\\d{1,4}")) {
      throw InputException.of(
          "'" + Names.shown(text) + "' is not a number of pieces",
          "Write for example 4, or 1 for 6 garments");
    }
    int count = Integer.parseInt(several ? matcher.group(1) : text.strip());
    Map<String, Integer> bySize = new LinkedHashMap<>();
    sizes.forEach(size -> bySize.put(size, count));
    return new Trim.Pieces(bySize, several ? Integer.parseInt(matcher.group(2)) : 1, each);
  }

  /** The trim, if its edges can be measured in every size. */
  private Optional<Trim> measured(Trim trim, Spot spot, String along) {
    Spot measured = spot.get(along).present() ? spot.get(along) : spot;
    return measured.attempt(
        () -> {
          style.sizes().forEach(size -> style.amount(trim, size));
          return trim;
        });
  }
}
