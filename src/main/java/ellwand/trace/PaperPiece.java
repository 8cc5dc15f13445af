package ellwand.trace;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A paper piece as it is to be drawn: what was traced, or what somebody made of it.
 *
 * @param edges each from where the one before ends, the last back to the start
 * @param nicks notches in them
 */
public record PaperPiece(String name, List<NamedEdge> edges, List<Nick> nicks) {

  public PaperPiece {
    edges = List.copyOf(edges);
    nicks = List.copyOf(nicks);
  }

  /** With corners called A, B, C and edges by them. */
  public static PaperPiece of(String name, TracedPaper traced) {
    List<NamedEdge> edges = new ArrayList<>();
    List<Path> paths = traced.edges().edges();
    for (int k = 0; k < paths.size(); k++) {
      String called =
          paths.size() == 1 ? "outline" : corner(k) + " to " + corner((k + 1) % paths.size());
      edges.add(new NamedEdge(called, paths.get(k)));
    }
    return new PaperPiece(name, edges, traced.edges().nicks());
  }

  /** What the n-th corner is called, from 0, as in drawings. */
  public static String corner(int n) {
    String letter = String.valueOf((char) ('A' + n % 26));
    return n < 26 ? letter : letter + (n / 26 + 1);
  }

  /**
   * The number of an edge.
   *
   * @param said its name, or its corners as in {@code AB} or {@code A-B}, in either order
   * @throws InputException if there is none
   */
  public int edge(String said) {
    String wanted = plain(said);
    for (int k = 0; k < edges.size(); k++) {
      String name = edges.get(k).name();
      String back = name.replaceFirst("^(\\w+) to (\\w+)$", "$2 to $1");
      if (plain(name).equals(wanted) || plain(back).equals(wanted)) {
        return k;
      }
    }
    throw InputException.of(
        "the piece has no edge '" + said.strip() + "'",
        "Its edges are "
            + edges.stream().map(NamedEdge::name).collect(Collectors.joining(", "))
            + ", as the control picture shows");
  }

  private static String plain(String name) {
    return name.toUpperCase(Locale.ROOT).replaceAll("\\bTO\\b|[^\\p{L}\\p{N}]", "");
  }

  /**
   * The same with one edge drawn quite straight.
   *
   * @throws InputException if it bends by more than paper does that is cut along a ruler
   */
  public PaperPiece straight(int edge) {
    NamedEdge old = edges.get(edge);
    Optional<Double> bend = bend(old.path());
    if (bend.isPresent()) {
      throw InputException.of(
          String.format(
              Locale.ROOT,
              "edge %s is no straight line: it bends by %.0f mm",
              old.name(),
              bend.get()),
          "Name the edge that lies on the fold or along the grain");
    }
    List<NamedEdge> all = new ArrayList<>(edges);
    all.set(edge, new NamedEdge(old.name(), Path.line(old.path().start(), old.path().end())));
    return new PaperPiece(name, all, nicks);
  }

  private static final double STRAIGHT_MM = 1.5;

  /** By how much it bends, if it does. */
  private static Optional<Double> bend(Path path) {
    Point along = path.end().minus(path.start());
    double most =
        path.flattened(0.1).stream()
            .mapToDouble(p -> Math.abs(along.unit().cross(p.minus(path.start()))))
            .max()
            .orElse(0);
    return along.norm() > 0 && most <= STRAIGHT_MM ? Optional.empty() : Optional.of(most);
  }

  /**
   * The whole of which this is half: mirrored at an edge, which is gone then. Edges that run
   * smoothly across it become one.
   */
  public PaperPiece whole(int fold) {
    PaperPiece half = straight(fold);
    Point a = half.edges.get(fold).path().start();
    Point b = half.edges.get(fold).path().end();
    List<NamedEdge> kept = new ArrayList<>();
    for (int k = 1; k < edges.size(); k++) {
      kept.add(half.edges.get((fold + k) % edges.size()));
    }
    List<NamedEdge> all = new ArrayList<>(kept);
    for (int k = kept.size() - 1; k >= 0; k--) {
      NamedEdge edge = kept.get(k);
      boolean across =
          (k == 0 && smooth(edge.path().startDirection(), a, b))
              || (k == kept.size() - 1 && smooth(edge.path().endDirection(), a, b));
      Path mirrored = edge.path().mapped(p -> p.mirrored(a, b)).reversed();
      all.add(new NamedEdge(across ? edge.name() : edge.name() + " mirrored", mirrored));
    }
    List<Nick> both = new ArrayList<>();
    for (Nick nick : nicks) {
      both.add(nick);
      both.add(new Nick(nick.mouth().mirrored(a, b), nick.tip().mirrored(a, b)));
    }
    return new PaperPiece(name, all, both);
  }

  private static final double SMOOTH_DEGREES = 5;

  /** Whether a line that meets the fold is as good as square to it. */
  private static boolean smooth(Point direction, Point a, Point b) {
    double cos = Math.abs(direction.dot(b.minus(a).unit()));
    return Math.toDegrees(Math.asin(Math.min(1, cos))) <= SMOOTH_DEGREES / 2;
  }
}
