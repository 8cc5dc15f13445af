package ellwand.pattern.alter;

import ellwand.geometry.Crossings;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** A line that runs beside another at a constant distance. */
final class Parallel {

  /** A curve is followed in stretches that turn by no more than this, degrees. */
  private static final double STRETCH_DEGREES = 8;

  /** Less of a turn between two segments is none, degrees. */
  private static final double SMOOTH_DEGREES = 0.5;

  /** By how much a line may stray from its distance where curves are followed, mm. */
  private static final double TOUCHING_MM = 0.02;

  private Parallel() {}

  /**
   * The line beside a path.
   *
   * @param mm to the right of it, outside a counter-clockwise outline; negative to the left
   */
  static Path of(Path path, double mm) {
    Path drawn = null;
    Segment before = null;
    for (Segment segment : path.segments()) {
      Path next = beside(segment, mm);
      drawn = before == null ? next : joined(drawn, next, before, segment, mm);
      before = segment;
    }
    return withoutLoops(drawn, path, Math.abs(mm));
  }

  /** Without the stretches that come nearer to the path than they should, inside bends. */
  private static Path withoutLoops(Path drawn, Path path, double mm) {
    List<Double> cuts = new ArrayList<>();
    for (Crossings.Meeting meeting : Crossings.within(drawn)) {
      cuts.add(meeting.oneMm());
      cuts.add(meeting.otherMm());
    }
    if (cuts.isEmpty()) {
      return drawn;
    }
    double length = drawn.length();
    cuts.add(0.0);
    cuts.add(length);
    cuts.sort(Double::compare);
    Path kept = null;
    for (int i = 1; i < cuts.size(); i++) {
      double from = cuts.get(i - 1);
      double to = cuts.get(i);
      if (to - from > TOUCHING_MM && keeps(drawn, path, mm, from, to)) {
        Path part = drawn.between(from, to);
        kept = kept == null ? part : gapless(kept, part);
      }
    }
    return kept == null ? drawn : kept;
  }

  private static boolean keeps(Path drawn, Path path, double mm, double from, double to) {
    Point middle = drawn.at((from + to) / 2);
    return path.at(path.nearest(middle)).distance(middle) > mm - TOUCHING_MM;
  }

  private static Path beside(Segment segment, double mm) {
    if (segment instanceof Segment.Line) {
      return Path.line(shifted(segment, 0, mm), shifted(segment, 1, mm));
    }
    double turn = 0;
    int looks = 32;
    for (int i = 1; i <= looks; i++) {
      turn += turn(segment.direction((i - 1.0) / looks), segment.direction((double) i / looks));
    }
    int steps = Math.max(2, (int) Math.ceil(turn / STRETCH_DEGREES));
    List<Segment> parts = new ArrayList<>();
    for (int i = 1; i <= steps; i++) {
      double a = (i - 1.0) / steps;
      double b = (double) i / steps;
      Point start = shifted(segment, a, mm);
      Point end = shifted(segment, b, mm);
      if (start.distance(end) > 1e-6) {
        parts.add(FrenchCurve.curve(start, segment.direction(a), end, segment.direction(b)));
      }
    }
    return parts.isEmpty()
        ? Path.line(shifted(segment, 0, mm), shifted(segment, 1, mm))
        : connected(parts);
  }

  /** Where a stretch was too short to be drawn the next begins at its start. */
  private static Path connected(List<Segment> parts) {
    List<Segment> all = new ArrayList<>();
    for (Segment part : parts) {
      if (!all.isEmpty() && all.get(all.size() - 1).end().distance(part.start()) > 1e-9) {
        Point gap = all.get(all.size() - 1).end();
        all.add(new Segment.Line(gap, part.start()));
      }
      all.add(part);
    }
    return new Path(all);
  }

  private static Point shifted(Segment segment, double t, double mm) {
    Point at = t == 0 ? segment.start() : t == 1 ? segment.end() : segment.at(t);
    return at.minus(segment.direction(t).left().times(mm));
  }

  private static Path joined(Path drawn, Path next, Segment before, Segment after, double mm) {
    Point in = before.direction(1);
    Point out = after.direction(0);
    if (turn(in, out) < SMOOTH_DEGREES) {
      return gapless(drawn, next);
    }
    boolean opens = in.cross(out) > 0 == mm > 0;
    if (opens) {
      // Both run on until they meet.
      double bend = in.cross(out);
      double along = next.start().minus(drawn.end()).cross(out) / bend;
      Point corner = drawn.end().plus(in.times(along));
      return drawn
          .then(Path.line(drawn.end(), corner))
          .then(Path.line(corner, next.start()))
          .then(next);
    }
    return gapless(drawn, next);
  }

  private static Path gapless(Path one, Path other) {
    double gap = one.end().distance(other.start());
    return gap <= TOUCHING_MM
        ? Neighbours.endingAt(one, other.start()).then(other)
        : one.then(Path.line(one.end(), other.start())).then(other);
  }

  private static double turn(Point in, Point out) {
    return Math.toDegrees(Math.abs(Math.atan2(in.cross(out), in.dot(out))));
  }
}
