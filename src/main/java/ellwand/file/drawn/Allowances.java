package ellwand.file.drawn;

import ellwand.geometry.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Measures seam allowances between a sewing line and the cutting line drawn round it. */
final class Allowances {

  /** Places on an edge at which it is measured, as shares of its length: away from its corners. */
  private static final double[] AT = {0.3, 0.38, 0.46, 0.5, 0.54, 0.62, 0.7};

  /** What is measured is rounded to, mm: a cutting line is no truer. */
  private static final double STEP_MM = 0.1;

  private Allowances() {}

  /** Of an edge, mm. */
  static double mm(Path edge, Ring cutting) {
    double length = edge.length();
    List<Double> measured = new ArrayList<>();
    for (double share : AT) {
      measured.add(cutting.distance(edge.tangent(share * length).at()));
    }
    measured.sort(Comparator.naturalOrder());
    double middle = measured.get(measured.size() / 2);
    return Math.rint(middle / STEP_MM) / Math.rint(1 / STEP_MM);
  }

  /** The one that most edges have; of several the widest. */
  static double most(Iterable<Double> all) {
    Map<Double, Integer> counts = new LinkedHashMap<>();
    all.forEach(mm -> counts.merge(mm, 1, Integer::sum));
    return counts.entrySet().stream()
        .max(
            Comparator.comparingInt((Map.Entry<Double, Integer> e) -> e.getValue())
                .thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .orElse(0.0);
  }
}
