package ellwand.trace;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.Random;

/** Light that falls off from left to right, a shadow's soft edge, and perhaps a sharp one. */
final class Shade {

  /** Of the sharp edge, mm: a window's frame throws it. */
  private static final double SHARP_MM = 1.5;

  private final Scene.Flaws flaws;
  private final Box extent;
  private final Point middle;
  private final Point across;
  private final double off;

  Shade(Scene.Flaws flaws, Box extent) {
    this.flaws = flaws;
    this.extent = extent;
    middle = extent.centre();
    Random random = new Random(flaws.seed());
    double turn = random.nextDouble() * 2 * Math.PI;
    across = new Point(Math.cos(turn), Math.sin(turn));
    off = (random.nextDouble() - 0.5) * 0.4 * Math.min(extent.length(), extent.width());
  }

  double at(double x, double y) {
    double side = (x - extent.minX()) / extent.length();
    double edge = ((x - middle.x()) * 0.8 + (y - middle.y()) * 0.6) / 60;
    double fall = 1 - flaws.shadow() * 0.6 * Math.min(1, Math.max(0, side));
    if (Double.isNaN(fall)) {
      return 0.5;
    }
    double lit = fall * (1 - flaws.shadow() * 0.4 / (1 + Math.exp(-edge)));
    if (flaws.hardShadow() > 0) {
      double in = (x - middle.x()) * across.x() + (y - middle.y()) * across.y() - off;
      lit *= 1 - flaws.hardShadow() * Math.min(1, Math.max(0, in / SHARP_MM + 0.5));
    }
    return lit;
  }
}
