package ellwand.draw.tiles;

import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Where something is drawn: areas, lines and words, whatever they look like. */
final class Inked {

  private final List<Part> parts = new ArrayList<>();

  /**
   * @param area what is filled; null for a line or words
   * @param line its stretches; of words none, their box counts
   */
  private record Part(Box box, Path2D area, List<Point> line) {

    boolean touches(Box other) {
      return area == null
          ? crosses(other)
          : area.intersects(other.minX(), other.minY(), other.length(), other.width());
    }

    /** The same, but that what it fills counts for nothing. */
    boolean crosses(Box other) {
      return box.touches(other) && (line.isEmpty() || runsThrough(other));
    }

    private boolean runsThrough(Box other) {
      Rectangle2D room =
          new Rectangle2D.Double(other.minX(), other.minY(), other.length(), other.width());
      for (int i = 1; i < line.size(); i++) {
        Point a = line.get(i - 1);
        Point b = line.get(i);
        if (room.intersectsLine(new Line2D.Double(a.x(), a.y(), b.x(), b.y()))) {
          return true;
        }
      }
      return false;
    }
  }

  Inked(List<Item> items) {
    items.forEach(this::add);
  }

  /** Whether something of it lies in a box, or runs through it. */
  boolean touches(Box box) {
    return parts.stream().anyMatch(p -> p.touches(box));
  }

  /** The same of its lines and words alone, whatever they fill. */
  boolean crosses(Box box) {
    return parts.stream().anyMatch(p -> p.crosses(box));
  }

  private void add(Item item) {
    if (item instanceof Item.Group group) {
      group.items().forEach(this::add);
    } else if (item instanceof Item.Lines lines) {
      lines.lines().forEach(line -> parts.add(part(lines, line)));
    } else if (item instanceof Item.Text text) {
      parts.add(new Part(text.box(), null, List.of()));
    }
  }

  private static Part part(Item.Lines lines, List<Point> line) {
    List<Point> all = new ArrayList<>(line);
    if (lines.closed()) {
      all.add(line.get(0));
    }
    Path2D area = null;
    if (lines.closed() && lines.ink().fill().isPresent()) {
      area = new Path2D.Double();
      area.moveTo(line.get(0).x(), line.get(0).y());
      for (Point p : line.subList(1, line.size())) {
        area.lineTo(p.x(), p.y());
      }
      area.closePath();
    }
    return new Part(Box.around(line), area, all);
  }
}
