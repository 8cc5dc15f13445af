package ellwand.file.drawn;

import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Notch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds where short lines across an outline cut into it. */
final class NotchFinder {

  /** Longer lines are no notches unless they are called so, mm. */
  private static final double MOST_MM = 15;

  /** How near to the sewing line a notch without a name must come, mm. */
  private static final double NEAR_MM = 1;

  /** Two this near to each other are one double notch, mm: common practice, 6 to 10 mm apart. */
  private static final double DOUBLE_MM = 12;

  /** Kinds of a mark that say whether it stands for one notch or for two. */
  private static final Set<String> STROKES = Set.of("single", "double");

  /** The kind of a mark that begins on the cutting line and points inward. */
  static final String AIMED = "aimed";

  private final Map<String, EdgeLine> edges;
  private final Optional<Ring> cutting;
  private final boolean exact;

  /** A place along an edge and how far from it the mark lies. */
  private record Place(String edge, double atMm, double offMm) {}

  /**
   * @param edges by name, in drawn direction
   * @param cutting the cutting line, where it is drawn
   * @param exact whether marks begin on the sewing line and say their edge
   */
  NotchFinder(Map<String, EdgeLine> edges, Optional<Ring> cutting, boolean exact) {
    this.edges = edges;
    this.cutting = cutting;
    this.exact = exact;
  }

  /** Whether a line is a notch, by its name or by its looks. */
  boolean isNotch(DrawnLine line) {
    Optional<Role> role = line.label().role();
    if (role.isPresent()) {
      return role.get() == Role.NOTCH;
    }
    return !exact
        && !line.closed()
        && line.path().segments().size() <= 2
        && line.path().length() <= MOST_MM
        && (touchesCutting(line)
            || place(line, Optional.empty()).filter(p -> p.offMm <= NEAR_MM).isPresent());
  }

  private boolean touchesCutting(DrawnLine line) {
    return cutting.isPresent()
        && line.path().flattened(NEAR_MM / 10).stream()
            .anyMatch(
                p ->
                    cutting.get().distance(p) <= NEAR_MM
                        || cutting.get().contains(p)
                            != cutting.get().contains(line.path().start()));
  }

  /** The notches that marks stand for; two side by side are a double one. */
  List<Notch> notches(List<DrawnLine> marks) {
    List<Notch> notches = new ArrayList<>();
    List<Notch> loose = new ArrayList<>();
    Set<Label> told = new HashSet<>();
    for (DrawnLine mark : marks) {
      if (exact && !told.add(mark.label())) {
        // The second stroke of a double notch.
        continue;
      }
      Optional<String> named = exact ? mark.label().name() : Optional.empty();
      boolean said = exact || STROKES.stream().anyMatch(mark.label().kinds()::contains);
      place(mark, named).ifPresent(place -> (said ? notches : loose).add(notch(mark, place)));
    }
    notches.addAll(paired(loose));
    return notches;
  }

  private Notch notch(DrawnLine mark, Place place) {
    boolean twice = mark.label().kinds().contains("double");
    double depth = exact ? depth(mark.path().segments().get(0)) : depth(mark.label().kinds());
    return new Notch(place.edge, place.atMm, twice ? 2 : 1, depth);
  }

  /** As a kind says it, {@code depth-3.5} in mm. */
  private static double depth(List<String> kinds) {
    return kinds.stream()
        .filter(k -> k.matches("depth-\\d{1,3}(\\.\\d+)?"))
        .mapToDouble(k -> Double.parseDouble(k.substring("depth-".length())))
        .map(mm -> Math.rint(mm * 1e4) / 1e4)
        .filter(mm -> mm > 0)
        .findFirst()
        .orElse(Notch.USUAL_DEPTH_MM);
  }

  private static double depth(Segment stroke) {
    return Math.rint(stroke.start().distance(stroke.end()) * 1e9) / 1e9;
  }

  private static List<Notch> paired(List<Notch> single) {
    List<Notch> left = new ArrayList<>(single);
    List<Notch> paired = new ArrayList<>();
    while (!left.isEmpty()) {
      Notch first = left.remove(0);
      Optional<Notch> twin =
          left.stream()
              .filter(n -> n.edge().equals(first.edge()))
              .filter(n -> Math.abs(n.atMm() - first.atMm()) <= DOUBLE_MM)
              .filter(n -> n.strokes() == 1 && first.strokes() == 1)
              .findFirst();
      twin.ifPresent(left::remove);
      paired.add(
          twin.map(t -> new Notch(first.edge(), (first.atMm() + t.atMm()) / 2, 2, first.depthMm()))
              .orElse(first));
    }
    return paired;
  }

  private Optional<Place> place(DrawnLine mark, Optional<String> named) {
    if (mark.label().kinds().contains(AIMED)) {
      return aimed(mark.path().start(), mark.path().end());
    }
    Optional<Place> best = Optional.empty();
    for (Map.Entry<String, EdgeLine> edge : edges.entrySet()) {
      if (named.isEmpty() || named.get().equals(edge.getKey())) {
        Place place = place(edge.getKey(), edge.getValue(), mark);
        if (best.isEmpty() || place.offMm < best.get().offMm) {
          best = Optional.of(place);
        }
      }
    }
    return best;
  }

  /** Where a mark points at, if it points at an edge that is not far; else the nearest place. */
  private Optional<Place> aimed(Point from, Point to) {
    Optional<Place> hit = Optional.empty();
    Optional<Place> nearest = Optional.empty();
    for (Map.Entry<String, EdgeLine> edge : edges.entrySet()) {
      EdgeLine.Nearest near = edge.getValue().nearest(from);
      nearest = nearer(nearest, new Place(edge.getKey(), near.atMm(), near.distanceMm()));
      Optional<Place> best = hit;
      hit =
          edge.getValue()
              .crossing(from, to)
              .map(c -> nearer(best, new Place(edge.getKey(), c.atMm(), c.distanceMm())))
              .orElse(best);
    }
    double far = nearest.map(n -> 1.5 * n.offMm + NEAR_MM).orElse(0.0);
    Optional<Place> otherwise = nearest;
    return hit.filter(h -> h.offMm <= far).or(() -> otherwise);
  }

  private static Optional<Place> nearer(Optional<Place> one, Place other) {
    return one.filter(o -> o.offMm <= other.offMm).or(() -> Optional.of(other));
  }

  private Place place(String name, EdgeLine edge, DrawnLine mark) {
    List<Point> points = exact ? List.of(mark.path().start()) : mark.path().flattened(NEAR_MM / 10);
    EdgeLine.Nearest best = null;
    for (Point point : points) {
      EdgeLine.Nearest nearest = edge.nearest(point);
      if (best == null || nearest.distanceMm() < best.distanceMm()) {
        best = nearest;
      }
    }
    for (int i = 1; i < points.size(); i++) {
      Optional<EdgeLine.Nearest> crossed = edge.crossing(points.get(i - 1), points.get(i));
      if (crossed.isPresent()) {
        return new Place(name, crossed.get().atMm(), 0);
      }
    }
    return new Place(name, best.atMm(), best.distanceMm());
  }
}
