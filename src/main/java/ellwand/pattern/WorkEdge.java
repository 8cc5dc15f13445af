package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * An edge of a piece in work, with what stands on it.
 *
 * @param edge counter-clockwise round the piece, like all of them
 * @param notches {@link Notch#atMm} from the start of the edge's line
 * @param backwards whether it was drawn the other way, so that its maker measures from its end
 * @param usual whether its allowance is that of the whole piece and not its own
 */
public record WorkEdge(Edge edge, List<Notch> notches, boolean backwards, boolean usual) {

  public WorkEdge {
    notches = List.copyOf(notches);
  }

  public String name() {
    return edge.name();
  }

  public Path line() {
    return edge.line();
  }

  /** From a distance from its first point as drawn to one along its line, or back; mm. */
  public double drawn(double mm) {
    return backwards ? line().length() - mm : mm;
  }

  /** Its first point as drawn. */
  public Point first() {
    return backwards ? line().end() : line().start();
  }

  /** Its last point as drawn. */
  public Point last() {
    return backwards ? line().start() : line().end();
  }

  /**
   * The same along another line, its notches at the same share of the length.
   *
   * @throws InputException if it would run past something that is folded away on the edge
   */
  public WorkEdge along(Path line) {
    double growth = line.length() / line().length();
    return new WorkEdge(
        on(line, edge.intakes(), edge.gathers()),
        notches.stream().map(n -> at(n, n.atMm() * growth)).toList(),
        backwards,
        usual);
  }

  /** The same under another name. */
  public WorkEdge named(String name) {
    return new WorkEdge(
        edge.named(name),
        notches.stream().map(n -> new Notch(name, n.atMm(), n.strokes(), n.depthMm())).toList(),
        backwards,
        usual);
  }

  /**
   * The stretch between two distances along its line, with what stands on it.
   *
   * @param fromMm 0 or more, below {@code toMm}
   * @throws InputException if that cuts through something that is folded away
   */
  public WorkEdge between(double fromMm, double toMm) {
    Path part = line().between(fromMm, toMm);
    List<Intake> within =
        edge.intakes().stream()
            .filter(i -> shares(i.first().outer(), i.second().outer(), fromMm, toMm))
            .toList();
    List<Gathers> gathered =
        edge.gathers().stream().filter(g -> shares(g.from(), g.to(), fromMm, toMm)).toList();
    return new WorkEdge(
        on(part, within, gathered),
        notches.stream()
            .filter(n -> n.atMm() >= fromMm - Draft.SAME_MM && n.atMm() <= toMm + Draft.SAME_MM)
            .map(n -> at(n, Math.max(0, n.atMm() - fromMm)))
            .toList(),
        backwards,
        usual);
  }

  /** This and, from its end, another; all as this one. */
  public WorkEdge then(WorkEdge next) {
    double length = line().length();
    List<Notch> all = new ArrayList<>(notches);
    next.notches.forEach(n -> all.add(at(n, length + n.atMm())));
    List<Intake> intakes = new ArrayList<>(edge.intakes());
    intakes.addAll(next.edge.intakes());
    List<Gathers> gathers = new ArrayList<>(edge.gathers());
    gathers.addAll(next.edge.gathers());
    return new WorkEdge(on(line().then(next.line()), intakes, gathers), all, backwards, usual);
  }

  /** This one, and before it another that ends at its start; all as this one. */
  public WorkEdge after(WorkEdge before) {
    double length = before.line().length();
    List<Notch> all = new ArrayList<>();
    before.notches.forEach(n -> all.add(at(n, n.atMm())));
    notches.forEach(n -> all.add(at(n, length + n.atMm())));
    List<Intake> intakes = new ArrayList<>(before.edge.intakes());
    intakes.addAll(edge.intakes());
    List<Gathers> gathers = new ArrayList<>(before.edge.gathers());
    gathers.addAll(edge.gathers());
    return new WorkEdge(on(before.line().then(line()), intakes, gathers), all, backwards, usual);
  }

  /** Where a map that keeps shapes and does not turn over takes it. */
  public WorkEdge moved(UnaryOperator<Point> map) {
    return new WorkEdge(edge.moved(map), notches, backwards, usual);
  }

  /** Where a map that keeps shapes but turns over takes it, run through the other way. */
  public WorkEdge turnedOver(UnaryOperator<Point> map) {
    double length = line().length();
    return new WorkEdge(
        edge.moved(map).reversed(),
        notches.stream().map(n -> at(n, Math.max(0, length - n.atMm()))).toList(),
        !backwards,
        usual);
  }

  /** The same with the mouths of its darts as they must run when these are folded. */
  WorkEdge shaped() {
    Edge flat = edge.shaped();
    return new WorkEdge(
        flat, notches.stream().map(n -> at(n, shaped(flat, n.atMm()))).toList(), backwards, usual);
  }

  /**
   * How far along its line, once that is shaped, what lies so many mm along it now comes to lie.
   */
  double shaped(double mm) {
    return shaped(edge.shaped(), mm);
  }

  private double shaped(Edge flat, double mm) {
    double at = mm;
    for (Intake intake : edge.intakes()) {
      double from = line().nearest(intake.first().outer());
      double mouth = edge.mouth(intake).length();
      double more = flat.mouth(intake).length() - mouth;
      at += more * Math.max(0, Math.min(1, (mm - from) / mouth));
    }
    return at;
  }

  /** The same notches on another edge along the same line. */
  public WorkEdge with(Edge other) {
    return new WorkEdge(other, notches, backwards, usual);
  }

  /** A line of this edge on which nothing stands. */
  public WorkEdge plain(Path line) {
    return new WorkEdge(edge.on(line, List.of(), List.of()), List.of(), backwards, usual);
  }

  /**
   * The same along another line.
   *
   * @param map where what is folded away or gathered goes; it must keep the legs of a dart equal
   * @param place from a distance along the old line to one along the new
   */
  public WorkEdge onto(Path line, UnaryOperator<Point> map, DoubleUnaryOperator place) {
    double length = line.length();
    return new WorkEdge(
        on(
            line,
            edge.intakes().stream().map(i -> i.moved(map)).toList(),
            edge.gathers().stream().map(g -> g.moved(map)).toList()),
        notches.stream()
            .map(n -> at(n, Math.max(0, Math.min(length, place.applyAsDouble(n.atMm())))))
            .toList(),
        backwards,
        usual);
  }

  /** The same, of which notches are added at these distances along its line. */
  public WorkEdge notched(double... atMm) {
    List<Notch> more = new ArrayList<>(notches);
    for (double mm : atMm) {
      more.add(new Notch(name(), mm, 1, Notch.USUAL_DEPTH_MM));
    }
    return new WorkEdge(edge, more, backwards, usual);
  }

  /** A new edge with the usual allowance. */
  public static WorkEdge drawn(String name, Path line, Allowance usual, boolean backwards) {
    return new WorkEdge(new Edge(name, line, usual, false), List.of(), backwards, true);
  }

  /** Whether the stretch between two places on the line is partly that between two distances. */
  private boolean shares(Point start, Point end, double fromMm, double toMm) {
    return line().nearest(end) > fromMm + Workpiece.ON_EDGE_MM
        && line().nearest(start) < toMm - Workpiece.ON_EDGE_MM;
  }

  private Edge on(Path line, List<Intake> intakes, List<Gathers> gathers) {
    for (Intake intake : intakes) {
      if (!stands(intake.first(), line) || !stands(intake.second(), line)) {
        throw cannotChange(
            intake.name() + " is folded away there",
            "Do this step before the one that makes " + intake.name());
      }
    }
    if (!gathers.stream().allMatch(g -> lies(g.from(), line) && lies(g.to(), line))) {
      throw cannotChange("it is gathered there", "Do this step before the one that gathers it");
    }
    return edge.on(line, intakes, gathers);
  }

  private InputException cannotChange(String why, String remedy) {
    return new InputException(
        new Problem(
            Optional.empty(),
            0,
            Optional.empty(),
            Optional.of(name()),
            why + ", so that it cannot be changed",
            remedy));
  }

  private static boolean stands(Intake.Leg leg, Path line) {
    return line.joint(leg.outer()).isPresent();
  }

  private static boolean lies(Point at, Path line) {
    return line.at(line.nearest(at)).distance(at) <= Workpiece.ON_EDGE_MM;
  }

  private Notch at(Notch notch, double mm) {
    return new Notch(name(), mm, notch.strokes(), notch.depthMm());
  }
}
