package ellwand.file.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.ConvertRequest;
import ellwand.app.ConvertRun;
import ellwand.app.Converted;
import ellwand.file.drawn.Asked;
import ellwand.file.drawn.PieceNames;
import ellwand.file.source.Folder;
import ellwand.file.svg.Broken;
import ellwand.geometry.Box;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;

/** Pages of patterns to print at home, made here, are read at true scale and joined. */
class PdfReaderTest {

  private static final float MM = 72 / 25.4f;

  /** What is drawn on one page; origin at its lower left, mm. */
  private interface Drawer {
    void draw(PDPageContentStream on, PDDocument in, int page) throws IOException;
  }

  private static byte[] pdf(int pages, Drawer drawer) throws IOException {
    try (PDDocument document = new PDDocument()) {
      for (int i = 0; i < pages; i++) {
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        try (PDPageContentStream on = new PDPageContentStream(document, page)) {
          on.transform(Matrix.getScaleInstance(MM, MM));
          drawer.draw(on, document, i);
        }
      }
      return saved(document);
    }
  }

  private static byte[] saved(PDDocument document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  private static Converted read(byte[] pdf, Asked asked, Optional<Tiling> tiling) {
    return ConvertRun.style(
        List.of("a.pdf"),
        Folder.EMPTY.with("a.pdf", pdf),
        new ConvertRequest(
            asked,
            PieceNames.NONE,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            tiling,
            false));
  }

  /** Frame, logo, legend and test squares stand on pages of patterns beside the pieces. */
  @Test
  void pageFurnitureIsNoPiece() throws IOException {
    byte[] pdf =
        pdf(
            2,
            (on, in, page) -> {
              on.addRect(10, 10, 190, 277);
              on.addRect(20, 240, 40, 25);
              on.stroke();
              words(on, "Apron by hand", 22, 250);
              if (page == 0) {
                on.addRect(120, 30, 50, 50);
                on.addRect(30, 30, 50, 50);
                on.stroke();
                words(on, "5 cm test square", 125, 50);
              }
              on.addRect(30, 100, 100 + 10 * page, 90);
              on.stroke();
              words(on, page == 0 ? "front" : "back", 50, 150);
            });
    Converted read = read(pdf, Asked.NOTHING, Optional.empty());
    assertEquals(
        List.of("back", "front", "piece 3"),
        pieces(read).stream().map(Piece::name).sorted().toList());
    assertTrue(
        read.said()
            .containsAll(
                List.of(
                    "4 line(s) that every page has at the same place left out, which can be read,"
                        + " too (--page-furniture).",
                    "1 test square(s) left out, which can be read, too (--page-furniture).")),
        read.said()::toString);
  }

  private static List<Piece> pieces(Converted read) {
    return read.file().style().pieces(read.file().design().sizes().base());
  }

  private static Box box(Piece piece) {
    return Box.around(
        piece.edges().stream().flatMap(e -> e.line().flattened(0.01).stream()).toList());
  }

  /** A leg of trousers without its curves: wider and higher than one page. */
  private static void outline(PDPageContentStream on) throws IOException {
    on.moveTo(20, 30);
    on.lineTo(300, 30);
    on.lineTo(320, 480);
    on.curveTo(240, 500, 120, 500, 40, 470);
    on.closePath();
    on.stroke();
  }

  private static void words(PDPageContentStream on, String words, float x, float y)
      throws IOException {
    on.beginText();
    on.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 6);
    on.newLineAtOffset(x, y);
    on.showText(words);
    on.endText();
  }

  @Test
  void aPageIsReadAtTrueScale() throws IOException {
    byte[] pdf =
        pdf(
            1,
            (on, in, page) -> {
              on.addRect(30, 40, 120, 200);
              on.stroke();
              words(on, "Pocket bag", 50, 100);
              words(on, "cut 2 pairs", 50, 90);
              on.moveTo(100, 60);
              on.lineTo(100, 200);
              on.stroke();
            });
    Converted read = read(pdf, Asked.NOTHING, Optional.empty());
    Piece pocket = pieces(read).get(0);
    assertEquals("Pocket bag", pocket.name());
    assertEquals("2 pairs", pocket.cutFrom("main").orElseThrow().toString());
    assertEquals(120, box(pocket).width(), 0.01);
    assertEquals(200, box(pocket).length(), 0.01);
    assertEquals(1, pocket.innerLines().size());
  }

  @Test
  void pagesThatClipOneDrawingAreJoinedAtTheirFrames() throws IOException {
    byte[] pdf =
        pdf(
            4,
            (on, in, page) -> {
              on.addRect(10, 10, 190, 277);
              on.stroke();
              on.saveGraphicsState();
              on.addRect(10, 10, 190, 277);
              on.clip();
              on.transform(
                  Matrix.getTranslateInstance(10 - page % 2 * 190, page / 2 == 0 ? 10 - 277 : 10));
              outline(on);
              on.restoreGraphicsState();
            });
    Converted read = read(pdf, Asked.NOTHING, Optional.of(Tiling.parse("2x2", 1)));
    assertEquals(1, pieces(read).size());
    assertEquals(300, box(pieces(read).get(0)).width(), 0.05);
    assertTrue(
        read.said()
            .contains("4 pages are joined at the frame that each has, 190.0 x 277.0 mm each."),
        read.said()::toString);
  }

  @Test
  void linesThatWereCutAtTheFramesAreJoined() throws IOException {
    // A rectangle from (20, 30) to (300, 400) in parts, a page each of 190 x 277 mm.
    float[][][] parts = {
      {{10, 10}, {30, 10}, {30, 133}, {200, 133}},
      {{10, 133}, {120, 133}, {120, 10}},
      {{30, 287}, {30, 40}, {200, 40}},
      {{10, 40}, {120, 40}, {120, 287}},
    };
    byte[] pdf =
        pdf(
            4,
            (on, in, page) -> {
              on.addRect(10, 10, 190, 277);
              on.stroke();
              float[][] part = parts[page];
              int from = page == 0 ? 1 : 0;
              on.moveTo(part[from][0], page == 0 ? 10 : part[from][1]);
              for (int i = from + 1; i < part.length; i++) {
                on.lineTo(part[i][0], part[i][1]);
              }
              on.stroke();
            });
    Converted read = read(pdf, Asked.NOTHING, Optional.of(Tiling.parse("2x2", 1)));
    assertEquals(1, pieces(read).size());
    assertEquals(280, box(pieces(read).get(0)).width(), 0.05);
    assertEquals(370, box(pieces(read).get(0)).length(), 0.05);
  }

  @Test
  void pagesThatOverlapAreJoinedByTheLinesThatTheyShare() throws IOException {
    // As our own command print lays pages: no frame, and each overlaps its neighbours.
    byte[] pdf =
        pdf(
            4,
            (on, in, page) -> {
              on.addRect(10, 250, 50, 50);
              on.stroke();
              on.transform(
                  Matrix.getTranslateInstance(10 - page % 2 * 187, page / 2 == 0 ? -257 : 10));
              outline(on);
            });
    Converted read = read(pdf, Asked.NOTHING, Optional.of(Tiling.parse("2x2", 1)));
    Piece leg = pieces(read).get(0);
    assertEquals(300, box(leg).width(), 0.05);
    assertTrue(
        read.said().contains("4 pages are joined by the lines that they share."),
        read.said()::toString);
  }

  @Test
  void layersAreReadByName() throws IOException {
    byte[] pdf =
        pdf(
            1,
            (on, in, page) -> {
              PDOptionalContentProperties layers = new PDOptionalContentProperties();
              in.getDocumentCatalog().setOCProperties(layers);
              for (int size : new int[] {98, 104, 110}) {
                PDOptionalContentGroup group = new PDOptionalContentGroup("size " + size);
                layers.addGroup(group);
                layers.setGroupEnabled(group, size != 110);
                on.beginMarkedContent(COSName.OC, group);
                on.addRect(10, 20, size, size + 50);
                on.stroke();
                on.endMarkedContent();
              }
            });
    Converted read =
        read(
            pdf,
            new Asked(OptionalDouble.empty(), OptionalDouble.empty(), List.of("size 104")),
            Optional.empty());
    assertEquals(104, box(pieces(read).get(0)).width(), 0.01);
    assertTrue(
        read.said().contains("Layer size 110 is hidden and left out."), read.said()::toString);
  }

  private static void assertRefused(byte[] pdf, Optional<Tiling> tiling, String why) {
    InputException e =
        assertThrows(InputException.class, () -> read(pdf, Asked.NOTHING, tiling), why);
    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertTrue(e.getMessage().startsWith("a.pdf"), e.getMessage());
  }

  private static byte[] square() throws IOException {
    return pdf(
        1,
        (on, in, page) -> {
          on.addRect(20, 20, 90, 90);
          on.stroke();
        });
  }

  @Test
  void whatCannotBeReadSafelyIsRefused() throws IOException {
    byte[] scan =
        pdf(
            1,
            (on, in, page) ->
                on.drawImage(
                    LosslessFactory.createFromImage(
                        in, new BufferedImage(50, 50, BufferedImage.TYPE_INT_RGB)),
                    0,
                    0,
                    200,
                    290));
    assertRefused(scan, Optional.empty(), "it is a scan");
    assertRefused(scan, Optional.empty(), "take a photo");
    assertRefused(
        square(), Optional.of(Tiling.parse("2x3", 1)), "it has 1 pages, and 6 from page 1");
    assertRefused(
        "%PDF-1.4\nnonsense".getBytes(StandardCharsets.US_ASCII), Optional.empty(), "broken");
    String cut = new String(square(), StandardCharsets.ISO_8859_1);
    String noTable = cut.replaceFirst("startxref\\s+\\d+", "startxref\n7");
    assertRefused(noTable.getBytes(StandardCharsets.ISO_8859_1), Optional.empty(), "broken");
    try (PDDocument locked = new PDDocument()) {
      locked.addPage(new PDPage());
      locked.protect(new StandardProtectionPolicy("o", "u", new AccessPermission()));
      assertRefused(saved(locked), Optional.empty(), "locked");
    }
    for (String wrong : List.of("3", "0x4", "2x-1", "999x999")) {
      assertThrows(InputException.class, () -> Tiling.parse(wrong, 1), wrong);
    }
  }

  @Test
  void whatUnpacksWithoutEndIsRefused() throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      InputStream spaces =
          new InputStream() {
            private int left = 160_000_000;

            @Override
            public int read() {
              return left-- > 0 ? ' ' : -1;
            }
          };
      page.setContents(new PDStream(document, spaces, COSName.FLATE_DECODE));
      assertRefused(saved(document), Optional.empty(), "unpack to more than 150 MB");
    }
  }

  @Test
  void scriptsAreNotRun() throws IOException {
    try (PDDocument document = org.apache.pdfbox.Loader.loadPDF(square())) {
      document
          .getDocumentCatalog()
          .setOpenAction(new PDActionJavaScript("app.alert('no'); while (true) {}"));
      Converted read = read(saved(document), Asked.NOTHING, Optional.empty());
      assertEquals(90, box(pieces(read).get(0)).width(), 0.01);
    }
  }

  /** Whatever becomes of a file, it is read or refused, and nothing else. */
  @Property(tries = 100)
  void brokenFilesAreReadOrRefused(@ForAll long seed) throws IOException {
    try {
      read(Broken.bytes(square(), new Random(seed)), Asked.NOTHING, Optional.empty());
    } catch (InputException e) {
      assertEquals(0, e.problems().stream().filter(p -> p.file().isEmpty()).count());
    }
  }
}
