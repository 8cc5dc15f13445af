package ellwand.file.job;

import ellwand.file.source.Spot;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Draft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads lists of points: {@code [x, y]} or {@code {point: name, at: [x, y], curve: [..]}}. */
final class LineReader {

  private LineReader() {}

  static List<Draft.Node> nodes(Spot line) {
    return line.items().stream().map(LineReader::node).toList();
  }

  private static Draft.Node node(Spot spot) {
    if (spot.node().isArray()) {
      return new Draft.Node(Optional.empty(), place(spot), Optional.empty());
    }
    List<Point> controls = spot.get("curve").items().stream().map(LineReader::place).toList();
    return new Draft.Node(
        spot.get("point").text(),
        place(spot.get("at")),
        controls.isEmpty()
            ? Optional.empty()
            : Optional.of(new Draft.Curve(controls.get(0), controls.get(1))));
  }

  /** A place; what cannot be read is reported and taken as 0. */
  private static Point place(Spot spot) {
    List<Double> xy = spot.items().stream().map(s -> s.length().orElse(0.0)).toList();
    return new Point(xy.get(0), xy.get(1));
  }

  /**
   * The line through the points, back to the first if it is closed.
   *
   * @throws ellwand.problem.InputException if two points after one another are in the same place
   */
  static Path path(Spot line, boolean closed) {
    List<Draft.Node> nodes = nodes(line);
    List<Segment> segments = new ArrayList<>();
    for (int i = 1; i < nodes.size() + (closed ? 1 : 0); i++) {
      Draft.Node end = nodes.get(i % nodes.size());
      segments.add(end.from(nodes.get(i - 1).at()));
    }
    return new Path(segments);
  }
}
