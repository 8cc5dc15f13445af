package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.job.StyleFile;
import ellwand.file.source.Folder;
import ellwand.geometry.Point;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import ellwand.trace.PhotographedTable;
import ellwand.trace.ScannedTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a photo (a simulated one) to a marker and a full-size print, as somebody does it. */
class PhotographedPieceTest {

  /** Lengths are held to this share, and to this where they are short, mm. */
  private static final double SHARE = 0.003;

  private static final double SHORT_MM = 0.7;

  @TempDir private static Path folder;

  private static Path photo;

  @BeforeAll
  static void takePhoto() throws IOException {
    photo = Files.write(folder.resolve("bodice front.jpg"), PhotographedTable.frontAndPocket());
  }

  private static Piece piece(Path style) {
    StyleFile file = StyleFile.read(style.toString(), Folder.DISK);
    return file.style().pieces(file.design().sizes().base()).get(0);
  }

  private static Edge straightEdge(Piece piece, double mm) {
    return piece.edges().stream()
        .filter(e -> Math.abs(e.line().length() - mm) <= Math.max(SHORT_MM, SHARE * mm))
        .filter(e -> e.line().straight(0.05))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no edge of " + mm + " mm: " + lengths(piece)));
  }

  private static List<Double> lengths(Piece piece) {
    return piece.edges().stream().map(e -> e.line().length()).toList();
  }

  @Test
  void aPhotoBecomesAMarkerAndAPrint() throws IOException {
    Path out = folder.resolve("front.yaml");
    Ran first = Ran.of("convert", photo, "--piece", 1, "--out", out);
    assertEquals(0, first.code(), first.err());
    assertTrue(first.err().contains("A place on the outline is true to"), first.err());
    Piece found = piece(out);
    assertEquals(6, found.edges().size());
    // The grain, along x, is the arrow that is drawn along the fold, though the photo is turned.
    assertTrue(first.err().contains("An arrow of 20 cm is drawn on it"), first.err());
    Point way = straightEdge(found, 335).line().startDirection();
    assertEquals(0, Math.toDegrees(Math.asin(way.y())), 0.5);
    // The lengths it was drawn with; see PaperShapes.front.
    Edge fold = straightEdge(found, 335);
    straightEdge(found, Math.hypot(230, 8));
    straightEdge(found, Math.hypot(15, 202));
    straightEdge(found, Math.hypot(125, 40));

    Ran again =
        Ran.of(
            "convert",
            photo,
            "--piece",
            1,
            "--on-fold",
            fold.name(),
            "--allowance",
            "1cm",
            "--out",
            out);
    assertEquals(0, again.code(), again.err());
    Piece half = piece(out);
    // The sewing line runs 1 cm inside of the paper, so the fold of 335 mm loses 1 cm at both ends;
    // the hem of 230.14 mm 8.96 at the side, at a corner of 96.2 degrees, and 0.35 at the fold,
    // along
    // which nothing is taken off and to which it leans by 2 degrees.
    straightEdge(half, 315);
    straightEdge(half, 220.8);
    assertEquals("1 on fold", half.cutFrom("main").orElseThrow().toString());
    Path job =
        Files.writeString(
            folder.resolve("job.yaml"),
            """
            ellwand: 1
            unit: cm
            style: {file: front.yaml}
            cloths: {main: {width: 90, fold: lengthwise fold}}
            order: {garments: 2}
            """);
    Path marker = folder.resolve("marker");
    Ran lay = Ran.of("lay", job, "--effort", "100steps", "--threads", 1, "--out", marker);
    assertEquals(0, lay.code(), lay.err());
    assertTrue(Files.exists(marker.resolve("main.marker.json")));
    assertEquals(0, Ran.of("check", marker.resolve("main.marker.json")).code());
    Path pages = folder.resolve("pages.pdf");
    Ran print = Ran.of("print", job, "--paper", "A4", "--out", pages);
    assertEquals(0, print.code(), print.err());
    assertTrue(Ran.words(pages).contains("bodice front"));
  }

  @Test
  void ofTwoPiecesTheOneThatIsMeantIsAskedFor() throws IOException {
    Path out = folder.resolve("asked.yaml");
    Ran ran = Ran.of("convert", photo, "--out", out);
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("2 pieces are to be seen"), ran.err());
    assertFalse(Files.exists(out));
    String picture = Files.readString(folder.resolve("asked-photo.svg"));
    assertTrue(picture.contains("Which piece is meant?"));
    assertTrue(picture.contains("data:image/jpeg;base64,"));

    Ran edge = Ran.of("convert", photo, "--piece", 2, "--on-fold", "A to Q", "--out", out);
    assertEquals(2, edge.code());
    assertTrue(edge.err().contains("has no edge 'A to Q'. Its edges are"), edge.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void scansAreJoinedOrAskedFor() throws IOException {
    List<byte[]> halves = ScannedTable.strip().halves();
    Path low = Files.write(folder.resolve("low.jpg"), halves.get(0));
    Path high = Files.write(folder.resolve("high.jpg"), halves.get(1));
    Path out = folder.resolve("strip.yaml");
    Ran ran = Ran.of("convert", low, high, "--dpi", 150, "--out", out);
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.err().contains("2 scans are joined by crosses"), ran.err());
    // As it was drawn; see ScannedTable.strip.
    straightEdge(piece(out), Math.hypot(150, 6));
    straightEdge(piece(out), Math.hypot(110, 10));
    String picture = Files.readString(folder.resolve("strip-photo.svg"));
    assertTrue(picture.contains("class=\"cross\""), "crosses are drawn");

    Path again = folder.resolve("again.yaml");
    Path without = Files.write(folder.resolve("without.jpg"), ScannedTable.bare());
    Ran refused = Ran.of("convert", low, without, "--dpi", 150, "--out", again);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("without.jpg: it cannot be told how"), refused.err());
    assertFalse(Files.exists(again));
  }

  @Test
  void whatIsNoPhotoIsRefusedInWords() throws IOException {
    Path text = Files.writeString(folder.resolve("letter.jpg"), "Dear customer");
    Ran ran = Ran.of("convert", text, "--out", folder.resolve("letter.yaml"));
    assertEquals(2, ran.code());
    assertFalse(Files.exists(folder.resolve("letter.yaml")));
    Ran drawn = Ran.of("convert", text, "--half", "A to B", "--out", folder.resolve("letter.yaml"));
    assertTrue(drawn.err().contains("go with photos"), drawn.err());
  }
}
