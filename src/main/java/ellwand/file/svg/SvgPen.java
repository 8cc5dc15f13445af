package ellwand.file.svg;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Writes lines of a piece as path data of a page on which its top is up, with more digits than any
 * length in a job has.
 *
 * @param place of the piece's origin on the page, y down
 */
record SvgPen(Point place) {

  private static final int DECIMALS = 11;

  double x(Point p) {
    return place.x() - p.y();
  }

  double y(Point p) {
    return place.y() - p.x();
  }

  String line(Point from, Point to) {
    return "M" + at(from) + "L" + at(to);
  }

  /** The first stroke begins at the place. */
  String cross(Point at) {
    return line(at, at.plus(new Point(3, 0))) + line(at, at.plus(new Point(0, 3)));
  }

  String closed(List<Point> points) {
    StringBuilder data = new StringBuilder("M" + at(points.get(0)));
    points.stream().skip(1).forEach(p -> data.append('L').append(at(p)));
    return data + "Z";
  }

  String closed(Path path) {
    return open(path) + "Z";
  }

  String open(Path path) {
    StringBuilder data = new StringBuilder("M" + at(path.start()));
    for (Segment segment : path.segments()) {
      if (segment instanceof Segment.Cubic c) {
        data.append('C').append(at(c.control1())).append(' ').append(at(c.control2())).append(' ');
      } else {
        data.append('L');
      }
      data.append(at(segment.end()));
    }
    return data.toString();
  }

  private String at(Point p) {
    return number(x(p)) + "," + number(y(p));
  }

  static String number(double mm) {
    BigDecimal plain =
        BigDecimal.valueOf(mm).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return plain.signum() == 0 ? "0" : plain.toPlainString();
  }
}
