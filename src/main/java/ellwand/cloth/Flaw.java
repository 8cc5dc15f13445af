package ellwand.cloth;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of the cloth that no piece may take: a hole, a stain, a slub, a corner that is not there.
 *
 * @param name what it is called in drawings and messages
 * @param outline on the open cloth, right side up, as it comes to the table: x from the cut end, y
 *     from the edge of the cloth (selvedge included) to the left of x, mm. On a tube y begins at
 *     one fold of the tube as it lies flat, and runs on over the other to the back
 */
public record Flaw(String name, Outline outline) {

  /** Corners of the line that is drawn outside a round flaw. */
  private static final int ROUND = 32;

  /** A round flaw: a line of straight stretches just outside the circle. */
  public static Flaw round(String name, Point middle, double radiusMm) {
    double corner = radiusMm / Math.cos(Math.PI / ROUND);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < ROUND; i++) {
      double angle = 2 * Math.PI * i / ROUND;
      points.add(middle.plus(new Point(corner * Math.cos(angle), corner * Math.sin(angle))));
    }
    return new Flaw(name, Outline.of(points));
  }

  /**
   * What is missing at an uneven cut end.
   *
   * @param end points of the end across the cloth, from edge to edge; the cloth lies beyond them
   */
  public static Flaw cutEnd(List<Point> end) {
    List<Point> points = new ArrayList<>(end);
    double least = Math.min(0, end.stream().mapToDouble(Point::x).min().orElseThrow()) - 1;
    points.add(new Point(least, end.get(end.size() - 1).y()));
    points.add(new Point(least, end.get(0).y()));
    return new Flaw("cut end", Outline.of(points));
  }
}
