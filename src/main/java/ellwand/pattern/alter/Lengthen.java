package ellwand.pattern.alter;

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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Cuts a piece along a line across its grain, or along it, and moves apart what lies beyond; or
 * folds it along the line, half of what is taken out on either side. The edges that were cut are
 * trued: straight ones ruled anew from end to end, curves drawn on smoothly.
 *
 * @param byMm negative to make it shorter
 * @param at a mark on the line
 * @param alongGrain whether the line runs along the grain, so that the piece gets wider
 */
public record Lengthen(double byMm, String at, boolean alongGrain) implements Alteration {

  @Override
  public String words(Unit unit) {
    String what = alongGrain ? byMm < 0 ? "narrower" : "wider" : byMm < 0 ? "shorter" : "longer";
    return Words.length(Math.abs(byMm), unit) + " " + what + " at " + at;
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    Point grain = Grainwise.direction(piece);
    Slash slash = new Slash(piece.mark(at), alongGrain ? grain.left() : grain, byMm);
    boolean below = false;
    boolean above = false;
    for (WorkEdge edge : piece.edges()) {
      for (Point p : edge.line().flattened(1)) {
        below |= slash.beyond(p) < -Workpiece.ON_EDGE_MM;
        above |= slash.beyond(p) > Workpiece.ON_EDGE_MM;
      }
      if (slash.folds(edge.line().start())) {
        throw new InputException(
            Problem.onEdge(
                piece.name(),
                edge.name(),
                "a corner of it lies in the %s that would be folded away"
                    .formatted(Words.length(-byMm, Unit.CM)),
                "Fold it at a mark farther from the corner, or by less"));
      }
    }
    if (!below || !above) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              "the line through %s %s the grain does not cross the piece"
                  .formatted(at, alongGrain ? "along" : "across"),
              "Name a mark inside the piece or on an edge that crosses the line"));
    }
    List<WorkEdge> edges = new ArrayList<>();
    piece.edges().forEach(edge -> edges.add(slash.opened(edge)));
    List<InnerLine> lines =
        piece.innerLines().stream()
            .map(l -> new InnerLine(l.name(), slash.opened(l.line())))
            .toList();
    Map<String, Point> marks = new LinkedHashMap<>();
    piece.marks().forEach((name, mark) -> marks.put(name, slash.moved(mark)));
    return piece.with(edges).withInnerLines(lines).withMarks(marks);
  }
}
