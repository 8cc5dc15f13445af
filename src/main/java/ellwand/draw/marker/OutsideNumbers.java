package ellwand.draw.marker;

import ellwand.draw.piece.Room;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.TurnedNumber;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Numbers beside pieces that are smaller on paper than their own number, each with a line to it.
 */
final class OutsideNumbers {

  private static final double POINTS = 7;

  /** How far from the piece a free place is looked for on paper, mm. */
  private static final double FARTHEST = 30;

  private static final double STEP = 1;
  private static final double CLEAR = 0.6;

  /** Side of the cells by which places are looked up on paper, mm: about that of a number. */
  private static final double CELL = 5;

  private static final int DIRECTIONS = 24;

  /** Places along and across a piece at which its line may begin. */
  private static final int STARTS = 3;

  private final Nearby<Room> occupied;
  private final Nearby<Box> taken;
  private final Nearby<List<Point>> pointers;
  private final Reading reading;

  /**
   * @param occupied where no number may stand
   * @param words that no line may run through
   */
  OutsideNumbers(List<Outline> occupied, List<Box> words, Reading reading) {
    double mean = occupied.stream().mapToDouble(o -> o.box().width()).average().orElse(0);
    double cell = Math.max(reading.mm(CELL), mean / 2);
    this.occupied = new Nearby<>(cell);
    this.taken = new Nearby<>(cell);
    this.pointers = new Nearby<>(cell);
    this.reading = reading;
    occupied.forEach(o -> this.occupied.add(o.box(), new Room(o)));
    words.forEach(w -> taken.add(w, w));
  }

  /** A number and the line from it to its piece. */
  private record Place(Box box, Point from, Point to) {}

  /**
   * The nearest free place on the same zone from which a line runs to the piece and over nothing
   * else; over other pieces, but no words, if there is none; on the piece if there is none either.
   */
  List<Item> number(Laid copy) {
    return beside(
        Integer.toString(copy.number()),
        copy.copy().outline(),
        copy.grain().through(),
        copy.zone().box());
  }

  /**
   * The same for other words.
   *
   * @param outline what they belong to
   * @param middle a place inside it
   * @param zone that they keep to
   */
  List<Item> beside(String words, Outline outline, Point middle, Box zone) {
    double size = reading.points(POINTS);
    Optional<Place> place = place(outline, middle, zone, words);
    if (place.isEmpty()) {
      Item.Text text = text(words, middle, size);
      Box ground = text.box().grown(reading.mm(0.2));
      taken.add(ground, ground);
      List<Item> items = new ArrayList<>();
      items.add(
          Item.Lines.closed("label-ground", Ink.area(Colour.WHITE), Outline.of(ground).points()));
      items.addAll(TurnedNumber.items(text));
      return items;
    }
    Place found = place.get();
    taken.add(found.box(), found.box());
    List<Point> line = List.of(found.from(), found.to());
    pointers.add(Box.around(line), line);
    List<Item> items = new ArrayList<>();
    items.add(
        Item.Lines.open(
            "pointer", Ink.line(Colour.INK, reading.mm(0.2)), found.from(), found.to()));
    items.addAll(TurnedNumber.items(text(words, found.box().centre(), size)));
    return items;
  }

  private Optional<Place> place(Outline outline, Point inside, Box zone, String words) {
    double size = reading.points(POINTS);
    double width = Lettering.width(words, size);
    double height = size * Lettering.CAPITALS;
    Room own = new Room(outline);
    List<Point> starts = starts(inside, own);
    Optional<Place> overOthers = Optional.empty();
    for (double away = STEP; away <= FARTHEST; away += STEP) {
      for (Point from : starts) {
        for (int i = 0; i < DIRECTIONS; i++) {
          double angle = 2 * Math.PI * i / DIRECTIONS;
          Point out = new Point(Math.cos(angle), Math.sin(angle));
          Point middle = from.plus(out.times(reading.mm(away)));
          Box box =
              new Box(
                  middle.x() - width / 2,
                  middle.y() - height / 2,
                  middle.x() + width / 2,
                  middle.y() + height / 2);
          double before = Math.abs(out.x()) * width / 2 + Math.abs(out.y()) * height;
          Point to = from.towards(middle, Math.max(0, 1 - before / reading.mm(away)));
          if (isFree(box.grown(reading.mm(CLEAR)), zone) && crossesNoWords(from, to)) {
            Optional<Place> here = Optional.of(new Place(box, from, to));
            if (keepsTo(own, from, to)) {
              return here;
            }
            overOthers = overOthers.or(() -> here);
          }
        }
      }
    }
    return overOthers;
  }

  /** Places on the piece, the middle first. */
  private static List<Point> starts(Point middle, Room own) {
    List<Point> starts = new ArrayList<>();
    Box box = own.box();
    for (int i = 1; i < STARTS; i++) {
      for (int j = 1; j < STARTS; j++) {
        Point at =
            new Point(
                box.minX() + box.length() * i / STARTS, box.minY() + box.width() * j / STARTS);
        if (own.isCrossed(at, at, 1)) {
          starts.add(at);
        }
      }
    }
    starts.sort(Comparator.comparingDouble(middle::distance));
    starts.add(0, middle);
    return starts;
  }

  private boolean isFree(Box box, Box zone) {
    return box.minX() >= zone.minX()
        && box.maxX() <= zone.maxX()
        && box.minY() >= zone.minY()
        && box.maxY() <= zone.maxY()
        && !taken.any(box, t -> t.touches(box))
        && !pointers.any(box, line -> Room.crosses(line, box))
        && !occupied.any(box, room -> room.touches(box));
  }

  private boolean crossesNoWords(Point from, Point to) {
    List<Point> line = List.of(from, to);
    return !taken.any(Box.around(line), words -> Room.crosses(line, words));
  }

  /** Whether a line runs over nothing but what it belongs to. */
  private boolean keepsTo(Room own, Point from, Point to) {
    Box along = Box.around(List.of(from, to));
    return !occupied.any(
        along,
        other ->
            !other.box().equals(own.box())
                && other.box().touches(along)
                && other.isCrossed(from, to, reading.mm(0.4)));
  }

  private static Item.Text text(String words, Point middle, double size) {
    Point base = new Point(middle.x(), middle.y() - size * Lettering.CAPITALS / 2);
    return Item.Text.of("label", words, base, size, Item.Anchor.MIDDLE);
  }
}
