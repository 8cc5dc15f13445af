package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the nicks that somebody cut into the border of a piece, slits and triangles, or the tabs
 * left standing at it: the rim leaves its line and comes back to it a little farther on. They are
 * notches, and the rim goes on as if they were not there.
 */
final class Nicks {

  /** Wider and deeper ones are part of the piece's shape, mm: our own choice. */
  private static final double WIDEST_MM = 14;

  private static final double DEEPEST_MM = 16;
  private static final double SHALLOWEST_MM = 1.8;

  /** Flatter ones are bumps of the line. */
  private static final double DEPTH_TO_WIDTH = 0.3;

  /** On how much of the rim before and behind it the line is judged, mm. */
  private static final double BESIDE_MM = 9;

  /** How far the line behind may lie from where the line before leads, mm and degrees. */
  private static final double ASTRAY_MM = 0.9;

  private static final double ASTRAY_DEGREES = 18;

  /** What the blur rounds at the mouth. */
  private static final double ROUNDED_MM = 1.5;

  private final Rim rim;
  private final double stepMm;

  /** A rim without its nicks, and these. */
  record Taken(Rim rim, List<Nick> nicks) {}

  /** From one point of the rim to another. */
  private record Mouth(int from, int to, Nick nick) {}

  private Nicks(Rim rim) {
    this.rim = rim;
    this.stepMm = rim.lengthMm() / rim.size();
  }

  /**
   * @param rim at even distances
   */
  static Taken takenFrom(Rim rim) {
    Nicks nicks = new Nicks(rim);
    return new Nicks(new Rim(rim.run(nicks.plainest(), nicks.plainest() + rim.size() - 1))).taken();
  }

  /** Where no nick begins or ends: in the middle of the straightest stretch. */
  private int plainest() {
    int plainest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rim.size(); i++) {
      double rms = side(i - 2 * beside(), i + 2 * beside(), i).rmsMm();
      if (rms < least) {
        least = rms;
        plainest = i;
      }
    }
    return plainest;
  }

  private Taken taken() {
    List<Mouth> mouths = new ArrayList<>();
    for (int from = 0; from < rim.size(); from++) {
      Mouth mouth = mouth(from);
      if (mouth != null) {
        mouths.add(mouth);
        from = mouth.to;
      }
    }
    List<Point> points = new ArrayList<>();
    int at = 0;
    for (Mouth mouth : mouths) {
      int from = Math.max(at, mouth.from - steps(ROUNDED_MM / 2));
      int to = mouth.to + steps(ROUNDED_MM / 2);
      points.addAll(rim.run(at, from));
      points.addAll(across(from, to));
      at = to;
    }
    points.addAll(rim.run(at, Math.max(at, rim.size() - 1)));
    List<Point> left = mouths.isEmpty() ? rim.points() : points;
    return new Taken(new Rim(left).even(stepMm), mouths.stream().map(Mouth::nick).toList());
  }

  /** Points that lead on from one to another as the rim beside them bends. */
  private List<Point> across(int from, int to) {
    double gap = rim.at(from).distance(rim.at(to));
    List<Point> beside = new ArrayList<>(rim.run(from - beside(), from));
    beside.addAll(rim.run(to, to + beside()));
    double[] along = new double[beside.size()];
    for (int i = 0; i < along.length; i++) {
      int off = i - beside();
      along[i] = off <= 0 ? off * stepMm : gap + (off - 1) * stepMm;
    }
    Bend bend = Bend.of(beside, along, false);
    List<Point> points = new ArrayList<>();
    int steps = (int) (gap / stepMm);
    for (int i = 1; i < steps; i++) {
      points.add(bend.at(gap * i / steps));
    }
    return points;
  }

  /** The nick that begins at a point, if one does. */
  private Mouth mouth(int from) {
    Bend before = side(from - beside(), from, from);
    if (before.rmsMm() > ASTRAY_MM / 2) {
      return null;
    }
    Point start = rim.at(from);
    Point heading = before.direction(0);
    int next = steps(ROUNDED_MM);
    if (Math.abs(heading.cross(rim.at(from + next).minus(start))) < 0.4) {
      return null;
    }
    Mouth best = null;
    double depth = 0;
    Point tip = start;
    for (int to = from + 1; to <= from + steps(2 * DEEPEST_MM + WIDEST_MM); to++) {
      Point here = rim.at(to);
      double off = Math.abs(heading.cross(here.minus(start)));
      if (off > depth) {
        depth = off;
        tip = here;
      }
      double wide = here.minus(start).dot(heading);
      if (depth > DEEPEST_MM) {
        break;
      }
      if (depth >= SHALLOWEST_MM
          && off <= ASTRAY_MM
          && wide > -0.3
          && wide <= WIDEST_MM
          && depth >= DEPTH_TO_WIDTH * wide
          && goesOn(before, heading, start, to)) {
        int end = to;
        while (Math.abs(heading.cross(rim.at(end + 1).minus(start)))
            < Math.abs(heading.cross(rim.at(end).minus(start)))) {
          end++;
        }
        best = new Mouth(from, end, new Nick(start.towards(rim.at(end), 0.5), tip));
        break;
      }
    }
    return best;
  }

  private boolean goesOn(Bend before, Point heading, Point start, int to) {
    Bend behind = side(to, to + beside(), to);
    Point on = behind.direction(0);
    double turn = Math.abs(Math.toDegrees(Math.atan2(heading.cross(on), heading.dot(on))));
    double off = Math.abs(heading.cross(behind.at(0).minus(start)));
    return behind.rmsMm() <= ASTRAY_MM / 2 && turn <= ASTRAY_DEGREES && off <= ASTRAY_MM;
  }

  private int beside() {
    return steps(BESIDE_MM);
  }

  private int steps(double mm) {
    return (int) Math.round(mm / stepMm);
  }

  private Bend side(int from, int to, int zero) {
    List<Point> points = rim.run(from, to);
    double[] along = new double[points.size()];
    for (int i = 0; i < along.length; i++) {
      along[i] = (from + i - zero) * stepMm;
    }
    return Bend.of(points, along, true);
  }
}
