package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        on(name(), line, edge.intakes()),
        notches.stream().map(n -> at(n, n.atMm() * growth)).toList(),
        backwards,
        usual);
  }

  /** The same under another name. */
  public WorkEdge named(String name) {
    return new WorkEdge(
        on(name, line(), edge.intakes()),
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
            .filter(i -> stands(i.first(), part) || stands(i.second(), part))
            .toList();
    return new WorkEdge(
        on(name(), part, within),
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
    return new WorkEdge(on(name(), line().then(next.line()), intakes), all, backwards, usual);
  }

  /** Where a map that keeps shapes and does not turn over takes it. */
  public WorkEdge moved(UnaryOperator<Point> map) {
    return new WorkEdge(
        on(name(), line().mapped(map), edge.intakes().stream().map(i -> i.moved(map)).toList()),
        notches,
        backwards,
        usual);
  }

  /** Where a map that keeps shapes but turns over takes it, run through the other way. */
  public WorkEdge turnedOver(UnaryOperator<Point> map) {
    double length = line().length();
    return new WorkEdge(
        on(
            name(),
            line().mapped(map).reversed(),
            edge.intakes().stream().map(i -> i.moved(map).reversed()).toList()),
        notches.stream().map(n -> at(n, Math.max(0, length - n.atMm()))).toList(),
        !backwards,
        usual);
  }

  /** The same with the mouths of its darts as they must run when these are folded. */
  WorkEdge shaped() {
    return new WorkEdge(edge.shaped(), notches, backwards, usual);
  }

  /** The same without notches. */
  public WorkEdge bare() {
    return new WorkEdge(edge, List.of(), backwards, usual);
  }

  private Edge on(String name, Path line, List<Intake> intakes) {
    for (Intake intake : intakes) {
      if (!stands(intake.first(), line) || !stands(intake.second(), line)) {
        throw new InputException(
            new Problem(
                Optional.empty(),
                0,
                Optional.empty(),
                Optional.of(name()),
                intake.name() + " is folded away there, so that it cannot be changed",
                "Do this step before the one that makes " + intake.name()));
      }
    }
    return new Edge(name, line, edge.allowanceMm(), edge.turnedBack(), intakes);
  }

  private static boolean stands(Intake.Leg leg, Path line) {
    return line.joint(leg.outer()).isPresent();
  }

  private Notch at(Notch notch, double mm) {
    return new Notch(name(), mm, notch.strokes(), notch.depthMm());
  }
}
