package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Cuts an outline into edges at its corners, and where straight runs begin and end. */
final class Corners {

  /** As where an edge without a name ends; see the pattern's outlines. */
  private static final double TURN_DEGREES = 5;

  /** Shorter straight stretches between curves are part of the curve, mm. */
  private static final double RUN_MM = 10;

  private final List<Segment> segments;
  private final List<Optional<String>> parts;
  private final String[] names;

  /**
   * @param parts see {@link DrawnLine}
   * @param names of the points at which segments start, null where they have none; every corner
   *     gets one
   */
  Corners(List<Segment> segments, List<Optional<String>> parts, String[] names) {
    this.segments = segments;
    this.parts = parts;
    this.names = names;
  }

  /** The edges, from the first corner on; the whole way round where there is none. */
  List<Stretch> stretches() {
    List<Integer> at = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      if (isCorner(i)) {
        at.add(i);
      }
    }
    name(at.isEmpty() ? List.of(0) : at);
    if (at.isEmpty()) {
      String name = part(0).map(SafeName::of).orElse("outline");
      return List.of(new Stretch(name, 0, segments.size(), new Path(segments)));
    }
    List<Stretch> stretches = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (int k = 0; k < at.size(); k++) {
      int from = at.get(k);
      int next = at.get((k + 1) % at.size());
      int count = at.size() == 1 ? segments.size() : Math.floorMod(next - from, segments.size());
      List<Segment> line = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        line.add(segment(from + i));
      }
      String between = names[from] + " to " + names[next];
      String name = part(from).map(SafeName::of).filter(taken::add).orElse(between);
      stretches.add(new Stretch(name, from, count, new Path(line)));
    }
    return stretches;
  }

  /** Letters in turn for corners without a name. */
  private void name(List<Integer> corners) {
    Set<String> taken = new HashSet<>(Arrays.asList(names));
    int n = 0;
    for (int i : corners) {
      while (names[i] == null) {
        String letter = letter(n++);
        names[i] = taken.add(letter) ? letter : null;
      }
    }
  }

  /** A to Z, then A2. */
  private static String letter(int n) {
    String letter = String.valueOf((char) ('A' + n % 26));
    return n < 26 ? letter : letter + (n / 26 + 1);
  }

  private Segment segment(int i) {
    return segments.get(Math.floorMod(i, segments.size()));
  }

  private Optional<String> part(int i) {
    return parts.isEmpty() ? Optional.empty() : parts.get(Math.floorMod(i, parts.size()));
  }

  /** Whether an edge starts at the start of segment i. */
  private boolean isCorner(int i) {
    if (!part(i - 1).equals(part(i))) {
      return true;
    }
    if (part(i).isPresent()) {
      return false;
    }
    Point in = segment(i - 1).direction(1);
    Point out = segment(i).direction(0);
    double turn = Math.abs(Math.toDegrees(Math.atan2(in.cross(out), in.dot(out))));
    return turn > TURN_DEGREES || isRun(segment(i - 1)) != isRun(segment(i)) && curved(i);
  }

  private boolean curved(int i) {
    return segment(i) instanceof Segment.Cubic || segment(i - 1) instanceof Segment.Cubic;
  }

  private static boolean isRun(Segment segment) {
    return segment instanceof Segment.Line && segment.start().distance(segment.end()) >= RUN_MM;
  }
}
