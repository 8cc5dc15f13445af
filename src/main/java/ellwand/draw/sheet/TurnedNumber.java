package ellwand.draw.sheet;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import java.util.List;

/** Numbers that read as others when they are turned over: 6, 9, 16, 89. They are underlined. */
public final class TurnedNumber {

  private TurnedNumber() {}

  /** Whether all of its digits have a like when turned, and one of them is another then. */
  static boolean misread(String words) {
    return words.matches("[01689]*[69][01689]*");
  }

  /** A number by itself, underlined where it could be misread. */
  public static List<Item> items(Item.Text number) {
    if (!misread(number.words())) {
      return List.of(number);
    }
    double left = -number.widthMm() * number.anchor().share();
    double down = -number.sizeMm() * Lettering.DESCENT * 0.7;
    Point at = number.at();
    Motion inPlace = new Motion(false, number.turnDegrees(), at.x(), at.y());
    return List.of(
        number,
        Item.Lines.open(
            "underline",
            Ink.line(number.colour(), number.sizeMm() * 0.08),
            inPlace.apply(new Point(left, down)),
            inPlace.apply(new Point(left + number.widthMm(), down))));
  }
}
