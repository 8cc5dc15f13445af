package ellwand.nest.kernel;

/**
 * The places allowed on one axis: offset plus any whole multiple of the step; everywhere when the
 * step is 0.
 */
public record Lattice(double step, double offset) {

  /** Everywhere. */
  public static final Lattice FREE = new Lattice(0, 0);

  public Lattice {
    if (!(step >= 0 && step < Double.POSITIVE_INFINITY) || !Double.isFinite(offset)) {
      throw new IllegalArgumentException("a lattice of step " + step + " from " + offset);
    }
  }

  /** The lowest allowed place at or above {@code from}. */
  public double atOrAbove(double from) {
    return step == 0 ? from : offset + step * Math.ceil((from - offset) / step - 1e-9);
  }

  /** The highest allowed place at or below {@code to}. */
  public double atOrBelow(double to) {
    return step == 0 ? to : offset + step * Math.floor((to - offset) / step + 1e-9);
  }
}
