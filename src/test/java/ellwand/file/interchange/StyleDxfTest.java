package ellwand.file.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Converted;
import ellwand.file.drawn.Asked;
import ellwand.file.job.AnyDesign;
import ellwand.file.job.StyleFile;
import ellwand.file.job.StyleWriter;
import ellwand.file.source.Folder;
import ellwand.geometry.Offset;
import ellwand.geometry.Point;
import ellwand.pattern.Cut;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Patterns that are written as DXF and read again are the same. */
class StyleDxfTest {

  private static final double SAME_MM = 0.01;

  /** A notch lies on the cutting line and is found by its foot on the sewing line, mm. */
  private static final double NOTCH_MM = 0.05;

  private static StyleFile sample(String name) {
    return StyleFile.read("sample-markers/" + name + "/job.yaml", Folder.DISK);
  }

  private static List<Point> ring(Piece piece) {
    List<Point> ring = new ArrayList<>();
    piece.edges().forEach(e -> ring.addAll(e.line().flattened(1e-3)));
    return ring;
  }

  /** How far the one line strays from the other, mm. */
  private static double strays(List<Point> ring, List<Point> other) {
    double most = 0;
    for (int i = 0; i < ring.size(); i += Math.max(1, ring.size() / 150)) {
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < other.size(); k++) {
        Point next = other.get((k + 1) % other.size());
        least = Math.min(least, Offset.distance(ring.get(i), other.get(k), next));
      }
      most = Math.max(most, least);
    }
    return most;
  }

  private static void assertComesBack(StyleFile file) {
    String base = file.design().sizes().base();
    Converted read = Interchange.read(StyleDxf.bytes(file));
    List<Piece> pieces = Interchange.pieces(read);
    List<Piece> expected = file.style().pieces(base);
    assertEquals(
        expected.stream().map(Piece::name).sorted().toList(),
        pieces.stream().map(Piece::name).sorted().toList());
    for (Piece piece : expected) {
      Piece back =
          pieces.stream().filter(p -> p.name().equals(piece.name())).findFirst().orElseThrow();
      assertTrue(strays(ring(piece), ring(back)) < SAME_MM, piece.name());
      assertTrue(strays(ring(back), ring(piece)) < SAME_MM, piece.name());
      assertEquals(piece.cuts().stream().map(Cut::toString).toList(), cuts(back), piece.name());
      assertEquals(piece.grain().word(), back.grain().word(), piece.name());
      assertEquals(piece.fold().isPresent(), back.fold().isPresent(), piece.name());
      assertEquals(piece.innerLines().size(), back.innerLines().size(), piece.name());
      assertNotches(piece, back);
    }
  }

  private static List<String> cuts(Piece piece) {
    return piece.cuts().stream().map(Cut::toString).toList();
  }

  private static void assertNotches(Piece piece, Piece back) {
    assertEquals(piece.notches().size(), back.notches().size(), piece.name());
    for (Notch notch : piece.notches()) {
      Point at = piece.edge(notch.edge()).line().tangent(notch.atMm()).at();
      Notch nearest =
          back.notches().stream()
              .min(
                  Comparator.comparingDouble(
                      n -> back.edge(n.edge()).line().tangent(n.atMm()).at().distance(at)))
              .orElseThrow();
      Point found = back.edge(nearest.edge()).line().tangent(nearest.atMm()).at();
      assertTrue(found.distance(at) < NOTCH_MM, piece.name() + " " + found.distance(at));
      assertEquals(notch.strokes(), nearest.strokes(), piece.name());
      assertEquals(notch.depthMm(), nearest.depthMm(), 1e-4, piece.name());
    }
  }

  @Test
  void samplesComeBack() {
    assertComesBack(sample("weir-jacket"));
    assertComesBack(sample("fell-bodywarmer"));
    assertComesBack(sample("mill-trousers"));
  }

  @Property(tries = 15)
  void anyStyleComesBack(@ForAll long seed) {
    byte[] written = StyleWriter.bytes(AnyDesign.of(new Random(seed)), Set.of());
    assertComesBack(StyleFile.read("a.yaml", Folder.EMPTY.with("a.yaml", written)));
  }

  @Test
  void sizesLieSideBySideAndOneIsRead() {
    StyleFile tunic = sample("beck-tunic");
    byte[] dxf = StyleDxf.bytes(tunic);
    Converted read = Interchange.read(dxf);
    assertTrue(
        read.said().stream().anyMatch(s -> s.contains("Use --layers for another")),
        read.said()::toString);
    Converted other =
        Interchange.read(
            dxf, new Asked(OptionalDouble.empty(), OptionalDouble.empty(), List.of("140")));
    Piece expected = tunic.style().pieces("140").get(0);
    Piece found =
        Interchange.pieces(other).stream()
            .filter(p -> p.name().equals(expected.name()))
            .findFirst()
            .orElseThrow();
    assertTrue(strays(ring(expected), ring(found)) < SAME_MM);
  }

  /** The layers as documented: one block a piece, 7-bit ASCII, millimetres or inches. */
  @Test
  void itIsWrittenByTheLayers() {
    String dxf = new String(StyleDxf.bytes(sample("weir-jacket")), StandardCharsets.US_ASCII);
    List<String> lines = dxf.lines().map(String::strip).toList();
    assertEquals(6, lines.stream().filter("BLOCK"::equals).count());
    assertTrue(lines.contains("Units: METRIC"));
    assertTrue(lines.contains("Piece Name: sleeve"));
    assertTrue(lines.contains("Quantity: 1,1"));
    assertTrue(dxf.chars().allMatch(c -> c < 128));
    String inches =
        new String(StyleDxf.bytes(sample("fell-bodywarmer")), StandardCharsets.US_ASCII);
    assertTrue(inches.contains("Units: ENGLISH"));
  }

  @Test
  void lettersThatAsciiLacksAreTold() {
    String yaml =
        "ellwand: 1\nunit: cm\nstyle:\n  name: Überwurf\n  pieces:\n    Ärmel: {cut: {Köper: pair},"
            + " allowance: 1, outline: [[0, 0], [9, 0], [9, 20], [0, 20]]}\n";
    StyleFile file =
        StyleFile.read(
            "a.yaml", Folder.EMPTY.with("a.yaml", yaml.getBytes(StandardCharsets.UTF_8)));
    assertEquals(2, StyleDxf.changedNames(file).size());
    assertEquals("Armel", Interchange.pieces(Interchange.read(StyleDxf.bytes(file))).get(0).name());
  }
}
