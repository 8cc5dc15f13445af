package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Gathers;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.Optional;

/**
 * A dart that is no longer sewn: what it took becomes flare or gathers at another place, by
 * pivoting round its point, or gathers where it was.
 *
 * @param to a mark on the edge that is to open; empty for gathers at its own place
 * @param into what becomes of it
 * @param overMm over how much of the edge it is gathered, with what is gathered; empty for flare
 */
public record CloseDart(String dart, Optional<String> to, Into into, Optional<Double> overMm)
    implements Alteration {

  /** What a closed dart becomes. */
  public enum Into {
    FLARE,
    GATHERS
  }

  public CloseDart {
    InputException.unless(
        into == Into.GATHERS || to.isPresent(),
        "it is not said where the flare opens",
        "Give to: with a mark on the hem");
    InputException.unless(
        overMm.isPresent() == (into == Into.GATHERS),
        "gathers lie over a stretch of the edge, flare does not",
        "Give over: with into: gathers, and only there");
  }

  @Override
  public String words(Unit unit) {
    return "%s closed into %s%s"
        .formatted(dart, into.name().toLowerCase(), to.map(t -> " at " + t).orElse(""));
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    Darts.Found found = Darts.find(piece, dart);
    if (to.isEmpty()) {
      WorkEdge edge = found.edge().with(found.edge().edge().without(found.dart()));
      return gathered(
          Darts.with(piece, edge),
          edge.name(),
          found.dart().first().outer(),
          found.dart().second().outer());
    }
    Pivot pivot = Pivot.of(piece, found, to.get());
    return into == Into.FLARE
        ? pivot.piece()
        : gathered(pivot.piece(), pivot.edge(), pivot.first(), pivot.second());
  }

  private Workpiece gathered(Workpiece piece, String name, Point first, Point second) {
    WorkEdge edge = piece.edge(name);
    double from = edge.line().nearest(first);
    double to = edge.line().nearest(second);
    double away = to - from;
    double more = (overMm.orElseThrow() - away) / 2;
    double length = edge.line().length();
    if (more <= 0 || from - more < 0 || to + more > length) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              name,
              more <= 0
                  ? "%s to be gathered away are as long as the stretch that is gathered, or longer"
                      .formatted(Words.length(away, Unit.CM))
                  : "the gathers would reach past the end of it",
              more <= 0 ? "Make over: longer" : "Make over: shorter, or choose another place"));
    }
    Gathers gathers = new Gathers(edge.line().at(from - more), edge.line().at(to + more), away);
    return Darts.with(piece, edge.with(edge.edge().with(gathers)));
  }
}
