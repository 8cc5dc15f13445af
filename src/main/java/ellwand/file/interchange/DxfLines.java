package ellwand.file.interchange;

import ellwand.file.drawn.Arc;
import ellwand.file.drawn.LineBuilder;
import ellwand.geometry.CurveFit;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** Draws the entities that are lines. */
final class DxfLines {

  /** How far a spline may stray, mm. */
  private static final double TOLERANCE_MM = 5e-4;

  /** How far the points of a curve may lie from the curve laid through them, mm. */
  private static final double CURVE_MM = 0.003;

  /** Places on each span of a spline. */
  private static final int SAMPLES = 24;

  private DxfLines() {}

  /** Whether a kind of entity is drawn here. */
  static boolean draws(String type) {
    return List.of("LINE", "POLYLINE", "LWPOLYLINE", "ARC", "CIRCLE", "ELLIPSE", "SPLINE")
        .contains(type);
  }

  /**
   * Draws one.
   *
   * @param points of polylines that lie on a curve; see {@link CurvePoints}
   */
  static void draw(DxfEntity entity, LineBuilder pen, CurvePoints points) {
    switch (entity.type()) {
      case "LINE" -> {
        Point to = entity.place(11);
        move(pen, entity.place(10));
        pen.line(to.x(), to.y());
      }
      case "POLYLINE" -> polyline(vertices(entity), closed(entity), pen, points);
      case "LWPOLYLINE" -> polyline(lightVertices(entity), closed(entity), pen, points);
      case "CIRCLE" -> {
        Point centre = entity.place(10);
        double radius = entity.number(40, 0);
        Arc.ellipse(pen, centre.x(), centre.y(), radius, radius);
      }
      case "ARC" ->
          arc(
              pen,
              entity.place(10),
              entity.number(40, 0),
              entity.number(50, 0),
              entity.number(51, 360));
      case "ELLIPSE" -> ellipse(entity, pen);
      default -> spline(entity, pen);
    }
    pen.end();
  }

  private static void move(LineBuilder pen, Point at) {
    pen.move(at.x(), at.y());
  }

  private static boolean closed(DxfEntity entity) {
    return ((int) flag(entity) & 1) == 1;
  }

  /** Group 70 is a whole number, which is kept as text. */
  private static double flag(DxfEntity entity) {
    return entity.text(70).filter(t -> t.matches("\\d{1,6}")).map(Double::valueOf).orElse(0.0);
  }

  /**
   * A corner of a polyline.
   *
   * @param bulge tangent of a quarter of the angle of the arc to the next; 0 for a straight line
   */
  private record Corner(Point at, double bulge) {}

  private static List<Corner> vertices(DxfEntity polyline) {
    return polyline.vertices().stream()
        // Points of the frame of a curve that was smoothed, which do not lie on it.
        .filter(v -> ((int) flag(v) & 16) == 0)
        .map(v -> new Corner(v.place(10), v.number(42, 0)))
        .toList();
  }

  private static List<Corner> lightVertices(DxfEntity polyline) {
    List<Corner> corners = new ArrayList<>();
    double x = 0;
    for (DxfEntity.Pair pair : polyline.pairs()) {
      if (pair.code() == 10) {
        x = pair.number();
      } else if (pair.code() == 20) {
        corners.add(new Corner(new Point(x, pair.number()), 0));
      } else if (pair.code() == 42 && !corners.isEmpty()) {
        int last = corners.size() - 1;
        corners.set(last, new Corner(corners.get(last).at, pair.number()));
      }
    }
    return corners;
  }

  private static void polyline(
      List<Corner> corners, boolean closed, LineBuilder pen, CurvePoints points) {
    if (corners.size() < 2) {
      return;
    }
    List<Point> ring = corners.stream().map(Corner::at).toList();
    if (corners.stream().allMatch(c -> c.bulge == 0) && points.curve(ring)) {
      List<Segment> segments = points.segments(ring, closed, CURVE_MM / Math.max(1, pen.stretch()));
      move(pen, segments.get(0).start());
      segments.forEach(segment -> draw(pen, segment));
      if (closed) {
        pen.close();
      }
      return;
    }
    move(pen, corners.get(0).at);
    for (int i = 1; i < corners.size() + (closed ? 1 : 0); i++) {
      Corner from = corners.get(i - 1);
      Point to = corners.get(i % corners.size()).at;
      if (from.bulge == 0) {
        pen.line(to.x(), to.y());
      } else {
        bulge(pen, from.at, to, from.bulge);
      }
    }
    if (closed) {
      pen.close();
    }
  }

  private static void draw(LineBuilder pen, Segment segment) {
    Point to = segment.end();
    if (segment instanceof Segment.Cubic c) {
      pen.curve(
          c.control1().x(), c.control1().y(), c.control2().x(), c.control2().y(), to.x(), to.y());
    } else {
      pen.line(to.x(), to.y());
    }
  }

  private static void bulge(LineBuilder pen, Point from, Point to, double bulge) {
    double angle = 4 * Math.atan(Math.abs(bulge));
    double radius = from.distance(to) / 2 / Math.sin(angle / 2);
    Arc.draw(pen, from, radius, radius, 0, angle > Math.PI, bulge > 0, to);
  }

  /** Counter-clockwise from one angle to the other, in degrees. */
  private static void arc(LineBuilder pen, Point centre, double radius, double from, double until) {
    double sweep = ((until - from) % 360 + 360) % 360;
    if (sweep == 0) {
      Arc.ellipse(pen, centre.x(), centre.y(), radius, radius);
      return;
    }
    Point start = onCircle(centre, radius, from);
    Point half = onCircle(centre, radius, from + sweep / 2);
    Point end = onCircle(centre, radius, from + sweep);
    move(pen, start);
    Arc.draw(pen, start, radius, radius, 0, false, true, half);
    Arc.draw(pen, half, radius, radius, 0, false, true, end);
  }

  private static Point onCircle(Point centre, double radius, double degrees) {
    double angle = Math.toRadians(degrees);
    return centre.plus(new Point(Math.cos(angle), Math.sin(angle)).times(radius));
  }

  /** By its centre, the end of its longer axis from there, and the share of the shorter one. */
  private static void ellipse(DxfEntity entity, LineBuilder pen) {
    Point centre = entity.place(10);
    Point axis = entity.place(11);
    Point other = axis.left().times(entity.number(40, 1));
    double from = entity.number(41, 0);
    double until = entity.number(42, 2 * Math.PI);
    double sweep = until > from ? until - from : until - from + 2 * Math.PI;
    double turn = Math.toDegrees(Math.atan2(axis.y(), axis.x()));
    Point at = null;
    for (int i = 0; i <= 4; i++) {
      double angle = from + sweep * i / 4;
      Point next = centre.plus(axis.times(Math.cos(angle))).plus(other.times(Math.sin(angle)));
      if (at == null) {
        move(pen, next);
      } else {
        Arc.draw(pen, at, axis.norm(), other.norm(), turn, false, true, next);
      }
      at = next;
    }
  }

  private static void spline(DxfEntity entity, LineBuilder pen) {
    Spline spline = Spline.of(entity);
    List<Double> knots = spline.spans();
    move(pen, spline.at(knots.get(0), true));
    for (int k = 1; k < knots.size(); k++) {
      List<Point> span = new ArrayList<>();
      for (int i = 0; i <= SAMPLES; i++) {
        double t = knots.get(k - 1) + (knots.get(k) - knots.get(k - 1)) * i / SAMPLES;
        Point at = spline.at(t, i < SAMPLES);
        if (span.isEmpty() || span.get(span.size() - 1).distance(at) > 1e-9) {
          span.add(at);
        }
      }
      if (span.size() > 1) {
        CurveFit.through(span, TOLERANCE_MM / Math.max(1, pen.stretch()))
            .forEach(segment -> draw(pen, segment));
      }
    }
    if (((int) flag(entity) & 1) == 1) {
      pen.close();
    }
  }
}
