package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A strip beyond an edge: for a fastening, a hem, a casing. The edge keeps its name and moves out;
 * its ends belong to the edges beside it. Where it was is drawn as a line.
 *
 * @param byMm more than 0
 */
public record Extend(String edge, double byMm, Ends ends) implements Alteration {

  /** How a turned back strip may differ from a straight line, mm. */
  private static final double STRAIGHT_MM = 0.05;

  /** How the strip ends. */
  public enum Ends {
    /** Square to the edge. */
    SQUARE,
    /** As the piece mirrored along the edge, so that it fits when it is turned back. */
    MIRRORED
  }

  @Override
  public String words(Unit unit) {
    return edge + " extended by " + Words.length(byMm, unit);
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    Run run = Run.of(piece, List.of(edge));
    WorkEdge old = piece.edge(edge);
    List<WorkEdge> rest = run.rest(piece);
    if (rest.size() < 2) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              edge,
              "it has no edges beside it that could go on",
              "Name the stretches of the outline under edges:"));
    }
    Path outer = Parallel.of(old.line(), byMm);
    if (ends == Ends.MIRRORED) {
      if (!old.line().straight(STRAIGHT_MM)) {
        throw new InputException(
            Problem.onEdge(
                piece.name(),
                edge,
                "it is not straight, so that nothing fits when it is turned back along it",
                "Redraw it as a line first, or extend it with ends: square"));
      }
      Point a = old.line().start();
      Point b = old.line().end();
      Path before = end(rest.get(rest.size() - 1).line().reversed(), a, b, piece);
      Path after = end(rest.get(0).line(), a, b, piece);
      outer = Path.line(before.end(), after.end());
      rest.set(0, goingOn(rest.get(0), after.reversed(), false));
      rest.set(rest.size() - 1, goingOn(rest.get(rest.size() - 1), before, true));
    } else {
      rest.set(0, goingOn(rest.get(0), Path.line(outer.end(), old.line().end()), false));
      int last = rest.size() - 1;
      rest.set(last, goingOn(rest.get(last), Path.line(old.line().start(), outer.start()), true));
    }
    List<WorkEdge> all = new ArrayList<>();
    all.add(old.along(outer));
    all.addAll(rest);
    List<InnerLine> lines = new ArrayList<>(piece.innerLines());
    lines.add(new InnerLine(edge + " line", old.line()));
    Workpiece extended = piece.with(all).withInnerLines(lines);
    return piece.fold().filter(edge::equals).isPresent()
        ? extended.withFold(Optional.empty())
        : extended;
  }

  /** The beginning of a neighbour, mirrored about the edge, as far as the strip goes. */
  private Path end(Path neighbour, Point a, Point b, Workpiece piece) {
    Point out = b.minus(a).unit().left().times(-1);
    Path mirrored = neighbour.mapped(p -> p.mirrored(a, b));
    List<Point> line = mirrored.flattened(1e-3);
    double along = 0;
    for (int i = 1; i < line.size(); i++) {
      double before = line.get(i - 1).minus(a).dot(out);
      double after = line.get(i).minus(a).dot(out);
      double step = line.get(i - 1).distance(line.get(i));
      if (after >= byMm && after > before) {
        return mirrored.between(0, along + step * (byMm - before) / (after - before));
      }
      along += step;
    }
    throw new InputException(
        Problem.onEdge(
            piece.name(),
            edge,
            "the edge beside it is too short for a strip of %s that is turned back"
                .formatted(Words.length(byMm, Unit.CM)),
            "Make the strip narrower, or extend it with ends: square"));
  }

  private static WorkEdge goingOn(WorkEdge edge, Path by, boolean after) {
    WorkEdge more = edge.plain(by);
    return after ? edge.then(more) : more.then(edge);
  }
}
