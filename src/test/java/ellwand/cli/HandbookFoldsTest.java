package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What home-sewing handbooks say of folding cloth (common to them, and common practice): a part
 * fold is as deep as its widest folded piece; a crosswise fold is for pieces too wide for the
 * lengthwise fold, and never for cloth that runs one way, since its lower layer heads the other
 * way.
 */
class HandbookFoldsTest {

  @TempDir private Path folder;

  /** Two half pieces and an apron as long as both, that leaves just room for the wider one. */
  private static String wrap(double back, double front, double apron) {
    return """
        ellwand: 1
        unit: cm
        style:
          name: Wrap
          size: M
          allowance: 1.5
          pieces:
            back:
              cut: {main: 1 on fold}
              fold: centre
              outline: [{point: a, at: [0, 0]}, [0, %1$s], [47, %1$s], {point: b, at: [47, 0]}]
              edges: {centre: {from: b, to: a}}
            front:
              cut: {main: 1 on fold}
              fold: centre
              outline: [{point: a, at: [0, 0]}, [0, %2$s], [37, %2$s], {point: b, at: [37, 0]}]
              edges: {centre: {from: b, to: a}}
            apron: {cut: {main: 1}, outline: [[0, 0], [87, 0], [87, %3$s], [0, %3$s]]}
        cloths: {main: {width: 100, selvedge: 1, fold: part fold, direction: one way, gap: 0}}
        order: {garments: {M: 1}}
        """
        .formatted(back, front, apron);
  }

  /**
   * By hand: halves end to end are 47 + 3 + 37 + 3 = 90 cm, as long as the apron with its
   * allowances. Folded is the wider half and its one side allowance of 1.5; the turned-in edge
   * covers that much and a selvedge more, so 98 - 2 x depth - 1 is left single.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 17, 21.5", // the back is wider
    "14, 23, 24.5", // the front is wider
    "18, 18, 19.5" // neither
  })
  void aPartFoldIsAsDeepAsItsWidestPieceWithItsAllowance(double back, double front, double depth)
      throws IOException {
    double single = 98 - 2 * depth - 1;
    Marked marked = Marked.lay(folder, wrap(back, front, single - 3), "200steps");
    assertEquals(900, marked.lengthMm(), 1e-6);
    JsonNode folded = marked.zone("folded");
    assertEquals(10 * depth, folded.get("y1").asDouble() - folded.get("y0").asDouble(), 0.011);
    for (String half : new String[] {"back", "front"}) {
      JsonNode copy = marked.copies(half).get(0);
      assertEquals("folded", copy.get("zone").asText());
      assertEquals(0, Marked.reach(copy)[2], 1e-6, "its centre lies on the fold");
    }
    JsonNode beside = marked.zone("single");
    assertEquals(10 * single, beside.get("y1").asDouble() - beside.get("y0").asDouble(), 0.021);
  }

  /** A pair 70 cm wide, with a hand; half of the cloth is 49 cm. */
  private static String cape(String fold, String direction) {
    return """
        ellwand: 1
        unit: cm
        style:
          name: Cape
          size: M
          allowance: 1
          pieces:
            cape: {cut: {main: pair}, outline: [[0, 0], [38, 0], [30, 68], [0, 68]]}
        cloths: {main: {width: 100, selvedge: 1, fold: %s, direction: %s, gap: 0}}
        order: {garments: {M: 1}}
        """
        .formatted(fold, direction);
  }

  @Test
  void whatIsTooWideForTheLengthwiseFoldIsCutDoubleFromTheCrosswise() throws IOException {
    Marked lengthwise = Marked.lay(folder, cape("lengthwise fold", "any way"), "50steps");
    assertEquals(2, lengthwise.copies("cape").size(), "no pair lies in the fold");
    Marked crosswise = Marked.lay(folder, cape("crosswise fold", "any way"), "50steps");
    assertEquals(1, crosswise.copies("cape").size());
    assertEquals("pair", crosswise.copies("cape").get(0).get("form").asText());
    assertEquals(2 * crosswise.lengthMm(), crosswise.clothLengthMm(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"one way", "one way per garment"})
  void clothThatRunsOneWayIsNeverFoldedCrosswise(String direction) throws IOException {
    Path job = Files.writeString(folder.resolve("named.yaml"), cape("crosswise fold", direction));
    Path out = folder.resolve("named");
    Ran named = Ran.of("lay", job, "--effort", "50steps", "--out", out);
    assertEquals(2, named.code(), named.out());
    assertTrue(named.err().contains("one ply would head the other way"), named.err());
    assertTrue(Files.notExists(out));
    Marked any = Marked.lay(folder, cape("any", direction), "50steps");
    assertNotEquals("crosswise fold", any.marker().get("fold").asText());
    // Cut across and the upper length turned round, both plies head the same way.
    Marked turned = Marked.lay(folder, cape("crosswise turned", direction), "50steps");
    assertEquals("pair", turned.copies("cape").get(0).get("form").asText());
  }
}
