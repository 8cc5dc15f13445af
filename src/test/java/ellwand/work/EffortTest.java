package ellwand.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class EffortTest {

  @Test
  void isToldAsItWasGiven() {
    assertEquals("30s", Effort.parse("30s").toString());
    assertEquals("0.25s", Effort.parse("0.25s").toString());
    assertEquals("7200s", Effort.parse("2h").toString());
    assertEquals("5000steps", Effort.parse("5000steps").toString());
    assertEquals("1s to 15s", Effort.asLongAsItPays(1, 15).toString());
    assertEquals("15s", Effort.asLongAsItPays(1, 15).whole().toString());
  }

  /** 5 s x 0.0563... in a part of an order was told as 0.28154647520000015s. */
  @Test
  void aPartOfATimeIsToldToTheThousandth() {
    assertEquals("0.282s", Effort.ofSeconds(0.28154647520000015).toString());
    assertEquals("10s", Effort.ofSeconds(30).share(3).toString());
  }
}
