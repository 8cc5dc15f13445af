package ellwand.draw.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.geometry.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers that read as others when they are turned over are underlined. */
class TurnedNumberTest {

  @ParameterizedTest
  @CsvSource({"6,2", "9,2", "16,2", "89,2", "1,1", "8,1", "26,1", "10,1", "6 Front,1"})
  void isUnderlinedOnlyWhereItCanBeMisread(String words, int items) {
    Item.Text text = Item.Text.of("label", words, new Point(0, 0), 3, Item.Anchor.MIDDLE);
    assertEquals(items, TurnedNumber.items(text).size());
  }
}
