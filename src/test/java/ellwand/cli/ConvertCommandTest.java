package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.job.StyleFile;
import ellwand.file.source.Folder;
import ellwand.geometry.Box;
import ellwand.pattern.Cut;
import ellwand.pattern.Piece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawings as general drawing programs save them, written by hand, become styles. */
class ConvertCommandTest {

  private static final Path DRAWINGS = Path.of("src/test/resources/ellwand/file/drawings");
  private static final String LAYERS = DRAWINGS.resolve("layers-in-mm.svg").toString();
  private static final String CLASSES = DRAWINGS.resolve("classes-in-px.svg").toString();

  @TempDir private Path folder;

  private Path out() {
    return folder.resolve("style.yaml");
  }

  private List<Piece> pieces() {
    StyleFile file = StyleFile.read(out().toString(), Folder.DISK);
    return file.style().pieces(file.design().sizes().base());
  }

  private Piece piece(String name) {
    return pieces().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private static Box box(Piece piece) {
    return Box.around(
        piece.edges().stream().flatMap(e -> e.line().flattened(0.01).stream()).toList());
  }

  @Test
  void layersAndLabelsNameThePieces() {
    Ran ran = Ran.of("convert", LAYERS, "--allowance", "1cm", "--out", out());
    assertEquals(0, ran.code(), ran.err());
    assertTrue(Files.exists(folder.resolve("style.svg")));
    Piece back = piece("Back");
    assertEquals("1 on fold", back.cutFrom("main").orElseThrow().toString());
    assertTrue(back.fold().isPresent());
    assertEquals(150, box(back).width(), 1e-3);
    assertEquals(235, box(back).length(), 1e-3);
    assertEquals(1, back.notches().size());
    assertEquals(10, back.edge("A to B").allowanceMm(), 1e-9);
    Piece pocket = piece("Pocket");
    assertEquals(2, pocket.cutFrom("main").orElseThrow().count());
    assertEquals(110, box(pocket).width(), 1e-3);
    assertEquals(8, pocket.edges().size(), "four sides and four corners that are rounded");
    assertTrue(ran.out().contains("its grain is taken to run up the page"), ran.out());
    assertTrue(ran.err().contains("1 hidden layer(s) or line(s) left out."), ran.err());
  }

  @Test
  void linesThatTouchBecomeEdgesOfTheirNames() {
    Ran ran = Ran.of("convert", CLASSES, "--dpi", "72", "--out", out());
    assertEquals(0, ran.code(), ran.err());
    Piece hood = piece("Hood side");
    assertEquals(
        List.of("neck", "face edge", "top", "back"),
        hood.edges().stream().map(e -> e.name()).toList());
    assertEquals(76.2, hood.edge("neck").line().length(), 0.2);
    assertEquals(Cut.How.PAIR, hood.cutFrom("main").orElseThrow().how());
    assertTrue(ran.err().contains("Line Hood side was open by 0.18 mm"), ran.err());
    Piece cuff = piece("Cuff");
    assertEquals("2 pairs", cuff.cutFrom("lining").orElseThrow().toString());
    assertEquals(50.8, box(cuff).width(), 1e-3);
    assertEquals(25.4, box(cuff).length(), 1e-3);
    assertEquals(2, pieces().size(), "the test square is a guide");
  }

  @Test
  void aStyleThatIsTakenForAJobIsSaidToBeOne() {
    Ran.of("convert", LAYERS, "--allowance", "1cm", "--out", out());
    Ran ran = Ran.of("draw", out());
    assertEquals(2, ran.code());
    assertEquals(
        out()
            + ":1: this is a style alone, which says nothing of cloths. Name it in a job that has"
            + " cloths:, as style: {file: "
            + out().getFileName()
            + "}.\n",
        ran.err());
  }

  @Test
  void aJobLaysWhatWasConverted() throws IOException {
    Ran.of("convert", LAYERS, "--allowance", "1cm", "--out", out());
    Path job = folder.resolve("job.yaml");
    Files.writeString(
        job,
        "ellwand: 1\nunit: cm\nstyle: {file: style.yaml}\ncloths: {main: {width: 90}}\n"
            + "order: {garments: 1}\n");
    Ran ran = Ran.of("lay", job, "--effort", "5steps", "--out", folder.resolve("out"));
    assertEquals(0, ran.code(), ran.err());
  }

  @Test
  void whatACuttingLineIncludesIsTakenOff() {
    assertEquals(0, Ran.of("convert", LAYERS, "--allowance", "1cm", "--out", out()).code());
    double whole = box(piece("Pocket")).width();
    Ran ran = Ran.of("convert", LAYERS, "--cutting-line", "1cm", "--out", out());
    assertEquals(0, ran.code(), ran.err());
    assertEquals(whole - 20, box(piece("Pocket")).width(), 0.02);
    Piece back = piece("Back");
    // The fold edge has no seam, so that only one side is narrower.
    assertEquals(140, box(back).width(), 0.02);
    assertEquals(1, back.notches().size());
    back.edges().stream()
        .filter(e -> back.fold().filter(e.name()::equals).isEmpty())
        .forEach(e -> assertEquals(10, e.allowanceMm(), 0.02, e.name()));
  }

  @Test
  void namesAndCutsCanBeGivenByHand() throws IOException {
    Path names = folder.resolve("names.yaml");
    Files.writeString(
        names,
        "unit: cm\n"
            + "pieces:\n"
            + "  Pocket: {called: patch, cut: {canvas: pair}, grain: bias, allowance: 2}\n"
            + "  Back, cut 1 on fold: {leave-out: true}\n");
    Ran ran = Ran.of("convert", LAYERS, "--names", names, "--out", out());
    assertEquals(0, ran.code(), ran.err());
    assertEquals(1, pieces().size());
    assertEquals("bias", piece("patch").grain().word());
    assertEquals(20, piece("patch").edge("A to B").allowanceMm(), 1e-9);
    Files.writeString(names, "pieces: {Pockets: {called: patch}}\n");
    Ran wrong = Ran.of("convert", LAYERS, "--names", names, "--out", out());
    assertEquals(2, wrong.code());
    assertTrue(wrong.err().contains("no piece in the drawing is called Pockets"), wrong.err());
    assertTrue(wrong.err().contains("Pocket"), wrong.err());
  }

  @Test
  void aDrawingIsNeverWrittenOver() throws IOException {
    Path drawing = folder.resolve("style.svg");
    Files.copy(Path.of(LAYERS), drawing);
    byte[] before = Files.readAllBytes(drawing);
    assertEquals(0, Ran.of("convert", drawing, "--out", out()).code());
    assertEquals(new String(before), Files.readString(drawing));
    assertTrue(Files.exists(folder.resolve("style-control.svg")));
  }

  @Test
  void nothingIsWrittenWhereNothingIsClosed() throws IOException {
    Path drawing = folder.resolve("open.svg");
    Files.writeString(
        drawing,
        "<svg xmlns='http://www.w3.org/2000/svg' width='9cm'><path d='M0 0h90v90'/>"
            + "<g style='display:none'><path d='M0 0h90v90z'/></g></svg>");
    Ran ran = Ran.of("convert", drawing, "--out", out());
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("no closed line in it encloses a piece"), ran.err());
    assertTrue(ran.err().contains("1 hidden layer(s) or line(s) left out"), ran.err());
    assertFalse(Files.exists(out()));
    assertFalse(Files.exists(folder.resolve("style.svg")));
  }

  @Test
  void aFrameAndADrawingFarTooSmallAreTold() throws IOException {
    Path drawing = folder.resolve("framed.svg");
    String page = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90' width='%s'>%s</svg>";
    String pieces = "<path d='M1 1h88v88h-88z'/><path id='cuff' d='M9 9h40v20h-40z'/>";
    Files.writeString(drawing, page.formatted("90mm", pieces));
    Ran ran = Ran.of("convert", drawing, "--out", out());
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("1 closed line(s) in it (cuff) are drawn on it"), ran.out());
    Files.writeString(drawing, page.formatted("9mm", pieces));
    Ran tiny = Ran.of("convert", drawing, "--out", out());
    assertEquals(2, tiny.code());
    assertTrue(tiny.err().contains("enclose less than 1 cm² or cross themselves"), tiny.err());
  }

  @Test
  void anOptionThatWouldBeLostIsRefused() {
    String job = "sample-markers/shore-bag/job.yaml";
    Ran ran = Ran.of("convert", job, "--allowance", "1cm", "--out", folder.resolve("a.dxf"));
    assertEquals(2, ran.code());
    assertTrue(ran.err().startsWith("--allowance is for reading drawings"), ran.err());
    assertTrue(ran.err().endsWith("convert --help\n"), ran.err());
    assertEquals(
        2, Ran.of("convert", job, "--sizes", "S", "--out", folder.resolve("a.svg")).code());
    assertEquals(2, Ran.of("convert", LAYERS, "--pages", "2x2", "--out", out()).code());
    Ran first = Ran.of("convert", LAYERS, "--pages", "2x2", "--first-page", "0", "--out", out());
    assertEquals(2, first.code());
    assertTrue(first.err().startsWith("--first-page takes a number from 1 up"), first.err());
    assertEquals(2, Ran.of("convert", LAYERS, "--drawing-unit", "in", "--out", out()).code());
    Path blocks = DRAWINGS.resolve("blocks-in-inches.dxf");
    Ran sized = Ran.of("convert", blocks, "--sizes", "98", "--out", out());
    assertEquals(2, sized.code());
    assertTrue(sized.err().contains("it is a drawing, which says no sizes"), sized.err());
  }

  @Test
  void aFoldThatNoLineMarksIsTold() throws IOException {
    Path drawing = folder.resolve("fold.svg");
    Files.writeString(
        drawing,
        "<svg xmlns='http://www.w3.org/2000/svg' width='90mm' viewBox='0 0 90 90'>"
            + "<path id='yoke, cut 1 on fold' d='M0 0h80v50h-80z'/></svg>");
    Ran ran = Ran.of("convert", drawing, "--out", out());
    assertEquals(0, ran.code(), ran.err());
    assertEquals("1", piece("yoke").cutFrom("main").orElseThrow().toString());
    assertTrue(ran.out().contains("no line marks the edge"), ran.out());
  }

  @Test
  void jsonTellsWhatWasFound() throws IOException {
    Ran ran = Ran.of("convert", LAYERS, "--json", "--out", out());
    assertEquals("Pocket", ran.json().get("pieces").get(1).get("piece").asText());
    assertEquals("2", ran.json().get("pieces").get(1).get("cut").get("main").asText());
  }
}
