package ellwand.file.drawn;

import ellwand.geometry.Motion;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.List;
import java.util.Optional;

/**
 * A line of a drawing.
 *
 * @param path without stretches of no length
 * @param closed whether it returns to its start; the path then ends there
 * @param label what it is called
 * @param parts of a line that was put together of others: the name of each segment's part
 */
public record DrawnLine(Path path, boolean closed, Label label, List<Optional<String>> parts) {

  public DrawnLine {
    parts = List.copyOf(parts);
  }

  /** A line in one part. */
  public DrawnLine(Path path, boolean closed, Label label) {
    this(path, closed, label, List.of());
  }

  /** A place in its middle. */
  Point middle() {
    List<Segment> segments = path.segments();
    return segments.size() == 1
        ? segments.get(0).at(0.5)
        : segments.get(segments.size() / 2).start();
  }

  /** In another frame. */
  public DrawnLine moved(Motion motion) {
    return new DrawnLine(path.moved(motion), closed, label, parts);
  }
}
