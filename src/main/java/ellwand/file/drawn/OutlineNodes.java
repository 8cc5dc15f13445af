package ellwand.file.drawn;

import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Draft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The points of an outline in the piece's own frame, its corners named. */
final class OutlineNodes {

  /** How far from its corner a point's mark may lie, mm. */
  private static final double POINT_MM = 0.5;

  /** The same for a turn point, which a program has put there. */
  private static final double TURN_MM = 0.005;

  private final List<Segment> segments;
  private final String[] names;
  private final boolean exact;

  /**
   * @param names of the points at which segments start, null where they have none
   * @param placing from the page to the piece's own frame
   * @param exact whether nothing is to be rounded
   */
  OutlineNodes(Parts parts, String[] names, Motion placing, boolean exact) {
    this.segments = parts.outline().path().segments().stream().map(s -> s.moved(placing)).toList();
    this.names = names;
    this.exact = exact;
  }

  /**
   * The names of points that are marked, by the segment that starts there.
   *
   * @param said takes names that belong to no point
   */
  static String[] marked(Parts parts, List<String> said) {
    List<Segment> segments = parts.outline().path().segments();
    String[] names = new String[segments.size()];
    for (DrawnLine mark : parts.inner(Role.POINT)) {
      mark.label()
          .name()
          .ifPresent(
              name -> {
                Optional<Integer> at = at(segments, mark.path().start(), POINT_MM);
                if (at.isEmpty()) {
                  said.add("point " + name + " lies on no corner of the outline and is left out");
                } else if (names[at.get()] == null) {
                  names[at.get()] = name;
                }
              });
    }
    return names;
  }

  /** The numbers of the points that are marked as those that every size has. */
  static List<Integer> turns(Parts parts) {
    List<Segment> segments = parts.outline().path().segments();
    return parts.inner(Role.TURN).stream()
        .flatMap(mark -> at(segments, mark.path().start(), TURN_MM).stream())
        .distinct()
        .sorted()
        .toList();
  }

  private static Optional<Integer> at(List<Segment> segments, Point at, double mostMm) {
    int nearest = 0;
    for (int i = 1; i < segments.size(); i++) {
      if (segments.get(i).start().distance(at) < segments.get(nearest).start().distance(at)) {
        nearest = i;
      }
    }
    return segments.get(nearest).start().distance(at) <= mostMm
        ? Optional.of(nearest)
        : Optional.empty();
  }

  List<Draft.Node> nodes() {
    List<Draft.Node> nodes = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      Segment before = segments.get(Math.floorMod(i - 1, segments.size()));
      Optional<Draft.Curve> curve =
          before instanceof Segment.Cubic c
              ? Optional.of(new Draft.Curve(even(c.control1()), even(c.control2())))
              : Optional.empty();
      Optional<String> name = Optional.ofNullable(names[i]);
      nodes.add(new Draft.Node(name, even(segments.get(i).start()), curve));
    }
    return nodes;
  }

  private Point even(Point p) {
    return exact ? p : Even.of(p);
  }
}
