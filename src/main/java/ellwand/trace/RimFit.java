package ellwand.trace;

import ellwand.geometry.Offset;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Makes edges of a rim: corners, straight runs and curves. */
public final class RimFit {

  /** Points of the rim stand so near to each other, mm. */
  private static final double STEP_MM = 0.5;

  /** A corner is none where the rim lies farther from the edges than this, mm: it is round. */
  private static final double ROUND_MM = 0.6;

  /** Whether a corner that turns less is one is tried. */
  private static final double SLIGHT_DEGREES = 30;

  /** How much dearer the line may be without it, in lines. */
  private static final double EASILY = 1.1;

  /** How far from its corner that is looked for, mm. */
  private static final double ROUND_REACH_MM = 12;

  /** A corner is the crossing of two straight edges only where it does not move more, mm. */
  private static final double CROSSING_MM = 1.5;

  /** A rim with more is no piece's; curves are not tried on it, which took minutes. */
  private static final int MOST_CORNERS = 100;

  private final Rim rim;
  private final ToDoubleFunction<Point> sureMm;

  private RimFit(Rim rim, ToDoubleFunction<Point> sureMm) {
    this.rim = rim;
    this.sureMm = sureMm;
  }

  /**
   * The edges of a rim, and the nicks in it.
   *
   * @param sureMm how sure the photo is of a place, mm
   */
  public static RimEdges of(Rim rim, ToDoubleFunction<Point> sureMm) {
    Nicks.Taken taken = Nicks.takenFrom(rim.even(STEP_MM));
    List<List<Segment>> edges = new RimFit(taken.rim(), sureMm).edges();
    return new RimEdges(edges.stream().map(Path::new).toList(), taken.nicks());
  }

  private List<List<Segment>> edges() {
    List<List<Segment>> lines = new ArrayList<>();
    needed().forEach(e -> lines.add(new ArrayList<>(e.segments())));
    for (int k = 0; k < lines.size(); k++) {
      cross(lines, k, (k + 1) % lines.size());
    }
    return lines;
  }

  /** From corner to corner, without those that are needless. */
  private List<StretchFit.Drawn> needed() {
    List<RimCorners.Corner> corners = new ArrayList<>(RimCorners.of(rim));
    if (corners.size() > MOST_CORNERS) {
      return IntStream.range(0, corners.size())
          .mapToObj(k -> line(corners.get(k), corners.get((k + 1) % corners.size())))
          .toList();
    }
    List<StretchFit.Drawn> edges = edges(corners);
    int at = needless(corners, edges, 0);
    while (at >= 0) {
      corners.remove(at);
      if (corners.isEmpty()) {
        return edges(corners);
      }
      edges.remove(at);
      int before = Math.floorMod(at - 1, edges.size());
      edges.set(before, edge(corners.get(before), corners.get((before + 1) % corners.size())));
      // Only the corners on either side may have become needless by that.
      at = needless(corners, edges, at == corners.size() ? 0 : Math.max(0, at - 1));
    }
    return edges;
  }

  private static StretchFit.Drawn line(RimCorners.Corner from, RimCorners.Corner to) {
    return new StretchFit.Drawn(List.of(new Segment.Line(from.at(), to.at())), 1);
  }

  private List<StretchFit.Drawn> edges(List<RimCorners.Corner> corners) {
    if (corners.isEmpty()) {
      return List.of(drawn(rim.run(0, rim.size()), null, null));
    }
    List<StretchFit.Drawn> edges = new ArrayList<>();
    for (int k = 0; k < corners.size(); k++) {
      edges.add(edge(corners.get(k), corners.get((k + 1) % corners.size())));
    }
    return edges;
  }

  private StretchFit.Drawn edge(RimCorners.Corner from, RimCorners.Corner to) {
    int end = to.index() > from.index() ? to.index() : to.index() + rim.size();
    return drawn(rim.run(from.index(), end), from.at(), to.at());
  }

  private StretchFit.Drawn drawn(List<Point> run, Point from, Point to) {
    return StretchFit.of(run, from, to, sure(run));
  }

  private double sure(List<Point> run) {
    return Math.min(0.5, 0.5 * sureMm.applyAsDouble(run.get(run.size() / 2)));
  }

  /** Lets two straight edges meet where the lines that run nearest to the rim cross. */
  private void cross(List<List<Segment>> edges, int one, int next) {
    List<Segment> in = edges.get(one);
    List<Segment> out = edges.get(next);
    if (one == next
        || !(in.get(in.size() - 1) instanceof Segment.Line before)
        || !(out.get(0) instanceof Segment.Line after)) {
      return;
    }
    Optional<Point> crossing =
        nearest(before)
            .flatMap(a -> nearest(after).flatMap(b -> a.meeting(0, b, 0)))
            .filter(p -> p.distance(after.start()) <= CROSSING_MM);
    crossing.ifPresent(
        p -> {
          in.set(in.size() - 1, new Segment.Line(before.start(), p));
          out.set(0, new Segment.Line(p, after.end()));
        });
  }

  /** The straight line nearest to the rim beside a line, its ends left out. */
  private Optional<Bend> nearest(Segment.Line line) {
    Point along = line.end().minus(line.start());
    double length = along.norm();
    List<Point> beside = new ArrayList<>();
    for (Point p : rim.points()) {
      double way = p.minus(line.start()).dot(along) / length;
      if (way > RimCorners.ROUNDED_MM
          && way < length - RimCorners.ROUNDED_MM
          && Offset.distance(p, line.start(), line.end()) < 1) {
        beside.add(p);
      }
    }
    if (beside.size() < 4) {
      return Optional.empty();
    }
    double[] at =
        beside.stream()
            .mapToDouble(p -> p.minus(line.start()).dot(along) / length - length / 2)
            .toArray();
    return Optional.of(Bend.of(beside, at, true));
  }

  /**
   * A corner that the rim cuts off, as one with a small radius does, or a slight one without which
   * the line is as easily drawn; -1 for none.
   *
   * @param first looked at
   */
  private int needless(List<RimCorners.Corner> corners, List<StretchFit.Drawn> edges, int first) {
    for (int k = first; k < corners.size(); k++) {
      RimCorners.Corner corner = corners.get(k);
      int before = Math.floorMod(k - 1, edges.size());
      StretchFit.Drawn in = edges.get(before);
      StretchFit.Drawn out = edges.get(k);
      int next = (k + 1) % corners.size();
      int back = reach(corners.get(before), corner);
      int on = reach(corner, corners.get(next));
      if (cutOff(corner, in.segments(), back, out.segments(), on) > ROUND_MM) {
        return k;
      }
      if (corner.turnDegrees() < SLIGHT_DEGREES && corners.size() > 1) {
        StretchFit.Drawn smooth = edge(corners.get(before), corners.get(next));
        if (smooth.cost() < in.cost() + out.cost() + EASILY) {
          return k;
        }
      }
    }
    return -1;
  }

  /** How many points from a corner towards the next are looked at. */
  private int reach(RimCorners.Corner from, RimCorners.Corner to) {
    int between = Math.floorMod(to.index() - from.index(), rim.size());
    int most = (int) (ROUND_REACH_MM / STEP_MM);
    return from == to ? most : Math.min(most, between - (int) (RimCorners.ROUNDED_MM / STEP_MM));
  }

  /** How far the rim lies from its edges beside a corner, but for what blur rounds, mm. */
  private double cutOff(
      RimCorners.Corner corner, List<Segment> in, int back, List<Segment> out, int on) {
    List<Point> line = new ArrayList<>(new Path(in).flattened(0.02));
    line.addAll(new Path(out).flattened(0.02));
    double most = 0;
    for (int d = -back; d <= on; d++) {
      Point p = rim.at(corner.index() + d);
      if (p.distance(corner.at()) > 1.25 * RimCorners.ROUNDED_MM) {
        double off = Double.POSITIVE_INFINITY;
        for (int i = 1; i < line.size(); i++) {
          off = Math.min(off, Offset.distance(p, line.get(i - 1), line.get(i)));
        }
        most = Math.max(most, off);
      }
    }
    return most;
  }
}
