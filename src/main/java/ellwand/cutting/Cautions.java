package ellwand.cutting;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Looks for what a pattern maker would ask about before cutting. */
public final class Cautions {

  /** How far from square an edge may meet the fold, degrees. */
  public static final double SQUARE_DEGREES = 1;

  private Cautions() {}

  /** An inner line may stray past the cutting line by so much, mm; our own choice. */
  private static final double STRAY_MM = 0.5;

  /**
   * In the order of the edges, then of the inner lines.
   *
   * @param unit that lengths are shown in
   */
  public static List<Caution> of(Piece piece, Unit unit) {
    List<Caution> cautions = new ArrayList<>();
    List<Edge> edges = piece.edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      Edge next = edges.get((i + 1) % edges.size());
      double inside = insideDegrees(edge, next);
      if (isFold(piece, edge)) {
        fold(piece, next, inside, cautions);
      } else if (isFold(piece, next)) {
        fold(piece, edge, inside, cautions);
      } else if (edge.turnedBack() != next.turnedBack()
          && (inside < TurnBack.LEAST_DEGREES || inside > TurnBack.MOST_DEGREES)) {
        turnedBack(piece, edge.turnedBack() ? edge : next, inside, cautions);
      }
    }
    CutPiece half = Cutter.cut(piece, 1, 1);
    CutPiece cut = half.fold().isPresent() ? half.opened() : half;
    allowances(piece, cut.sewing().box(), unit, cautions);
    innerLines(piece, cut, cautions);
    return cautions;
  }

  private static void allowances(Piece piece, Box sewing, Unit unit, List<Caution> cautions) {
    double wide = Math.min(sewing.length(), sewing.width());
    for (Edge edge : piece.edges()) {
      if (edge.allowanceMm() > wide) {
        cautions.add(
            caution(
                piece,
                edge,
                "its allowance of %s is wider than the finished piece, which is %s"
                    .formatted(
                        new Length(edge.allowanceMm()).show(unit), new Length(wide).show(unit))));
      }
    }
  }

  private static void innerLines(Piece piece, CutPiece cut, List<Caution> cautions) {
    Region inside = Region.of(cut.cutting()).grown(STRAY_MM);
    cut.innerLines().stream()
        .filter(line -> !line.points().stream().allMatch(inside::contains))
        .map(CutPiece.Drawn::name)
        .distinct()
        .forEach(
            name ->
                cautions.add(
                    new Caution(piece.name(), "line " + name, "it runs outside the piece")));
  }

  private static Caution caution(Piece piece, Edge edge, String sentence) {
    return new Caution(piece.name(), "edge " + edge.name(), sentence);
  }

  private static boolean isFold(Piece piece, Edge edge) {
    return piece.fold().filter(edge.name()::equals).isPresent();
  }

  /** The angle inside the piece between two edges that follow one another, 0 to 360. */
  private static double insideDegrees(Edge edge, Edge next) {
    Point before = edge.line().endDirection();
    Point after = next.line().startDirection();
    return 180 - Math.toDegrees(Math.atan2(before.cross(after), before.dot(after)));
  }

  private static void fold(Piece piece, Edge edge, double inside, List<Caution> cautions) {
    if (Math.abs(inside - 90) > SQUARE_DEGREES) {
      cautions.add(
          caution(
              piece,
              edge,
              String.format(
                  Locale.ROOT,
                  "it meets the fold at %.0f degrees, so it will have a point where it opens;"
                      + " draw it square to the fold unless that is meant",
                  inside)));
    }
  }

  private static void turnedBack(Piece piece, Edge hem, double inside, List<Caution> cautions) {
    cautions.add(
        caution(
            piece,
            hem,
            String.format(
                Locale.ROOT,
                "it meets its neighbour at %.0f degrees, where an allowance cannot be turned back,"
                    + " so that end is cut as a plain corner",
                inside)));
  }
}
