package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Intake;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A dart drawn into an edge, which becomes so much shorter when it is sewn. Where the point lies
 * aside, so that one leg is shorter, that leg is drawn out to the length of the other, and the edge
 * beside it to its new end.
 *
 * @param at the middle of its mouth
 * @param widthMm of its mouth, along the edge
 * @param depthMm how far its point lies from the edge, square to the mouth; empty with a point
 * @param point the mark at which it ends; empty with a depth
 * @param foldedTowards a mark on the side to which it is folded
 */
public record DrawDart(
    String name,
    String edge,
    Reach at,
    double widthMm,
    Optional<Double> depthMm,
    Optional<String> point,
    String foldedTowards)
    implements Alteration {

  public DrawDart {
    InputException.unless(
        depthMm.isPresent() != point.isPresent(),
        "a dart ends either at a mark, or so deep in the piece",
        "Give point: with a mark, or depth:, not both");
  }

  @Override
  public String words(Unit unit) {
    return "%s: %s wide, %s"
        .formatted(
            name,
            Words.length(widthMm, unit),
            depthMm
                .map(mm -> Words.length(mm, unit) + " deep")
                .orElseGet(() -> "to " + point.orElseThrow()));
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    WorkEdge of = piece.edge(edge);
    double length = of.line().length();
    double middle = of.drawn(at.mm(length));
    double from = middle - widthMm / 2;
    double to = middle + widthMm / 2;
    if (from < Workpiece.ON_EDGE_MM || to > length - Workpiece.ON_EDGE_MM) {
      throw refused(
          piece,
          "the mouth of %s would reach past the end of it; it is %s long"
              .formatted(name, Words.length(length, Unit.CM)),
          "Move it from the corner, or make it narrower");
    }
    for (Intake other : of.edge().intakes()) {
      double first = of.line().nearest(other.first().outer());
      double second = of.line().nearest(other.second().outer());
      if (first < to && second > from) {
        throw refused(
            piece,
            "the mouths of " + name + " and " + other.name() + " would overlap",
            "Move one of them, or make it narrower");
      }
    }
    Point first = of.line().at(from);
    Point second = of.line().at(to);
    Point ends = point.map(piece::mark).orElseGet(() -> square(first, second));
    double leg = Math.max(first.distance(ends), second.distance(ends));
    if (leg - Math.min(first.distance(ends), second.distance(ends)) > widthMm / 2) {
      throw refused(
          piece,
          "the point of " + name + " lies too far to one side of its mouth",
          "Move the point, or at:, so that both legs are about equally long");
    }
    Point firstOut = out(ends, first, leg);
    Point secondOut = out(ends, second, leg);
    Intake.Leg firstLeg = new Intake.Leg(firstOut, ends);
    Intake.Leg secondLeg = new Intake.Leg(secondOut, ends);
    Opening.checkInside(
        piece,
        List.of(first, ends, second),
        Problem.onEdge(
            piece.name(),
            edge,
            name + " would leave the piece",
            "Let it end at a point inside, or make it less deep"));
    Intake dart =
        new Intake(
            name,
            Intake.Kind.DART,
            firstLeg,
            secondLeg,
            Darts.towardsFirst(piece, foldedTowards, firstLeg, secondLeg));
    WorkEdge before = endingAt(of.between(0, from), firstOut);
    WorkEdge after =
        endingAt(of.between(to, length).turnedOver(p -> p), secondOut).turnedOver(p -> p);
    WorkEdge whole = before.then(of.plain(Path.line(firstOut, secondOut))).then(after);
    return Darts.with(piece, whole.with(whole.edge().with(dart))).marked(name, ends);
  }

  private Point square(Point first, Point second) {
    // The piece lies to the left of its edges.
    Point inward = second.minus(first).unit().left();
    return first.towards(second, 0.5).plus(inward.times(depthMm.orElseThrow()));
  }

  private static Point out(Point from, Point towards, double mm) {
    return from.distance(towards) == mm ? towards : from.plus(towards.minus(from).unit().times(mm));
  }

  /**
   * The edge drawn to another end: its stretch from the last dart or corner is turned and grows.
   */
  private static WorkEdge endingAt(WorkEdge edge, Point place) {
    Point end = edge.line().end();
    if (end.equals(place)) {
      return edge;
    }
    double from =
        edge.edge().intakes().stream()
            .mapToDouble(i -> edge.line().nearest(i.second().outer()))
            .max()
            .orElse(0);
    WorkEdge last = edge.between(from, edge.line().length());
    Point fixed = last.line().start();
    WorkEdge drawn = last.along(last.line().mapped(turnedAndGrown(fixed, end, place)));
    return from == 0 ? drawn : edge.between(0, from).then(drawn);
  }

  /** Keeps one place and brings another to a third. */
  private static UnaryOperator<Point> turnedAndGrown(Point fixed, Point from, Point to) {
    Point was = from.minus(fixed);
    Point is = to.minus(fixed);
    double square = was.dot(was);
    double along = was.dot(is) / square;
    double aside = was.cross(is) / square;
    return p -> {
      Point d = p.minus(fixed);
      return fixed.plus(d.times(along)).plus(d.left().times(aside));
    };
  }

  private InputException refused(Workpiece piece, String what, String remedy) {
    return new InputException(Problem.onEdge(piece.name(), edge, what, remedy));
  }
}
