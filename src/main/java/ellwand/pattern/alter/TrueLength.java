package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Alteration;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Gives an edge the sewn length of the one that it is joined to: one of its ends is drawn on, or
 * cut off, along the edge, and the edge beside it follows.
 *
 * @param edge the one that gives
 * @param to what it is joined to
 * @param easeMm how much longer it is meant to be; negative if shorter
 * @param at the point at its end that moves; its last as drawn if empty
 */
public record TrueLength(String edge, OtherEdge to, double easeMm, Optional<String> at)
    implements Alteration {

  @Override
  public Set<String> needs() {
    return to.needs();
  }

  @Override
  public String words(Unit unit) {
    return edge + " as long as " + to;
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    WorkEdge own = piece.edge(edge);
    double more = to.on(piece, others).edge().sewnMm() + easeMm - own.edge().sewnMm();
    if (Math.abs(more) < 1e-6) {
      return piece;
    }
    boolean atEnd = at.map(name -> isEnd(piece, own, name)).orElseGet(() -> !own.backwards());
    if (own.line().length() + more < Workpiece.ON_EDGE_MM) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              edge,
              "nothing would be left of it: it is %s, %s is %s"
                  .formatted(
                      Words.length(own.edge().sewnMm(), Unit.CM),
                      to,
                      Words.length(to.on(piece, others).edge().sewnMm(), Unit.CM)),
              "See that these two are joined"));
    }
    WorkEdge trued = atEnd ? longer(own, more) : turned(longer(turned(own), more));
    List<WorkEdge> rest = Run.of(piece, List.of(edge)).rest(piece);
    if (atEnd) {
      Neighbours.startAt(rest, trued.line().end());
    } else {
      Neighbours.endAt(rest, trued.line().start());
    }
    List<WorkEdge> all = new ArrayList<>(List.of(trued));
    all.addAll(rest);
    return piece.with(all);
  }

  private boolean isEnd(Workpiece piece, WorkEdge own, String name) {
    Point mark = piece.mark(name);
    if (mark.distance(own.line().end()) <= Workpiece.ON_EDGE_MM) {
      return true;
    }
    if (mark.distance(own.line().start()) <= Workpiece.ON_EDGE_MM) {
      return false;
    }
    throw new InputException(
        Problem.onEdge(
            piece.name(), edge, name + " is none of its ends", "Name the end that is to move"));
  }

  private static WorkEdge turned(WorkEdge edge) {
    return edge.turnedOver(p -> p);
  }

  /** Drawn on at its end, or cut off there. */
  private static WorkEdge longer(WorkEdge edge, double mm) {
    Path line = edge.line();
    if (mm < 0) {
      return edge.between(0, line.length() + mm);
    }
    Point end = line.end().plus(line.endDirection().times(mm));
    List<Segment> segments = new ArrayList<>(line.segments());
    int last = segments.size() - 1;
    if (segments.get(last) instanceof Segment.Line straight) {
      segments.set(last, new Segment.Line(straight.start(), end));
    } else {
      segments.add(new Segment.Line(line.end(), end));
    }
    return edge.onto(new Path(segments), p -> p, at -> at);
  }
}
