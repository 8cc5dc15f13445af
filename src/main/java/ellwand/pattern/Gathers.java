package ellwand.pattern;

import ellwand.geometry.Point;
import java.util.function.UnaryOperator;

/**
 * A stretch of an edge that is gathered, pleated evenly or stretched.
 *
 * @param from where it starts, on the sewing line
 * @param to where it ends, farther along the edge
 * @param awayMm how much shorter the edge becomes by it; negative where it is stretched
 */
public record Gathers(Point from, Point to, double awayMm, How how) {

  /** What is done with it. */
  public enum How {
    DRAWN_UP,
    PLEATED
  }

  /** One that is gathered or stretched. */
  public Gathers(Point from, Point to, double awayMm) {
    this(from, to, awayMm, How.DRAWN_UP);
  }

  /** What is done before it is sewn: {@code gathers drawn up}. */
  String made() {
    if (how == How.PLEATED) {
      return "pleats folded";
    }
    return awayMm < 0 ? "the shorter edge stretched" : "gathers drawn up";
  }

  Gathers moved(UnaryOperator<Point> map) {
    return new Gathers(map.apply(from), map.apply(to), awayMm, how);
  }

  Gathers reversed() {
    return new Gathers(to, from, awayMm, how);
  }
}
