package ellwand.rule;

import ellwand.cutting.CutPiece;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a piece has a hand: asked of JTS, and not of {@link CutPiece#symmetric}, which the search
 * goes by.
 */
final class Handedness {

  /** How far mirrored lines may run beside the drawn ones, mm; more than the search allows. */
  private static final double SAME_MM = 0.1;

  private Handedness() {}

  /** Whether it differs from itself turned over about a line along the warp. */
  static boolean of(CutPiece cut) {
    double twiceMiddle = 2 * cut.cutting().box().centre().y();
    Motion over = new Motion(true, 0, 0, twiceMiddle);
    return !mirrored(List.of(closed(cut.cutting())), over)
        || !mirrored(cut.notches().stream().map(n -> List.of(n.from(), n.to())).toList(), over)
        || !mirrored(cut.innerLines().stream().map(CutPiece.Drawn::points).toList(), over);
  }

  private static boolean mirrored(List<List<Point>> lines, Motion over) {
    return Region.sameLines(
        lines,
        lines.stream().map(line -> line.stream().map(over::apply).toList()).toList(),
        SAME_MM);
  }

  private static List<Point> closed(Outline outline) {
    List<Point> closed = new ArrayList<>(outline.points());
    closed.add(closed.get(0));
    return closed;
  }
}
