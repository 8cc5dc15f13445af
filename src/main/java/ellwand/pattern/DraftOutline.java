package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cuts a draft's outline into edges and runs them counter-clockwise. */
final class DraftOutline {

  /** Where a nameless line turns by more than this, in degrees, a new edge starts. */
  static final double CORNER_DEGREES = 5;

  private final Draft draft;
  private final int size;
  private final List<Problem> problems = new ArrayList<>();

  DraftOutline(Draft draft) {
    this.draft = draft;
    this.size = draft.nodes().size();
  }

  Piece piece() {
    checkNodes();
    Draft.NamedEdge[] owners = owners();
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    List<Segment> segments = segments();
    List<Edge> edges = edges(segments, owners);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    List<Notch> notches = draft.notches();
    if (clockwise()) {
      notches = notches.stream().map(n -> fromOtherEnd(n, edges)).toList();
      edges.replaceAll(Edge::reversed);
      Collections.reverse(edges);
    }
    return new Piece(
        draft.name(),
        edges,
        draft.fold(),
        draft.grain(),
        notches,
        draft.innerLines(),
        draft.cuts());
  }

  private void checkNodes() {
    if (size < 2) {
      throw new InputException(
          Problem.inPiece(
              draft.name(),
              "the outline encloses nothing",
              "Give it three points or more, in order round the piece"));
    }
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 0; i < size; i++) {
      int at = i;
      Draft.Node node = draft.nodes().get(i);
      node.name()
          .filter(n -> seen.putIfAbsent(n, at) != null)
          .ifPresent(
              n ->
                  problems.add(
                      Problem.inPiece(
                          draft.name(),
                          "two points are named " + n,
                          "Give each point a name of its own, or none")));
      if (node.at().distance(draft.nodes().get((i + 1) % size).at()) < Draft.SAME_MM) {
        problems.add(
            Problem.inPiece(
                draft.name(),
                label(i) + " and " + label((i + 1) % size) + " are in the same place",
                "Leave one out; the outline closes by itself"));
      }
    }
  }

  /** For each segment, from node i to the next, the named edge that claims it, or null. */
  private Draft.NamedEdge[] owners() {
    Draft.NamedEdge[] owners = new Draft.NamedEdge[size];
    for (Draft.NamedEdge named : draft.namedEdges()) {
      int from = node(named, named.from());
      int to = node(named, named.to());
      if (from < 0 || to < 0) {
        continue;
      }
      int count = from == to ? size : Math.floorMod(to - from, size);
      for (int k = 0; k < count; k++) {
        int i = (from + k) % size;
        if (owners[i] != null) {
          problems.add(
              Problem.onEdge(
                  draft.name(),
                  named.name(),
                  "it runs over edge " + owners[i].name() + " from " + label(i),
                  "Name its ends in the order in which the points are listed"));
          break;
        }
        owners[i] = named;
      }
    }
    return owners;
  }

  private int node(Draft.NamedEdge named, String name) {
    for (int i = 0; i < size; i++) {
      if (draft.nodes().get(i).name().filter(name::equals).isPresent()) {
        return i;
      }
    }
    List<String> names = draft.nodes().stream().flatMap(n -> n.name().stream()).toList();
    problems.add(Draft.noPoint(draft.name(), named.name(), name, names));
    return -1;
  }

  private String label(int i) {
    return draft.nodes().get(i).name().orElse("point " + (i + 1));
  }

  private List<Segment> segments() {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      segments.add(draft.nodes().get((i + 1) % size).from(draft.nodes().get(i).at()));
    }
    return segments;
  }

  private List<Edge> edges(List<Segment> segments, Draft.NamedEdge[] owners) {
    int first = 0;
    while (first < size - 1 && !startsEdge(first, segments, owners)) {
      first++;
    }
    List<Edge> edges = new ArrayList<>();
    int k = 0;
    while (k < size) {
      int from = (first + k) % size;
      List<Segment> line = new ArrayList<>();
      do {
        line.add(segments.get((first + k) % size));
        k++;
      } while (k < size && !startsEdge((first + k) % size, segments, owners));
      edges.add(edge(owners[from], from, (first + k) % size, new Path(line)));
    }
    return edges;
  }

  private boolean startsEdge(int i, List<Segment> segments, Draft.NamedEdge[] owners) {
    int before = Math.floorMod(i - 1, size);
    if (owners[i] != owners[before]) {
      return true;
    }
    if (owners[i] != null) {
      return draft.nodes().get(i).name().filter(owners[i].from()::equals).isPresent();
    }
    Point in = segments.get(before).direction(1);
    Point out = segments.get(i).direction(0);
    double turn = Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
    return draft.nodes().get(i).name().isPresent() || Math.abs(turn) > CORNER_DEGREES;
  }

  private Edge edge(Draft.NamedEdge owner, int from, int to, Path line) {
    String between = from == to ? "outline" : label(from) + " to " + label(to);
    String name = owner == null ? between : owner.name();
    boolean alwaysFold =
        draft.fold().filter(name::equals).isPresent()
            && draft.cuts().stream().allMatch(c -> c.how() == Cut.How.FOLD);
    if (owner != null && draft.fold().filter(name::equals).isPresent()) {
      checkFolded(owner);
    }
    Allowance usual = alwaysFold ? Allowance.NONE : draft.allowance();
    return owner == null
        ? new Edge(name, line, usual, false)
        : new Edge(
            name,
            line,
            owner.allowance().map(own -> own.or(usual)).orElse(usual),
            owner.turnedBack());
  }

  /** Where the fold edge is a seam in one cloth, nobody gives it an allowance in another. */
  private void checkFolded(Draft.NamedEdge fold) {
    draft.cuts().stream()
        .filter(c -> c.how() == Cut.How.FOLD)
        .filter(
            c ->
                fold.allowance().map(a -> a.mmByCloth().getOrDefault(c.cloth(), 0.0)).orElse(0.0)
                    > 0)
        .forEach(
            c ->
                problems.add(
                    Problem.onEdge(
                        draft.name(),
                        fold.name(),
                        "it has an allowance in " + c.cloth() + ", where it lies on the fold",
                        "Leave " + c.cloth() + " out of its allowance:")));
  }

  boolean clockwise() {
    List<Point> ring = new Path(segments()).flattened(0.05);
    double twiceArea = 0;
    for (int i = 1; i < ring.size(); i++) {
      twiceArea += ring.get(i - 1).cross(ring.get(i));
    }
    return twiceArea < 0;
  }

  /** A notch beyond the end of its edge, or on none, is left as it is for the piece to refuse. */
  private static Notch fromOtherEnd(Notch notch, List<Edge> edges) {
    return edges.stream()
        .filter(
            e -> e.name().equals(notch.edge()) && e.line().length() + Draft.SAME_MM >= notch.atMm())
        .findFirst()
        .map(
            e ->
                new Notch(
                    notch.edge(),
                    Math.max(0, e.line().length() - notch.atMm()),
                    notch.strokes(),
                    notch.depthMm()))
        .orElse(notch);
  }
}
