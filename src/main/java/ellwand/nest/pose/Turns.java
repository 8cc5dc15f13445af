package ellwand.nest.pose;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.List;
import java.util.OptionalDouble;

/** How the extent of an outline changes as it is turned a little; degrees, counter-clockwise. */
public final class Turns {

  /** Turns that are tried on each side, before the one found is brought nearer. */
  private static final int TRIED = 60;

  private static final int HALVINGS = 40;

  private Turns() {}

  /** The turn at which it is least wide across the cloth, or least long along it. */
  public static double flattest(Outline outline, double least, double most, boolean across) {
    double best = 0;
    double flattest = extent(outline, 0, across);
    List<Point> points = outline.points();
    for (int i = 0; i < points.size(); i++) {
      Point side = points.get((i + 1) % points.size()).minus(points.get(i));
      // A box is smallest when one of the sides lies along it.
      double off = -Math.IEEEremainder(Math.toDegrees(Math.atan2(side.y(), side.x())), 90);
      if (off >= least && off <= most && extent(outline, off, across) < flattest) {
        best = off;
        flattest = extent(outline, off, across);
      }
    }
    return best;
  }

  /** The turn nearest to none at which it is no wider than so; empty if there is none. */
  static OptionalDouble narrowed(Outline outline, double least, double most, double widthMm) {
    double nearest = Double.POSITIVE_INFINITY;
    for (double end : new double[] {least, most}) {
      for (int k = 1; k <= TRIED && end * k / TRIED != 0; k++) {
        if (extent(outline, end * k / TRIED, true) <= widthMm) {
          double fits = brought(outline, end * (k - 1) / TRIED, end * k / TRIED, widthMm);
          nearest = Math.abs(fits) < Math.abs(nearest) ? fits : nearest;
          break;
        }
      }
    }
    double flat = flattest(outline, least, most, true);
    if (extent(outline, flat, true) <= widthMm && Math.abs(flat) < Math.abs(nearest)) {
      nearest = flat;
    }
    return Double.isFinite(nearest) ? OptionalDouble.of(nearest) : OptionalDouble.empty();
  }

  private static double brought(Outline outline, double wide, double fits, double widthMm) {
    double low = wide;
    double high = fits;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (extent(outline, middle, true) <= widthMm) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private static double extent(Outline outline, double off, boolean across) {
    Box box = outline.moved(new Motion(false, off, 0, 0)).box();
    return across ? box.width() : box.length();
  }
}
