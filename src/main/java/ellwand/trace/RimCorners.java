package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds where a rim turns sharply. On each side of a place a line or parabola is laid through what
 * lies near; between two such, curves however tight do not turn, and corners do. A trace rounds its
 * corners, so the nearest part of a mm is left out and the corner set where both sides meet.
 */
final class RimCorners {

  /** How far along the rim each side is looked at, mm: short for sharp corners, long for slight. */
  private static final double[] REACH_MM = {9, 20};

  /** What counts as a turn at each reach, degrees: several times what noise of 0.1 mm makes. */
  private static final double[] TURN_DEGREES = {14, 7};

  /** A slight corner is one only where both sides run as smooth as this, mm. */
  private static final double SMOOTH_MM = 0.35;

  /** A side as straight as this is taken to be so, which noise turns less, mm. */
  private static final double STRAIGHT_MM = 0.1;

  /** What blur rounds at a corner, mm along each side. */
  static final double ROUNDED_MM = 1.2;

  /** Two corners are no nearer to each other, mm. */
  private static final double APART_MM = 4;

  /** A corner lies no farther than this from where the trace turns, mm. */
  private static final double OFF_MM = 2.5;

  private final Rim rim;
  private final double stepMm;
  private final int gap;

  /**
   * A corner.
   *
   * @param index of the point of the rim next to it
   * @param at its place
   */
  record Corner(int index, Point at, double turnDegrees) {}

  private RimCorners(Rim rim) {
    this.rim = rim;
    this.stepMm = rim.lengthMm() / rim.size();
    this.gap = (int) Math.ceil(ROUNDED_MM / stepMm);
  }

  /** In order round the rim; none where it is smooth all round. */
  static List<Corner> of(Rim rim) {
    return new RimCorners(rim).corners();
  }

  private List<Corner> corners() {
    List<Corner> found = new ArrayList<>();
    for (int k = 0; k < REACH_MM.length; k++) {
      int reach = (int) Math.round(REACH_MM[k] / stepMm);
      double[] turns = turns(reach, k > 0);
      List<Integer> peaks = new ArrayList<>();
      for (int i = 0; i < rim.size(); i++) {
        if (turns[i] >= TURN_DEGREES[k] && highest(turns, i, reach / 2)) {
          peaks.add(i);
        }
      }
      peaks.sort(Comparator.comparingDouble(i -> -turns[i]));
      double apart = k == 0 ? APART_MM : REACH_MM[k];
      for (int peak : peaks) {
        if (found.stream().allMatch(c -> apartMm(c.index, peak) >= apart)) {
          found.add(new Corner(peak, rim.at(peak), turns[peak]));
        }
      }
    }
    found.sort(Comparator.comparingInt(Corner::index));
    return found.stream().map(c -> placed(c, found)).toList();
  }

  private double apartMm(int i, int j) {
    int steps = Math.floorMod(i - j, rim.size());
    return Math.min(steps, rim.size() - steps) * stepMm;
  }

  private boolean highest(double[] turns, int at, int near) {
    for (int d = -near; d <= near; d++) {
      int i = Math.floorMod(at + d, turns.length);
      if (turns[i] > turns[at] || turns[i] == turns[at] && d < 0) {
        return false;
      }
    }
    return true;
  }

  private double[] turns(int reach, boolean onlySmooth) {
    double[] turns = new double[rim.size()];
    for (int i = 0; i < turns.length; i++) {
      Bend in = side(i, -reach);
      Bend out = side(i, reach);
      if (!onlySmooth || Math.max(in.rmsMm(), out.rmsMm()) <= SMOOTH_MM) {
        Point before = in.direction(0);
        Point after = out.direction(0);
        turns[i] = Math.abs(Math.toDegrees(Math.atan2(before.cross(after), before.dot(after))));
      }
    }
    return turns;
  }

  /** What runs up to a place, or on from it; the place itself is 0 on the way along it. */
  private Bend side(int at, int reach) {
    int from = reach < 0 ? at + reach : at + gap;
    int to = reach < 0 ? at - gap : at + reach;
    List<Point> points = rim.run(from, to);
    double[] along = new double[points.size()];
    for (int i = 0; i < along.length; i++) {
      along[i] = (from + i - at) * stepMm;
    }
    Bend straight = Bend.of(points, along, true);
    return straight.rmsMm() <= STRAIGHT_MM ? straight : Bend.of(points, along, false);
  }

  /** Set where both of its sides meet, of which as much counts as lies before the next corner. */
  private Corner placed(Corner seen, List<Corner> all) {
    Bend in = side(seen.index, -free(seen, all, -1));
    Bend out = side(seen.index, free(seen, all, 1));
    Optional<Point> meeting =
        in.meeting(-ROUNDED_MM, out, ROUNDED_MM).filter(p -> p.distance(seen.at) <= OFF_MM);
    return new Corner(seen.index, meeting.orElse(seen.at), seen.turnDegrees);
  }

  private int free(Corner corner, List<Corner> all, int way) {
    int most = (int) Math.round(REACH_MM[1] / stepMm);
    for (Corner other : all) {
      int apart = Math.floorMod(way * (other.index - corner.index), rim.size());
      if (apart > 0) {
        most = Math.min(most, apart - gap);
      }
    }
    return Math.max(most, gap + 2);
  }
}
