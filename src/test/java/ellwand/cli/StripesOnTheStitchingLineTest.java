package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * 'Match stripes on the stitching line, not on the cutting edge': Successful Sewing, p. 108. Where
 * the stripes come is worked from the cutting lines of the marker by the allowances alone.
 */
class StripesOnTheStitchingLineTest {

  private static final double REPEAT = 70;
  private static final double FIRST = 20;
  private static final double FRONT_HEM = 20;
  private static final double BACK_HEM = 50;

  /** 80 and 100 mm above the hem's sewing line, see below. */
  private static final double FRONT_MARK = 80;

  private static final double BACK_MARK = 100;

  /**
   * Both sides are 50 cm long: the front's leans by 3 : 4, the back's runs along the grain. So a
   * mark 10 cm up the side is 10 x 4 / 5 = 8 cm above the front's hem, and 10 above the back's.
   */
  private static final String SMOCK =
      """
      ellwand: 1
      unit: cm
      style:
        name: Smock
        size: M
        allowance: 1
        match:
          - [front.side @ 10, back.side @ 10]
        pieces:
          front:
            cut: {main: pair}
            outline:
              - {point: middle, at: [0, 0]}
              - {point: hem, at: [0, 45]}
              - {point: arm, at: [40, 15]}
              - [40, 0]
            edges:
              hem: {from: middle, to: hem, allowance: 2}
              side: {from: hem, to: arm, allowance: 1}
          back:
            cut: {main: pair}
            outline:
              - {point: middle, at: [0, 0]}
              - {point: hem, at: [0, 32]}
              - {point: arm, at: [50, 32]}
              - [50, 0]
            edges:
              hem: {from: middle, to: hem, allowance: 5}
              side: {from: hem, to: arm, allowance: 2.5}
      cloths:
        main:
          width: 150
          selvedge: 1
          gap: 0
          fold: %s
          direction: %s
          repeat: {along: 7, start: {along: 2}}
      order: {garments: {M: 1}}
      """;

  @TempDir private Path folder;

  /** How far above a place of a piece the next stripe lies, seen the way up that it is worn. */
  private static double toNextStripe(JsonNode copy, double aboveCutHem) {
    boolean up = copy.get("heading").asText().equals("up");
    double[] reach = Marked.reach(copy);
    double x = up ? reach[0] + aboveCutHem : reach[1] - aboveCutHem;
    double next = up ? FIRST - x : x - FIRST;
    return next - REPEAT * Math.floor(next / REPEAT);
  }

  /** The least of a difference and its rest to a whole repeat. */
  private static double apart(double one, double other) {
    return Math.abs(Math.IEEEremainder(one - other, REPEAT));
  }

  private void assertMatched(String fold, String direction) throws IOException {
    Marked marked = Marked.lay(folder, SMOCK.formatted(fold, direction), "100steps");
    for (JsonNode front : marked.copies("front")) {
      for (JsonNode back : marked.copies("back")) {
        double onFront = toNextStripe(front, FRONT_HEM + FRONT_MARK);
        double onBack = toNextStripe(back, BACK_HEM + BACK_MARK);
        assertEquals(0, apart(onFront, onBack), 1e-5, () -> front + " beside " + back);
        // Ten up from the cut hems they do not meet: 30 mm of hem, less the 20 between the marks.
        assertTrue(apart(toNextStripe(front, 100), toNextStripe(back, 100)) > 1);
      }
    }
  }

  @Test
  void theyMeetOnTheStitchingLineOfOpenCloth() throws IOException {
    assertMatched("open", "one way");
  }

  @Test
  void theyMeetOnTheStitchingLineOfFoldedCloth() throws IOException {
    assertMatched("lengthwise fold", "any way");
  }
}
