package ellwand.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where two lines cross or meet. */
public final class Crossings {

  /** Places nearer to one another than this are one, mm. */
  private static final double SAME_MM = 1e-3;

  private Crossings() {}

  /**
   * A place that two lines share.
   *
   * @param oneMm how far along the first line it is, from its start
   * @param otherMm how far along the second
   */
  public record Meeting(Point at, double oneMm, double otherMm) {}

  /**
   * Every place that two lines share, in the order of the first. Lines that run on one another meet
   * at the ends of what they share.
   */
  public static List<Meeting> of(Path one, Path other) {
    List<Meeting> found = new ArrayList<>();
    List<Point> a = one.flattened(Path.MEASURING_MM);
    List<Point> b = other.flattened(Path.MEASURING_MM);
    Box whole = Box.around(b);
    double before = 0;
    for (int i = 1; i < a.size(); i++) {
      Point p = a.get(i - 1);
      Point q = a.get(i);
      double step = p.distance(q);
      if (near(p, q, whole)) {
        double otherBefore = 0;
        for (int k = 1; k < b.size(); k++) {
          meet(p, q, b.get(k - 1), b.get(k), before, otherBefore, found);
          otherBefore += b.get(k - 1).distance(b.get(k));
        }
      }
      before += step;
    }
    return distinct(found);
  }

  /** Every place where a line comes back to itself, each once. */
  public static List<Meeting> within(Path line) {
    List<Meeting> found = new ArrayList<>();
    List<Point> a = line.flattened(Path.MEASURING_MM);
    double[] before = new double[a.size()];
    for (int i = 1; i < a.size(); i++) {
      before[i] = before[i - 1] + a.get(i - 1).distance(a.get(i));
    }
    for (int i = 1; i < a.size(); i++) {
      Box box = Box.around(List.of(a.get(i - 1), a.get(i)));
      for (int k = i + 2; k < a.size(); k++) {
        if (near(a.get(k - 1), a.get(k), box)) {
          meet(a.get(i - 1), a.get(i), a.get(k - 1), a.get(k), before[i - 1], before[k - 1], found);
        }
      }
    }
    return distinct(found);
  }

  private static boolean near(Point p, Point q, Box box) {
    return Math.max(p.x(), q.x()) >= box.minX() - SAME_MM
        && Math.min(p.x(), q.x()) <= box.maxX() + SAME_MM
        && Math.max(p.y(), q.y()) >= box.minY() - SAME_MM
        && Math.min(p.y(), q.y()) <= box.maxY() + SAME_MM;
  }

  private static void meet(
      Point p, Point q, Point r, Point s, double before, double otherBefore, List<Meeting> found) {
    Point d = q.minus(p);
    Point e = s.minus(r);
    double length = d.norm();
    double otherLength = e.norm();
    if (length == 0 || otherLength == 0) {
      return;
    }
    double turn = d.cross(e);
    if (Math.abs(turn) > 1e-12 * length * otherLength) {
      double t = r.minus(p).cross(e) / turn * length;
      double u = r.minus(p).cross(d) / turn * otherLength;
      // Ends count as well, since a line may end on the other.
      if (t >= -1e-6 && t <= length + 1e-6 && u >= -1e-6 && u <= otherLength + 1e-6) {
        double along = Math.max(0, Math.min(length, t));
        found.add(
            new Meeting(
                p.towards(q, along / length),
                before + along,
                otherBefore + Math.max(0, Math.min(otherLength, u))));
      }
      return;
    }
    for (Point end : List.of(r, s)) {
      double t = end.minus(p).dot(d) / length;
      if (t >= 0 && t <= length && Math.abs(d.unit().cross(end.minus(p))) < 1e-6) {
        found.add(new Meeting(end, before + t, otherBefore + (end == r ? 0 : otherLength)));
      }
    }
    for (Point end : List.of(p, q)) {
      double u = end.minus(r).dot(e) / otherLength;
      if (u >= 0 && u <= otherLength && Math.abs(e.unit().cross(end.minus(r))) < 1e-6) {
        found.add(new Meeting(end, before + (end == p ? 0 : length), otherBefore + u));
      }
    }
  }

  private static List<Meeting> distinct(List<Meeting> found) {
    found.sort(Comparator.comparingDouble(Meeting::oneMm));
    List<Meeting> kept = new ArrayList<>();
    for (Meeting m : found) {
      if (kept.stream()
          .noneMatch(
              k ->
                  Math.abs(k.oneMm - m.oneMm) < SAME_MM
                      && Math.abs(k.otherMm - m.otherMm) < SAME_MM)) {
        kept.add(m);
      }
    }
    return kept;
  }
}
