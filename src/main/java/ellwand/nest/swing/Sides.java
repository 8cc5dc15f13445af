package ellwand.nest.swing;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.nest.stretch.StretchTask;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The long straight sides of all that lies on a stretch, to which a piece may be turned flush. */
final class Sides {

  /** What counts as long, as a share of the outline's diagonal. */
  private static final double LONG = 0.2;

  /** Directions nearer than this are the same, degrees. */
  static final double SAME_DEGREES = 0.05;

  /** How many turns are named at most. */
  private static final int MOST = 2;

  private final List<LongSide> sides = new ArrayList<>();

  /**
   * @param degrees direction, without regard to which end is first
   */
  private record LongSide(double degrees, double mm) {}

  private record Flush(double degrees, double mm) {}

  private Sides() {}

  static Sides of(StretchTask task) {
    Sides all = new Sides();
    Set<Outline> outlines = new LinkedHashSet<>();
    task.ways().forEach(ways -> ways.forEach(way -> outlines.add(way.pose().outline())));
    task.keepOuts().forEach(keepOut -> outlines.add(keepOut.outline()));
    outlines.forEach(outline -> all.sides.addAll(sides(outline)));
    return all;
  }

  private static List<LongSide> sides(Outline outline) {
    Box box = outline.box();
    double least = LONG * Math.hypot(box.length(), box.width());
    List<LongSide> sides = new ArrayList<>();
    List<Point> points = outline.points();
    for (int i = 0; i < points.size(); i++) {
      Point along = points.get((i + 1) % points.size()).minus(points.get(i));
      double mm = Math.hypot(along.x(), along.y());
      if (mm >= least) {
        sides.add(new LongSide(Math.toDegrees(Math.atan2(along.y(), along.x())), mm));
      }
    }
    return sides;
  }

  /** The turns at which most of a side lies along another's, the longest such first. */
  List<Double> flush(Outline outline, double leastDegrees, double mostDegrees) {
    List<Flush> found = new ArrayList<>();
    for (LongSide own : sides(outline)) {
      for (LongSide other : sides) {
        double off = Math.IEEEremainder(other.degrees - own.degrees, 180);
        if (Math.abs(off) >= SAME_DEGREES && off >= leastDegrees && off <= mostDegrees) {
          found.add(new Flush(off, Math.min(own.mm, other.mm)));
        }
      }
    }
    found.sort(Comparator.comparingDouble(f -> -f.mm));
    List<Double> turns = new ArrayList<>();
    for (Flush f : found) {
      if (turns.size() < MOST
          && turns.stream().noneMatch(t -> Math.abs(t - f.degrees) < SAME_DEGREES)) {
        turns.add(f.degrees);
      }
    }
    return turns;
  }
}
