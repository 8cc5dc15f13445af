package ellwand.cutting;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Intake;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pieces with darts and pleats for tests, and folding them with nothing but plane geometry. */
final class FoldedAway {

  private FoldedAway() {}

  /** From a point, so many mm at so many degrees. */
  static Point polar(Point from, double degrees, double mm) {
    double a = Math.toRadians(degrees);
    return from.plus(new Point(mm * Math.cos(a), mm * Math.sin(a)));
  }

  /** About a point, counter-clockwise. */
  static Point turned(Point p, Point about, double degrees) {
    Point d = p.minus(about);
    double a = Math.toRadians(degrees);
    return about.plus(
        new Point(
            d.x() * Math.cos(a) - d.y() * Math.sin(a), d.x() * Math.sin(a) + d.y() * Math.cos(a)));
  }

  /**
   * A skirt panel with one dart in its upper edge, which runs from right to left.
   *
   * @param point of the dart
   * @param firstDegrees direction of the first leg from there
   * @param angle of the dart, degrees
   */
  static Piece darted(
      Point point,
      double firstDegrees,
      double angle,
      double leg,
      Point right,
      Point left,
      double bulge,
      double allowance,
      boolean towardsFirst) {
    Point a = polar(point, firstDegrees, leg);
    Point b = polar(point, firstDegrees + angle, leg);
    Intake dart =
        new Intake(
            "dart",
            Intake.Kind.DART,
            new Intake.Leg(a, point),
            new Intake.Leg(b, point),
            towardsFirst);
    return panel(
        List.of(bulging(right, a, bulge), new Segment.Line(a, b), bulging(b, left, bulge)),
        List.of(dart),
        allowance);
  }

  static Segment bulging(Point from, Point to, double mm) {
    if (mm == 0) {
      return new Segment.Line(from, to);
    }
    Point out = to.minus(from).unit().left().times(-mm);
    return new Segment.Cubic(
        from, from.towards(to, 0.3).plus(out), from.towards(to, 0.7).plus(out), to);
  }

  /** Under an upper edge that runs from right to left; its foot lies at y = 0. */
  static Piece panel(List<Segment> top, List<Intake> intakes, double allowance) {
    Path line = new Path(top);
    Point right = line.start();
    Point left = line.end();
    Point footRight = new Point(right.x() + 30, 0);
    Point footLeft = new Point(left.x() - 30, 0);
    List<Edge> edges = new ArrayList<>();
    Edge waist = new Edge("waist", line, allowance, false);
    for (Intake intake : intakes) {
      waist = waist.with(intake);
    }
    edges.add(waist.shaped());
    edges.add(new Edge("left side", Path.line(left, footLeft), 15, false));
    edges.add(new Edge("hem", Path.line(footLeft, footRight), 30, true));
    edges.add(new Edge("right side", Path.line(footRight, right), 15, false));
    return new Piece(
        "skirt",
        edges,
        Optional.empty(),
        Grain.ACROSS,
        List.of(),
        List.of(),
        List.of(new Cut("main", 1, Cut.How.WHOLE)));
  }

  /** Places on a closed line, none farther apart than this, mm. */
  static List<Point> walked(Outline line, double mm) {
    List<Point> places = new ArrayList<>();
    List<Point> ring = line.points();
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      int steps = (int) Math.ceil(a.distance(b) / mm);
      for (int k = 0; k < steps; k++) {
        places.add(a.towards(b, (double) k / steps));
      }
    }
    return places;
  }
}
