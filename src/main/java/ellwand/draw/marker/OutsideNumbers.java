package ellwand.draw.marker;

import ellwand.draw.piece.Room;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Numbers beside pieces that are smaller on paper than their own number, each with a line to it.
 */
final class OutsideNumbers {

  private static final double POINTS = 7;

  /** How far from the piece a free place is looked for on paper, mm. */
  private static final double FARTHEST = 30;

  private static final double STEP = 1;
  private static final int DIRECTIONS = 24;

  private final List<Room> occupied;
  private final List<Box> taken = new ArrayList<>();
  private final Reading reading;

  /**
   * @param occupied where no number may stand
   */
  OutsideNumbers(List<Outline> occupied, Reading reading) {
    this.occupied = occupied.stream().map(Room::new).toList();
    this.reading = reading;
  }

  /** The nearest free place on the same zone; over the piece if there is none. */
  List<Item> number(Laid copy) {
    String words = Integer.toString(copy.number());
    double size = reading.points(POINTS);
    double width = Lettering.width(words, size);
    double height = size * Lettering.CAPITALS;
    Point from = copy.grain().through();
    for (double away = STEP; away <= FARTHEST; away += STEP) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS;
        Point middle =
            from.plus(new Point(Math.cos(angle), Math.sin(angle)).times(reading.mm(away)));
        Box box =
            new Box(middle.x(), middle.y(), middle.x(), middle.y())
                .grown(height / 2)
                .union(
                    new Box(
                        middle.x() - width / 2, middle.y(), middle.x() + width / 2, middle.y()));
        if (isFree(box.grown(reading.mm(0.6)), copy.zone().box())) {
          taken.add(box);
          Point end = from.towards(middle, Math.max(0, 1 - height / reading.mm(away)));
          return List.of(
              Item.Lines.open("pointer", Ink.line(Colour.INK, reading.mm(0.2)), from, end),
              text(words, middle, size));
        }
      }
    }
    return List.of(text(words, from, size));
  }

  private boolean isFree(Box box, Box zone) {
    return box.minX() >= zone.minX()
        && box.maxX() <= zone.maxX()
        && box.minY() >= zone.minY()
        && box.maxY() <= zone.maxY()
        && occupied.stream().noneMatch(p -> p.touches(box))
        && taken.stream().noneMatch(t -> t.touches(box));
  }

  private static Item text(String words, Point middle, double size) {
    Point base = new Point(middle.x(), middle.y() - size * Lettering.CAPITALS / 2);
    return Item.Text.of("label", words, base, size, Item.Anchor.MIDDLE);
  }
}
