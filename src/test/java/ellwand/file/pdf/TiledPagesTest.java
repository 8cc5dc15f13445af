package ellwand.file.pdf;

import static ellwand.file.pdf.DrawnPdf.box;
import static ellwand.file.pdf.DrawnPdf.pdf;
import static ellwand.file.pdf.DrawnPdf.pieces;
import static ellwand.file.pdf.DrawnPdf.read;
import static ellwand.file.pdf.DrawnPdf.words;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Converted;
import ellwand.file.drawn.Asked;
import ellwand.pattern.Piece;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;

/** Pages of one pattern, put together as whoever tapes them would. */
class TiledPagesTest {

  private static Converted joined(byte[] pdf, String pages) {
    return read(pdf, Asked.NOTHING, Optional.of(Tiling.parse(pages, 1)));
  }

  private static List<String> sizes(Converted read) {
    return pieces(read).stream()
        .map(p -> Math.round(box(p).width()) + " x " + Math.round(box(p).length()))
        .sorted()
        .toList();
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

  /** The third hangs on the second, and the last has a piece of its own and shares nothing. */
  @Test
  void notEveryPageSharesALineWithTheFirst() throws IOException {
    byte[] pdf =
        pdf(
            4,
            (on, in, page) -> {
              if (page == 3) {
                on.addRect(30, 30, 80, 90);
                on.stroke();
                return;
              }
              on.transform(Matrix.getTranslateInstance(-page * 187, 0));
              if (page < 2) {
                on.addRect(20, 20, 250, 90);
              }
              if (page > 0) {
                on.addRect(300, 20, 200, 95);
              }
              on.stroke();
            });
    Converted read = joined(pdf, "1x4");
    assertEquals(List.of("200 x 95", "250 x 90", "80 x 90"), sizes(read));
    assertTrue(
        read.said()
            .contains(
                "4 pages are joined by the lines that they share, but for 1 that shares none and"
                    + " lies apart."),
        read.said()::toString);
  }

  /** Places that half of a pitch tells apart would else be one line or two, as rounding has it. */
  @Test
  void aLineOnTwoPagesIsOneThoughNumbersAreRounded() throws IOException {
    byte[] pdf =
        pdf(
            2,
            (on, in, page) -> {
              float hair = page * 0.002f;
              on.transform(Matrix.getTranslateInstance(-page * 187 + hair, hair));
              for (int i = 0; i < 12; i++) {
                on.addRect(20, 20 + i * 20.1f, 250.1f, 15.3f);
              }
              on.stroke();
            });
    assertEquals(12, sizes(joined(pdf, "1x2")).size());
  }

  /** A piece that runs over all pages is larger than they are. */
  @Test
  void aLargeRectangleIsNoFrame() throws IOException {
    byte[] pdf =
        pdf(
            2,
            (on, in, page) -> {
              on.transform(Matrix.getTranslateInstance(-page * 187, 0));
              on.addRect(20, 20, 330, 250);
              on.stroke();
            });
    assertEquals(List.of("330 x 250"), sizes(joined(pdf, "1x2")));
  }

  /** What the file calls an artifact of its pages, and white ground behind words. */
  @Test
  void whatTheFileSetsApartIsNoPiece() throws IOException {
    COSDictionary kind = new COSDictionary();
    kind.setName(COSName.TYPE, "Pagination");
    byte[] pdf =
        pdf(
            1,
            (on, in, page) -> {
              on.beginMarkedContent(COSName.ARTIFACT, PDPropertyList.create(kind));
              on.addRect(10, 200, 40, 40);
              on.stroke();
              words(on, "Page 1 to tape", 40, 120);
              on.endMarkedContent();
              on.addRect(30, 30, 100, 150);
              on.stroke();
              on.setNonStrokingColor(1f, 1f, 1f);
              on.addRect(50, 50, 60, 40);
              on.fill();
              on.setNonStrokingColor(0f, 0f, 0f);
              words(on, "Flap", 60, 60);
            });
    Converted read = joined(pdf, "1x1");
    assertEquals(List.of("Flap"), pieces(read).stream().map(Piece::name).toList());
    assertEquals(0, pieces(read).get(0).innerLines().size());
    assertTrue(
        read.said()
            .contains(
                "1 line(s) that the file itself calls page furniture left out, which can be read,"
                    + " too (--page-furniture)."),
        read.said()::toString);
  }

  /** A circle of many short stretches has one edge, and is as large. */
  @Test
  void manyShortStretchesAreACurve() throws IOException {
    byte[] pdf =
        pdf(
            1,
            (on, in, page) -> {
              on.moveTo(180, 140);
              for (int i = 1; i < 60; i++) {
                double turn = Math.toRadians(6 * i);
                on.lineTo((float) (100 + 80 * Math.cos(turn)), (float) (140 + 80 * Math.sin(turn)));
              }
              on.closePath();
              on.stroke();
            });
    Piece round = pieces(joined(pdf, "1x1")).get(0);
    assertTrue(round.edges().size() <= 2, round.edges()::toString);
    assertEquals(160, box(round).width(), 0.2);
  }
}
