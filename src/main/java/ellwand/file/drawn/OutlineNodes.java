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

  private final List<Segment> segments;
  private final String[] names;
  private final boolean exact;
  private final List<String> said;

  /**
   * @param stretches its edges, whose ends are given letters
   * @param placing from the page to the piece's own frame
   * @param exact whether all names are marked in the drawing, and nothing is to be rounded
   * @param said takes names that belong to no point
   */
  OutlineNodes(
      Parts parts, List<Stretch> stretches, Motion placing, boolean exact, List<String> said) {
    this.segments = parts.outline().path().segments().stream().map(s -> s.moved(placing)).toList();
    this.names = new String[segments.size()];
    this.exact = exact;
    this.said = said;
    for (int k = 0; k < stretches.size(); k++) {
      names[stretches.get(k).from()] = Corners.letter(k);
    }
    for (DrawnLine mark : parts.inner(Role.POINT)) {
      mark.label().name().ifPresent(n -> name(n, placing.apply(mark.path().start())));
    }
  }

  private void name(String name, Point at) {
    int nearest = 0;
    for (int i = 1; i < segments.size(); i++) {
      if (segments.get(i).start().distance(at) < segments.get(nearest).start().distance(at)) {
        nearest = i;
      }
    }
    if (segments.get(nearest).start().distance(at) > POINT_MM) {
      said.add("point " + name + " lies on no corner of the outline and is left out");
    } else if (names[nearest] == null) {
      names[nearest] = name;
    }
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
