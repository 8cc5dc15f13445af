package ellwand.draw.tiles;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a page is called, clear of what is drawn on it.
 *
 * @param name of its place among the others
 * @param number of how many, in words
 * @param title of what is printed
 */
record PageName(String name, String number, String title) {

  private static final Reading READING = new Reading(1);
  private static final double SIZE = READING.points(18);
  private static final double SMALL = READING.points(Reading.SMALL);

  /** From the edges of the page, mm. */
  private static final double INSET = 3;

  /** White all round it where there is room, mm. */
  private static final double CLEAR = 1;

  /** Between places that are tried, mm. */
  private static final double STEP = 4;

  /**
   * As near to the lower left of a page as it lies on no line and no words, without the title if
   * need be; in that corner where there is no such place.
   *
   * @param room what is seen of the page, mm
   * @param taken what is drawn there
   */
  List<Item> items(Box room, Inked taken) {
    Box inner = room.grown(-INSET);
    String all = number + " · " + title;
    return clear(all, inner, taken)
        .or(() -> clear(number, inner, taken))
        .orElseGet(() -> words(all, inner, new Point(inner.minX(), inner.minY())));
  }

  private Optional<List<Item>> clear(String about, Box inner, Inked taken) {
    Point corner = new Point(inner.minX(), inner.minY());
    Box covered = covered(words(about, inner, corner));
    List<Point> shifts = new ArrayList<>();
    for (double up = 0; covered.maxY() + up <= inner.maxY(); up += STEP) {
      for (double right = 0; covered.maxX() + right <= inner.maxX(); right += STEP) {
        shifts.add(new Point(right, up));
      }
    }
    return shifts.stream()
        .sorted(Comparator.comparingDouble(Point::norm))
        .filter(shift -> !taken.crosses(covered.shifted(shift.x(), shift.y()).grown(CLEAR)))
        .findFirst()
        .map(shift -> words(about, inner, corner.plus(shift)));
  }

  private static Box covered(List<Item> words) {
    return Item.texts(words).map(Item.Text::box).reduce(Box::union).orElseThrow();
  }

  private List<Item> words(String about, Box inner, Point at) {
    double right = Lettering.width(name, SIZE) + SIZE * 0.3;
    String fitting = Lettering.shortened(about, SMALL, inner.length() - right);
    return List.of(
        Item.Text.of("page-name", name, at, SIZE, Item.Anchor.START).strongly().in(Colour.GREY),
        Item.Text.of("page-about", fitting, at.plus(new Point(right, 0)), SMALL, Item.Anchor.START)
            .in(Colour.GREY));
  }
}
