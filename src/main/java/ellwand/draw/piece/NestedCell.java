package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cutting lines of one piece in all sizes on one another, top up, each with its size. */
final class NestedCell {

  private static final Motion TOP_UP = new Motion(false, 90, 0, 0);

  /** Places round the outline at which a size's name is tried. */
  private static final int PLACES = 90;

  private final String kind;
  private final List<String> sizes;
  private final List<CutPiece> cuts;
  private final Colour fill;
  private final Reading reading;

  /**
   * @param bySize from small to large
   */
  NestedCell(String kind, Map<String, CutPiece> bySize, Colour fill, Reading reading) {
    this.kind = kind;
    this.sizes = List.copyOf(bySize.keySet());
    this.cuts = bySize.values().stream().map(c -> c.moved(TOP_UP)).toList();
    this.fill = fill;
    this.reading = reading;
  }

  /** Everything drawn, the name under it included. */
  Box box() {
    Box lines = cuts.stream().map(c -> c.cutting().box()).reduce(Box::union).orElseThrow();
    double name = Lettering.width(kind, reading.points(Reading.VALUE));
    double right = Math.max(lines.maxX() + margin(), lines.minX() + name);
    double low = lines.minY() - margin() - reading.points(Reading.VALUE) * Lettering.LINE;
    return new Box(lines.minX() - margin(), low, right, lines.maxY() + margin());
  }

  /** Room for the sizes that are written outside. */
  private double margin() {
    return reading.mm(3);
  }

  List<Item> items() {
    List<Item> items = new ArrayList<>();
    Outline smallest = cuts.get(0).cutting();
    items.add(Item.Lines.closed("outline", Ink.area(fill.tint(0.5)), smallest.points()));
    for (int i = 0; i < cuts.size(); i++) {
      items.add(
          Item.Lines.closed(
              "cutting-line", SizeKey.ink(i, reading), cuts.get(i).cutting().points()));
    }
    cuts.get(0)
        .fold()
        .ifPresent(f -> items.add(new PieceLines(reading).fold(f.from(), longest(f.from()))));
    items.addAll(names());
    Box box = box();
    double size = reading.points(Reading.VALUE);
    items.add(
        Item.Text.of(
                "piece-name",
                kind,
                new Point(box.minX() + margin(), box.minY() + size * Lettering.DESCENT),
                size,
                Item.Anchor.START)
            .strongly());
    return items;
  }

  /** The far end of the longest fold edge, of all sizes. */
  private Point longest(Point from) {
    return cuts.stream()
        .flatMap(c -> c.fold().stream())
        .flatMap(f -> List.of(f.from(), f.to()).stream())
        .reduce((a, b) -> a.distance(from) >= b.distance(from) ? a : b)
        .orElse(from);
  }

  /** Each size's name on its own line, where it is clear of the others' lines and names. */
  private List<Item> names() {
    List<Item> items = new ArrayList<>();
    List<Box> taken = new ArrayList<>();
    double size = reading.points(Reading.SMALL);
    boolean allAlike = cuts.stream().map(CutPiece::cutting).distinct().count() == 1;
    for (int i = 0; i < (allAlike ? 1 : cuts.size()); i++) {
      String name = allAlike ? "all sizes" : sizes.get(i);
      Optional<Box> room = room(i, Lettering.width(name, size), size, taken);
      if (room.isPresent()) {
        Box box = room.get();
        taken.add(box.grown(size * 0.2));
        items.add(
            Item.Lines.closed("size-ground", Ink.area(Colour.WHITE), Outline.of(box).points()));
        items.add(
            Item.Text.of(
                "size-name",
                name,
                new Point(box.centre().x(), box.centre().y() - size * Lettering.CAPITALS / 2),
                size,
                Item.Anchor.MIDDLE));
      }
    }
    return items;
  }

  private Optional<Box> room(int of, double width, double height, List<Box> taken) {
    List<Point> ring = cuts.get(of).cutting().points();
    Box best = null;
    double mostClear = 0;
    for (int k = 0; k < PLACES; k++) {
      Point at = along(ring, (double) k / PLACES);
      Box box =
          new Box(
              at.x() - width * 0.6,
              at.y() - height * 0.5,
              at.x() + width * 0.6,
              at.y() + height * 0.5);
      double clear = clearance(of, at);
      if (clear > mostClear && taken.stream().noneMatch(t -> t.touches(box))) {
        mostClear = clear;
        best = box;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Distance from a place on one size's line to the lines of the others. */
  private double clearance(int of, Point at) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < cuts.size(); i++) {
      if (!cuts.get(i).cutting().equals(cuts.get(of).cutting())) {
        List<Point> ring = cuts.get(i).cutting().points();
        for (int k = 0; k < ring.size(); k++) {
          least = Math.min(least, distance(at, ring.get(k), ring.get((k + 1) % ring.size())));
        }
      }
    }
    return least;
  }

  private static double distance(Point at, Point a, Point b) {
    Point along = b.minus(a);
    double t = Math.max(0, Math.min(1, at.minus(a).dot(along) / along.dot(along)));
    return at.distance(a.towards(b, t));
  }

  private static Point along(List<Point> ring, double share) {
    double whole = 0;
    for (int i = 0; i < ring.size(); i++) {
      whole += ring.get(i).distance(ring.get((i + 1) % ring.size()));
    }
    double left = share * whole;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if (left <= a.distance(b)) {
        return a.towards(b, left / a.distance(b));
      }
      left -= a.distance(b);
    }
    return ring.get(0);
  }
}
