package ellwand.nest.kernel;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * A strip prepared for search: everything in flat arrays, places counted from the middle of each
 * shape's bounding box. Read-only but for the pair tables, which build themselves.
 */
final class Plan {

  /** Overlaps up to so much of the smallest shape's size count as touching. */
  private static final double TOUCHING = 5e-8;

  final Strip strip;
  final Outlines outlines;
  final int copies;
  final int bodies;
  final Tables tables;
  final int shapes;
  final double[] centreX;
  final double[] centreY;
  final double[] halfX;
  final double[] halfY;
  final double[] size;

  /** For each body the kind; copies of one kind may be exchanged. Obstacles have kinds too. */
  final int[] kind;

  final Kind[] kinds;
  final double[] obstacleX;
  final double[] obstacleY;
  final double tolerance;
  final double lowY;
  final double highY;
  final double least;

  /** How much weight an overlap of two bodies starts with: body by body. */
  final double[] base;

  /**
   * @param outlines of the strip's shapes
   */
  Plan(Strip strip, Outlines outlines) {
    this.strip = strip;
    this.outlines = outlines;
    copies = strip.copies().size();
    bodies = copies + strip.obstacles().size();
    shapes = strip.shapes().size();
    centreX = outlines.centreX;
    centreY = outlines.centreY;
    halfX = outlines.halfX;
    halfY = outlines.halfY;
    size = outlines.size;
    tables = outlines.tables;
    kind = new int[bodies];
    Map<List<StripForm>, Integer> seen = new IdentityHashMap<>();
    List<Kind> list = new ArrayList<>();
    for (int i = 0; i < copies; i++) {
      List<StripForm> forms = strip.copies().get(i);
      Integer known = seen.putIfAbsent(forms, list.size());
      kind[i] = known == null ? list.size() : known;
      if (known == null) {
        list.add(Kind.of(forms, this));
      }
    }
    obstacleX = new double[strip.obstacles().size()];
    obstacleY = new double[obstacleX.length];
    for (int i = 0; i < obstacleX.length; i++) {
      Obstacle obstacle = strip.obstacles().get(i);
      obstacleX[i] = obstacle.x() + centreX[obstacle.shape()];
      obstacleY[i] = obstacle.y() + centreY[obstacle.shape()];
      kind[copies + i] = list.size();
      Kind fixed = new Kind(1);
      fixed.shape[0] = obstacle.shape();
      list.add(fixed);
    }
    kinds = list.toArray(Kind[]::new);
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    double smallest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < copies; i++) {
      Kind k = kinds[kind[i]];
      for (int f = 0; f < k.forms; f++) {
        lo = Math.min(lo, k.lowY[f] - halfY[k.shape[f]]);
        hi = Math.max(hi, k.highY[f] + halfY[k.shape[f]]);
        smallest = Math.min(smallest, size[k.shape[f]]);
      }
    }
    lowY = lo;
    highY = hi;
    tolerance = TOUCHING * smallest;
    least = Math.max(strip.leastLength(), longest());
    base = bases();
  }

  /** The same with each outline's box in its stead. */
  Plan boxed() {
    return new Plan(strip, outlines.boxed());
  }

  /** Whether nothing shorter is possible, but for rounding. */
  boolean atLeast(double length) {
    return length <= least * (1 + 1e-9);
  }

  /** The longest of the copies, each in its shortest form. */
  private double longest() {
    double longest = 0;
    for (int i = 0; i < copies; i++) {
      Kind k = kinds[kind[i]];
      double shortest = Double.POSITIVE_INFINITY;
      for (int f = 0; f < k.forms; f++) {
        shortest = Math.min(shortest, k.lowX[f] + k.reach[f]);
      }
      longest = Math.max(longest, shortest);
    }
    return longest;
  }

  private double[] bases() {
    double[] sizes = new double[bodies];
    double mean = 0;
    for (int i = 0; i < copies; i++) {
      sizes[i] = size[kinds[kind[i]].shape[0]];
      mean += sizes[i] / copies;
    }
    for (int i = copies; i < bodies; i++) {
      sizes[i] = mean;
    }
    double[] bases = new double[bodies * bodies];
    for (int i = 0; i < bodies; i++) {
      for (int k = 0; k < bodies; k++) {
        bases[i * bodies + k] = Math.pow(sizes[i] * sizes[k] / (mean * mean), 1.5);
      }
    }
    return bases;
  }
}
