package ellwand.file.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Converted;
import ellwand.file.job.StyleFile;
import ellwand.file.source.Folder;
import ellwand.file.svg.Broken;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** DXF files of other programs, written by hand, and such as are broken or mean harm. */
class DxfReaderTest {

  private static final Path BLOCKS =
      Path.of("src/test/resources/ellwand/file/drawings/blocks-in-inches.dxf");

  private static final byte[] TROUSERS =
      StyleDxf.bytes(
          StyleFile.read("sample-markers/mill-trousers/job.yaml", Folder.DISK), List.of());

  private static Box box(Piece piece) {
    return Box.around(
        piece.edges().stream().flatMap(e -> e.line().flattened(0.01).stream()).toList());
  }

  private static Piece piece(Converted read, String name) {
    return Interchange.pieces(read).stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(Interchange.pieces(read).toString()));
  }

  @Test
  void aGeneralDrawingIsReadByItsLayersAndBlocks() throws IOException {
    Converted read = Interchange.read(Files.readAllBytes(BLOCKS));
    List<Piece> pieces = Interchange.pieces(read);
    assertEquals(3, pieces.size(), pieces::toString);
    Piece side = piece(read, "SIDE PANEL");
    assertEquals("pair", side.cutFrom("main").orElseThrow().toString());
    // The grain line runs along y, so that its 8 in across and 6 + 4 in along lie the other way.
    assertEquals(254, box(side).length(), 0.3);
    assertEquals(203.2, box(side).width(), 0.3);
    // The arc is a half circle of 4 in, [geometry].
    Edge arc =
        side.edges().stream().max(Comparator.comparingDouble(e -> e.line().length())).orElseThrow();
    assertEquals(Math.PI * 101.6, arc.line().length(), 0.3);
    // A tab is 3 x 2 in with a half circle of 1 in at one end; the other is doubled and turned.
    assertEquals(4 * 25.4, box(piece(read, "TAB 2")).length(), 1e-3);
    assertEquals(8 * 25.4, box(piece(read, "TAB")).width(), 1e-3);
    assertTrue(read.said().contains("1 HATCH left out."), read.said()::toString);
    assertTrue(read.said().contains("1 DIMENSION left out."), read.said()::toString);
  }

  @Test
  void aSplineLiesWhereItsCurveDoes() throws IOException {
    Piece side = piece(Interchange.read(Files.readAllBytes(BLOCKS)), "SIDE PANEL");
    // A Bezier curve from (0,6) by (1,4) and (1,2) to (0,0): half way at (0.75, 3).
    Point half = new Point(3 * 25.4, 8 * 25.4 - 0.75 * 25.4);
    double nearest =
        side.edges().stream()
            .flatMap(e -> e.line().flattened(1e-3).stream())
            .mapToDouble(half::distance)
            .min()
            .orElseThrow();
    assertTrue(nearest < 1, "nearest " + nearest);
  }

  private static void assertRefused(String dxf, String why) {
    InputException e =
        assertThrows(
            InputException.class,
            () -> Interchange.read(dxf.getBytes(StandardCharsets.ISO_8859_1)),
            why);
    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertTrue(e.getMessage().startsWith("a.dxf"), e.getMessage());
  }

  private static String entities(String... pairs) {
    return "0\nSECTION\n2\nENTITIES\n" + String.join("\n", pairs) + "\n0\nENDSEC\n0\nEOF\n";
  }

  @Test
  void whatIsBrokenIsRefused() throws IOException {
    String good = Files.readString(BLOCKS);
    assertRefused(good.substring(0, good.length() - 30), "the file ends in the middle");
    assertRefused(
        "AutoCAD Binary DXF\r\n\u001a\u0000" + "x".repeat(100),
        "this is a DXF file in binary form");
    assertRefused(entities("0\nLINE\n10\nNaN"), "a number is expected where 'NaN' stands");
    assertRefused(entities("0\nLINE\n10\n1e400"), "a number is expected where '1e400' stands");
    assertRefused(
        entities("0\nLINE\n8\nA\n10\n0\n20\n0\n11\n1e300\n21\n0"), "more than 100 m away");
    assertRefused(entities("x\nLINE"), "a.dxf:5: a group code is expected where 'x' stands");
    assertRefused(
        entities("0\nSPLINE\n71\n3\n40\n0\n10\n0\n20\n0"),
        "the knots and points of a spline do not go together");
    assertRefused(entities("0\nLINE\n10\n0\n20\n0\n11\n90\n21\n0"), "no closed line in it");
  }

  /** Codes by the published reference: 62 below 0 is off, 70 odd frozen, 67 paper space. */
  @Test
  void whatIsHiddenIsLeftOutAndCounted() {
    String square =
        "90\n4\n70\n1\n10\n%1$d\n20\n0\n10\n%2$d\n20\n0\n10\n%2$d\n20\n50\n10\n%1$d\n20\n50\n";
    String dxf =
        "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n70\n3\n"
            + "0\nLAYER\n2\ncuff\n70\n0\n62\n7\n0\nLAYER\n2\noff\n70\n0\n62\n-7\n"
            + "0\nLAYER\n2\nfrozen\n70\n1\n62\n7\n0\nENDTAB\n0\nENDSEC\n"
            + "0\nSECTION\n2\nENTITIES\n"
            + "0\nLWPOLYLINE\n8\ncuff\n"
            + square.formatted(0, 80)
            + "0\nLWPOLYLINE\n8\noff\n"
            + square.formatted(100, 180)
            + "0\nLWPOLYLINE\n8\nfrozen\n"
            + square.formatted(200, 280)
            + "0\nLWPOLYLINE\n8\ncuff\n67\n1\n"
            + square.formatted(300, 380)
            + "0\nENDSEC\n0\nEOF\n";
    Converted read = Interchange.read(dxf.getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(List.of("cuff"), List.copyOf(read.found().keySet()));
    assertTrue(read.remarks().stream().anyMatch(r -> r.startsWith("3 entities that are hidden")));
  }

  @Test
  void blocksDoNotMultiplyOrGoRound() {
    String head = "0\nSECTION\n2\nBLOCKS\n";
    assertRefused(
        head
            + "0\nBLOCK\n2\nA\n0\nINSERT\n2\nA\n0\nENDBLK\n0\nENDSEC\n"
            + entities("0\nINSERT\n2\nA"),
        "ends up holding itself");
    StringBuilder bomb = new StringBuilder(head);
    bomb.append("0\nBLOCK\n2\nB0\n0\nLINE\n11\n9\n0\nENDBLK\n");
    for (int i = 1; i < 40; i++) {
      bomb.append("0\nBLOCK\n2\nB%d\n".formatted(i));
      bomb.append("0\nINSERT\n2\nB%d\n".formatted(i - 1).repeat(2)).append("0\nENDBLK\n");
    }
    assertRefused(bomb + "0\nENDSEC\n" + entities("0\nINSERT\n2\nB39"), "more than 200,000");
  }

  @Test
  void aMillionPointsAreRefused() {
    StringBuilder many = new StringBuilder("0\nLWPOLYLINE\n8\nA\n70\n1");
    for (int i = 0; i < 1_000_000; i++) {
      many.append("\n10\n").append(i % 1000).append("\n20\n").append(i / 1000);
    }
    assertRefused(entities(many.toString()), "has more than 200,000 points");
  }

  /** Whatever becomes of a file, it is read or refused, and nothing else. */
  @Property(tries = 100)
  void brokenFilesAreReadOrRefused(@ForAll long seed) throws IOException {
    Random random = new Random(seed);
    byte[] good = random.nextBoolean() ? Files.readAllBytes(BLOCKS) : TROUSERS;
    try {
      Interchange.read(Broken.bytes(good, random));
    } catch (InputException e) {
      assertEquals(0, e.problems().stream().filter(p -> p.file().isEmpty()).count());
    }
  }

  /** A piece of four corners in one size, as a light polyline and without turn points. */
  private static String block(String size, double length, double width, int first) {
    double[][] corners = {{0, 0}, {length, 0}, {length, width}, {0, width}};
    StringBuilder text = new StringBuilder();
    text.append("0\nBLOCK\n8\n0\n2\nF-" + size + "\n70\n0\n10\n0.0\n20\n0.0\n");
    text.append("0\nLWPOLYLINE\n8\n1\n90\n4\n70\n1\n");
    for (int i = 0; i < 4; i++) {
      double[] at = corners[(first + i) % 4];
      text.append("10\n" + at[0] + "\n20\n" + at[1] + "\n");
    }
    for (String words : List.of("Piece Name: front", "Size: " + size, "Quantity: 1,1")) {
      text.append("0\nTEXT\n8\n1\n10\n9.0\n20\n9.0\n40\n5.0\n1\n" + words + "\n");
    }
    return text + "0\nLINE\n8\n7\n10\n10.0\n20\n30.0\n11\n90.0\n21\n30.0\n0\nENDBLK\n8\n0\n";
  }

  private static byte[] nested(String... blocks) {
    return ("0\nSECTION\n2\nBLOCKS\n"
            + String.join("", blocks)
            + "0\nENDSEC\n0\nSECTION\n2\nENTITIES\n0\nTEXT\n8\n1\n10\n0.0\n20\n0.0\n40\n5.0\n"
            + "1\nSample Size: 40\n0\nTEXT\n8\n1\n10\n0.0\n20\n0.0\n40\n5.0\n1\nUnits: METRIC\n"
            + "0\nENDSEC\n0\nEOF\n")
        .getBytes(StandardCharsets.US_ASCII);
  }

  @Test
  void sizesOfAnotherProgramBecomeAGradedPiece() {
    Converted read =
        Interchange.read(
            nested(block("38", 380, 190, 0), block("40", 400, 200, 2), block("42", 425, 212, 1)));
    assertEquals(List.of("38", "40", "42"), read.file().design().sizes().names());
    assertEquals("40", read.file().design().sizes().base());
    for (double[] size : new double[][] {{38, 380, 190}, {40, 400, 200}, {42, 425, 212}}) {
      Piece front = read.file().style().pieces(Integer.toString((int) size[0])).get(0);
      assertEquals(size[1], box(front).length(), 0.01);
      assertEquals(size[2], box(front).width(), 0.01);
      assertEquals("pair", front.cutFrom("main").orElseThrow().toString());
    }
  }

  @Property(tries = 60)
  void brokenSizesAreReadOrRefused(@ForAll long seed) {
    Random random = new Random(seed);
    byte[] dxf = nested(block("38", 380, 190, 0), block("40", 400, 200, 2));
    for (int i = 0; i < 4; i++) {
      dxf[random.nextInt(dxf.length)] = (byte) (' ' + random.nextInt(95));
    }
    try {
      Interchange.read(dxf);
    } catch (InputException e) {
      assertTrue(e.getMessage().startsWith("a.dxf"), e.getMessage());
    }
  }
}
