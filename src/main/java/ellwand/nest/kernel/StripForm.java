package ellwand.nest.kernel;

/**
 * One way a copy may lie. A copy's place is that of its shape's origin.
 *
 * @param shape index into the strip's shapes
 * @param yLo lowest y allowed for the origin
 * @param yHi highest; equal to {@code yLo} for a copy that can only slide along the strip
 * @param left the copy begins at x - left, which must not be below 0
 * @param right the copy ends at x + right, which counts for the strip's length. Both may be smaller
 *     than the shape's own reach when the shape is grown for a gap that the cut ends don't ask for
 * @param alongX where x may be
 * @param alongY where y may be, within the window
 */
public record StripForm(
    int shape, double yLo, double yHi, double left, double right, Lattice alongX, Lattice alongY) {

  public StripForm {
    if (!(yLo <= yHi)) {
      throw new IllegalArgumentException("a window from " + yLo + " to " + yHi + " is empty");
    }
    if (!(left + right > 0)) {
      throw new IllegalArgumentException("a form must reach along the strip");
    }
    if (alongY.atOrAbove(yLo) > yHi + 1e-9 * (1 + Math.abs(yHi))) {
      throw new IllegalArgumentException(
          "no place of the lattice lies in the window from " + yLo + " to " + yHi);
    }
  }

  /** Free in x and within the window. */
  public static StripForm free(int shape, double yLo, double yHi, double left, double right) {
    return new StripForm(shape, yLo, yHi, left, right, Lattice.FREE, Lattice.FREE);
  }

  /** A shape anywhere between y = 0 and y = width, its own reach counting for the length. */
  public static StripForm within(double width, int index, Shape shape) {
    return free(index, -shape.minY(), width - shape.maxY(), -shape.minX(), shape.maxX());
  }
}
