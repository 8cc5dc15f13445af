package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Intake;
import ellwand.pattern.WorkEdge;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A straight cut right through a piece that is moved apart square to itself, or a fold.
 *
 * @param at a point of the cut
 * @param way square to it, towards what moves, length 1
 * @param byMm how far that moves; negative for a fold
 */
record Slash(Point at, Point way, double byMm) {

  private static final double STRAIGHT_MM = 0.05;

  /** A curve is drawn anew so far from the cut at most, mm. */
  private static final double TRUED_MM = 60;

  /** How far a point lies beyond the cut, or the middle of the fold, mm. */
  double beyond(Point p) {
    return p.minus(at).dot(way);
  }

  private double halfFold() {
    return Math.max(0, -byMm) / 2;
  }

  /** Whether a point would be folded away. */
  boolean folds(Point p) {
    return Math.abs(beyond(p)) < halfFold() - 1e-6;
  }

  private Point shift() {
    return way.times(byMm);
  }

  /** Where a point goes; what is folded away goes to where the fold's sides meet. */
  Point moved(Point p) {
    double d = beyond(p);
    if (d > halfFold() - 1e-9 && d > 1e-6) {
      return p.plus(shift());
    }
    return d > -halfFold() ? p.minus(way.times(d + halfFold())) : p;
  }

  /** A line with the cut moved apart, or without what is folded away. */
  Path opened(Path line) {
    return new Opened(line).path(false);
  }

  /** An edge, trued. */
  WorkEdge opened(WorkEdge edge) {
    for (Intake old : edge.edge().intakes()) {
      boolean whole =
          List.of(
                      old.first().outer(),
                      old.first().inner(),
                      old.second().outer(),
                      old.second().inner())
                  .stream()
                  .map(p -> folds(p) ? 0 : beyond(p) > 0 ? 1 : -1)
                  .distinct()
                  .mapToInt(Integer::intValue)
                  .reduce(1, (a, b) -> a * (b == 0 ? 0 : 2))
              == 2;
      if (!whole) {
        throw new InputException(
            new Problem(
                Optional.empty(),
                0,
                Optional.empty(),
                Optional.of(edge.name()),
                "the line runs through " + old.name(),
                "Do this step before the one that makes " + old.name()));
      }
    }
    Opened opened = new Opened(edge.line());
    boolean plain = edge.edge().intakes().isEmpty() && edge.edge().gathers().isEmpty();
    Path line = opened.path(plain);
    if (opened.cuts == 0) {
      return edge.moved(this::moved);
    }
    return edge.onto(line, this::moved, opened::place);
  }

  /** One line, opened. */
  private final class Opened {

    private final Path old;
    private final List<Path> parts = new ArrayList<>();
    private final List<double[]> spans = new ArrayList<>();
    private final List<Boolean> far = new ArrayList<>();
    private int cuts;

    Opened(Path old) {
      this.old = old;
      double half = halfFold();
      List<Double> at = new ArrayList<>();
      at.add(0.0);
      for (double level : half == 0 ? new double[] {0} : new double[] {-half, half}) {
        Point on = Slash.this.at.plus(way.times(level));
        for (Path.Place place : old.crossings(on, on.plus(way.left()))) {
          at.add(before(place));
        }
      }
      at.sort(Double::compare);
      double length = old.length();
      at.add(length);
      for (int i = 1; i < at.size(); i++) {
        double from = at.get(i - 1);
        double to = at.get(i);
        if (to - from > 1e-6) {
          double middle = beyond(old.at((from + to) / 2));
          if (Math.abs(middle) >= half - 1e-9) {
            parts.add(old.between(from, to));
            spans.add(new double[] {from, to});
            far.add(middle > 1e-9);
          }
        }
      }
    }

    private double before(Path.Place place) {
      List<Segment> until = old.between(old.first(), place);
      return until.isEmpty() ? 0 : new Path(until).length();
    }

    private boolean farAt(Point end) {
      return beyond(end) > Math.max(1e-6, halfFold() - 1e-6);
    }

    Path path(boolean trued) {
      if (parts.isEmpty()) {
        return old;
      }
      List<Path> laid = new ArrayList<>();
      for (int i = 0; i < parts.size(); i++) {
        Path part = parts.get(i);
        laid.add(far.get(i) ? part.mapped(p -> p.plus(shift())) : part);
        if (i > 0 && !far.get(i).equals(far.get(i - 1))) {
          cuts++;
        }
      }
      Point start = farAt(old.start()) ? old.start().plus(shift()) : old.start();
      Point end = farAt(old.end()) ? old.end().plus(shift()) : old.end();
      cuts += far.get(0) == farAt(old.start()) ? 0 : 1;
      cuts += far.get(far.size() - 1) == farAt(old.end()) ? 0 : 1;
      if (cuts > 0 && trued && old.straight(STRAIGHT_MM)) {
        return Path.line(start, end);
      }
      List<Segment> all = new ArrayList<>();
      add(all, start, laid.get(0));
      for (int i = 1; i < laid.size(); i++) {
        boolean cut = !far.get(i).equals(far.get(i - 1));
        if (cut && trued) {
          trueInto(all, laid.get(i));
        } else {
          add(all, all.get(all.size() - 1).end(), laid.get(i));
        }
      }
      Point last = all.get(all.size() - 1).end();
      if (last.distance(end) > 1e-9) {
        all.add(new Segment.Line(last, end));
      }
      return new Path(all);
    }

    private void add(List<Segment> all, Point from, Path part) {
      if (from.distance(part.start()) > 1e-9) {
        all.add(new Segment.Line(from, part.start()));
      }
      all.addAll(part.segments());
    }

    /** Goes on smoothly from what is drawn to the next part. */
    private void trueInto(List<Segment> all, Path next) {
      Path drawn = new Path(all);
      double length = drawn.length();
      double ahead = next.length();
      double back = Math.min(Math.min(length, ahead) / 2, TRUED_MM);
      Path kept = drawn.between(0, length - back);
      Path rest = next.between(back, ahead);
      all.clear();
      all.addAll(kept.segments());
      all.add(
          FrenchCurve.curve(kept.end(), kept.endDirection(), rest.start(), rest.startDirection()));
      all.addAll(rest.segments());
    }

    /** Where a distance along the old line lies on the new one, as a share of the parts. */
    double place(double mm) {
      double before = far.get(0) == farAt(old.start()) ? 0 : Math.max(0, byMm);
      for (int i = 0; i < spans.size(); i++) {
        double[] span = spans.get(i);
        if (i > 0 && !far.get(i).equals(far.get(i - 1))) {
          before += Math.max(0, byMm);
        }
        if (mm <= span[1] + 1e-9) {
          return before + Math.max(0, mm - span[0]);
        }
        before += span[1] - span[0];
      }
      return before;
    }
  }
}
