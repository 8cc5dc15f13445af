package ellwand.nest;

import ellwand.nest.kernel.Lattice;

/**
 * A pose and the places it may have.
 *
 * @param x shifts allowed along the stretch
 * @param y shifts allowed across it, within the window
 * @param lowY least shift across, mm
 * @param highY greatest shift across, mm
 */
record Way(Pose pose, Lattice x, Lattice y, double lowY, double highY) {

  /** Wherever it fits. */
  static Way anywhere(Pose pose) {
    return new Way(pose, Lattice.FREE, Lattice.FREE, pose.lowY(), pose.highY());
  }
}
