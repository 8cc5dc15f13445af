package ellwand.draw.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Numbers of a drawing against the JDK's own way to round and write them. */
class NumberTest {

  @Property(tries = 2000)
  void numbersAreWrittenToAThousandth(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
    assertEquals(asFormatted(value), SvgWriter.number(value));
  }

  @Property(tries = 2000)
  void whatLiesHalfWayIsRoundedAsItReads(@ForAll @IntRange(min = -200_000, max = 200_000) int n) {
    for (double value : new double[] {n / 1000.0, n / 2000.0, n / 10_000.0}) {
      assertEquals(asFormatted(value), SvgWriter.number(value));
    }
  }

  private static String asFormatted(double value) {
    String trimmed = String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    return trimmed.equals("-0") ? "0" : trimmed;
  }
}
