package ellwand.nest.kernel;

import java.util.ArrayList;
import java.util.List;

/** The shapes of a strip about the middles of their boxes, with their pair tables. */
final class Outlines {

  final double[] centreX;
  final double[] centreY;
  final double[] halfX;
  final double[] halfY;

  /** Square root of each shape's area. */
  final double[] size;

  final Tables tables;

  /** Whether any outline has been thinned. */
  private boolean thinned;

  /**
   * @param bound how far outlines may be thinned outwards; 0 for the true ones
   */
  Outlines(List<Shape> shapes, NoFit noFit, double bound) {
    centreX = new double[shapes.size()];
    centreY = new double[shapes.size()];
    halfX = new double[shapes.size()];
    halfY = new double[shapes.size()];
    size = new double[shapes.size()];
    tables = new Tables(centred(shapes, bound), noFit);
  }

  private List<double[]> centred(List<Shape> list, double bound) {
    List<double[]> centred = new ArrayList<>();
    for (int s = 0; s < list.size(); s++) {
      Shape shape = list.get(s);
      centreX[s] = (shape.minX() + shape.maxX()) / 2;
      centreY[s] = (shape.minY() + shape.maxY()) / 2;
      size[s] = Math.sqrt(shape.area());
      double[] outline = Rings.shifted(shape.coordinates(), -centreX[s], -centreY[s]);
      double[] turned = Rings.turned(outline);
      double[] thinned = null;
      for (int k = 0; k < s && thinned == null; k++) {
        double[] earlier = Rings.shifted(list.get(k).coordinates(), -centreX[k], -centreY[k]);
        if (Rings.same(turned, earlier, 1e-12 * size[s])) {
          thinned = Rings.turned(centred.get(k));
        }
      }
      if (thinned == null) {
        thinned = bound > 0 ? Outward.thinned(outline, bound) : outline;
      }
      this.thinned |= thinned.length < outline.length;
      centred.add(thinned);
      halfX[s] = Math.max(Rings.max(thinned, 0), -Rings.min(thinned, 0));
      halfY[s] = Math.max(Rings.max(thinned, 1), -Rings.min(thinned, 1));
    }
    return centred;
  }

  boolean thinned() {
    return thinned;
  }
}
