package ellwand.file.pdf;

import ellwand.file.drawn.DrawnLine;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tells lines of one shape by some of their points, also where numbers in a file differ by a hair.
 *
 * @param <T> what is kept of a line
 */
final class SamePlaces<T> {

  /** Points of a line that are held against those of another. */
  private static final int SAMPLES = 8;

  private record Cell(Object shape, long x, long y) {}

  private record Known<T>(List<Point> samples, T what) {}

  private final Map<Cell, List<Known<T>>> cells = new HashMap<>();
  private final double withinMm;

  /**
   * @param withinMm how far points of the same line may lie apart
   */
  SamePlaces(double withinMm) {
    this.withinMm = withinMm;
  }

  /** Some points of a line, seen from a place. */
  static List<Point> samples(DrawnLine line, Point from) {
    List<Segment> segments = line.path().segments();
    List<Point> samples = new ArrayList<>();
    for (int i = 0; i < segments.size(); i += Math.max(1, segments.size() / SAMPLES)) {
      samples.add(segments.get(i).at(0.5).minus(from));
    }
    return samples;
  }

  /**
   * What was kept of a line with such points, if there was one.
   *
   * @param shape what lines of one shape have alike, such as how many segments
   */
  Optional<T> find(Object shape, List<Point> samples) {
    for (int right = -1; right <= 1; right++) {
      for (int up = -1; up <= 1; up++) {
        for (Known<T> known :
            cells.getOrDefault(cell(shape, samples.get(0), right, up), List.of())) {
          if (same(known.samples, samples)) {
            return Optional.of(known.what);
          }
        }
      }
    }
    return Optional.empty();
  }

  void put(Object shape, List<Point> samples, T what) {
    cells
        .computeIfAbsent(cell(shape, samples.get(0), 0, 0), c -> new ArrayList<>())
        .add(new Known<>(samples, what));
  }

  private boolean same(List<Point> one, List<Point> other) {
    for (int i = 0; i < one.size(); i++) {
      if (one.get(i).distance(other.get(i)) > withinMm) {
        return false;
      }
    }
    return true;
  }

  private Cell cell(Object shape, Point at, int right, int up) {
    return new Cell(
        shape,
        (long) Math.floor(at.x() / withinMm) + right,
        (long) Math.floor(at.y() / withinMm) + up);
  }
}
