package ellwand.trace;

import ellwand.geometry.Point;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;

/**
 * A picture of the plane, and how its pixels lie on it.
 *
 * @param file as the user named it
 * @param picture as decoded, upright
 */
public record View(String file, BufferedImage picture, Mapping mapping) {

  /** Whether a place on the plane, mm, is in the picture. */
  public boolean shows(Point mm) {
    Point pixel = mapping.pixelAt(mm);
    return pixel.x() >= 0
        && pixel.y() >= 0
        && pixel.x() <= picture.getWidth() - 1
        && pixel.y() <= picture.getHeight() - 1;
  }

  /** Of the picture, on the plane, one after another. */
  public List<Point> corners() {
    double right = picture.getWidth() - 1;
    double below = picture.getHeight() - 1;
    return Stream.of(
            new Point(0, 0), new Point(0, below), new Point(right, below), new Point(right, 0))
        .map(mapping::mmAt)
        .toList();
  }

  /** How many pixels a millimetre has at a place on the plane, in its worst direction. */
  public double pixelsPerMm(Point mm) {
    return stretches(mm)[0];
  }

  /** How far the line of sight to a place on the plane is from straight down, degrees. */
  double slantDegrees(Point mm) {
    double[] stretches = stretches(mm);
    return Math.toDegrees(Math.acos(stretches[0] / stretches[1]));
  }

  /** Pixels to the mm in the direction that has fewest, then in the one that has most. */
  private double[] stretches(Point mm) {
    Point at = mapping.pixelAt(mm);
    Point right = mapping.pixelAt(mm.plus(new Point(1, 0))).minus(at);
    Point up = mapping.pixelAt(mm.plus(new Point(0, 1))).minus(at);
    double squares = right.dot(right) + up.dot(up);
    double area = Math.abs(right.cross(up));
    double spread = Math.sqrt(Math.max(0, squares * squares - 4 * area * area));
    return new double[] {
      Math.sqrt(Math.max(0, (squares - spread) / 2)), Math.sqrt((squares + spread) / 2)
    };
  }
}
