package ellwand.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** An average of stretches must not hide a long one. */
class LongestStretchTest {

  @Test
  void isBetweenTwoCutsOrACutAndAnEnd() {
    // 60 cm of lay, cut at 10 and 15: 10, 5 and 45 cm.
    assertEquals(450, handling(200, 100.0, 150.0).longestStretchMm(), 1e-9);
    assertEquals(400, handling(200, 100.0, 500.0).longestStretchMm(), 1e-9);
    assertEquals(600, handling(600).longestStretchMm(), 1e-9);
  }

  private static Handling handling(double stretchMm, Double... cutsMm) {
    return new Handling(0, 0, 0, cutsMm.length, List.of(cutsMm), stretchMm, 0, 0, 0, 0);
  }
}
