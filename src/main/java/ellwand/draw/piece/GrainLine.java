package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.util.List;

/**
 * A straight line along the warp; the same line of the piece in every drawing, so that it can be
 * measured to.
 *
 * @param through a place on it well inside the piece
 * @param towards the piece's top, length 1
 */
public record GrainLine(Point through, Point towards) {

  /** Which share of the piece's width lies to the right of the line, to leave room for words. */
  private static final double ASIDE = 0.3;

  /** The grain line of a piece as drawn. */
  public static GrainLine of(CutPiece cut) {
    Motion toDrawn = new Motion(false, -cut.piece().grain().turns(false).get(0), 0, 0);
    Point towards = toDrawn.apply(new Point(1, 0));
    Point middle = Region.of(cut.sewing()).middle();
    Point right = towards.left().times(-1);
    double toRight = reach(cut.sewing().points(), middle, right);
    double toLeft = reach(cut.sewing().points(), middle, right.times(-1));
    double aside = toRight - ASIDE * (toRight + toLeft);
    return new GrainLine(middle.plus(right.times(aside)), towards);
  }

  /** How far one can go from a place inside before meeting the outline, mm. */
  private static double reach(List<Point> ring, Point from, Point direction) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i).minus(from);
      Point side = ring.get((i + 1) % ring.size()).minus(ring.get(i));
      double across = direction.cross(side);
      if (across != 0) {
        double distance = a.cross(side) / across;
        double share = a.cross(direction) / across;
        if (distance > 0 && share >= 0 && share <= 1) {
          nearest = Math.min(nearest, distance);
        }
      }
    }
    return nearest;
  }

  public GrainLine moved(Motion motion) {
    return new GrainLine(motion.apply(through), motion.unshifted().apply(towards));
  }
}
