package ellwand.nest.kernel;

import java.util.List;

/**
 * What is to be laid: copies of shapes, as short as can be.
 *
 * @param shapes every outline that a form or an obstacle names
 * @param copies for each copy the forms it may take; copies that may be exchanged for each other
 *     share one list (the same object)
 * @param obstacles what must be kept clear
 * @param maxLength longest strip allowed, {@link Double#POSITIVE_INFINITY} for any
 */
public record Strip(
    List<Shape> shapes, List<List<StripForm>> copies, List<Obstacle> obstacles, double maxLength) {

  public Strip {
    shapes = List.copyOf(shapes);
    copies = List.copyOf(copies);
    obstacles = List.copyOf(obstacles);
    if (copies.isEmpty()) {
      throw new IllegalArgumentException("a strip needs a copy to lay");
    }
    if (!(maxLength > 0)) {
      throw new IllegalArgumentException("a strip of length " + maxLength);
    }
    for (List<StripForm> forms : copies) {
      if (forms.isEmpty()) {
        throw new IllegalArgumentException("a copy needs a form");
      }
      for (StripForm form : forms) {
        requireShape(form.shape(), shapes.size());
      }
    }
    for (Obstacle obstacle : obstacles) {
      requireShape(obstacle.shape(), shapes.size());
      if (shapes.get(obstacle.shape()).keepsRoom()) {
        throw new IllegalArgumentException("an obstacle keeps no room round it");
      }
    }
  }

  private static void requireShape(int shape, int shapes) {
    if (shape < 0 || shape >= shapes) {
      throw new IllegalArgumentException("shape " + shape + " of " + shapes);
    }
  }

  /** Copies on a strip of any length without obstacles. */
  public static Strip open(List<Shape> shapes, List<List<StripForm>> copies) {
    return new Strip(shapes, copies, List.of(), Double.POSITIVE_INFINITY);
  }

  /**
   * A length that no legal layout can go below: area against reach across, and the longest copy.
   */
  public double leastLength() {
    double area = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double before = 0;
    double beyond = 0;
    double longest = 0;
    for (List<StripForm> forms : copies) {
      double least = Double.POSITIVE_INFINITY;
      double shortest = Double.POSITIVE_INFINITY;
      for (StripForm form : forms) {
        Shape shape = shapes.get(form.shape());
        least = Math.min(least, shape.area());
        shortest = Math.min(shortest, form.left() + form.right());
        low = Math.min(low, form.yLo() + shape.minY());
        high = Math.max(high, form.yHi() + shape.maxY());
        before = Math.max(before, -shape.minX() - form.left());
        beyond = Math.max(beyond, shape.maxX() - form.right());
      }
      area += least;
      longest = Math.max(longest, shortest);
    }
    return Math.max(area / (high - low) - before - beyond, longest);
  }
}
