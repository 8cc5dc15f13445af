package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.piece.PieceDrawing;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Drawings as they were looked at and found good. After a wanted change, write them anew with
 * {@code mvn test -Dtest=GoldenDrawingTest -Dellwand.golden=write} and look at them.
 */
class GoldenDrawingTest {

  private static final Path FOLDER = Path.of("src/test/resources/ellwand/draw");

  @Test
  void markerIsDrawnAsBefore() throws IOException {
    Marker bib = Samples.bib();
    compare(
        "bib-marker.svg",
        MarkerDrawing.of(bib, Samples.figures(bib), Samples.head(bib), Unit.CM).svg());
  }

  @Test
  void aMarkerLaidByHandSaysSo() {
    Marker byHand = Samples.bib().byHand();
    String drawn =
        new String(
            MarkerDrawing.of(byHand, Samples.figures(byHand), Samples.head(byHand), Unit.CM).svg(),
            StandardCharsets.UTF_8);
    assertTrue(drawn.replaceAll("<[^>]*>|\\s", "").contains("Ellwand,laidbyhand."), drawn);
    assertFalse(drawn.contains("seed"));
  }

  @Test
  void piecesAreDrawnAsBefore() throws IOException {
    Marker bib = Samples.bib();
    Map<String, List<ellwand.cutting.CutPiece>> pieces =
        Map.of("86", bib.lay().wanted().stream().map(w -> w.cut()).toList());
    compare("bib-pieces.svg", PieceDrawing.of("Quay bib", "Quay bib", pieces, Unit.INCH).svg());
  }

  private static void compare(String name, byte[] drawn) throws IOException {
    Path file = FOLDER.resolve(name);
    if ("write".equals(System.getProperty("ellwand.golden"))) {
      Files.createDirectories(FOLDER);
      Files.write(file, drawn);
    }
    assertEquals(
        Files.readString(file).replace("\r\n", "\n"),
        new String(drawn, StandardCharsets.UTF_8).replace("\r\n", "\n"),
        name);
  }
}
