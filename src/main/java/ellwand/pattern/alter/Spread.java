package ellwand.pattern.alter;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Area;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A piece slashed from one edge to another and opened, so that it gains flare or fullness. Where a
 * slash opens, the edge runs straight across.
 *
 * @param from a mark on the edge that opens; with slashes that edge itself
 * @param to a mark on the other edge; with slashes that edge itself
 * @param byMm how much longer the first edge becomes, all slashes together
 * @param otherMm the same of the second edge; 0 where it is only a hinge
 * @param slashes shared out evenly along both edges; 0 for one from mark to mark
 */
public record Spread(String from, String to, double byMm, double otherMm, int slashes)
    implements Alteration {

  /** More would be a mistake. */
  private static final int MOST_SLASHES = 100;

  public Spread {
    InputException.unless(
        byMm > 0 && otherMm >= 0,
        "a spread opens the piece",
        "Write by: above 0, or name the ends the other way round");
    InputException.unless(
        slashes >= 0 && slashes <= MOST_SLASHES,
        slashes + " slashes are more than anybody cuts",
        "Write up to " + MOST_SLASHES);
  }

  @Override
  public String words(Unit unit) {
    return "%s spread by %s%s%s"
        .formatted(
            from,
            Words.length(byMm, unit),
            otherMm == 0 ? "" : ", " + to + " by " + Words.length(otherMm, unit),
            slashes == 0 ? "" : ", in " + slashes + (slashes == 1 ? " slash" : " slashes"));
  }

  /** With the edges and the area that it comes to. */
  @Override
  public String words(Workpiece after, Unit unit) {
    List<String> comesTo = new ArrayList<>();
    for (WorkEdge edge : after.edges()) {
      boolean opened =
          slashes > 0
              ? edge.name().equals(from) || edge.name().equals(to)
              : lies(after, from, edge) || lies(after, to, edge);
      if (opened) {
        comesTo.add(edge.name() + " " + Words.length(edge.edge().sewnMm(), unit));
      }
    }
    comesTo.add(new Area(Outline.of(Inside.ring(after)).area()).show(unit));
    return words(unit) + ": " + String.join(", ", comesTo);
  }

  private static boolean lies(Workpiece piece, String mark, WorkEdge edge) {
    return piece.edgesAt(piece.mark(mark)).contains(edge.name());
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    if (slashes == 0) {
      checkMark(piece, from);
      checkMark(piece, to);
      return opened(piece, from, to, byMm, otherMm);
    }
    WorkEdge one = piece.edge(from);
    WorkEdge other = piece.edge(to);
    if (one.name().equals(other.name())) {
      throw new InputException(
          Problem.onEdge(
              piece.name(), from, "slashes run from one edge to another", "Name two edges"));
    }
    Workpiece slashed = piece;
    for (int i = 1; i <= slashes; i++) {
      double share = (double) i / (slashes + 1);
      slashed =
          slashed
              .marked(slash(i, 1), one.line().at(one.line().length() * share))
              .marked(slash(i, 2), other.line().at(other.line().length() * (1 - share)));
    }
    for (int i = 1; i <= slashes; i++) {
      slashed = opened(slashed, slash(i, 1), slash(i, 2), byMm / slashes, otherMm / slashes);
    }
    Map<String, Point> marks = new LinkedHashMap<>(slashed.marks());
    marks.keySet().retainAll(piece.marks().keySet());
    return slashed.withMarks(marks);
  }

  private static void checkMark(Workpiece piece, String mark) {
    if (!piece.marks().containsKey(mark)
        && piece.edges().stream().anyMatch(e -> e.name().equals(mark))) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              mark,
              "a single slash runs from a mark to another, and this is an edge",
              "Mark a place on it, or give slashes: that are shared out along it"));
    }
  }

  /** A name that nobody can give. */
  private static String slash(int i, int end) {
    return "slash " + i + (end == 1 ? " at its start\n" : " at its end\n");
  }

  private static Workpiece opened(
      Workpiece piece, String from, String to, double byMm, double otherMm) {
    Perimeter outline = new Perimeter(piece);
    double start = outline.place(from);
    double end = outline.place(to);
    Opening.growing(piece, start, "mark " + from.strip());
    if (otherMm > 0) {
      Opening.growing(piece, end, "mark " + to.strip());
    }
    Point one = piece.mark(from);
    Point other = piece.mark(to);
    double length = one.distance(other);
    if (length < Workpiece.ON_EDGE_MM || Math.abs(byMm - otherMm) >= length) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              "a slash %s long cannot be opened so far".formatted(Words.length(length, Unit.CM)),
              "Open it less, or in more slashes"));
    }
    return Opening.between(piece, start, end).moved(opening(one, other, byMm, otherMm)).piece();
  }

  /**
   * Moves what lies to the right of a line away from it, its two ends by two distances: both lines
   * are then the legs of an isosceles trapezium, so that each leans to the other's direction by an
   * angle whose sine is half the difference of the distances by the line's length.
   */
  private static Motion opening(Point from, Point to, double byMm, double otherMm) {
    Point along = to.minus(from).unit();
    Point aside = along.left().times(-1);
    double lean = Math.asin((byMm - otherMm) / (2 * from.distance(to)));
    Point across = aside.times(Math.cos(lean)).plus(along.times(Math.sin(lean)));
    Motion turn = new Motion(false, Math.toDegrees(2 * lean), 0, 0);
    Point shift = from.plus(across.times(byMm)).minus(turn.apply(from));
    return turn.shifted(shift.x(), shift.y());
  }
}
