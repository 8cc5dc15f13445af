package ellwand.nest.kernel;

import java.util.List;

/** Makes no-fit polygons and what they need; called from several threads. */
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

  /**
   * The same as a table to ask for depths.
   *
   * @param levels how often its box is quartered
   */
  default PairTable table(double[] still, double[] moving, int levels) {
    return PairTableBuilder.build(rings(still, moving), levels);
  }

  /**
   * An outline with fewer corners that covers it.
   *
   * @param bound how far it may reach beyond
   * @param few an outline of so many corners is left as it is
   */
  default double[] thinned(double[] outline, double bound, int few) {
    return Outward.thinned(outline, bound, few);
  }
}
