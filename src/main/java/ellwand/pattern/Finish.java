package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is said of a piece once it is altered.
 *
 * @param allowance of edges that have none of their own, if it is another than before
 * @param edges what is said of single ones, by name
 * @param fold the edge at which it opens, if it is another than before
 * @param grain if it is another than before
 * @param notches {@link Notch#atMm} measured from the edge's first point as drawn
 * @param innerLines beside those that it has
 * @param cuts what one garment needs of it; none if others are only made from it
 */
public record Finish(
    Optional<Allowance> allowance,
    Map<String, EdgeFinish> edges,
    Optional<String> fold,
    Optional<Grain> grain,
    List<Notch> notches,
    List<InnerLine> innerLines,
    List<Cut> cuts) {

  /** What is said of an edge; nothing where it stays as it is. */
  public record EdgeFinish(Optional<Allowance> allowance, Optional<Boolean> turnedBack) {}

  public Finish {
    edges = Collections.unmodifiableMap(new LinkedHashMap<>(edges));
    notches = List.copyOf(notches);
    innerLines = List.copyOf(innerLines);
    cuts = List.copyOf(cuts);
  }

  /** Cut as it is. */
  public static Finish cut(List<Cut> cuts) {
    return new Finish(
        Optional.empty(), Map.of(), Optional.empty(), Optional.empty(), List.of(), List.of(), cuts);
  }

  /**
   * The piece with all that is said here.
   *
   * @throws InputException naming every edge that is not there
   */
  Workpiece on(Workpiece piece) {
    List<Problem> problems = new ArrayList<>();
    edges.keySet().forEach(edge -> checkThere(piece, edge, problems));
    notches.forEach(notch -> checkThere(piece, notch.edge(), problems));
    fold.ifPresent(edge -> checkThere(piece, edge, problems));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    List<InnerLine> lines = new ArrayList<>(piece.innerLines());
    lines.addAll(innerLines);
    Map<String, Workpiece> parts = new LinkedHashMap<>();
    piece.parts().forEach((name, part) -> parts.put(name, finished(part, List.of())));
    return finished(piece, notches).withInnerLines(lines).withParts(parts);
  }

  /** With notches that are measured on its edges, not on those of a part. */
  private Workpiece finished(Workpiece piece, List<Notch> more) {
    Allowance usual =
        allowance.map(a -> a.or(piece.usualAllowance())).orElse(piece.usualAllowance());
    Optional<String> opens =
        fold.filter(f -> piece.edges().stream().anyMatch(e -> e.name().equals(f))).or(piece::fold);
    return new Workpiece(
        piece.name(),
        piece.edges().stream().map(e -> finished(e, more, usual, opens)).toList(),
        opens,
        grain.orElse(piece.grain()),
        usual,
        piece.innerLines(),
        piece.marks(),
        piece.parts());
  }

  private WorkEdge finished(
      WorkEdge edge, List<Notch> more, Allowance usual, Optional<String> opens) {
    EdgeFinish said =
        edges.getOrDefault(edge.name(), new EdgeFinish(Optional.empty(), Optional.empty()));
    boolean alwaysFold =
        opens.filter(edge.name()::equals).isPresent()
            && cuts.stream().allMatch(c -> c.how() == Cut.How.FOLD);
    // A copy that is cut on the fold only leaves the seam out that the other may have there.
    Allowance before =
        alwaysFold && (edge.usual() || !cuts.isEmpty())
            ? Allowance.NONE
            : edge.usual() ? usual : edge.edge().allowance();
    Allowance now = said.allowance().map(a -> a.or(before)).orElse(before);
    List<Notch> all = new ArrayList<>();
    // What it had before is no mistake of whoever makes the allowance narrower now.
    edge.notches().stream().filter(n -> n.depthMm() <= now.widestMm()).forEach(all::add);
    more.stream()
        .filter(n -> n.edge().equals(edge.name()))
        .map(n -> new Notch(n.edge(), along(edge, n.atMm()), n.strokes(), n.depthMm()))
        .forEach(all::add);
    return new WorkEdge(
        new Edge(
            edge.name(),
            edge.line(),
            now,
            said.turnedBack().orElse(edge.edge().turnedBack()),
            edge.edge().intakes(),
            edge.edge().gathers()),
        all,
        edge.backwards(),
        edge.usual() && said.allowance().isEmpty());
  }

  /** Beyond the end of its edge it is left as it is, for the piece to refuse. */
  private static double along(WorkEdge edge, double mm) {
    return mm > edge.line().length() + Draft.SAME_MM ? mm : Math.max(0, edge.drawn(mm));
  }

  private static void checkThere(Workpiece piece, String edge, List<Problem> problems) {
    if (piece.edges().stream().noneMatch(e -> e.name().equals(edge))
        && piece.parts().values().stream()
            .noneMatch(p -> p.edges().stream().anyMatch(e -> e.name().equals(edge)))) {
      problems.add(
          Problem.onEdge(
              piece.name(),
              edge,
              "it has no such edge once it is altered",
              "Use one of "
                  + piece.edges().stream().map(WorkEdge::name).collect(Collectors.joining(", "))));
    }
  }
}
