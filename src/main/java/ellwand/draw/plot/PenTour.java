package ellwand.draw.plot;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Puts strokes in an order in which the lifted pen does not go far: always on to the nearest, then
 * stretches of the tour are turned round as long as that shortens it (Croes 1958, 'A method for
 * solving traveling-salesman problems', from memory).
 */
public final class PenTour {

  /** Shorter gains than this are none, mm. */
  private static final double GAIN_MM = 1e-6;

  /** Each round looks at every pair; what is left after these is little. */
  private static final int MOST_ROUNDS = 15;

  private PenTour() {}

  /** How far the lifted pen goes, from a place and through all strokes, mm. */
  public static double travelMm(List<Stroke> strokes, Point from) {
    double travel = 0;
    Point at = from;
    for (Stroke stroke : strokes) {
      travel += at.distance(stroke.start());
      at = stroke.end();
    }
    return travel;
  }

  /** The same strokes in another order, some of them drawn from elsewhere; never more travel. */
  public static List<Stroke> shortened(List<Stroke> strokes, Point from) {
    List<Stroke> tour = untangled(nearestNext(strokes, from), from);
    return travelMm(tour, from) < travelMm(strokes, from) ? tour : List.copyOf(strokes);
  }

  private static List<Stroke> nearestNext(List<Stroke> strokes, Point from) {
    List<Stroke> left = new ArrayList<>(strokes);
    List<Stroke> tour = new ArrayList<>();
    Point at = from;
    while (!left.isEmpty()) {
      int nearest = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < left.size(); i++) {
        double away = left.get(i).distance(at);
        if (away < least) {
          least = away;
          nearest = i;
        }
      }
      // The last one takes its place, so that none has to move up.
      Stroke next = left.get(nearest).from(at);
      left.set(nearest, left.get(left.size() - 1));
      left.remove(left.size() - 1);
      tour.add(next);
      at = next.end();
    }
    return tour;
  }

  private static List<Stroke> untangled(List<Stroke> strokes, Point from) {
    Stroke[] tour = strokes.toArray(Stroke[]::new);
    boolean shorter = true;
    for (int round = 0; shorter && round < MOST_ROUNDS; round++) {
      shorter = false;
      for (int i = 0; i < tour.length; i++) {
        for (int k = i; k < tour.length; k++) {
          if (gain(tour, i, k, from) > GAIN_MM) {
            turnRound(tour, i, k);
            shorter = true;
          }
        }
      }
    }
    return Arrays.asList(tour);
  }

  /** How much travel is saved when the stretch from one stroke to another is drawn backwards. */
  private static double gain(Stroke[] tour, int i, int k, Point from) {
    Point before = i == 0 ? from : tour[i - 1].end();
    double saved = way(before, tour[i].start()) - way(before, tour[k].end());
    if (k + 1 < tour.length) {
      Point after = tour[k + 1].start();
      saved += way(tour[k].end(), after) - way(tour[i].start(), after);
    }
    return saved;
  }

  /** The distance, worked out faster than where numbers might be huge. */
  private static double way(Point a, Point b) {
    double dx = a.x() - b.x();
    double dy = a.y() - b.y();
    return Math.sqrt(dx * dx + dy * dy);
  }

  private static void turnRound(Stroke[] tour, int i, int k) {
    Collections.reverse(Arrays.asList(tour).subList(i, k + 1));
    for (int m = i; m <= k; m++) {
      tour[m] = tour[m].reversed();
    }
  }
}
