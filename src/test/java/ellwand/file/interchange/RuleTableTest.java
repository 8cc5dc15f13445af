package ellwand.file.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Converted;
import ellwand.file.job.StyleFile;
import ellwand.file.source.Folder;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Tables of grade rules, in the form of ASTM D6673 as far as it is remembered. */
class RuleTableTest {

  private static final String HEAD =
      "AUTHOR: somebody\r\nUNITS: METRIC\r\nGRADE RULE TABLE: coat\r\nNUMBER OF SIZES: 3\r\n"
          + "SIZE LIST: S M L\r\nSAMPLE SIZE: M\r\n";

  private static RuleTable read(String text, List<String> said) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    assertTrue(RuleTable.looksLike(bytes));
    return RuleTable.read("a.rul", bytes, said);
  }

  private static void assertShift(RuleTable table, int rule, String size, double x, double y) {
    Point shift = table.rule(rule).orElseThrow().get(size);
    assertEquals(0, shift.distance(new Point(x, y)), 1e-9, shift::toString);
  }

  @Test
  void shiftsFromTheSampleSizeAreTakenAsTheyAre() {
    RuleTable table =
        read(HEAD + "RULE: DELTA 7\r\n-3.0, 1.0\r\n0, 0\r\n4 -2\r\nEND\r\n", List.of());
    assertShift(table, 7, "S", -3, 1);
    assertShift(table, 7, "M", 0, 0);
    assertShift(table, 7, "L", 4, -2);
  }

  @Test
  void shiftsFromSizeToSizeAreAddedUp() {
    RuleTable table =
        read(HEAD + "Rule: Delta 1\n0.0, 0.0  3.0, -1.0  4.0, -2.0\nEnd\n", List.of());
    assertShift(table, 1, "S", -3, 1);
    assertShift(table, 1, "M", 0, 0);
    assertShift(table, 1, "L", 4, -2);
  }

  @Test
  void whereBothAreMeantTheReaderIsTold() {
    List<String> said = new ArrayList<>();
    String small = HEAD.replace("SAMPLE SIZE: M", "SAMPLE SIZE: S").replace("METRIC", "ENGLISH");
    RuleTable table = read(small + "RULE: DELTA 1\n0,0 1,0 2,0\nEND\n", said);
    assertShift(table, 1, "L", 50.8, 0);
    assertEquals(1, said.size());
  }

  @Test
  void whatIsNotWholeIsRefused() {
    for (String rest :
        List.of(
            "RULE: DELTA 1\n0,0 1,0\n",
            "RULE: DELTA 1\n1,0 1,0 1,0\n",
            "RULE: DELTA x\n",
            "RULE: DELTA 1\n0,0 NaN,0 1,0\n")) {
      assertThrows(InputException.class, () -> read(HEAD + rest, new ArrayList<>()), rest);
    }
    assertThrows(
        InputException.class,
        () -> read(HEAD.replace("SAMPLE SIZE: M", "SAMPLE SIZE: XL"), new ArrayList<>()));
  }

  @Property(tries = 200)
  void brokenTablesAreReadOrRefused(@ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder text =
        new StringBuilder(HEAD + "RULE: DELTA 7\r\n-3.0, 1.0 0, 0 4 -2\r\nEND\r\n");
    for (int i = 0; i < 5; i++) {
      text.setCharAt(random.nextInt(text.length()), (char) (' ' + random.nextInt(95)));
    }
    try {
      RuleTable.read(
          "a.rul", text.toString().getBytes(StandardCharsets.US_ASCII), new ArrayList<>());
    } catch (InputException e) {
      assertTrue(e.getMessage().startsWith("a.rul"), e.getMessage());
    }
  }

  @Test
  void sizesWithOtherLettersComeBackUnderPlainNames() {
    String job =
        """
        ellwand: 1
        unit: cm
        style:
          name: Scarf
          size: 36½
          pieces:
            square:
              cut: {main: 1}
              allowance: 0
              outline: [{point: a, at: [0, 0]}, [20, 0], [20, 20], [0, 20]]
        sizes: {names: [34½, 36½, große], grade: {square: {a: [-1, 0]}}}
        """;
    StyleFile file =
        StyleFile.read("a.yaml", Folder.EMPTY.with("a.yaml", job.getBytes(StandardCharsets.UTF_8)));
    List<String> plain = List.of("34 1 2", "36 1 2", "grosse");
    StyleDxf.Ruled ruled = StyleDxf.ruled(file, List.of(), "a");
    Converted byRules = Interchange.read(ruled.dxf(), ruled.table());
    assertEquals(plain, byRules.file().design().sizes().names());
    Converted drawn = Interchange.read(StyleDxf.bytes(file, List.of()));
    assertEquals(plain, drawn.file().design().sizes().names());
    assertEquals("36 1 2", drawn.file().design().sizes().base());
  }
}
