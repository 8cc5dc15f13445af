package ellwand.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Lines and curves joined end to start, at least one. */
public record Path(List<Segment> segments) {

  /** What ends count as joined, mm. */
  private static final double JOINED_MM = 1e-6;

  /** Chord tolerance used to measure lengths, mm; the error of a length is far below it. */
  static final double MEASURING_MM = 1e-3;

  /** What is shorter is no line, mm. */
  private static final double NOTHING_MM = 1e-9;

  /** In how many stretches of a curve a crossing is looked for. */
  private static final int CROSSING_STEPS = 32;

  /** Enough for the precision of doubles. */
  private static final int HALVINGS = 50;

  public Path {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a path needs a line or a curve");
    }
    for (int i = 1; i < segments.size(); i++) {
      if (segments.get(i - 1).end().distance(segments.get(i).start()) > JOINED_MM) {
        throw new IllegalArgumentException("a path must not have a break");
      }
    }
  }

  public static Path line(Point a, Point b) {
    return new Path(List.of(new Segment.Line(a, b)));
  }

  public Point start() {
    return segments.get(0).start();
  }

  public Point end() {
    return segments.get(segments.size() - 1).end();
  }

  /** Direction of travel at the start, length 1. */
  public Point startDirection() {
    return segments.get(0).direction(0);
  }

  /** Direction of travel at the end, length 1. */
  public Point endDirection() {
    return segments.get(segments.size() - 1).direction(1);
  }

  /** Whether no point of it is farther than {@code toleranceMm} from the line between its ends. */
  public boolean straight(double toleranceMm) {
    Point along = end().minus(start());
    if (along.norm() == 0) {
      return false;
    }
    Point unit = along.unit();
    return flattened(toleranceMm / 10).stream()
        .allMatch(p -> Math.abs(unit.cross(p.minus(start()))) <= toleranceMm);
  }

  public Path reversed() {
    List<Segment> back = new ArrayList<>();
    for (Segment s : segments) {
      back.add(0, s.reversed());
    }
    return new Path(back);
  }

  public Path moved(Motion motion) {
    return mapped(motion::apply);
  }

  /** Where a motion, a mirroring or another map that keeps lines straight takes it. */
  public Path mapped(UnaryOperator<Point> map) {
    return new Path(segments.stream().map(s -> s.mapped(map)).toList());
  }

  /** This and, from its end, another. */
  public Path then(Path next) {
    List<Segment> both = new ArrayList<>(segments);
    both.addAll(next.segments);
    return new Path(both);
  }

  /**
   * The stretch between two distances from the start; beyond either end the end is taken.
   *
   * @param fromMm below {@code toMm}
   */
  public Path between(double fromMm, double toMm) {
    return PathPart.between(this, fromMm, toMm);
  }

  /** The place so many mm along the line from its start; beyond either end the end is taken. */
  public Point at(double distanceMm) {
    return PathPart.at(this, distanceMm);
  }

  /** Whether it passes a point no farther off than so many mm. */
  public boolean passes(Point point, double mm) {
    return PathPart.mayPass(this, point, mm) && at(nearest(point)).distance(point) <= mm;
  }

  /** How far along the line its place nearest to a point is, mm from the start. */
  public double nearest(Point point) {
    return PathPart.nearest(this, point);
  }

  /**
   * Points from start to end, both included, none farther than the tolerance from the true line.
   */
  public List<Point> flattened(double toleranceMm) {
    List<Point> points = new ArrayList<>();
    points.add(start());
    segments.forEach(s -> s.flattenInto(points, toleranceMm));
    return Collections.unmodifiableList(points);
  }

  /** Measured along the line, mm. */
  public double length() {
    return length(flattened(MEASURING_MM));
  }

  static double length(List<Point> line) {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += line.get(i - 1).distance(line.get(i));
    }
    return sum;
  }

  /**
   * The place found by measuring along the line from its start.
   *
   * @param distanceMm 0 to {@link #length}; beyond either end the end is taken
   */
  public Tangent tangent(double distanceMm) {
    double left = distanceMm;
    for (Segment segment : segments) {
      List<Point> line = new ArrayList<>();
      line.add(segment.start());
      segment.flattenInto(line, MEASURING_MM);
      double length = length(line);
      if (left <= length || segment == segments.get(segments.size() - 1)) {
        return within(line, Math.max(0, Math.min(left, length)));
      }
      left -= length;
    }
    throw new AssertionError("a path has a last segment");
  }

  private static Tangent within(List<Point> line, double distance) {
    double left = distance;
    for (int i = 1; i < line.size(); i++) {
      Point a = line.get(i - 1);
      Point b = line.get(i);
      double step = a.distance(b);
      if (step > 0 && (left <= step || i == line.size() - 1)) {
        return new Tangent(a.towards(b, Math.min(1, left / step)), b.minus(a).unit());
      }
      left -= step;
    }
    throw new IllegalArgumentException("a line without length has no direction");
  }

  /** A place on a line and the direction of travel there. */
  public record Tangent(Point at, Point direction) {}

  /**
   * A place on a path.
   *
   * @param segment its number, from 0
   * @param t its parameter, 0 to 1
   */
  public record Place(int segment, double t) implements Comparable<Place> {

    @Override
    public int compareTo(Place other) {
      return Double.compare(segment + t, other.segment + other.t);
    }
  }

  public Point at(Place place) {
    return segments.get(place.segment).at(place.t);
  }

  /** Where it starts. */
  public Place first() {
    return new Place(0, 0);
  }

  /** Where it ends. */
  public Place last() {
    return new Place(segments.size() - 1, 1);
  }

  /** Where one of its lines or curves starts, or the last ends, within a millionth of a mm. */
  public Optional<Place> joint(Point at) {
    for (int i = 0; i < segments.size(); i++) {
      if (segments.get(i).start().distance(at) <= JOINED_MM) {
        return Optional.of(new Place(i, 0));
      }
    }
    return end().distance(at) <= JOINED_MM ? Optional.of(last()) : Optional.empty();
  }

  /** What lies between two places, the first before the second; empty where they are the same. */
  public List<Segment> between(Place from, Place to) {
    List<Segment> part = new ArrayList<>();
    for (int i = from.segment; i <= to.segment; i++) {
      double start = i == from.segment ? from.t : 0;
      double end = i == to.segment ? to.t : 1;
      Segment whole = segments.get(i);
      if (start < end && whole.at(start).distance(whole.at(end)) > NOTHING_MM) {
        part.add(start == 0 && end == 1 ? whole : whole.between(start, end));
      }
    }
    return part;
  }

  /** Every place where it passes from one side of the line through two places to the other. */
  public List<Place> crossings(Point a, Point b) {
    Point along = b.minus(a).unit();
    List<Place> found = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      int steps = segment instanceof Segment.Line ? 1 : CROSSING_STEPS;
      double before = along.cross(segment.start().minus(a));
      for (int k = 1; k <= steps; k++) {
        double after = along.cross(segment.at((double) k / steps).minus(a));
        if (before < 0 != after < 0) {
          found.add(
              new Place(i, crossing(segment, a, along, (k - 1.0) / steps, (double) k / steps)));
        }
        before = after;
      }
    }
    return found;
  }

  private static double crossing(Segment segment, Point a, Point along, double from, double to) {
    boolean right = along.cross(segment.at(from).minus(a)) < 0;
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (along.cross(segment.at(middle).minus(a)) < 0 == right) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
