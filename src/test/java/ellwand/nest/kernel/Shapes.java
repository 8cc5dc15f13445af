package ellwand.nest.kernel;

import ellwand.geometry.RandomOutlines;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Shapes for tests, and JTS as the slow and obvious judge of them. */
final class Shapes {

  static final GeometryFactory FACTORY = new GeometryFactory();

  private Shapes() {}

  static Shape box(double length, double width) {
    return new Shape(0, 0, length, 0, length, width, 0, width);
  }

  static Shape turned(Shape shape) {
    return new Shape(Rings.turned(shape.coordinates()));
  }

  /** Stars in two orientations, a few of each kind, on a strip of width 60. */
  static Strip stars(int kinds, int each, int points) {
    SplittableRandom random = new SplittableRandom(5);
    List<Shape> shapes = new ArrayList<>();
    List<List<StripForm>> copies = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      Shape shape = new Shape(RandomOutlines.star(random, points, 8 + 2 * i, 0.5));
      Shape turned = turned(shape);
      shapes.add(shape);
      shapes.add(turned);
      List<StripForm> forms =
          List.of(StripForm.within(60, 2 * i, shape), StripForm.within(60, 2 * i + 1, turned));
      copies.addAll(Collections.nCopies(each, forms));
    }
    return Strip.open(shapes, copies);
  }

  static Polygon polygon(double[] ring, double x, double y) {
    Coordinate[] points = new Coordinate[ring.length / 2 + 1];
    for (int i = 0; i < points.length; i++) {
      points[i] =
          new Coordinate(ring[2 * i % ring.length] + x, ring[(2 * i + 1) % ring.length] + y);
    }
    return FACTORY.createPolygon(points);
  }

  /** Each copy in its place. */
  static List<Polygon> placed(Strip strip, Layout layout) {
    List<Polygon> placed = new ArrayList<>();
    for (int i = 0; i < layout.poses().size(); i++) {
      Layout.StripPose pose = layout.poses().get(i);
      StripForm form = strip.copies().get(i).get(pose.form());
      placed.add(polygon(strip.shapes().get(form.shape()).coordinates(), pose.x(), pose.y()));
    }
    return placed;
  }

  static double overlap(Polygon a, Polygon b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION).getArea();
  }

  /** Everything wrong with a layout, by the true outlines. */
  static List<String> faults(Strip strip, Layout layout) {
    List<String> faults = new ArrayList<>();
    List<Polygon> placed = placed(strip, layout);
    List<Polygon> all = new ArrayList<>(placed);
    for (Obstacle o : strip.obstacles()) {
      all.add(polygon(strip.shapes().get(o.shape()).coordinates(), o.x(), o.y()));
    }
    for (int i = 0; i < placed.size(); i++) {
      Layout.StripPose pose = layout.poses().get(i);
      StripForm form = strip.copies().get(i).get(pose.form());
      if (pose.y() < form.yLo() - 0.01 || pose.y() > form.yHi() + 0.01) {
        faults.add("copy " + i + " leaves its window: y = " + pose.y());
      }
      if (pose.x() - form.left() < -0.01 || pose.x() + form.right() > layout.length() + 0.01) {
        faults.add("copy " + i + " leaves the strip: x = " + pose.x());
      }
      if (!on(form.alongX(), pose.x()) || !on(form.alongY(), pose.y())) {
        faults.add("copy " + i + " is off its lattice: " + pose);
      }
      for (int k = i + 1; k < all.size(); k++) {
        double least = Math.min(all.get(i).getArea(), all.get(k).getArea());
        double share = overlap(all.get(i), all.get(k)) / least;
        if (share > 1e-6) {
          faults.add("copy " + i + " overlaps " + k + " by " + share);
        }
      }
    }
    return faults;
  }

  private static boolean on(Lattice lattice, double value) {
    double steps = lattice.step() == 0 ? 0 : (value - lattice.offset()) / lattice.step();
    return Math.abs(steps - Math.rint(steps)) < 1e-6;
  }
}
