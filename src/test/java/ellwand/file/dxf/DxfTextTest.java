package ellwand.file.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class DxfTextTest {

  @Test
  void pairsStandOnTwoLinesEach() {
    String text = text(new DxfText().put(0, "POINT").put(10, new Point(1.5, -0.00000001)));
    assertEquals("  0\r\nPOINT\r\n 10\r\n1.5\r\n 20\r\n0.0\r\n 30\r\n0.0\r\n  0\r\nEOF\r\n", text);
  }

  @Test
  void everyCodeHasItsValue() {
    String text =
        text(
            new DxfText()
                .header(new Box(0, 0, 100, 50))
                .layers(List.of("CUT", "DRAW"))
                .section("ENTITIES")
                .polyline("CUT", List.of(new Point(0, 0), new Point(1, 0), new Point(0, 1)), true)
                .text("DRAW", "Back", new Point(1, 2), 3, 90, DxfText.Justified.CENTRE)
                .endSection());
    String[] lines = text.split("\r\n");
    assertEquals(0, lines.length % 2);
    for (int i = 0; i < lines.length; i += 2) {
      assertTrue(lines[i].strip().matches("\\d+"), lines[i]);
    }
    assertTrue(text.contains("AC1009"));
    assertEquals(3, text.split("VERTEX", -1).length - 1);
  }

  @Test
  void refusesWhatIsNoLineOfAscii() {
    DxfText text = new DxfText();
    assertThrows(IllegalArgumentException.class, () -> text.put(1, "Rücken"));
    assertThrows(IllegalArgumentException.class, () -> text.put(1, "two\nlines"));
  }

  @Test
  void lettersLoseTheirMarksAndNothingElse() {
    assertEquals(
        "Rucken, Aermel zlaty 1/2 strasse - oe",
        PlainAscii.of("Rücken, Aermel złatý ½ straße – œ"));
    assertEquals("Back 104 (left)", PlainAscii.of("Back 104 (left)"));
    assertEquals("?? a b", PlainAscii.of("裁縫\ta\nb"));
  }

  private static String text(DxfText text) {
    return new String(text.bytes(), StandardCharsets.US_ASCII);
  }
}
