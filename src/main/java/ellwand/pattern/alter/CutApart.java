package ellwand.pattern.alter;

import ellwand.geometry.Crossings;
import ellwand.geometry.Outline;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cuts a piece into two parts, from which other pieces start. Both new edges get the usual
 * allowance and a notch at a third of their length. The piece itself stays whole, with the line
 * drawn on it.
 *
 * @param upper name of the part nearer the top, or the left one where the line runs along the grain
 * @param lower name of the other
 * @param seam name of the edge that both parts get
 */
public record CutApart(String upper, String lower, String seam, DrawnLine line)
    implements Alteration {

  @Override
  public String words(Unit unit) {
    return "cut apart into " + upper + " and " + lower;
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    if (piece.parts().containsKey(upper) || piece.parts().containsKey(lower)) {
      throw new InputException(
          Problem.inPiece(
              piece.name(), "it has a part of that name already", "Give each part another name"));
    }
    Path cut = line.on(piece);
    Perimeter outline = new Perimeter(piece);
    double from = outline.place(cut.start(), line.from());
    double to = outline.place(cut.end(), line.to());
    if (Math.abs(from - to) < Workpiece.ON_EDGE_MM) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              line.from() + " and " + line.to() + " are in the same place",
              "Cut from one mark on the outline to another"));
    }
    checkInside(piece, cut);
    double length = cut.length();
    // What lies to the left of the cut is closed by it, what lies to the right by its way back.
    Workpiece left =
        part(
            piece,
            outline.between(to, from),
            WorkEdge.drawn(seam, cut, piece.usualAllowance(), false).notched(length / 3));
    Workpiece right =
        part(
            piece,
            outline.between(from, to),
            WorkEdge.drawn(seam, cut.reversed(), piece.usualAllowance(), true)
                .notched(length * 2 / 3));
    boolean leftFirst = leftFirst(piece, left, right);
    Map<String, Workpiece> parts = new LinkedHashMap<>(piece.parts());
    parts.put(upper, leftFirst ? left : right);
    parts.put(lower, leftFirst ? right : left);
    List<InnerLine> lines = new ArrayList<>(piece.innerLines());
    lines.add(new InnerLine(seam, cut));
    return piece.withParts(parts).withInnerLines(lines);
  }

  private static boolean leftFirst(Workpiece piece, Workpiece left, Workpiece right) {
    Point up = Grainwise.direction(piece);
    Point way = Inside.middle(left).minus(Inside.middle(right));
    double along = way.dot(up);
    double across = way.dot(up.left());
    return Math.abs(along) >= Math.abs(across) ? along > 0 : across > 0;
  }

  private void checkInside(Workpiece piece, Path cut) {
    for (WorkEdge edge : piece.edges()) {
      for (Crossings.Meeting meeting : Crossings.of(cut, edge.line())) {
        if (meeting.oneMm() > Workpiece.ON_EDGE_MM
            && meeting.oneMm() < cut.length() - Workpiece.ON_EDGE_MM) {
          throw leaves(piece, edge.name());
        }
      }
    }
    Point middle = cut.at(cut.length() / 2);
    if (!Inside.holds(piece, middle) || !piece.edgesAt(middle).isEmpty()) {
      throw leaves(piece, piece.edgesAt(cut.start()).get(0));
    }
  }

  private static InputException leaves(Workpiece piece, String edge) {
    return new InputException(
        Problem.onEdge(
            piece.name(),
            edge,
            "the cutting line leaves the piece there",
            "Lead it through marks inside the piece, from one edge to another"));
  }

  private Workpiece part(Workpiece piece, List<WorkEdge> edges, WorkEdge seamEdge) {
    List<WorkEdge> all = new ArrayList<>(edges);
    all.add(seamEdge);
    Workpiece part = piece.with(Facing.distinct(all)).withParts(Map.of());
    Optional<String> fold =
        piece.fold().filter(f -> part.edges().stream().anyMatch(e -> e.name().equals(f)));
    List<Point> ring = Inside.ring(part);
    Map<String, Point> marks = new LinkedHashMap<>();
    piece
        .marks()
        .forEach(
            (name, at) -> {
              if (Outline.encloses(ring, at) || !part.edgesAt(at).isEmpty()) {
                marks.put(name, at);
              }
            });
    List<InnerLine> lines = new ArrayList<>();
    for (InnerLine inner : piece.innerLines()) {
      List<Double> at = new ArrayList<>(List.of(0.0));
      Crossings.of(inner.line(), seamEdge.line()).forEach(m -> at.add(m.oneMm()));
      at.add(inner.line().length());
      for (int i = 1; i < at.size(); i++) {
        double middle = (at.get(i) + at.get(i - 1)) / 2;
        if (at.get(i) - at.get(i - 1) > Workpiece.ON_EDGE_MM
            && Outline.encloses(ring, inner.line().at(middle))) {
          lines.add(new InnerLine(inner.name(), inner.line().between(at.get(i - 1), at.get(i))));
        }
      }
    }
    return part.withFold(fold).withMarks(marks).withInnerLines(lines);
  }
}
