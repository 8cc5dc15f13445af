package ellwand.nest.kernel;

import java.nio.DoubleBuffer;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;

/** Pair tables and thinned outlines of one lay, each made once, however many searches ask. */
public final class KnownNoFits implements NoFit {

  private record Pair(DoubleBuffer still, DoubleBuffer moving, int levels) {}

  private record Rough(DoubleBuffer outline, double bound, int few) {}

  private final NoFit maker;
  private final ConcurrentHashMap<Rough, double[]> rough = new ConcurrentHashMap<>();
  private final ConcurrentHashMap<Pair, PairTable> known = new ConcurrentHashMap<>();

  /**
   * @param maker of those that are not known yet
   */
  public KnownNoFits(NoFit maker) {
    this.maker = maker;
  }

  @Override
  public List<double[]> rings(double[] still, double[] moving) {
    return maker.rings(still, moving);
  }

  @Override
  public PairTable table(double[] still, double[] moving, int levels) {
    return known.computeIfAbsent(
        new Pair(DoubleBuffer.wrap(still), DoubleBuffer.wrap(moving), levels),
        pair -> maker.table(still, moving, levels));
  }

  @Override
  public double[] thinned(double[] outline, double bound, int few) {
    return rough.computeIfAbsent(
        new Rough(DoubleBuffer.wrap(outline), bound, few),
        key -> maker.thinned(outline, bound, few));
  }
}
