package ellwand.cutting;

import ellwand.geometry.Point;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Looks for what a pattern maker would ask about before cutting. */
public final class Cautions {

  /** How far from square an edge may meet the fold, degrees. */
  public static final double SQUARE_DEGREES = 1;

  private Cautions() {}

  /** In the order of the edges. */
  public static List<Caution> of(Piece piece) {
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
    return cautions;
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
          new Caution(
              piece.name(),
              edge.name(),
              String.format(
                  Locale.ROOT,
                  "it meets the fold at %.0f degrees, so it will have a point where it opens;"
                      + " draw it square to the fold unless that is meant",
                  inside)));
    }
  }

  private static void turnedBack(Piece piece, Edge hem, double inside, List<Caution> cautions) {
    cautions.add(
        new Caution(
            piece.name(),
            hem.name(),
            String.format(
                Locale.ROOT,
                "it meets its neighbour at %.0f degrees, where an allowance cannot be turned back,"
                    + " so that end is cut as a plain corner",
                inside)));
  }
}
