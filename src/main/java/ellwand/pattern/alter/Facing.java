package ellwand.pattern.alter;

import ellwand.geometry.Crossings;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps of a piece only a band along some of its edges: its facing.
 *
 * @param edges one, or several that follow one another
 * @param depthMm how wide the band is, more than 0
 */
public record Facing(List<String> edges, double depthMm) implements Alteration {

  /** What its new edge is called. */
  public static final String INNER = "inner edge";

  public Facing {
    edges = List.copyOf(edges);
  }

  @Override
  public String words(Unit unit) {
    return "facing " + Words.length(depthMm, unit) + " deep along " + String.join(", ", edges);
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    Run run = Run.of(piece, edges);
    List<WorkEdge> faced = run.edges(piece);
    List<WorkEdge> rest = run.rest(piece);
    if (rest.isEmpty()) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              "the band would go all round the piece",
              "Leave an edge out; unfold or tape the piece first if need be"));
    }
    Path along = faced.stream().map(WorkEdge::line).reduce(Path::then).orElseThrow();
    Path inner = lengthened(Parallel.of(along, -depthMm));
    Path beside = rest.stream().map(WorkEdge::line).reduce(Path::then).orElseThrow();
    List<Crossings.Meeting> met = Crossings.of(inner, beside);
    Optional<Crossings.Meeting> end =
        met.stream().min(Comparator.comparingDouble(Crossings.Meeting::otherMm));
    Optional<Crossings.Meeting> start =
        met.stream().max(Comparator.comparingDouble(Crossings.Meeting::otherMm));
    if (end.isEmpty() || !(start.get().oneMm() < end.get().oneMm())) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              edges.get(0),
              "a band %s deep along it does not end on the edges beside it"
                  .formatted(Words.length(depthMm, Unit.CM)),
              "Make it less deep, or add the next edge to it"));
    }
    List<WorkEdge> band = new ArrayList<>(faced);
    band.addAll(cut(rest, 0, end.get().otherMm()));
    WorkEdge before = band.get(band.size() - 1);
    Path line = inner.between(start.get().oneMm(), end.get().oneMm()).reversed();
    List<WorkEdge> last = cut(rest, start.get().otherMm(), Double.MAX_VALUE);
    Path closed = closed(before.line().end(), line, last.get(0).line().start());
    band.add(WorkEdge.drawn(INNER, closed, piece.usualAllowance(), false));
    band.addAll(last);
    Optional<String> fold =
        piece.fold().filter(f -> band.stream().anyMatch(e -> e.name().equals(f)));
    return piece.with(distinct(band)).withFold(fold).withInnerLines(List.of()).withParts(Map.of());
  }

  /** Its ends drawn on straight, so that they cross the edges beside the faced ones. */
  private Path lengthened(Path line) {
    Point start = line.start().minus(line.startDirection().times(3 * depthMm));
    Point end = line.end().plus(line.endDirection().times(3 * depthMm));
    return Path.line(start, line.start()).then(line).then(Path.line(line.end(), end));
  }

  private static List<WorkEdge> cut(List<WorkEdge> row, double fromMm, double toMm) {
    List<WorkEdge> part = new ArrayList<>();
    double before = 0;
    for (WorkEdge edge : row) {
      double length = edge.line().length();
      double a = Math.max(0, fromMm - before);
      double b = Math.min(length, toMm - before);
      if (b - a > Workpiece.ON_EDGE_MM) {
        part.add(edge.between(a, b));
      }
      before += length;
    }
    return part;
  }

  /** The ends were found on straight stretches of curves: they are brought to the true lines. */
  private static Path closed(Point from, Path line, Point to) {
    Path ended = Neighbours.endingAt(line, to);
    return Neighbours.endingAt(ended.reversed(), from).reversed();
  }

  /** Where one edge comes twice its other end gets a name of its own. */
  static List<WorkEdge> distinct(List<WorkEdge> band) {
    List<WorkEdge> all = new ArrayList<>();
    for (WorkEdge edge : band) {
      boolean taken = all.stream().anyMatch(e -> e.name().equals(edge.name()));
      all.add(taken ? edge.named("other " + edge.name()) : edge);
    }
    return all;
  }
}
