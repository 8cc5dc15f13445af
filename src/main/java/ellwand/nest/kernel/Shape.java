package ellwand.nest.kernel;

import java.util.Arrays;

/**
 * An outline in one orientation: x0, y0, x1, y1, ... counter-clockwise, not repeated at the end.
 */
public final class Shape {

  private final double[] coordinates;

  /**
   * @throws IllegalArgumentException if there are fewer than three points, a number isn't finite,
   *     or the points don't run counter-clockwise round some area
   */
  public Shape(double... coordinates) {
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
    this.coordinates = coordinates.clone();
  }

  /** A copy of the coordinates. */
  public double[] coordinates() {
    return coordinates.clone();
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
    return other instanceof Shape s && Arrays.equals(coordinates, s.coordinates);
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
