package ellwand.file.svg;

import ellwand.file.drawn.Arc;
import ellwand.file.drawn.LineBuilder;
import ellwand.geometry.Point;

/**
 * Draws the {@code d} of a path (SVG 2, chapter 9). Batik's parser hands numbers on as floats,
 * which would bring a metre back a tenth of a µm off, so this one is our own.
 */
final class PathData {

  private final Numbers in;
  private final LineBuilder pen;
  private Point start = new Point(0, 0);
  private Point at = start;
  private Point lastControl = start;
  private char before = 'M';

  private PathData(String data, LineBuilder pen) {
    this.in = new Numbers(data);
    this.pen = pen;
  }

  /**
   * Draws all of it.
   *
   * @throws ellwand.problem.InputException if it cannot be read to its end
   */
  static void draw(String data, LineBuilder pen) {
    new PathData(data, pen).draw();
    pen.end();
  }

  private void draw() {
    if (in.ended()) {
      return;
    }
    char command = in.letter();
    if (Character.toUpperCase(command) != 'M') {
      throw in.unreadable();
    }
    while (true) {
      step(command);
      before = Character.toUpperCase(command);
      if (in.ended()) {
        return;
      }
      if (in.atNumber() && before != 'Z') {
        command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
      } else {
        command = in.letter();
      }
    }
  }

  private void step(char command) {
    boolean relative = Character.isLowerCase(command);
    Point base = relative ? at : new Point(0, 0);
    switch (Character.toUpperCase(command)) {
      case 'M' -> {
        start = point(base);
        pen.move(start.x(), start.y());
        at = start;
      }
      case 'Z' -> {
        pen.close();
        at = start;
      }
      case 'L' -> line(point(base));
      case 'H' -> line(new Point(base.x() + in.number(), at.y()));
      case 'V' -> line(new Point(at.x(), base.y() + in.number()));
      case 'C' -> curve(point(base), point(base), point(base));
      case 'S' -> curve(mirrored('C', 'S'), point(base), point(base));
      case 'Q' -> quadratic(point(base), point(base));
      case 'T' -> quadratic(mirrored('Q', 'T'), point(base));
      case 'A' -> {
        double rx = in.number();
        double ry = in.number();
        double turn = in.number();
        boolean large = in.flag();
        boolean sweep = in.flag();
        Point to = point(base);
        Arc.draw(pen, at, rx, ry, turn, large, sweep, to);
        at = to;
      }
      default -> throw in.unreadable();
    }
  }

  private Point point(Point base) {
    double x = in.number();
    return new Point(base.x() + x, base.y() + in.number());
  }

  private void line(Point to) {
    pen.line(to.x(), to.y());
    at = to;
  }

  private void curve(Point first, Point second, Point to) {
    pen.curve(first.x(), first.y(), second.x(), second.y(), to.x(), to.y());
    lastControl = second;
    at = to;
  }

  private void quadratic(Point control, Point to) {
    Point first = at.towards(control, 2.0 / 3);
    Point second = to.towards(control, 2.0 / 3);
    pen.curve(first.x(), first.y(), second.x(), second.y(), to.x(), to.y());
    lastControl = control;
    at = to;
  }

  /** The control point before, mirrored, if the command before was of the same kind. */
  private Point mirrored(char one, char other) {
    return before == one || before == other ? at.times(2).minus(lastControl) : at;
  }
}
