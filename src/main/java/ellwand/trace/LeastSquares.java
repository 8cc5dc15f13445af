package ellwand.trace;

import org.ddogleg.optimization.FactoryOptimization;
import org.ddogleg.optimization.UnconstrainedLeastSquares;
import org.ddogleg.optimization.derivative.NumericalJacobianForward_DDRM;
import org.ddogleg.optimization.functions.FunctionNtoM;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** Numbers, each near 0, for which the squares of all that is off are least together. */
final class LeastSquares {

  private static final double STILL = 1e-12;

  private static final int ROUNDS = 100;

  private LeastSquares() {}

  /** Found by the method of Levenberg and Marquardt, from 0. */
  static double[] solved(FunctionNtoM off) {
    UnconstrainedLeastSquares<DMatrixRMaj> solver =
        FactoryOptimization.levenbergMarquardt(null, false);
    solver.setFunction(off, null);
    solver.initialize(new double[off.getNumOfInputsN()], STILL, STILL);
    for (int round = 0; round < ROUNDS && !solver.iterate(); round++) {
      // Until it stands still.
    }
    return solver.getParameters().clone();
  }

  /**
   * How much is left open round 0: the numbers' covariance.
   *
   * @param off in standard deviations
   */
  static DMatrixRMaj open(FunctionNtoM off) {
    int numbers = off.getNumOfInputsN();
    DMatrixRMaj slopes = new DMatrixRMaj(off.getNumOfOutputsM(), numbers);
    new NumericalJacobianForward_DDRM(off).process(new double[numbers], slopes);
    DMatrixRMaj normal = new DMatrixRMaj(numbers, numbers);
    CommonOps_DDRM.multTransA(slopes, slopes, normal);
    DMatrixRMaj covariance = new DMatrixRMaj(numbers, numbers);
    if (!CommonOps_DDRM.invert(normal, covariance)) {
      throw new IllegalStateException("numbers that nothing holds");
    }
    return covariance;
  }

  /** Of a covariance what belongs to some of the numbers, row by row. */
  static double[] part(DMatrixRMaj covariance, int[] numbers) {
    DMatrixRMaj part = new DMatrixRMaj(numbers.length, numbers.length);
    CommonOps_DDRM.extract(covariance, numbers, numbers.length, numbers, numbers.length, part);
    return part.data;
  }

  /**
   * How far off a place may be that depends on numbers: two standard deviations, in the direction
   * in which they are most.
   *
   * @param dx by how much it moves along x with each number, as {@code dy} along y
   * @param open their covariance, row by row
   */
  static double farthest(double[] dx, double[] dy, double[] open) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < dx.length; i++) {
      for (int j = 0; j < dx.length; j++) {
        double c = open[i * dx.length + j];
        xx += dx[i] * c * dx[j];
        xy += dx[i] * c * dy[j];
        yy += dy[i] * c * dy[j];
      }
    }
    // The larger axis of the ellipse of one standard deviation.
    return 2 * Math.sqrt((xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy));
  }
}
