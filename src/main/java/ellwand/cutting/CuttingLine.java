package ellwand.cutting;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts lines beside the edges and the corners between them together. */
final class CuttingLine {

  /** Points this near to a straight line between their neighbours are left out, mm. */
  static final double NEEDLESS_MM = 1e-6;

  /** Holes smaller than this come from rounding, square mm. */
  private static final double SLIVER_MM2 = 1e-3;

  private static final double ON_LINE_MM = 1e-3;

  /** How many allowances past its corner an edge's cutting line may meet the fold line. */
  private static final double FOLD_REACH = 10;

  private final Piece piece;
  private final List<Run> runs = new ArrayList<>();

  CuttingLine(Piece piece) {
    this.piece = piece;
    for (Edge edge : piece.edges()) {
      try {
        runs.addAll(Run.of(edge));
      } catch (InputException e) {
        throw new InputException(
            e.problems().stream()
                .map(p -> Problem.onEdge(piece.name(), edge.name(), p.what(), p.remedy()))
                .toList());
      }
    }
  }

  Outline outline() {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      corners.add(corner(runs.get(i), runs.get((i + 1) % runs.size())));
    }
    List<Point> ring = new ArrayList<>();
    boolean sure = true;
    for (int i = 0; i < runs.size(); i++) {
      Corner before = corners.get((i + runs.size() - 1) % runs.size());
      Corner after = corners.get(i);
      int last = runs.get(i).beside().size() - 1;
      sure &= after.sure() && before.offSecond() + after.offFirst() <= last;
      ring.addAll(runs.get(i).between(before, after));
      ring.addAll(after.points());
    }
    Outline outline = sure && Region.crossing(ring).isEmpty() ? Outline.of(ring) : untangled(ring);
    Outline clean = outline.withoutNeedless(NEEDLESS_MM);
    checkFold(clean);
    return clean;
  }

  private Corner corner(Run first, Run second) {
    // A closed run would meet itself everywhere.
    Arm a = first == second ? Arm.end(first).near() : Arm.end(first);
    Arm b = first == second ? Arm.start(second).near() : Arm.start(second);
    if (isFold(first) || isFold(second)) {
      return atFold(a, b, isFold(first) ? second.edge() : first.edge());
    }
    return TurnBack.between(a, b).orElseGet(() -> Corner.between(a, b));
  }

  private boolean isFold(Run run) {
    return piece.fold().filter(run.edge().name()::equals).isPresent();
  }

  /** Nothing may stick out past the fold line, so the cutting line ends on it. */
  private Corner atFold(Arm a, Arm b, Edge edge) {
    if (edge.allowanceMm() == 0) {
      return Corner.between(a, b);
    }
    return Corner.meeting(a, b, FOLD_REACH * edge.allowanceMm())
        .orElseThrow(
            () ->
                new InputException(
                    Problem.onEdge(
                        piece.name(),
                        edge.name(),
                        "its cutting line does not meet the fold line",
                        "Draw the edge square to the fold where the two meet")));
  }

  private void checkFold(Outline outline) {
    if (piece.fold().isEmpty()) {
      return;
    }
    Edge fold = piece.edge(piece.fold().get());
    Point from = fold.line().start();
    Point along = fold.line().end().minus(from).unit();
    for (Point p : outline.points()) {
      double past = -along.cross(p.minus(from));
      if (past > ON_LINE_MM) {
        throw new InputException(
            Problem.onEdge(
                piece.name(),
                fold.name(),
                String.format(Locale.ROOT, "the piece sticks out %.1f mm past its fold edge", past),
                "Draw a half piece on one side of its fold only, allowances included"));
      }
    }
  }

  /** The line without its loops; complains where a loop has swallowed an edge or closed a gap. */
  private Outline untangled(List<Point> ring) {
    Region inside = Region.enclosedBy(ring);
    List<Outline> holes = inside.holes().stream().filter(h -> h.area() > SLIVER_MM2).toList();
    List<Outline> shells = inside.shells().stream().filter(s -> s.area() > SLIVER_MM2).toList();
    for (int i = 0; i < piece.edges().size(); i++) {
      Edge edge = piece.edges().get(i);
      if (edge.allowanceMm() > 0
          && runs.stream().filter(r -> r.edge() == edge).noneMatch(r -> shows(r, shells))) {
        throw swallowed(i);
      }
    }
    if (!holes.isEmpty() || shells.size() != 1) {
      Outline odd = holes.isEmpty() ? shells.get(shells.size() - 1) : holes.get(0);
      throw tooWide(
          widest(odd), "the concave corner can take", "it closes a gap that must stay open");
    }
    return shells.get(0);
  }

  /** Whether any of a run's own line is part of the cutting line. */
  private static boolean shows(Run run, List<Outline> lines) {
    List<Point> beside = run.beside();
    for (int i = 1; i < beside.size(); i++) {
      for (int k = 0; k <= 20; k++) {
        Point p = beside.get(i - 1).towards(beside.get(i), k / 20.0);
        if (lines.stream().anyMatch(l -> l.distance(p) < ON_LINE_MM)) {
          return true;
        }
      }
    }
    return false;
  }

  private InputException swallowed(int index) {
    int n = piece.edges().size();
    Edge edge = piece.edges().get(index);
    Edge widest = edge;
    for (int beside : new int[] {index + 1, index + n - 1}) {
      Edge other = piece.edges().get(beside % n);
      if (other.allowanceMm() > widest.allowanceMm()) {
        widest = other;
      }
    }
    return tooWide(
        widest,
        bendsOut(piece.edges().get((index + n - 1) % n), edge)
                && bendsOut(edge, piece.edges().get((index + 1) % n))
            ? "there is room for"
            : "the concave corner can take",
        widest == edge
            ? "nothing is left of its cutting line"
            : "nothing is left of the cutting line of edge " + edge.name() + " beside it");
  }

  private static boolean bendsOut(Edge edge, Edge next) {
    return edge.line().endDirection().cross(next.line().startDirection()) >= 0;
  }

  private Edge widest(Outline odd) {
    Edge widest = null;
    for (Run run : runs) {
      if ((widest == null || run.edge().allowanceMm() > widest.allowanceMm())
          && shows(run, List.of(odd))) {
        widest = run.edge();
      }
    }
    return widest == null ? piece.edges().get(0) : widest;
  }

  private InputException tooWide(Edge edge, String measure, String why) {
    return new InputException(
        Problem.onEdge(
            piece.name(),
            edge.name(),
            String.format(
                Locale.ROOT,
                "its allowance of %.1f mm is more than %s: %s",
                edge.allowanceMm(),
                measure,
                why),
            "Make the allowance narrower, or open the corner out"));
  }
}
