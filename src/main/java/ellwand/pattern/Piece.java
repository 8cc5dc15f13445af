package ellwand.pattern;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One pattern piece in one size, on the sewing line.
 *
 * @param edges all of the outline, counter-clockwise, each starting where the one before ends
 * @param fold the name of the edge at which a half piece opens, if it is one
 * @param cuts what one garment needs of it, at most one entry a cloth; none if others are only made
 *     from it
 * @param asks what else it asks of its cloth
 */
public record Piece(
    String name,
    List<Edge> edges,
    Optional<String> fold,
    Grain grain,
    List<Notch> notches,
    List<InnerLine> innerLines,
    List<Cut> cuts,
    Asks asks) {

  /** No point lies farther from the origin than this along either axis, mm: 100 m. */
  static final double FARTHEST_MM = 100_000;

  /** How far from a straight line a fold edge may stray, and a direction from the grain, mm. */
  private static final double STRAIGHT_MM = 0.05;

  private static final double FLATTENING_MM = 0.05;

  /** A piece that asks nothing else. */
  public Piece(
      String name,
      List<Edge> edges,
      Optional<String> fold,
      Grain grain,
      List<Notch> notches,
      List<InnerLine> innerLines,
      List<Cut> cuts) {
    this(name, edges, fold, grain, notches, innerLines, cuts, Asks.NOTHING);
  }

  public Piece {
    edges = List.copyOf(edges);
    notches = List.copyOf(notches);
    innerLines = List.copyOf(innerLines);
    cuts = List.copyOf(cuts);
    List<Problem> problems = new ArrayList<>();
    checkNear(name, edges, innerLines, problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    checkOutline(name, edges, problems);
    checkFold(name, edges, fold, grain, cuts, problems);
    checkNotches(name, edges, notches, !cuts.isEmpty(), problems);
    checkAllowances(name, edges, fold, cuts, problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static void checkNear(
      String name, List<Edge> edges, List<InnerLine> innerLines, List<Problem> problems) {
    String what = "a point of it lies more than 100 m from the origin";
    String remedy = "See that the numbers and their units are right";
    edges.stream()
        .filter(edge -> !near(edge.line()))
        .forEach(edge -> problems.add(Problem.onEdge(name, edge.name(), what, remedy)));
    innerLines.stream()
        .filter(line -> !near(line.line()))
        .forEach(
            line ->
                problems.add(
                    Problem.inPiece(
                        name,
                        "a point of line " + line.name() + " lies more than 100 m from the origin",
                        remedy)));
  }

  private static boolean near(Path line) {
    return points(line)
        .allMatch(p -> Math.abs(p.x()) <= FARTHEST_MM && Math.abs(p.y()) <= FARTHEST_MM);
  }

  /** Ends and handles. */
  private static Stream<Point> points(Path line) {
    return line.segments().stream()
        .flatMap(
            s ->
                s instanceof Segment.Cubic c
                    ? Stream.of(c.start(), c.control1(), c.control2(), c.end())
                    : Stream.of(s.start(), s.end()));
  }

  /** How far from this another lies that has its lines, mm; nothing if it has others. */
  Optional<Point> shiftTo(Piece other) {
    List<Point> from = points();
    List<Point> to = other.points();
    Point by = to.get(0).minus(from.get(0));
    return from.size() == to.size()
            && IntStream.range(0, from.size())
                .allMatch(i -> to.get(i).minus(from.get(i)).distance(by) < Draft.SAME_MM)
        ? Optional.of(by)
        : Optional.empty();
  }

  private List<Point> points() {
    return Stream.concat(
            edges.stream().flatMap(edge -> points(edge.line())),
            innerLines.stream().flatMap(inner -> points(inner.line())))
        .toList();
  }

  private static void checkOutline(String name, List<Edge> edges, List<Problem> problems) {
    Set<String> names = new HashSet<>();
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      Edge next = edges.get((i + 1) % edges.size());
      if (!names.add(edge.name())) {
        problems.add(
            Problem.onEdge(
                name, edge.name(), "two edges have this name", "Give each edge a name of its own"));
      }
      if (edge.line().end().distance(next.line().start()) > 1e-6) {
        problems.add(
            Problem.onEdge(
                name,
                edge.name(),
                "the outline is open between this edge and edge " + next.name(),
                "Let each edge start at the point where the one before ends"));
      }
      List<Point> line = edge.line().flattened(FLATTENING_MM);
      ring.addAll(line.subList(0, line.size() - 1));
    }
    if (!problems.isEmpty()) {
      return;
    }
    if (ring.size() < 3) {
      problems.add(
          Problem.inPiece(name, "the outline encloses nothing", "Give it three points or more"));
      return;
    }
    Region.crossing(ring)
        .ifPresent(
            at ->
                problems.add(
                    Problem.inPiece(
                        name,
                        String.format(
                            java.util.Locale.ROOT,
                            "the outline crosses or touches itself near x = %.1f cm, y = %.1f cm",
                            at.x() / 10,
                            at.y() / 10),
                        "Put the points in order round the piece, and see that none stands"
                            + " twice")));
    if (problems.isEmpty() && Outline.around(ring).isEmpty()) {
      problems.add(
          Problem.inPiece(name, "the outline encloses nothing", "Give it three points or more"));
    }
  }

  private static void checkFold(
      String name,
      List<Edge> edges,
      Optional<String> fold,
      Grain grain,
      List<Cut> cuts,
      List<Problem> problems) {
    boolean onFold = cuts.stream().anyMatch(c -> c.how() == Cut.How.FOLD);
    if (fold.isEmpty()) {
      if (onFold) {
        problems.add(
            Problem.inPiece(
                name,
                "it is cut on the fold, but no edge is its fold",
                "Name the fold edge with fold:, or cut it as a whole piece"));
      }
      return;
    }
    Optional<Edge> edge = edges.stream().filter(e -> e.name().equals(fold.get())).findFirst();
    if (edge.isEmpty()) {
      problems.add(
          Problem.onEdge(
              name,
              fold.get(),
              "the fold edge is not an edge of the piece",
              "Use one of " + names(edges)));
      return;
    }
    Path line = edge.get().line();
    if (!line.straight(STRAIGHT_MM)) {
      problems.add(
          Problem.onEdge(
              name,
              fold.get(),
              "the fold edge is not straight",
              "Draw it straight, since cloth folds along a straight line"));
    } else if (Math.abs(line.end().y() - line.start().y()) > STRAIGHT_MM
        && (grain.lengthwise()
            || cuts.stream().anyMatch(c -> c.grain().filter(Grain::lengthwise).isPresent()))) {
      problems.add(
          Problem.onEdge(
              name,
              fold.get(),
              "the fold edge does not lie along the grain",
              "Draw it along x, since a lengthwise fold lies along the warp"));
    }
    if (edge.get().allowanceMm() > 0
        && onFold
        && cuts.stream().allMatch(c -> c.how() == Cut.How.FOLD)) {
      problems.add(
          Problem.onEdge(
              name,
              fold.get(),
              "a fold edge has no seam",
              "Set its allowance to 0 or leave it out"));
    }
    if (!onFold && !cuts.isEmpty()) {
      problems.add(
          Problem.inPiece(
              name,
              "it is a half piece, but is cut otherwise than on the fold",
              "Write for example 1 on fold, or draw the whole piece without fold:"));
    }
    cuts.stream()
        .filter(c -> onFold && c.how() == Cut.How.WHOLE)
        .forEach(
            c ->
                problems.add(
                    Problem.inPiece(
                        name,
                        "it is a half piece, of which " + c.cloth() + " would have one side only",
                        "Write 1 on fold, or pair where its fold edge is a seam in this cloth")));
  }

  private static void checkNotches(
      String name, List<Edge> edges, List<Notch> notches, boolean isCut, List<Problem> problems) {
    for (Notch notch : notches) {
      Optional<Edge> edge = edges.stream().filter(e -> e.name().equals(notch.edge())).findFirst();
      if (edge.isEmpty()) {
        problems.add(
            Problem.onEdge(
                name,
                notch.edge(),
                "a notch stands on an edge that is not there",
                "Use one of " + names(edges)));
      } else if (notch.atMm() > edge.get().line().length() + 1e-6) {
        problems.add(
            Problem.onEdge(
                name,
                notch.edge(),
                String.format(
                    java.util.Locale.ROOT,
                    "a notch at %.1f cm lies beyond the end of the edge, which is %.1f cm long",
                    notch.atMm() / 10,
                    edge.get().line().length() / 10),
                "Measure it from the edge's start"));
      } else if (isCut && notch.depthMm() > edge.get().allowanceMm() + 1e-9) {
        problems.add(
            Problem.onEdge(
                name,
                notch.edge(),
                String.format(
                    java.util.Locale.ROOT,
                    "a notch %.1f mm deep would cut through the seam, the allowance is %.1f mm",
                    notch.depthMm(),
                    edge.get().allowanceMm()),
                "Make it shallower or the allowance wider"));
      }
    }
  }

  private static void checkAllowances(
      String name,
      List<Edge> edges,
      Optional<String> fold,
      List<Cut> cuts,
      List<Problem> problems) {
    for (Edge edge : edges) {
      for (Cut cut : cuts) {
        boolean folded = cut.how() == Cut.How.FOLD && fold.filter(edge.name()::equals).isPresent();
        if (!folded && edge.allowance().in(cut.cloth()).isEmpty()) {
          problems.add(
              Problem.onEdge(
                  name,
                  edge.name(),
                  "it is not said how wide its allowance is in " + cut.cloth(),
                  "Give it under allowance:, here or for the whole piece"));
        }
      }
    }
  }

  private static String names(List<Edge> edges) {
    return edges.stream().map(Edge::name).collect(Collectors.joining(", "));
  }

  /** The same piece, asking this. */
  public Piece asking(Asks other) {
    return new Piece(name, edges, fold, grain, notches, innerLines, cuts, other);
  }

  /**
   * The piece as it is cut from one of its cloths, and only from that: its grain and allowances
   * there, and where it is not cut on the fold no fold edge, but a seam in its place.
   */
  public Piece inCloth(String cloth) {
    return cutFrom(cloth).map(this::as).orElse(this);
  }

  private Piece as(Cut cut) {
    Optional<String> folded = cut.how() == Cut.How.FOLD ? fold : Optional.empty();
    return new Piece(
        name,
        edges.stream()
            .map(
                e ->
                    folded.filter(e.name()::equals).isPresent()
                        ? e.with(Allowance.NONE)
                        : e.in(cut.cloth()))
            .toList(),
        folded,
        cut.grain().orElse(grain),
        notches.stream().filter(n -> folded.filter(n.edge()::equals).isEmpty()).toList(),
        innerLines,
        List.of(cut),
        asks);
  }

  /** The piece as it is cut from each of its cloths; as it is if nobody says from which. */
  public List<Piece> inCloths() {
    return cuts.isEmpty() ? List.of(this) : cuts.stream().map(c -> inCloth(c.cloth())).toList();
  }

  /**
   * Whether another has the same edges and allowances and the same fold, so that one pattern does.
   */
  public boolean sameForm(Piece other) {
    return name.equals(other.name) && edges.equals(other.edges) && fold.equals(other.fold);
  }

  /** The same piece, cut so. */
  public Piece cut(List<Cut> other) {
    return new Piece(name, edges, fold, grain, notches, innerLines, other, asks);
  }

  public Edge edge(String edgeName) {
    return edges.stream()
        .filter(e -> e.name().equals(edgeName))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(name + " has no edge " + edgeName));
  }

  /** The cut asked for from a cloth, if any. */
  public Optional<Cut> cutFrom(String cloth) {
    return cuts.stream().filter(c -> c.cloth().equals(cloth)).findFirst();
  }
}
