package ellwand.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class AreaTest {

  @Test
  void isShownInTheSquareOfItsUnit() {
    assertEquals("412 cm²", new Area(41_200).show(Unit.CM));
    assertEquals("1.24 m²", new Area(1_240_000).show(Unit.MM));
    // 1 sq yd = 9 sq ft = 1296 sq in = 0.836 127 36 m² exactly (international yard, 1959).
    assertEquals("1.00 sq yd", new Area(836_127.36).show(Unit.YARD));
    assertEquals("648 sq in", new Area(836_127.36 / 2).show(Unit.INCH));
  }

  @Test
  void mustBeANumber() {
    assertThrows(IllegalArgumentException.class, () -> new Area(Double.NaN));
  }
}
