package ellwand.cutting;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The end of an edge whose allowance is turned back: beyond its sewing line the neighbour's cutting
 * line runs on as in a mirror, so that the two lie on one another once it is turned.
 *
 * <p>The mirror is the straight line that touches the edge at the corner.
 */
final class TurnBack {

  /** At corners sharper or blunter than this, degrees, there is nothing sensible to mirror. */
  static final double LEAST_DEGREES = 30;

  static final double MOST_DEGREES = 150;

  private TurnBack() {}

  /** The corner where a hem and its neighbour meet, or nothing if it cannot be turned back. */
  static Optional<Corner> between(Arm a, Arm b) {
    if (a.edge().turnedBack() == b.edge().turnedBack() || !turnable(a, b)) {
      return Optional.empty();
    }
    boolean hemFirst = a.edge().turnedBack();
    Arm hem = hemFirst ? a : b;
    Arm side = hemFirst ? b : a;
    if (hem.allowance() == 0) {
      return Optional.empty();
    }
    double reach = 4 * (hem.allowance() + side.allowance());
    Point far = hem.corner().plus(hem.out().times(reach));
    Point back = hem.corner().minus(hem.out().times(reach));
    Optional<Crossing> turn =
        Crossing.nearest(side.extended(reach), List.of(back, far), hem.corner());
    return turn.flatMap(t -> corner(hem, side, hemFirst, reach, t));
  }

  /** Whether the piece's angle at the corner is one at which a hem can be turned back. */
  static boolean turnable(Arm a, Arm b) {
    double angle = Math.toDegrees(Math.atan2(a.out().cross(b.out()) * -1, -a.out().dot(b.out())));
    double inside = 180 - angle;
    return inside >= LEAST_DEGREES && inside <= MOST_DEGREES;
  }

  private static Optional<Corner> corner(
      Arm hem, Arm side, boolean hemFirst, double reach, Crossing turn) {
    List<Point> mirrored = new ArrayList<>();
    mirrored.add(turn.at());
    Point end = hem.corner().plus(hem.out());
    List<Point> line = side.extended(reach);
    for (int i = (int) Math.floor(turn.onFirst()) + 1; i < line.size(); i++) {
      mirrored.add(line.get(i).mirrored(hem.corner(), end));
    }
    int n = mirrored.size();
    Point last = mirrored.get(n - 1).minus(mirrored.get(n - 2)).unit();
    mirrored.add(mirrored.get(n - 1).plus(last.times(reach)));
    return Crossing.nearest(mirrored, hem.extended(reach), turn.at())
        .map(
            c -> {
              List<Point> points =
                  new ArrayList<>(mirrored.subList(0, (int) Math.floor(c.onFirst()) + 1));
              points.add(c.at());
              double offHem = c.onSecond() - 1;
              double offSide = turn.onFirst() - 1;
              if (hemFirst) {
                Collections.reverse(points);
                return new Corner(points, offHem, offSide, true);
              }
              return new Corner(points, offSide, offHem, true);
            });
  }
}
