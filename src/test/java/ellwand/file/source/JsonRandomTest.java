package ellwand.file.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The quick way to round a number beside the slow one. */
class JsonRandomTest {

  private static void same(double value) {
    BigDecimal slow = Json.roundedExactly(value);
    assertEquals(slow, Json.number(value).decimalValue(), () -> "of " + value);
    assertEquals(slow.scale(), Json.number(value).decimalValue().scale(), () -> "of " + value);
  }

  @Property
  void anyLength(@ForAll @DoubleRange(min = -1e7, max = 1e7) double mm) {
    same(mm);
  }

  @Property
  void anythingAtAll(@ForAll double value) {
    same(value);
  }

  @Property
  void besideAndOnTheMiddleBetweenTwo(@ForAll int millionths, @ForAll boolean above) {
    double middle = (millionths + 0.5) / 1e6;
    same(middle);
    same(above ? Math.nextUp(middle) : Math.nextDown(middle));
  }

  @Example
  void whereTheQuickWayEnds() {
    for (double value : new double[] {0, -0.0, 1e-9, -1e-9, 281474976.710655, 281474976.710656}) {
      same(value);
    }
  }
}
