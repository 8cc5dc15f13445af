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
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Opens a half piece to a whole one. Edges that run across the fold become one; those of the new
 * half are called {@code other side seam}, and so are its marks.
 *
 * @param edge a straight one, at which it is mirrored
 */
public record Unfold(String edge) implements Alteration {

  private static final String OTHER = "other";

  private static final double STRAIGHT_MM = 0.05;

  @Override
  public String words(Unit unit) {
    return "unfolded at " + edge;
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    WorkEdge fold = piece.edge(edge);
    if (!fold.line().straight(STRAIGHT_MM)) {
      throw new InputException(
          Problem.onEdge(
              piece.name(), edge, "it is not straight", "Unfold the piece at a straight edge"));
    }
    Point a = fold.line().start();
    Point b = fold.line().end();
    List<WorkEdge> ring = Run.of(piece, List.of(edge)).rest(piece);
    List<WorkEdge> mirrored = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (WorkEdge own : ring) {
      mirrored.add(0, own.turnedOver(p -> p.mirrored(a, b)));
      taken.add(own.name());
    }
    if (mirrored.size() == 1) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              edge,
              "all the rest of the outline is one edge",
              "Name its stretches under edges:"));
    }
    TapeTogether.join(ring, mirrored, taken, OTHER);
    Map<String, Point> marks = new LinkedHashMap<>(piece.marks());
    piece
        .marks()
        .forEach(
            (name, at) -> {
              Point other = at.mirrored(a, b);
              if (other.distance(at) > Workpiece.ON_EDGE_MM) {
                marks.putIfAbsent(OTHER + " " + name, other);
              }
            });
    List<InnerLine> lines = new ArrayList<>(piece.innerLines());
    piece
        .innerLines()
        .forEach(
            l ->
                lines.add(
                    new InnerLine(OTHER + " " + l.name(), l.line().mapped(p -> p.mirrored(a, b)))));
    return piece
        .with(ring)
        .withFold(piece.fold().filter(f -> !f.equals(edge)))
        .withMarks(marks)
        .withInnerLines(lines)
        .withParts(Map.of());
  }
}
