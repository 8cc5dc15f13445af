package ellwand.pattern;

import ellwand.geometry.Point;
import java.util.function.UnaryOperator;

/**
 * A stretch of an edge that is gathered.
 *
 * @param from where it starts, on the sewing line
 * @param to where it ends, farther along the edge
 * @param awayMm how much shorter the edge becomes by it; negative where it is stretched
 */
public record Gathers(Point from, Point to, double awayMm) {

  Gathers moved(UnaryOperator<Point> map) {
    return new Gathers(map.apply(from), map.apply(to), awayMm);
  }

  Gathers reversed() {
    return new Gathers(to, from, awayMm);
  }
}
