package ellwand.file.svg;

import ellwand.file.drawn.Arc;
import ellwand.file.drawn.LineBuilder;
import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;

/** Draws the basic shapes of SVG (SVG 2, chapter 10). */
final class Shapes {

  private Shapes() {}

  /** Draws a shape; what is none draws nothing. */
  static void draw(SvgElement shape, LineBuilder pen) {
    switch (shape.name) {
      case "path" -> PathData.draw(shape.get("d", ""), pen);
      case "rect" -> rect(shape, pen);
      case "circle" ->
          ellipse(shape, pen, SvgReader.number(shape, "r"), SvgReader.number(shape, "r"));
      case "ellipse" ->
          ellipse(shape, pen, SvgReader.number(shape, "rx"), SvgReader.number(shape, "ry"));
      case "line" -> {
        pen.move(SvgReader.number(shape, "x1"), SvgReader.number(shape, "y1"));
        pen.line(SvgReader.number(shape, "x2"), SvgReader.number(shape, "y2"));
        pen.end();
      }
      case "polyline" -> points(shape, pen, false);
      case "polygon" -> points(shape, pen, true);
      default -> {
        // Not a shape.
      }
    }
  }

  private static void points(SvgElement shape, LineBuilder pen, boolean closed) {
    List<Double> numbers = Numbers.list(shape.get("points", ""));
    for (int i = 0; i + 1 < numbers.size(); i += 2) {
      if (i == 0) {
        pen.move(numbers.get(0), numbers.get(1));
      } else {
        pen.line(numbers.get(i), numbers.get(i + 1));
      }
    }
    if (closed && numbers.size() >= 6) {
      pen.close();
    }
    pen.end();
  }

  private static void ellipse(SvgElement shape, LineBuilder pen, double rx, double ry) {
    if (rx > 0 && ry > 0) {
      Arc.ellipse(pen, SvgReader.number(shape, "cx"), SvgReader.number(shape, "cy"), rx, ry);
    }
  }

  private static void rect(SvgElement shape, LineBuilder pen) {
    double x = SvgReader.number(shape, "x");
    double y = SvgReader.number(shape, "y");
    double width = SvgReader.number(shape, "width");
    double height = SvgReader.number(shape, "height");
    if (!(width > 0 && height > 0)) {
      return;
    }
    Optional<Double> own = radius(shape, "rx");
    Optional<Double> other = radius(shape, "ry");
    double rx = Math.min(own.or(() -> other).orElse(0.0), width / 2);
    double ry = Math.min(other.or(() -> own).orElse(0.0), height / 2);
    pen.move(x + rx, y);
    corner(pen, x + width - rx, y, x + width, y + ry, rx, ry);
    corner(pen, x + width, y + height - ry, x + width - rx, y + height, rx, ry);
    corner(pen, x + rx, y + height, x, y + height - ry, rx, ry);
    corner(pen, x, y + ry, x + rx, y, rx, ry);
    pen.close();
  }

  private static Optional<Double> radius(SvgElement shape, String attribute) {
    return shape.get(attribute).filter(r -> !r.equals("auto")).map(r -> new Numbers(r).number());
  }

  private static void corner(
      LineBuilder pen, double x1, double y1, double x2, double y2, double rx, double ry) {
    pen.line(x1, y1);
    if (rx > 0 && ry > 0) {
      Arc.draw(pen, new Point(x1, y1), rx, ry, 0, false, true, new Point(x2, y2));
    }
  }
}
