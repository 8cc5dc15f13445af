package ellwand.nest.kernel;

import java.util.List;

/** Makes no-fit polygons; called from several threads. */
@FunctionalInterface
public interface NoFit {

  /**
   * The places of {@code moving}'s origin, seen from {@code still}'s, at which the two overlap: the
   * Minkowski sum of one and the other turned by a half turn.
   *
   * @param still x0, y0, x1, y1, ... counter-clockwise
   * @param moving the same
   * @return rings that keep the overlap on their left: borders counter-clockwise, holes clockwise
   */
  List<double[]> rings(double[] still, double[] moving);
}
