package ellwand.draw.piece;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Shift;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Pieces standing side by side. */
record PieceRow(List<Standing> standing, double gapMm) implements Block {

  /** Fills rows from the left. */
  static List<PieceRow> rows(List<Standing> standing, double width, double gap) {
    List<List<Standing>> rows = new ArrayList<>();
    double used = 0;
    for (Standing one : standing) {
      double length = one.box().length();
      if (rows.isEmpty() || used + gap + length > width) {
        rows.add(new ArrayList<>());
        used = -gap;
      }
      rows.get(rows.size() - 1).add(one);
      used += gap + length;
    }
    return rows.stream().map(r -> new PieceRow(List.copyOf(r), gap)).toList();
  }

  static double widest(List<Standing> standing) {
    return standing.stream().mapToDouble(s -> s.box().length()).max().orElse(0);
  }

  @Override
  public double heightMm() {
    return standing.stream().mapToDouble(s -> s.box().width()).max().orElse(0);
  }

  @Override
  public List<Item> items(Point upperLeft) {
    List<Item> items = new ArrayList<>();
    double x = upperLeft.x();
    double y = upperLeft.y() - heightMm();
    for (Standing one : standing) {
      Box box = one.box();
      Point way = new Point(x - box.minX(), y - box.minY());
      List<Item> shifted = Shift.by(way, one.items().get());
      items.add(Item.Group.titled(one.id(), "piece", one.title(), shifted));
      x += box.length() + gapMm;
    }
    return items;
  }
}
