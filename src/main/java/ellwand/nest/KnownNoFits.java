package ellwand.nest;

import ellwand.geometry.NoFitUnion;
import ellwand.nest.kernel.NoFit;
import java.nio.DoubleBuffer;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;

/** No-fit polygons of one lay, each made once, however many decisions are placed. */
final class KnownNoFits implements NoFit {

  private final ConcurrentHashMap<List<DoubleBuffer>, List<double[]>> known =
      new ConcurrentHashMap<>();

  @Override
  public List<double[]> rings(double[] still, double[] moving) {
    return known.computeIfAbsent(
        List.of(DoubleBuffer.wrap(still), DoubleBuffer.wrap(moving)),
        pair -> NoFitUnion.rings(still, moving));
  }
}
