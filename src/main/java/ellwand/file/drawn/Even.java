package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** Rounds to a ten-thousandth of a mm, which no drawing is true to. */
final class Even {

  private static final double STEPS = 1e4;

  private Even() {}

  static Point of(Point p) {
    return new Point(Math.rint(p.x() * STEPS) / STEPS, Math.rint(p.y() * STEPS) / STEPS);
  }

  static Path of(Path path) {
    List<Segment> segments = new ArrayList<>();
    for (Segment s : path.segments()) {
      segments.add(
          s instanceof Segment.Cubic c
              ? new Segment.Cubic(of(c.start()), of(c.control1()), of(c.control2()), of(c.end()))
              : new Segment.Line(of(s.start()), of(s.end())));
    }
    return new Path(segments);
  }
}
