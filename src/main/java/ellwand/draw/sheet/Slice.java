package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A slice of a picture: what lies between two lines across it. Lines and areas are cut there; words
 * go to where they begin, and a copy whose words would be cut has its number instead.
 *
 * @param from x, mm; may be infinite
 * @param ending of the ids, to keep them apart from those of other slices
 */
record Slice(double from, double to, String ending, Reading reading) {

  List<Item> of(List<Item> items) {
    List<Item> kept = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        kept.addAll(group(group));
      } else if (item instanceof Item.Lines lines) {
        kept.addAll(lines(lines));
      } else if (item instanceof Item.Text text && holds(text.at().x())) {
        kept.add(text);
      }
    }
    return kept;
  }

  private boolean holds(double x) {
    return x >= from && x < to;
  }

  private boolean holdsAll(Item.Text text) {
    if (text.turnDegrees() % 180 != 0) {
      return text.at().x() - text.sizeMm() >= from && text.at().x() + text.sizeMm() <= to;
    }
    double begin = text.at().x() - text.anchor().share() * text.widthMm();
    return begin >= from && begin + text.widthMm() <= to;
  }

  private List<Item> group(Item.Group group) {
    List<Item> inner = new ArrayList<>(of(group.items()));
    if (group.number().isPresent()) {
      inner.removeIf(item -> item instanceof Item.Text text && !holdsAll(text));
    }
    if (inner.isEmpty()) {
      return List.of();
    }
    if (inner.stream().noneMatch(Item.Text.class::isInstance)) {
      group.number().ifPresent(number -> inner.addAll(number(number, inner)));
    }
    return List.of(group.with(inner).called(group.id() + ending));
  }

  /** On what of its lines lies here; none where only a mark or a leader of it does. */
  private List<Item> number(int number, List<Item> parts) {
    List<Point> here =
        parts.stream()
            .filter(Item.Lines.class::isInstance)
            .flatMap(l -> ((Item.Lines) l).lines().stream().flatMap(List::stream))
            .toList();
    if (here.isEmpty()) {
      return List.of();
    }
    return TurnedNumber.items(
        Item.Text.of(
            "number-again",
            Integer.toString(number),
            Box.around(here).centre(),
            reading.points(Reading.TEXT),
            Item.Anchor.MIDDLE));
  }

  private List<Item> lines(Item.Lines lines) {
    List<Item> kept = new ArrayList<>();
    Ink ink = lines.ink();
    List<List<Point>> whole = lines.lines().stream().filter(this::holdsAll).toList();
    if (whole.size() == lines.lines().size()) {
      return List.of(lines);
    }
    if (lines.closed() && ink.fill().isPresent()) {
      List<List<Point>> areas =
          lines.lines().stream().map(this::area).filter(a -> a.size() > 2).toList();
      if (!areas.isEmpty()) {
        kept.add(new Item.Lines(lines.kind(), areas, true, Ink.area(ink.fill().get())));
      }
    }
    if (ink.line().isPresent()) {
      List<List<Point>> strokes =
          lines.lines().stream().flatMap(l -> strokes(l, lines.closed()).stream()).toList();
      if (!strokes.isEmpty()) {
        kept.add(
            new Item.Lines(
                lines.kind(),
                strokes,
                false,
                Ink.line(ink.line().get(), ink.widthMm(), ink.dashesMm().toArray(Double[]::new))));
      }
    }
    return kept;
  }

  private boolean holdsAll(List<Point> line) {
    return line.stream().allMatch(p -> p.x() >= from && p.x() <= to);
  }

  /** The part of an area, cut at one line and then at the other (Sutherland and Hodgman). */
  private List<Point> area(List<Point> ring) {
    return cut(cut(ring, from, 1), to, -1);
  }

  private static List<Point> cut(List<Point> ring, double x, int side) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      boolean inside = side * (a.x() - x) >= 0;
      if (inside) {
        kept.add(a);
      }
      if (inside != side * (b.x() - x) >= 0) {
        kept.add(at(a, b, x));
      }
    }
    return kept;
  }

  private static Point at(Point a, Point b, double x) {
    return new Point(x, a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()));
  }

  private List<List<Point>> strokes(List<Point> line, boolean closed) {
    List<List<Point>> strokes = new ArrayList<>();
    List<Point> stroke = new ArrayList<>();
    for (int i = 0; i < line.size() - (closed ? 0 : 1); i++) {
      Point a = line.get(i);
      Point b = line.get((i + 1) % line.size());
      Point first = a.x() < from ? towards(a, b, from) : a.x() > to ? towards(a, b, to) : a;
      Point second = b.x() < from ? towards(b, a, from) : b.x() > to ? towards(b, a, to) : b;
      if (first == null || second == null) {
        continue;
      }
      if (stroke.isEmpty() || !stroke.get(stroke.size() - 1).equals(first)) {
        stroke = new ArrayList<>(List.of(first));
        strokes.add(stroke);
      }
      stroke.add(second);
    }
    return strokes;
  }

  /** Where a stretch of line that begins outside comes in; null if it does not. */
  private static Point towards(Point outside, Point other, double x) {
    boolean comesIn = outside.x() < x ? other.x() > x : other.x() < x;
    return comesIn ? at(outside, other, x) : null;
  }
}
