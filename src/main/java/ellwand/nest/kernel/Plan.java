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

  /** Whether any outline has been thinned. */
  private boolean thinned;

  /** How much weight an overlap of two bodies starts with: body by body. */
  final double[] base;

  /**
   * @param bound how far outlines may be thinned outwards; 0 for the true ones
   */
  Plan(Strip strip, NoFit noFit, double bound) {
    this.strip = strip;
    copies = strip.copies().size();
    bodies = copies + strip.obstacles().size();
    shapes = strip.shapes().size();
    centreX = new double[shapes];
    centreY = new double[shapes];
    halfX = new double[shapes];
    halfY = new double[shapes];
    size = new double[shapes];
    tables = new Tables(centred(bound), noFit);
    kind = new int[bodies];
    Map<List<Form>, Integer> seen = new IdentityHashMap<>();
    List<Kind> list = new ArrayList<>();
    for (int i = 0; i < copies; i++) {
      List<Form> forms = strip.copies().get(i);
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

  private List<double[]> centred(double bound) {
    List<double[]> outlines = new ArrayList<>();
    for (int s = 0; s < shapes; s++) {
      Shape shape = strip.shapes().get(s);
      centreX[s] = (shape.minX() + shape.maxX()) / 2;
      centreY[s] = (shape.minY() + shape.maxY()) / 2;
      size[s] = Math.sqrt(shape.area());
      double[] outline = Rings.shifted(shape.coordinates(), -centreX[s], -centreY[s]);
      double[] turned = Rings.turned(outline);
      double[] thinned = null;
      for (int k = 0; k < s && thinned == null; k++) {
        double[] earlier =
            Rings.shifted(strip.shapes().get(k).coordinates(), -centreX[k], -centreY[k]);
        if (Rings.same(turned, earlier, 1e-12 * size[s])) {
          thinned = Rings.turned(outlines.get(k));
        }
      }
      if (thinned == null) {
        thinned = bound > 0 ? Outward.thinned(outline, bound) : outline;
      }
      this.thinned |= thinned.length < outline.length;
      outlines.add(thinned);
      halfX[s] = Math.max(Rings.max(thinned, 0), -Rings.min(thinned, 0));
      halfY[s] = Math.max(Rings.max(thinned, 1), -Rings.min(thinned, 1));
    }
    return outlines;
  }

  boolean thinned() {
    return thinned;
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
