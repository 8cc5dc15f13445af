package ellwand.file.pdf;

import static ellwand.file.pdf.DrawnPdf.box;
import static ellwand.file.pdf.DrawnPdf.pdf;
import static ellwand.file.pdf.DrawnPdf.pieces;
import static ellwand.file.pdf.DrawnPdf.read;
import static ellwand.file.pdf.DrawnPdf.saved;
import static ellwand.file.pdf.DrawnPdf.words;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Converted;
import ellwand.file.drawn.Asked;
import ellwand.file.svg.Broken;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.awt.image.BufferedImage;
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
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.junit.jupiter.api.Test;

/** Pages of patterns to print at home, made here, are read at true scale and joined. */
class PdfReaderTest {

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
