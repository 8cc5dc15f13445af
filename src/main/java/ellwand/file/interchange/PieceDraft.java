package ellwand.file.interchange;

import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Draft;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A finished piece as points and edges again: each edge from its own first point. */
final class PieceDraft {

  private static final double SAME_MM = 1e-6;

  private PieceDraft() {}

  /**
   * The draft.
   *
   * @param named where its named points lie
   */
  static Draft of(Piece piece, Map<String, Point> named) {
    List<Draft.Node> nodes = new ArrayList<>();
    Set<String> taken = new HashSet<>(named.keySet());
    List<String> starts = new ArrayList<>();
    Segment before = last(piece.edges().get(piece.edges().size() - 1));
    int edgeNumber = 0;
    for (Edge edge : piece.edges()) {
      boolean starting = true;
      for (Segment segment : edge.line().segments()) {
        Optional<String> name = at(segment.start(), named);
        if (starting) {
          starts.add(name.orElseGet(() -> free(taken)));
          name = Optional.of(starts.get(edgeNumber));
        }
        nodes.add(new Draft.Node(name, segment.start(), arriving(before)));
        before = segment;
        starting = false;
      }
      edgeNumber++;
    }
    List<Draft.NamedEdge> edges = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      Edge edge = piece.edges().get(i);
      edges.add(
          new Draft.NamedEdge(
              edge.name(),
              starts.get(i),
              starts.get((i + 1) % starts.size()),
              Optional.of(edge.allowance()),
              edge.turnedBack()));
    }
    return new Draft(
        piece.name(),
        nodes,
        edges,
        0,
        piece.fold(),
        piece.grain(),
        piece.notches(),
        piece.innerLines(),
        piece.cuts());
  }

  private static Segment last(Edge edge) {
    return edge.line().segments().get(edge.line().segments().size() - 1);
  }

  private static Optional<Draft.Curve> arriving(Segment segment) {
    return segment instanceof Segment.Cubic c
        ? Optional.of(new Draft.Curve(c.control1(), c.control2()))
        : Optional.empty();
  }

  private static Optional<String> at(Point place, Map<String, Point> named) {
    return named.entrySet().stream()
        .filter(e -> e.getValue().distance(place) <= SAME_MM)
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static String free(Set<String> taken) {
    int n = 1;
    while (!taken.add("corner " + n)) {
      n++;
    }
    return "corner " + n;
  }

  /**
   * The numbers of the points that all sizes have: every one of an edge that has as many lines and
   * curves in each, else its ends.
   *
   * @param all the piece in all sizes, with the same edges
   */
  static List<Integer> turns(Piece piece, Collection<Piece> all) {
    List<Integer> turns = new ArrayList<>();
    int node = 0;
    for (Edge edge : piece.edges()) {
      int count = edge.line().segments().size();
      boolean alike =
          all.stream().allMatch(o -> o.edge(edge.name()).line().segments().size() == count);
      for (int i = 0; i < count; i++) {
        if (i == 0 || alike) {
          turns.add(node);
        }
        node++;
      }
    }
    return turns;
  }
}
