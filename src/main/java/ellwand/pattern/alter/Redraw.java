package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A new line in the place of edges, or of a part of them. Where it begins or ends on an edge beside
 * them, that one is cut off there; where it begins or ends on no edge, the edge beside it is drawn
 * on to it.
 *
 * @param edges one, or several that follow one another in the order in which the line runs
 * @param from the mark where it begins; the first point of the edges if empty
 * @param to the mark where it ends; their last point if empty
 * @param through marks in between, in order
 * @param leaves how it leaves {@code from}; if empty a curve leaves a fold square and all else free
 * @param arrives how it arrives at {@code to}
 */
public record Redraw(
    List<String> edges,
    Optional<String> from,
    Optional<String> to,
    List<String> through,
    Shape shape,
    Optional<Manner> leaves,
    Optional<Manner> arrives)
    implements Alteration {

  /** What is drawn between the marks. */
  public enum Shape {
    LINE,
    CURVE
  }

  public Redraw {
    edges = List.copyOf(edges);
    through = List.copyOf(through);
    if (shape == Shape.LINE && (leaves.isPresent() || arrives.isPresent())) {
      throw InputException.of(
          "a straight line leaves and arrives as it must",
          "Write as: curve, or take leaves: and arrives: out");
    }
  }

  @Override
  public String words(Unit unit) {
    return String.join(", ", edges) + " redrawn";
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    Run run = Run.of(piece, edges);
    Optional<Point> begin = from.map(piece::mark).map(piece::snapped);
    Optional<Point> end = to.map(piece::mark).map(piece::snapped);
    List<Point> between = through.stream().map(piece::mark).collect(Collectors.toList());
    if (run.backwards()) {
      Collections.reverse(between);
      return new Drawing(piece, run, end, begin, between, arrives, leaves).drawn();
    }
    return new Drawing(piece, run, begin, end, between, leaves, arrives).drawn();
  }

  /** One redrawing, all counter-clockwise. */
  private final class Drawing {

    private final Workpiece piece;
    private final List<WorkEdge> old;
    private final List<WorkEdge> rest;
    private final Point begin;
    private final Point end;
    private final List<Point> between;
    private final Optional<Manner> leaving;
    private final Optional<Manner> arriving;

    Drawing(
        Workpiece piece,
        Run run,
        Optional<Point> begin,
        Optional<Point> end,
        List<Point> between,
        Optional<Manner> leaving,
        Optional<Manner> arriving) {
      this.piece = piece;
      this.old = run.edges(piece);
      this.rest = run.rest(piece);
      this.begin = begin.orElse(old.get(0).line().start());
      this.end = end.orElse(old.get(old.size() - 1).line().end());
      this.between = between;
      this.leaving = leaving;
      this.arriving = arriving;
    }

    Workpiece drawn() {
      double total = lengths(old);
      double fromMm = on(old, begin).orElse(0.0);
      double toMm = on(old, end).orElse(total);
      if (on(old, begin).isEmpty()) {
        Neighbours.endAt(rest, begin);
      }
      if (on(old, end).isEmpty()) {
        Neighbours.startAt(rest, end);
      }
      double way = rest.isEmpty() ? begin.distance(end) : toMm - fromMm;
      if (way < Workpiece.ON_EDGE_MM) {
        throw new InputException(
            Problem.onEdge(
                piece.name(),
                old.get(0).name(),
                "the new line would begin where it ends, or after that",
                "Name from: and to: in the order in which the edge is drawn"));
      }
      Path line = line();
      List<WorkEdge> all = new ArrayList<>();
      double share = line.length() / (toMm - fromMm);
      double before = 0;
      for (WorkEdge edge : old) {
        double length = edge.line().length();
        double a = Math.max(0, Math.min(length, fromMm - before));
        double b = Math.max(0, Math.min(length, toMm - before));
        all.addAll(edge(edge, a, b, line, (before + a - fromMm) * share, share));
        before += length;
      }
      all.addAll(rest);
      return piece.with(all);
    }

    /** What is kept of an edge before a and after b, and its share of the new line between them. */
    private List<WorkEdge> edge(
        WorkEdge edge, double a, double b, Path line, double from, double share) {
      double length = edge.line().length();
      List<WorkEdge> parts = new ArrayList<>();
      if (a > Workpiece.ON_EDGE_MM) {
        parts.add(edge.between(0, a));
      }
      if (b - a > 1e-6) {
        double to = from + (b - a) * share;
        boolean all = from < 1e-6 && to > line.length() - 1e-6;
        parts.add(edge.between(a, b).along(all ? line : line.between(from, to)));
      }
      if (length - b > Workpiece.ON_EDGE_MM) {
        parts.add(edge.between(b, length));
      }
      return parts.stream().reduce(WorkEdge::then).stream().toList();
    }

    private Path line() {
      List<Point> points = new ArrayList<>();
      points.add(begin);
      points.addAll(between);
      points.add(end);
      // Edges beside it as they are now.
      List<WorkEdge> now = new ArrayList<>(old);
      now.addAll(rest);
      Workpiece there = piece.with(now);
      String before = rest.isEmpty() ? "" : rest.get(rest.size() - 1).name();
      String after = rest.isEmpty() ? "" : rest.get(0).name();
      return DrawnLine.drawn(
          there, points, manner(leaving, before), manner(arriving, after), shape);
    }

    /** Only a fold beside the new line is met square, not one that it takes the place of. */
    private Optional<Manner> manner(Optional<Manner> said, String beside) {
      return said.or(
          () -> piece.fold().filter(beside::equals).isPresent() ? said : Optional.of(Manner.FREE));
    }

    private static double lengths(List<WorkEdge> edges) {
      return edges.stream().mapToDouble(e -> e.line().length()).sum();
    }

    private static Optional<Double> on(List<WorkEdge> edges, Point at) {
      double before = 0;
      for (WorkEdge edge : edges) {
        if (edge.line().passes(at, Workpiece.ON_EDGE_MM)) {
          return Optional.of(before + edge.line().nearest(at));
        }
        before += edge.line().length();
      }
      return Optional.empty();
    }
  }
}
