package ellwand.pattern;

import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A piece in work: its edges as they are drawn now, and what is pencilled on it. Alterations take
 * one and give another; at the end it is made up into a {@link Piece}.
 *
 * @param edges all of the outline, counter-clockwise, each starting where the one before ends
 * @param fold the name of the edge at which it opens, if it is a half piece
 * @param usualAllowance of edges that have none of their own
 * @param marks places by name: the named points of its outline, and what was marked since
 * @param parts what it was cut apart into, by name
 */
public record Workpiece(
    String name,
    List<WorkEdge> edges,
    Optional<String> fold,
    Grain grain,
    Allowance usualAllowance,
    List<InnerLine> innerLines,
    Map<String, Point> marks,
    Map<String, Workpiece> parts) {

  /** A mark on an edge lies no farther from it than this, mm; far finer than a pencil's line. */
  public static final double ON_EDGE_MM = 0.01;

  public Workpiece {
    edges = List.copyOf(edges);
    innerLines = List.copyOf(innerLines);
    marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /** A drawn piece, its named points as marks. */
  public static Workpiece of(Draft draft) {
    Piece piece = draft.piece();
    boolean backwards = draft.clockwise();
    Set<String> own =
        draft.namedEdges().stream()
            .filter(e -> e.allowance().isPresent())
            .map(Draft.NamedEdge::name)
            .collect(Collectors.toSet());
    Map<String, List<Notch>> notches =
        piece.notches().stream().collect(Collectors.groupingBy(Notch::edge));
    Map<String, Point> marks = new LinkedHashMap<>();
    draft.nodes().forEach(node -> node.name().ifPresent(name -> marks.put(name, node.at())));
    return new Workpiece(
        draft.name(),
        piece.edges().stream()
            .map(
                e ->
                    new WorkEdge(
                        e,
                        notches.getOrDefault(e.name(), List.of()),
                        backwards,
                        !own.contains(e.name())))
            .toList(),
        draft.fold(),
        draft.grain(),
        draft.allowance(),
        draft.innerLines(),
        marks,
        Map.of());
  }

  /**
   * An edge.
   *
   * @throws InputException if it has none of that name
   */
  public WorkEdge edge(String edgeName) {
    return edges.get(index(edgeName));
  }

  /**
   * Which of its edges has a name, from 0.
   *
   * @throws InputException if none has
   */
  public int index(String edgeName) {
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).name().equals(edgeName)) {
        return i;
      }
    }
    throw new InputException(
        Problem.inPiece(
            name,
            "it has no edge called " + printable(edgeName),
            "Use one of " + edges.stream().map(WorkEdge::name).collect(Collectors.joining(", "))));
  }

  /** The edge before ({@code step} -1) or after (1) one, counter-clockwise. */
  public WorkEdge beside(String edgeName, int step) {
    return edges.get(Math.floorMod(index(edgeName) + step, edges.size()));
  }

  /**
   * The place of a mark.
   *
   * @throws InputException if there is none of that name
   */
  public Point mark(String markName) {
    Point at = marks.get(markName);
    if (at == null) {
      throw new InputException(
          Problem.inPiece(
              name,
              "no mark or point of it is called " + printable(markName),
              marks.isEmpty()
                  ? "Mark it first, for example {mark: "
                      + printable(markName)
                      + ", on: "
                      + edges.get(0).name()
                      + ", at: 1/2}"
                  : "Mark it first, or use one of " + String.join(", ", marks.keySet())));
    }
    return at;
  }

  /**
   * How far along the line of an edge a mark lies, mm from the line's start.
   *
   * @throws InputException if there is no such mark, or it does not lie on the edge
   */
  public double along(String edgeName, String markName) {
    WorkEdge edge = edge(edgeName);
    Point at = mark(markName);
    double mm = edge.line().nearest(at);
    if (edge.line().at(mm).distance(at) > ON_EDGE_MM) {
      throw new InputException(
          Problem.onEdge(
              name,
              edgeName,
              "mark " + printable(markName) + " does not lie on it",
              "Mark a place on the edge: {mark: .., on: " + edgeName + ", at: ..}"));
    }
    return mm;
  }

  /** The place on the outline itself of a mark that lies on it as near as a pencil can. */
  public Point snapped(Point at) {
    for (WorkEdge edge : edges) {
      if (edge.line().passes(at, ON_EDGE_MM)) {
        double mm = edge.line().nearest(at);
        // At a corner both edges have the same place.
        return mm < ON_EDGE_MM
            ? edge.line().start()
            : mm > edge.line().length() - ON_EDGE_MM ? edge.line().end() : edge.line().at(mm);
      }
    }
    return at;
  }

  /** The names of all edges that a place lies on. */
  public List<String> edgesAt(Point at) {
    return edges.stream().filter(e -> e.line().passes(at, ON_EDGE_MM)).map(WorkEdge::name).toList();
  }

  /**
   * A copy of one of the parts that it was cut apart into, or of all of it, whole.
   *
   * @throws InputException if there is no such part
   */
  public Workpiece part(Optional<String> partName) {
    if (partName.isEmpty()) {
      return withParts(Map.of());
    }
    Workpiece part = parts.get(partName.get());
    if (part == null) {
      throw InputException.of(
          name + " is not cut apart into a part called " + printable(partName.get()),
          parts.isEmpty()
              ? "Cut it apart in a step of its alter:"
              : "Use one of " + String.join(", ", parts.keySet()));
    }
    return part;
  }

  public Workpiece named(String other) {
    return new Workpiece(other, edges, fold, grain, usualAllowance, innerLines, marks, parts);
  }

  /** With other edges; those that have shrunk to nothing fall away. */
  public Workpiece with(List<WorkEdge> others) {
    return new Workpiece(name, others, fold, grain, usualAllowance, innerLines, marks, parts);
  }

  public Workpiece withFold(Optional<String> other) {
    return new Workpiece(name, edges, other, grain, usualAllowance, innerLines, marks, parts);
  }

  public Workpiece withInnerLines(List<InnerLine> others) {
    return new Workpiece(name, edges, fold, grain, usualAllowance, others, marks, parts);
  }

  public Workpiece withMarks(Map<String, Point> others) {
    return new Workpiece(name, edges, fold, grain, usualAllowance, innerLines, others, parts);
  }

  public Workpiece withParts(Map<String, Workpiece> others) {
    return new Workpiece(name, edges, fold, grain, usualAllowance, innerLines, marks, others);
  }

  /**
   * With one more mark.
   *
   * @throws InputException if another is called so
   */
  public Workpiece marked(String markName, Point at) {
    if (marks.containsKey(markName)) {
      throw new InputException(
          Problem.inPiece(
              name,
              "it has a mark or point called " + printable(markName) + " already",
              "Give the new one another name"));
    }
    Map<String, Point> more = new LinkedHashMap<>(marks);
    more.put(markName, at);
    return withMarks(more);
  }

  /**
   * Tries its outline.
   *
   * @throws InputException if it crosses itself or encloses nothing
   */
  void check() {
    made(List.of(), Asks.NOTHING);
    parts.values().forEach(Workpiece::check);
  }

  /**
   * Made up, as it is cut.
   *
   * @throws InputException with all that is wrong with it
   */
  Piece made(List<Cut> cuts, Asks asks) {
    List<WorkEdge> shaped = edges.stream().map(this::shaped).toList();
    return new Piece(
        name,
        shaped.stream().map(WorkEdge::edge).toList(),
        fold,
        grain,
        shaped.stream().flatMap(e -> e.notches().stream()).toList(),
        innerLines,
        cuts,
        asks);
  }

  private WorkEdge shaped(WorkEdge edge) {
    try {
      return edge.shaped();
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(p -> Problem.onEdge(name, edge.name(), p.what(), p.remedy()))
              .toList());
    }
  }

  /** Quoted from what somebody wrote. */
  static String printable(String words) {
    return words.replaceAll("\\p{Cntrl}", "?");
  }
}
