package ellwand.pattern.alter;

import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Edges of a piece that follow one another, named in the order in which they are run through.
 *
 * @param first index of the first of them, counter-clockwise
 * @param count how many they are
 * @param backwards whether they are run through clockwise
 */
record Run(int first, int count, boolean backwards) {

  /**
   * Finds them.
   *
   * @throws InputException if one is not there, or they do not follow one another
   */
  static Run of(Workpiece piece, List<String> names) {
    List<Integer> at = new ArrayList<>();
    names.forEach(name -> at.add(piece.index(name)));
    int size = piece.edges().size();
    if (at.size() == 1) {
      return new Run(at.get(0), 1, piece.edges().get(at.get(0)).backwards());
    }
    boolean onwards = follow(at, 1, size);
    if (!onwards && !follow(at, -1, size)) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              String.join(", ", names) + " do not follow one another",
              "Name edges in their order round the piece, which is "
                  + String.join(", ", piece.edges().stream().map(WorkEdge::name).toList())));
    }
    return new Run(onwards ? at.get(0) : at.get(at.size() - 1), at.size(), !onwards);
  }

  private static boolean follow(List<Integer> at, int step, int size) {
    for (int i = 1; i < at.size(); i++) {
      if (at.get(i) != Math.floorMod(at.get(i - 1) + step, size)) {
        return false;
      }
    }
    return at.stream().distinct().count() == at.size();
  }

  /** The edges in counter-clockwise order. */
  List<WorkEdge> edges(Workpiece piece) {
    return ring(piece, first, count);
  }

  /** All other edges in counter-clockwise order, from the one after it. */
  List<WorkEdge> rest(Workpiece piece) {
    return ring(piece, first + count, piece.edges().size() - count);
  }

  private static List<WorkEdge> ring(Workpiece piece, int from, int many) {
    List<WorkEdge> edges = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      edges.add(piece.edges().get((from + i) % piece.edges().size()));
    }
    return edges;
  }
}
