package ellwand.nest.kernel;

import java.util.Arrays;

/**
 * An outline in one orientation: x0, y0, x1, y1, ... counter-clockwise, not repeated at the end. It
 * may hold room that copies keep between each other, but not from an obstacle.
 */
public final class Shape {

  private final double[] coordinates;
  private final double[] bare;

  /**
   * @throws IllegalArgumentException if there are fewer than three points, a number isn't finite,
   *     or the points don't run counter-clockwise round some area
   */
  public Shape(double... coordinates) {
    check(coordinates);
    this.coordinates = coordinates.clone();
    bare = this.coordinates;
  }

  private Shape(double[] coordinates, double[] bare) {
    this.coordinates = coordinates;
    this.bare = bare;
  }

  /**
   * The same with what of it may not overlap an obstacle.
   *
   * @param without the outline without the room it keeps from other copies, in the same frame
   * @throws IllegalArgumentException as from the constructor
   */
  public Shape bare(double... without) {
    check(without);
    return new Shape(coordinates, without.clone());
  }

  private static void check(double[] coordinates) {
    if (coordinates.length < 6 || coordinates.length % 2 != 0) {
      throw new IllegalArgumentException("an outline needs three points or more");
    }
    for (double c : coordinates) {
      if (!Double.isFinite(c)) {
        throw new IllegalArgumentException("an outline with " + c + " as a coordinate");
      }
    }
    if (!(Rings.area(coordinates) > 0)) {
      throw new IllegalArgumentException("an outline must run counter-clockwise round some area");
    }
  }

  /** A copy of the coordinates. */
  public double[] coordinates() {
    return coordinates.clone();
  }

  /** Whether it holds room that copies keep between each other. */
  boolean keepsRoom() {
    return !Arrays.equals(bare, coordinates);
  }

  /** A copy of the coordinates of what may not overlap an obstacle. */
  double[] bareCoordinates() {
    return bare.clone();
  }

  public int points() {
    return coordinates.length / 2;
  }

  public double x(int point) {
    return coordinates[2 * point];
  }

  public double y(int point) {
    return coordinates[2 * point + 1];
  }

  public double area() {
    return Rings.area(coordinates);
  }

  public double minX() {
    return Rings.min(coordinates, 0);
  }

  public double minY() {
    return Rings.min(coordinates, 1);
  }

  public double maxX() {
    return Rings.max(coordinates, 0);
  }

  public double maxY() {
    return Rings.max(coordinates, 1);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Shape s
        && Arrays.equals(coordinates, s.coordinates)
        && Arrays.equals(bare, s.bare);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(coordinates);
  }

  @Override
  public String toString() {
    return "Shape" + Arrays.toString(coordinates);
  }
}
