package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.List;

/** Compares outlines with what they should be. */
final class Same {

  private Same() {}

  /** The outline has exactly these points, in this order, from whichever it starts. */
  static void points(Outline outline, double... xy) {
    List<Point> wanted = Drawn.points(xy);
    List<Point> found = outline.points();
    assertEquals(wanted.size(), found.size(), () -> "points of " + found);
    assertTrue(
        java.util.stream.IntStream.range(0, found.size())
            .anyMatch(
                shift ->
                    java.util.stream.IntStream.range(0, found.size())
                        .allMatch(
                            i ->
                                wanted.get(i).distance(found.get((i + shift) % found.size()))
                                    < 1e-6)),
        () -> "wanted " + wanted + " but found " + found);
  }
}
