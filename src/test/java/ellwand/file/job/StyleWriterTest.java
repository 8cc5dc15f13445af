package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.source.Folder;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.job.Job;
import ellwand.job.Wear;
import ellwand.pattern.Body;
import ellwand.pattern.Cut;
import ellwand.pattern.Design;
import ellwand.pattern.Draft;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Match;
import ellwand.pattern.Notch;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.Sizes;
import ellwand.units.Unit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A design that is written and read again is the same. */
class StyleWriterTest {

  private static final double SAME_MM = 1e-6;

  @TestFactory
  Stream<DynamicTest> everySampleComesBackAsItWas() throws IOException {
    List<java.nio.file.Path> samples;
    try (Stream<java.nio.file.Path> all = Files.walk(java.nio.file.Path.of("sample-markers"))) {
      samples = all.filter(p -> p.endsWith("job.yaml")).sorted().toList();
    }
    assertTrue(samples.size() > 5, samples::toString);
    java.nio.file.Path resources = java.nio.file.Path.of("src/test/resources/ellwand/file");
    samples =
        Stream.concat(
                samples.stream(),
                Stream.of("apron.yaml", "waistcoat.yaml", "darts.yaml", "skirt.yaml")
                    .map(resources::resolve))
            .toList();
    return samples.stream()
        .map(
            path ->
                DynamicTest.dynamicTest(
                    path.toString(),
                    () -> {
                      Job job = JobReader.read(path);
                      assertComesBack(job.style().design(), job.wear());
                    }));
  }

  @Test
  void dartsPleatsAndSpreadsComeBackAsTheyWere() {
    java.nio.file.Path file = java.nio.file.Path.of("src/test/resources/ellwand/file/darts.yaml");
    Job job = JobReader.read(file);
    assertComesBack(job.style().design(), job.wear());
  }

  @Property(tries = 60)
  void anyDesignComesBackAsItWas(@ForAll long seed) {
    assertComesBack(AnyDesign.of(new Random(seed)), Set.of(Wear.CHILDREN));
  }

  private static void assertComesBack(Design design, Set<Wear> wear) {
    byte[] written = StyleWriter.bytes(design, wear);
    String text = new String(written, StandardCharsets.UTF_8);
    Job job =
        JobReader.read(
            "job.yaml", Folder.EMPTY.with("job.yaml", job(design)).with("style.yaml", written));
    Design read = job.style().design();
    assertEquals(wear, job.wear());
    assertEquals(design.name(), read.name());
    assertEquals(design.sizes().names(), read.sizes().names());
    Body body = read.sizes().body();
    assertEquals(design.sizes().body().mmBySize().keySet(), body.mmBySize().keySet(), text);
    design
        .sizes()
        .body()
        .mmBySize()
        .forEach(
            (size, of) ->
                of.forEach(
                    (measure, mm) -> assertEquals(mm, body.mm(measure, size), SAME_MM, text)));
    assertEquals(design.seams().size(), read.seams().size(), text);
    for (int i = 0; i < design.seams().size(); i++) {
      assertEquals(design.seams().get(i).one(), read.seams().get(i).one(), text);
      assertEquals(design.seams().get(i).other(), read.seams().get(i).other(), text);
      assertEquals(design.seams().get(i).easeMm(), read.seams().get(i).easeMm(), SAME_MM, text);
    }
    assertEquals(words(design.matches()), words(read.matches()), text);
    for (String size : design.sizes().names()) {
      assertSame(pieces(design, size), pieces(read, size), size + "\n" + text);
    }
    assertEquals(text, new String(StyleWriter.bytes(read, wear), StandardCharsets.UTF_8));
  }

  private static byte[] job(Design design) {
    Set<String> cloths = new LinkedHashSet<>();
    String size = design.sizes().base();
    pieces(design, size).forEach(p -> p.cuts().forEach(c -> cloths.add(c.cloth())));
    String text =
        "ellwand: 1\nunit: m\nstyle: {file: style.yaml}\n"
            + (design.sizes().names().size() > 1 || !design.sizes().body().mmBySize().isEmpty()
                ? "sizes: {file: style.yaml}\n"
                : "")
            + cloths.stream()
                .map(c -> "  " + c + ": {width: 2}\n")
                .collect(Collectors.joining("", "cloths:\n", ""));
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<Piece> pieces(Design design, String size) {
    return design.in(size).all().stream().sorted(Comparator.comparing(Piece::name)).toList();
  }

  /** Where a match was written is not the match. */
  private static List<Match> words(List<Match> matches) {
    return matches.stream()
        .map(m -> new Match(m.piece(), m.mark(), m.otherPiece(), m.otherMark(), m.bars()))
        .toList();
  }

  private static void assertSame(List<Piece> were, List<Piece> are, String text) {
    assertEquals(were.size(), are.size(), text);
    for (int i = 0; i < were.size(); i++) {
      Piece was = were.get(i);
      Piece is = are.get(i);
      assertEquals(was.name(), is.name(), text);
      assertEquals(was.fold(), is.fold(), text);
      assertEquals(was.cuts(), is.cuts(), text);
      for (Cut cut : was.cuts()) {
        assertEquals(was.inCloth(cut.cloth()).grain(), is.inCloth(cut.cloth()).grain(), text);
        assertEquals(widths(was.inCloth(cut.cloth())), widths(is.inCloth(cut.cloth())), text);
      }
      assertEquals(was.asks().value(), is.asks().value(), text);
      assertEquals(was.asks().place().isPresent(), is.asks().place().isPresent(), text);
      assertEquals(was.asks().marks().size(), is.asks().marks().size(), text);
      for (int k = 0; k < was.asks().marks().size(); k++) {
        assertEquals(was.asks().marks().get(k).words(), is.asks().marks().get(k).words(), text);
        assertNear(was.asks().marks().get(k).on(was), is.asks().marks().get(k).on(is), text);
      }
      assertEquals(was.edges().size(), is.edges().size(), text);
      for (int k = 0; k < was.edges().size(); k++) {
        Edge edge = was.edges().get(k);
        Edge other = is.edges().get(k);
        assertEquals(edge.name(), other.name(), text);
        assertEquals(edge.turnedBack(), other.turnedBack(), text);
        assertSame(edge.line(), other.line(), text);
      }
      assertEquals(was.notches().size(), is.notches().size(), text);
      for (int k = 0; k < was.notches().size(); k++) {
        assertEquals(was.notches().get(k).edge(), is.notches().get(k).edge(), text);
        assertEquals(was.notches().get(k).strokes(), is.notches().get(k).strokes(), text);
        assertEquals(was.notches().get(k).atMm(), is.notches().get(k).atMm(), 10 * SAME_MM, text);
        assertEquals(was.notches().get(k).depthMm(), is.notches().get(k).depthMm(), SAME_MM, text);
      }
      assertEquals(was.innerLines().size(), is.innerLines().size(), text);
      for (int k = 0; k < was.innerLines().size(); k++) {
        assertEquals(was.innerLines().get(k).name(), is.innerLines().get(k).name(), text);
        assertSame(was.innerLines().get(k).line(), is.innerLines().get(k).line(), text);
      }
    }
  }

  /** Allowances as shown to the thousandth of a mm. */
  private static List<String> widths(Piece inCloth) {
    return inCloth.edges().stream().map(e -> "%.3f".formatted(e.allowanceMm())).toList();
  }

  private static void assertSame(Path was, Path is, String text) {
    assertEquals(was.segments().size(), is.segments().size(), text);
    for (double share = 0; share <= 1; share += 0.125) {
      assertNear(
          was.tangent(share * was.length()).at(), is.tangent(share * is.length()).at(), text);
    }
  }

  private static void assertNear(Point was, Point is, String text) {
    assertEquals(0, was.distance(is), 10 * SAME_MM, text);
  }

  @Test
  void isWrittenAsAPersonWould() {
    Draft pocket =
        new Draft(
            "pocket",
            List.of(node("bottom", 0, 0), node(150, 0), node(150, 120), node("corner", 0, 120)),
            List.of(new Draft.NamedEdge("mouth", "corner", "bottom", OptionalDouble.of(25), true)),
            10,
            Optional.empty(),
            Grain.EITHER,
            List.of(new Notch("mouth", 60, 1, Notch.USUAL_DEPTH_MM)),
            List.of(),
            List.of(new Cut("main", 2, Cut.How.WHOLE)));
    Design design =
        new Design(
            "tool roll",
            Unit.CM,
            Sizes.only("one size"),
            List.of(new Outlined(pocket)),
            List.of(),
            List.of(),
            List.of());
    assertEquals(
        """
        ellwand: 1
        unit: cm
        style:
          name: tool roll
          size: one size
          pieces:
            pocket:
              cut: {main: 2}
              grain: either
              allowance: 1
              outline:
                - {point: bottom, at: [0, 0]}
                - [15, 0]
                - [15, 12]
                - {point: corner, at: [0, 12]}
              edges:
                mouth: {from: corner, to: bottom, allowance: 2.5, turned-back: true}
              notches:
                - {edge: mouth, at: 6}
        """,
        new String(StyleWriter.bytes(design, Set.of()), StandardCharsets.UTF_8));
  }

  private static Draft.Node node(double x, double y) {
    return new Draft.Node(Optional.empty(), new Point(x, y), Optional.empty());
  }

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(Optional.of(name), new Point(x, y), Optional.empty());
  }
}
