package ellwand.order;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * What the cutting table and the knife allow.
 *
 * @param maxPlies most plies in one lay, all its colours together
 * @param maxGarments most garments in one marker
 * @param tableMm length of the table, {@link Double#POSITIVE_INFINITY} if it sets no limit
 * @param endLossMm cloth lost by each ply, both ends together
 */
public record Limits(int maxPlies, int maxGarments, double tableMm, double endLossMm) {

  /** Lengths are reckoned in thousandths of a mm. */
  private static final double ROUNDING_MM = 0.0004;

  public Limits {
    List<Problem> problems = new ArrayList<>();
    if (maxPlies < 1) {
      problems.add(
          Problem.of(
              "at most " + maxPlies + " plies in a lay leave nothing to cut",
              "Set the ply limit to 1 or more"));
    }
    if (maxGarments < 1) {
      problems.add(
          Problem.of(
              "at most " + maxGarments + " garments in a marker leave nothing to cut",
              "Set the garments a marker may hold to 1 or more"));
    }
    if (!(tableMm > 0)) {
      problems.add(
          Problem.of("a table of " + tableMm + " mm has no length", "Give the table's length"));
    }
    if (!(endLossMm >= 0) || Double.isInfinite(endLossMm)) {
      problems.add(
          Problem.of("the end loss is " + endLossMm + " mm", "Give the end loss as 0 or more"));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Whether the table holds a marker of a length, mm, with its end loss. */
  public boolean hold(double markerMm) {
    return markerMm + endLossMm <= tableMm + ROUNDING_MM;
  }
}
