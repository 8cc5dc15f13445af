package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Measures the edges that a gathered rectangle is sewn to. */
public final class Joined {

  private Joined() {}

  /**
   * Finished length of all the edges together, mm. The edge of a half piece counts twice, for both
   * its halves, and so does that of a piece cut in pairs; otherwise an edge counts as often as it
   * is named, whatever number of the piece is cut.
   *
   * @param edges each as piece.edge
   * @param pieces those of the same style and size, gathered ones included
   * @throws InputException naming every edge that is not there
   */
  public static double lengthMm(List<String> edges, List<Piece> pieces) {
    List<Problem> problems = new ArrayList<>();
    double sum = 0;
    for (String edge : edges) {
      Optional<Piece> piece = owner(edge, pieces);
      if (piece.isPresent()) {
        sum += lengthMm(piece.get(), edge.substring(piece.get().name().length() + 1));
      } else {
        problems.add(
            Problem.of(
                "no edge is called " + edge, "Write piece.edge, for example " + example(pieces)));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return sum;
  }

  /** Whether each of the edges counts twice. */
  static boolean allTwice(List<String> edges, List<Piece> pieces) {
    return edges.stream().allMatch(e -> twice(owner(e, pieces).orElseThrow()));
  }

  private static Optional<Piece> owner(String edge, List<Piece> pieces) {
    return pieces.stream()
        .filter(p -> p.edges().stream().anyMatch(e -> edge.equals(p.name() + "." + e.name())))
        .findFirst();
  }

  private static double lengthMm(Piece piece, String edge) {
    return piece.edge(edge).line().length() * (twice(piece) ? 2 : 1);
  }

  private static boolean twice(Piece piece) {
    return piece.fold().isPresent() || piece.cuts().stream().anyMatch(c -> c.how() == Cut.How.PAIR);
  }

  private static String example(List<Piece> pieces) {
    return pieces.isEmpty()
        ? "front.waist"
        : pieces.get(0).name() + "." + pieces.get(0).edges().get(0).name();
  }
}
