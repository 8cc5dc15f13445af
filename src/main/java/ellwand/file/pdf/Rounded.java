package ellwand.file.pdf;

import ellwand.file.drawn.DrawnLine;
import ellwand.geometry.CurveFit;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** Makes curves again of what was drawn in many short straight stretches. */
final class Rounded {

  /** How far such stretches may lie off the curve that is meant, mm. */
  private static final double OFF_MM = 0.25;

  private static final double MOST_TURN_DEGREES = 20;

  /** Fewer stretches after one another are meant as they are. */
  private static final int LEAST = 4;

  /** A long straight stretch beside a bend stays straight: so many times the other at most. */
  private static final double MOST_LONGER = 4;

  /** How near the curve comes to their ends, mm. */
  private static final double TRUE_MM = 0.02;

  private Rounded() {}

  /** The line, if it is made of straight stretches, with curves where they bend a little. */
  static DrawnLine of(DrawnLine line) {
    List<Segment> segments = line.path().segments();
    if (segments.size() < LEAST || !segments.stream().allMatch(Segment.Line.class::isInstance)) {
      return line;
    }
    List<Segment> turned = line.closed() ? fromACorner(segments) : segments;
    List<Segment> made = new ArrayList<>();
    List<Segment> bend = new ArrayList<>();
    for (Segment segment : turned) {
      if (!bend.isEmpty() && !isSmooth(bend.get(bend.size() - 1), segment)) {
        end(bend, made);
      }
      bend.add(segment);
    }
    end(bend, made);
    return new DrawnLine(new Path(made), line.closed(), line.label());
  }

  /** So that no bend runs on over the start; a line without a corner begins where it did. */
  private static List<Segment> fromACorner(List<Segment> ring) {
    for (int i = 0; i < ring.size(); i++) {
      if (!isSmooth(ring.get(Math.floorMod(i - 1, ring.size())), ring.get(i))) {
        List<Segment> turned = new ArrayList<>(ring.subList(i, ring.size()));
        turned.addAll(ring.subList(0, i));
        return turned;
      }
    }
    return ring;
  }

  /** Whether a curve through the ends of two stretches differs little from them. */
  private static boolean isSmooth(Segment one, Segment next) {
    Point in = one.direction(1);
    Point out = next.direction(0);
    double turn = Math.abs(Math.atan2(in.cross(out), in.dot(out)));
    double longer = Math.max(length(one), length(next));
    return Math.toDegrees(turn) <= MOST_TURN_DEGREES
        && longer * Math.tan(turn / 4) / 2 <= OFF_MM
        && longer <= MOST_LONGER * Math.min(length(one), length(next));
  }

  private static double length(Segment line) {
    return line.start().distance(line.end());
  }

  private static void end(List<Segment> bend, List<Segment> made) {
    if (bend.size() < LEAST) {
      made.addAll(bend);
    } else {
      // Two, since a curve that comes back to its start has no direction.
      int half = bend.get(0).start().equals(bend.get(bend.size() - 1).end()) ? bend.size() / 2 : 0;
      if (half > 0) {
        made.addAll(CurveFit.through(points(bend.subList(0, half)), TRUE_MM));
      }
      made.addAll(CurveFit.through(points(bend.subList(half, bend.size())), TRUE_MM));
    }
    bend.clear();
  }

  private static List<Point> points(List<Segment> bend) {
    List<Point> points = new ArrayList<>(List.of(bend.get(0).start()));
    bend.forEach(segment -> points.add(segment.end()));
    return points;
  }
}
