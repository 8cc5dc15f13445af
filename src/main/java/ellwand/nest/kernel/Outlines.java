package ellwand.nest.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The shapes of a strip about the middles of their boxes, with their pair tables. */
final class Outlines {

  final double[] centreX;
  final double[] centreY;
  final double[] halfX;
  final double[] halfY;

  /** Square root of each shape's area. */
  final double[] size;

  final Tables tables;

  /** Outlines up to so many points are not thinned to search with, nor for a rough layout. */
  private static final int FEW = 16;

  private static final int FEW_ROUGHLY = 6;

  /** How often a table's box is quartered, for the search and for a rough layout. */
  private static final int LEVELS = 4;

  private static final int LEVELS_ROUGHLY = 3;

  private static final int LEVELS_BOXED = 1;

  private final Set<Integer> fixed;
  private final NoFit noFit;
  private final List<double[]> whole;
  private final List<double[]> bare;

  /** Whether any outline has been thinned. */
  private boolean thinned;

  /**
   * @param fixed shapes of obstacles
   * @param bound how far outlines may be thinned outwards; 0 for the true ones
   */
  Outlines(List<Shape> shapes, Set<Integer> fixed, NoFit noFit, double bound) {
    this(
        shapes,
        fixed,
        noFit,
        new Thinning(bound, FEW, noFit),
        new Thinning(bound, FEW, noFit),
        LEVELS);
  }

  /**
   * Outlines with few corners, whose tables are quickly made.
   *
   * @param bound how far they may be thinned outwards
   */
  static Outlines rough(List<Shape> shapes, Set<Integer> fixed, NoFit noFit, double bound) {
    return new Outlines(
        shapes,
        fixed,
        noFit,
        new Thinning(bound, FEW_ROUGHLY, noFit),
        new Thinning(bound, FEW_ROUGHLY, noFit),
        LEVELS_ROUGHLY);
  }

  private Outlines(
      List<Shape> shapes,
      Set<Integer> fixed,
      NoFit noFit,
      Thinning whole,
      Thinning bare,
      int levels) {
    centreX = new double[shapes.size()];
    centreY = new double[shapes.size()];
    halfX = new double[shapes.size()];
    halfY = new double[shapes.size()];
    size = new double[shapes.size()];
    this.fixed = fixed;
    this.noFit = noFit;
    for (int s = 0; s < shapes.size(); s++) {
      Shape shape = shapes.get(s);
      centreX[s] = (shape.minX() + shape.maxX()) / 2;
      centreY[s] = (shape.minY() + shape.maxY()) / 2;
      size[s] = Math.sqrt(shape.area());
      double[] outline = Rings.shifted(shape.coordinates(), -centreX[s], -centreY[s]);
      double[] kept = whole.add(outline);
      thinned |= kept.length < outline.length;
      if (!fixed.isEmpty()) {
        bare.add(Rings.shifted(shape.bareCoordinates(), -centreX[s], -centreY[s]));
      }
      halfX[s] = Math.max(Rings.max(kept, 0), -Rings.min(kept, 0));
      halfY[s] = Math.max(Rings.max(kept, 1), -Rings.min(kept, 1));
    }
    this.whole = whole.thinned;
    this.bare = fixed.isEmpty() ? whole.thinned : bare.thinned;
    tables = new Tables(this.whole, this.bare, fixed, noFit, levels);
  }

  /** The boxes of others, but for obstacles, which stay as they are. */
  private Outlines(Outlines of) {
    centreX = of.centreX;
    centreY = of.centreY;
    halfX = of.halfX;
    halfY = of.halfY;
    size = of.size;
    fixed = of.fixed;
    noFit = of.noFit;
    whole = boxes(of.whole, fixed);
    bare = boxes(of.bare, fixed);
    tables = new Tables(whole, bare, fixed, new BoxNoFit(noFit), LEVELS_BOXED);
  }

  /** The no-fit polygon of two boxes is a box; what of an obstacle isn't one is left to another. */
  private record BoxNoFit(NoFit other) implements NoFit {

    @Override
    public List<double[]> rings(double[] still, double[] moving) {
      return other.rings(still, moving);
    }

    @Override
    public PairTable table(double[] still, double[] moving, int levels) {
      if (!isBox(still) || !isBox(moving)) {
        return other.table(still, moving, levels);
      }
      return PairTable.ofBox(
          Rings.min(still, 0) - Rings.max(moving, 0),
          Rings.min(still, 1) - Rings.max(moving, 1),
          Rings.max(still, 0) - Rings.min(moving, 0),
          Rings.max(still, 1) - Rings.min(moving, 1));
    }

    private static boolean isBox(double[] ring) {
      // One that is turned by half begins at another corner.
      return Rings.same(ring, boxRound(ring), 0);
    }
  }

  /** The boxes round them, whose tables are quickly made; obstacles stay as they are. */
  Outlines boxed() {
    return new Outlines(this);
  }

  private static List<double[]> boxes(List<double[]> rings, Set<Integer> fixed) {
    List<double[]> boxes = new ArrayList<>();
    for (int i = 0; i < rings.size(); i++) {
      boxes.add(fixed.contains(i) ? rings.get(i) : boxRound(rings.get(i)));
    }
    return boxes;
  }

  private static double[] boxRound(double[] ring) {
    return Rings.box(
        Rings.min(ring, 0), Rings.min(ring, 1), Rings.max(ring, 0), Rings.max(ring, 1));
  }

  /** Outlines one after another; one that is another turned by half is thinned like it. */
  private static final class Thinning {

    private final double bound;
    private final int few;
    private final NoFit noFit;
    private final List<double[]> exact = new ArrayList<>();
    private final List<double[]> thinned = new ArrayList<>();

    /**
     * @param bound how far outlines may be thinned; 0 for not at all
     */
    Thinning(double bound, int few, NoFit noFit) {
      this.noFit = noFit;
      this.bound = bound;
      this.few = few;
    }

    double[] add(double[] outline) {
      double[] turned = Rings.turned(outline);
      double size = Math.sqrt(Rings.area(outline));
      double[] kept = null;
      for (int k = 0; k < exact.size() && kept == null; k++) {
        if (Rings.same(turned, exact.get(k), 1e-12 * size)) {
          kept = Rings.turned(thinned.get(k));
        }
      }
      if (kept == null) {
        kept = bound > 0 ? noFit.thinned(outline, bound, few) : outline;
      }
      exact.add(outline);
      thinned.add(kept);
      return kept;
    }
  }

  boolean thinned() {
    return thinned;
  }
}
