package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.figures.Comparison;
import ellwand.figures.Comparison.WidthTried;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Garments of our own in several widths, held against the table of cloth needed at another width
 * that is widely reprinted, here as on sewwithsarah.com: in each of its rows the area stays within
 * 0.89 and 1.10 of that at 36 in (computed). Where a garment leaves that band, what is named as the
 * cause is taken away, and with it the length must come back.
 */
class WidthTableTest {

  /** Steps of a search. */
  private static final long SHORT = 800;

  private static final long LONG = 3000;

  private static final int ROUNDS = 4;

  /** The table's band, which is computed to two figures from eighths of a yard. */
  private static final double LEAST = 0.885;

  private static final double MOST = 1.105;

  @TempDir private Path folder;

  /** A trapezium, cm: along the grain, across at its hem and at its top. */
  private record Part(String name, String cut, double length, double hem, double top) {

    private static final int TWO = 2;

    String yaml() {
      double step = (hem - top) / 2;
      return String.format(
          Locale.ROOT,
          "    %s: {cut: {main: %s}, outline: [[0, 0], [%.2f, %.2f], [%.2f, %.2f], [0, %.2f]]}%n",
          name,
          cut,
          length,
          step,
          length,
          step + top,
          hem);
    }

    private String twice() {
      return cut.startsWith("pair")
          ? "2 pairs"
          : cut.endsWith("pairs")
              ? TWO * Integer.parseInt(cut.split(" ")[0]) + " pairs"
              : Integer.toString(TWO * Integer.parseInt(cut));
    }

    /** With a seam along its middle, so that it is half as wide. */
    Stream<Part> narrowed() {
      return Stream.of(new Part(name, twice(), length, hem / 2, top / 2));
    }

    /** With a seam across its middle, so that it is half as long. */
    Stream<Part> shortened() {
      double middle = (hem + top) / 2;
      return Stream.of(
          new Part(name, cut, length / 2, hem, middle),
          new Part(name + " from " + (int) length, cut, length / 2, middle, top));
    }
  }

  /**
   * @param cloth how it lies and may be headed
   */
  private record Garment(String name, String cloth, List<Part> parts) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Garment> garments() {
    return List.of(
        new Garment(
            "skirt of six gores",
            "fold: open, direction: any way",
            List.of(
                new Part("gore", "6", 62, 27, 13),
                new Part("waistband", "2", 38, 8, 8),
                new Part("pocket", "pair", 24, 16, 16))),
        new Garment(
            "trousers",
            "fold: open, direction: one way",
            List.of(
                new Part("front", "pair", 98, 26, 29),
                new Part("back", "pair", 99, 28, 33),
                new Part("waistband", "2", 42, 9, 9),
                new Part("pocket bag", "2 pairs", 28, 16, 15))),
        new Garment(
            "shirt",
            "fold: lengthwise fold, direction: any way",
            List.of(
                new Part("front", "pair", 72, 30, 24),
                new Part("back", "pair", 70, 29, 24),
                new Part("yoke", "2", 14, 44, 40),
                new Part("sleeve", "pair", 52, 28, 42),
                new Part("cuff", "4", 24, 8, 8),
                new Part("collar", "4", 42, 7, 7))),
        new Garment(
            "jacket",
            "fold: lengthwise fold, direction: one way",
            List.of(
                new Part("front", "pair", 66, 27, 22),
                new Part("side", "pair", 56, 18, 13),
                new Part("back", "pair", 68, 24, 21),
                new Part("top sleeve", "pair", 62, 18, 25),
                new Part("under sleeve", "pair", 54, 14, 18),
                new Part("collar", "2", 44, 11, 11),
                new Part("flap", "8", 8, 17, 17),
                new Part("pocket", "4", 16, 16, 16))),
        new Garment(
            "cape",
            "fold: open, direction: any way",
            List.of(
                new Part("back", "1", 78, 88, 34),
                new Part("front", "pair", 76, 46, 20),
                new Part("hood", "pair", 38, 28, 24),
                new Part("facing", "pair", 70, 9, 9))),
        new Garment(
            "shift dress",
            "fold: open, direction: any way",
            List.of(
                new Part("front", "pair", 96, 30, 22),
                new Part("back", "pair", 95, 30, 22),
                new Part("sleeve", "pair", 30, 28, 36),
                new Part("facing", "4", 8, 28, 24),
                new Part("pocket", "4", 16, 15, 15))),
        new Garment(
            "leggings",
            "fold: open, direction: any way",
            List.of(
                new Part("leg", "2 pairs", 88, 24, 52),
                new Part("gusset", "8", 14, 10, 10),
                new Part("waistband", "4", 40, 9, 9))),
        new Garment(
            "bib apron",
            "fold: open, direction: any way",
            List.of(
                new Part("skirt front", "2", 46, 52, 40),
                new Part("skirt back", "4", 46, 30, 22),
                new Part("bib", "2", 24, 26, 22),
                new Part("tie", "4", 60, 7, 7),
                new Part("pocket", "4", 18, 16, 16))),
        new Garment(
            "waistcoat",
            "fold: lengthwise fold, direction: any way",
            List.of(
                new Part("front", "2 pairs", 54, 26, 18),
                new Part("back", "2 pairs", 50, 25, 20),
                new Part("welt", "4", 12, 5, 5),
                new Part("strap", "4", 26, 5, 5))),
        new Garment(
            "dressing gown",
            "fold: open, direction: any way",
            List.of(
                new Part("back", "1", 118, 78, 60),
                new Part("front", "pair", 116, 42, 28),
                new Part("sleeve", "pair", 46, 44, 50),
                new Part("belt", "2", 85, 10, 10),
                new Part("pocket", "2", 22, 20, 20))));
  }

  private Comparison compared(Garment garment, long steps) throws IOException {
    return Comparing.compared(
        folder,
        garment.parts().stream().map(Part::yaml).collect(Collectors.joining()),
        "ends: 1, " + garment.cloth() + ", shop-step: 1 mm",
        steps);
  }

  private static List<Double> shares(Comparison comparison) {
    List<WidthTried> each = comparison.bestOfEach();
    return each.stream().map(row -> row.areaMm2() / each.get(0).areaMm2()).toList();
  }

  private static boolean inBand(Comparison comparison) {
    return shares(comparison).stream().allMatch(s -> s >= LEAST && s <= MOST);
  }

  /** What a sentence names as the cause: a fold if another would do, otherwise pieces. */
  private static boolean namesCause(String reason) {
    return reason.contains(" would do") || reason.contains(" piece");
  }

  /** The garment without the named cause; its pieces together stay as large. */
  private static Garment mended(Garment garment, String reason) {
    if (reason.contains(" would do")) {
      return new Garment(
          garment.name(),
          garment
              .cloth()
              .replaceAll(
                  "fold: [^,]*",
                  "fold: " + reason.replaceAll(".*; laid (in a )?([a-z ]+) [0-9].*", "$2")),
          garment.parts());
    }
    List<Part> named =
        garment.parts().stream()
            .filter(p -> reason.matches(".*(piece|pieces|,) " + p.name() + "( (alone|lie)|,).*"))
            .toList();
    Function<Part, Stream<Part>> split =
        reason.contains("no two") ? Part::narrowed : Part::shortened;
    return new Garment(
        garment.name(),
        garment.cloth(),
        garment.parts().stream()
            .flatMap(p -> named.contains(p) ? split.apply(p) : Stream.of(p))
            .toList());
  }

  @ParameterizedTest
  @MethodSource("garments")
  void whatKeepsAWidthOutOfTheTablesBandIsNamedAndIsTheCause(Garment garment) throws IOException {
    // Where a short search does not do, a longer one must: so most garments take little time.
    if (!fault(garment, SHORT).isEmpty()) {
      assertEquals("", fault(garment, LONG));
    }
  }

  /** What is not as it should be, empty if all is. */
  private String fault(Garment garment, long steps) throws IOException {
    Garment now = garment;
    Comparison comparison = compared(now, steps);
    for (int round = 0; !inBand(comparison) && round < ROUNDS; round++) {
      List<String> causes =
          Comparing.reasons(comparison).stream().filter(WidthTableTest::namesCause).toList();
      if (causes.isEmpty()) {
        return garment + ": no cause is named, " + shares(comparison);
      }
      now = mended(now, causes.get(0));
      comparison = compared(now, steps);
    }
    return inBand(comparison) ? "" : now + " " + shares(comparison) + Comparing.reasons(comparison);
  }
}
