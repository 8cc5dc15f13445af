package ellwand.nest.pose;

import ellwand.nest.kernel.Lattice;

/**
 * A pose and the places it may have.
 *
 * @param x shifts allowed along the stretch
 * @param y shifts allowed across it, within the window
 * @param lowY least shift across, mm
 * @param highY greatest shift across, mm
 */
public record Way(Pose pose, Lattice x, Lattice y, double lowY, double highY) {

  /** Farther than any cloth is long: a lattice of such steps has one place on it, mm. */
  private static final double BEYOND_MM = 1e6;

  /** Of the outline, which tells most ways apart. */
  @Override
  public int hashCode() {
    return pose.outline().hashCode();
  }

  /** At one place. */
  public static Lattice only(double mm) {
    return new Lattice(BEYOND_MM, mm);
  }

  /** Wherever it fits. */
  public static Way anywhere(Pose pose) {
    Lattice x = pose.fixedX().isPresent() ? only(pose.fixedX().getAsDouble()) : Lattice.FREE;
    return new Way(pose, x, Lattice.FREE, pose.lowY(), pose.highY());
  }
}
