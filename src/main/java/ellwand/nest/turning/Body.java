package ellwand.nest.turning;

import java.util.List;

/**
 * A copy, or something fixed, as it lies on grain about its middle, and what it may do.
 *
 * @param parts convex, x0, y0, x1, y1, ... counter-clockwise; no part may overlap another body's
 * @param bare the same without the room that copies keep from each other: what may not overlap
 *     anything fixed
 * @param rim corners of its outline, x0, y0, ...; they keep inside the borders
 * @param borders where its corners may be
 * @param slidesAlong whether it may move along the strip
 * @param slidesAcross whether it may move across; what may not need not keep to the side borders
 * @param leastTurn how far it may turn clockwise from its grain, radians, 0 or less
 * @param mostTurn how far counter-clockwise, 0 or more
 */
public record Body(
    List<double[]> parts,
    List<double[]> bare,
    double[] rim,
    Walls borders,
    boolean slidesAlong,
    boolean slidesAcross,
    double leastTurn,
    double mostTurn) {

  /** The room that a copy's own corners have; its far end is what is to become shorter. */
  public record Walls(double lowX, double lowY, double highY) {}

  private static final Walls NOWHERE = new Walls(0, 0, 0);

  public Body {
    parts = List.copyOf(parts);
    bare = List.copyOf(bare);
    if (parts.isEmpty() || bare.isEmpty()) {
      throw new IllegalArgumentException("a body needs a part");
    }
    if (!(leastTurn <= 0 && mostTurn >= 0)) {
      throw new IllegalArgumentException("a turn from " + leastTurn + " to " + mostTurn);
    }
  }

  /** What cannot move, and lies wherever it does: a flaw. */
  public static Body fixed(List<double[]> parts) {
    return new Body(parts, parts, new double[0], NOWHERE, false, false, 0, 0);
  }

  /** Whether it is no copy. */
  boolean fixed() {
    return rim.length == 0;
  }

  /** The farthest corner of the rim from the middle. */
  double reach() {
    double reach = 0;
    for (int i = 0; i < rim.length; i += 2) {
      reach = Math.max(reach, Math.hypot(rim[i], rim[i + 1]));
    }
    return reach;
  }

  /**
   * Where a body lies.
   *
   * @param x of its middle
   * @param y of its middle
   * @param turn off its grain, radians
   */
  public record Posture(double x, double y, double turn) {}
}
