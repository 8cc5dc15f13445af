package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Intake;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Lays another piece against an edge, first point to first point as both are drawn, turned over if
 * need be, and makes one of both. Edges that then go on under one name become one; others of a name
 * that is taken get the name of their piece before it.
 *
 * @param part which one, if the other piece was cut apart
 * @param crossed whether the first point of one edge comes to the last of the other
 */
public record TapeTogether(
    String edge, String piece, Optional<String> part, String otherEdge, boolean crossed)
    implements Alteration {

  /** Edges that differ by more do not lie against one another, mm. */
  private static final double GAP_MM = 1;

  @Override
  public Set<String> needs() {
    return Set.of(piece);
  }

  @Override
  public String words(Unit unit) {
    return edge + " taped to " + otherEdge + " of " + part.orElse(piece);
  }

  @Override
  public Workpiece on(Workpiece own, Others others) {
    Workpiece other = others.piece(piece).part(part);
    WorkEdge ours = own.edge(edge);
    WorkEdge theirs = other.edge(otherEdge);
    Point ourFirst = crossed ? ours.last() : ours.first();
    Point ourLast = crossed ? ours.first() : ours.last();
    boolean over = (ours.backwards() == theirs.backwards()) != crossed;
    UnaryOperator<Point> laid = laid(theirs.first(), theirs.last(), ourFirst, ourLast, over);
    checkLies(own, ours, theirs, laid);
    Workpiece placed = placed(other, laid, over);
    List<WorkEdge> ring = Run.of(own, List.of(edge)).rest(own);
    List<WorkEdge> more = Run.of(placed, List.of(otherEdge)).rest(placed);
    Set<String> taken = new HashSet<>();
    ring.forEach(e -> taken.add(e.name()));
    // Their ends may lie off ours by as much as edges may differ.
    Neighbours.startAt(more, ours.line().start());
    Neighbours.endAt(more, ours.line().end());
    join(ring, more, taken, part.orElse(piece));
    Map<String, Point> marks = new LinkedHashMap<>(own.marks());
    placed
        .marks()
        .forEach(
            (name, at) ->
                marks.putIfAbsent(
                    marks.containsKey(name) ? part.orElse(piece) + " " + name : name, at));
    List<InnerLine> lines = new ArrayList<>(own.innerLines());
    lines.addAll(placed.innerLines());
    Optional<String> fold =
        own.fold().or(other::fold).filter(f -> ring.stream().anyMatch(e -> e.name().equals(f)));
    return own.with(ring).withFold(fold).withMarks(marks).withInnerLines(lines);
  }

  private void checkLies(Workpiece own, WorkEdge ours, WorkEdge theirs, UnaryOperator<Point> laid) {
    double longer = theirs.line().length() - ours.line().length();
    String name = part.orElse(piece) + "." + otherEdge;
    if (Math.abs(longer) > GAP_MM) {
      throw new InputException(
          Problem.onEdge(
              own.name(),
              edge,
              "%s is %s %s, so that they cannot be taped edge to edge"
                  .formatted(name, Words.fine(Math.abs(longer)), longer > 0 ? "longer" : "shorter"),
              "True them first"));
    }
    for (Point p : theirs.line().mapped(laid).flattened(0.1)) {
      if (ours.line().at(ours.line().nearest(p)).distance(p) > GAP_MM) {
        throw new InputException(
            Problem.onEdge(
                own.name(),
                edge,
                name + " does not run as it does, so that they cannot be taped edge to edge",
                "Tape edges of the same shape; if one has to be turned round, write ends:"
                    + " crossed"));
      }
    }
  }

  private static UnaryOperator<Point> laid(
      Point from, Point fromEnd, Point to, Point toEnd, boolean over) {
    Point was = fromEnd.minus(from).unit();
    Point is = toEnd.minus(to).unit();
    return p -> {
      Point way = p.minus(from);
      double along = way.dot(was);
      double left = was.cross(way) * (over ? -1 : 1);
      return to.plus(is.times(along)).plus(is.left().times(left));
    };
  }

  private static Workpiece placed(Workpiece other, UnaryOperator<Point> laid, boolean over) {
    List<WorkEdge> edges = new ArrayList<>();
    for (WorkEdge edge : other.edges()) {
      if (over) {
        edges.add(0, edge.turnedOver(laid));
      } else {
        edges.add(edge.moved(laid));
      }
    }
    Map<String, Point> marks = new LinkedHashMap<>();
    other.marks().forEach((name, at) -> marks.put(name, laid.apply(at)));
    return other
        .with(edges)
        .withMarks(marks)
        .withInnerLines(
            other.innerLines().stream()
                .map(l -> new InnerLine(l.name(), l.line().mapped(laid)))
                .toList());
  }

  /** Puts other edges at the end of a row that they close to a ring. */
  static void join(List<WorkEdge> ring, List<WorkEdge> more, Set<String> taken, String owner) {
    int last = more.size() - 1;
    boolean before = last > 0 && more.get(last).name().equals(ring.get(0).name());
    boolean after = more.get(0).name().equals(ring.get(ring.size() - 1).name());
    Set<String> folded =
        ring.stream()
            .flatMap(e -> e.edge().intakes().stream())
            .map(Intake::name)
            .collect(Collectors.toSet());
    for (int i = 0; i <= last; i++) {
      WorkEdge edge = more.get(i);
      edge =
          edge.with(
              edge.edge().foldedAs(name -> folded.contains(name) ? owner + " " + name : name));
      if (i == 0 && after) {
        ring.set(ring.size() - 1, ring.get(ring.size() - 1).then(edge));
      } else if (i == last && before) {
        WorkEdge first = ring.get(0);
        ring.set(0, first.after(edge));
      } else {
        ring.add(taken.contains(edge.name()) ? edge.named(owner + " " + edge.name()) : edge);
      }
    }
  }
}
