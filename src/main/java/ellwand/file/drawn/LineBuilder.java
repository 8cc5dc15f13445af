package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;

/** Puts lines together from the moves of a pen, in a frame of its own. */
public final class LineBuilder {

  /** Points nearer than this are one, mm; as in the pieces that are made of them. */
  private static final double SAME_MM = 1e-6;

  private final List<DrawnLine> lines;
  private final Affine frame;
  private final Label label;
  private List<Segment> segments = new ArrayList<>();
  private Point start = new Point(0, 0);
  private Point at = start;

  /**
   * @param lines that finished ones are put to
   * @param frame from the pen's frame to the page
   */
  public LineBuilder(List<DrawnLine> lines, Affine frame, Label label) {
    this.lines = lines;
    this.frame = frame;
    this.label = label;
  }

  /** How many mm one unit of the pen's frame is at most. */
  public double stretch() {
    return frame.stretch();
  }

  public void move(double x, double y) {
    end(false);
    start = placed(x, y);
    at = start;
  }

  public void line(double x, double y) {
    Point to = placed(x, y);
    if (at.distance(to) >= SAME_MM) {
      add(new Segment.Line(at, to));
    }
  }

  public void curve(double x1, double y1, double x2, double y2, double x, double y) {
    Point first = placed(x1, y1);
    Point second = placed(x2, y2);
    Point to = placed(x, y);
    Segment.Cubic curve = new Segment.Cubic(at, first, second, to);
    if (at.distance(to) >= SAME_MM) {
      add(flat(curve) ? new Segment.Line(at, to) : curve);
    } else if (at.distance(first) + at.distance(second) >= SAME_MM) {
      add(curve.between(0, 0.5));
      add(curve.between(0.5, 1));
    }
  }

  /** Whether a curve is a straight line run through evenly enough to be drawn as one. */
  private static boolean flat(Segment.Cubic curve) {
    return curve.control1().distance(curve.start()) < SAME_MM
            && curve.control2().distance(curve.end()) < SAME_MM
        || curve.control1().distance(curve.end()) < SAME_MM
            && curve.control2().distance(curve.start()) < SAME_MM;
  }

  private void add(Segment segment) {
    segments.add(segment);
    at = segment.end();
  }

  /** Back to where the line began, where the next one begins unless the pen moves. */
  public void close() {
    if (at.distance(start) >= SAME_MM) {
      add(new Segment.Line(at, start));
    }
    end(true);
    at = start;
  }

  /** No more will come. */
  public void end() {
    end(false);
  }

  private void end(boolean closed) {
    if (!segments.isEmpty()) {
      boolean back = closed || at.equals(start) && segments.size() > 1;
      if (back && !at.equals(start)) {
        segments.set(segments.size() - 1, Closing.endingAt(start, last()));
      }
      lines.add(new DrawnLine(new Path(segments), back, label));
      segments = new ArrayList<>();
    }
  }

  private Segment last() {
    return segments.get(segments.size() - 1);
  }

  private Point placed(double x, double y) {
    Point p = frame.apply(new Point(x, y));
    if (!(Math.abs(p.x()) <= Drawing.FARTHEST_MM && Math.abs(p.y()) <= Drawing.FARTHEST_MM)) {
      throw InputException.of(
          "a point of it lies more than 100 m away", "See that the numbers and units are right");
    }
    return p;
  }
}
