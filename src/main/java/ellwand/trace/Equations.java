package ellwand.trace;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** Small systems of linear equations, such as least squares ask for. */
final class Equations {

  private Equations() {}

  /**
   * Solves them; infinite or not numbers where nothing holds the unknowns.
   *
   * @param rows as many as unknowns, each with their factors and then the right side
   */
  static double[] solved(double[][] rows) {
    int unknowns = rows.length;
    DMatrixRMaj all = new DMatrixRMaj(rows);
    DMatrixRMaj solved = new DMatrixRMaj(unknowns, 1);
    CommonOps_DDRM.solve(
        CommonOps_DDRM.extract(all, 0, unknowns, 0, unknowns),
        CommonOps_DDRM.extract(all, 0, unknowns, unknowns, unknowns + 1),
        solved);
    return solved.data;
  }
}
