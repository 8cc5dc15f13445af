package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * What one file or page shows, true to size in mm, y up.
 *
 * @param frame all of it lies within
 */
public record Drawing(String title, Box frame, List<Item> items) {

  public Drawing {
    title = Lettering.clean(title);
    items = List.copyOf(items);
  }

  /**
   * Pages as one drawing, the first on top.
   *
   * @param gapMm between them
   */
  public static Drawing underOneAnother(List<Drawing> pages, double gapMm) {
    Drawing first = pages.get(0);
    List<Item> items = new ArrayList<>(first.items());
    Box frame = first.frame();
    for (int i = 1; i < pages.size(); i++) {
      Drawing page = pages.get(i);
      Point way =
          new Point(frame.minX() - page.frame().minX(), frame.minY() - gapMm - page.frame().maxY());
      items.addAll(calledAfter("-page-" + (i + 1), Shift.by(way, page.items())));
      frame =
          frame.union(
              new Box(
                  frame.minX(),
                  page.frame().minY() + way.y(),
                  frame.minX() + page.frame().length(),
                  frame.minY()));
    }
    return new Drawing(first.title(), frame, items);
  }

  /** The same with ids that no other page has. */
  private static List<Item> calledAfter(String ending, List<Item> items) {
    return items.stream()
        .map(
            item ->
                item instanceof Item.Group g
                    ? g.with(calledAfter(ending, g.items())).called(g.id() + ending)
                    : item)
        .toList();
  }

  /** With white all round. */
  public Drawing withMargin(double mm) {
    return new Drawing(title, frame.grown(mm), items);
  }
}
