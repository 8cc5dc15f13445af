package ellwand.nest.wish;

import ellwand.cloth.Wish;
import ellwand.lay.Marker;
import ellwand.nest.stretch.Found;
import ellwand.rule.Check;
import ellwand.rule.Rules;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Keeps the marker that serves the cutter's wishes best for what it costs. */
public final class Pleasing {

  /** All that wishes may cost must bring them nearer by this share at least, added up; ours. */
  private static final double WORTH = 0.2;

  private static final double LEAST_GAIN = 1e-4;

  private final List<Wish> asked;
  private final double shortestMm;
  private final double longestMm;
  private final Function<Found, Marker> maker;
  private final Map<Wish, Double> before = new EnumMap<>(Wish.class);
  private Found best;
  private Marker bestMarker;
  private double bestScore;

  /**
   * @param shortest what would do without wishes
   * @param longestMm how much cloth a marker may take
   * @param maker makes markers
   */
  public Pleasing(
      List<Wish> asked, Found shortest, double longestMm, Function<Found, Marker> maker) {
    this.asked = asked;
    this.shortestMm = shortest.clothMm();
    this.longestMm = longestMm;
    this.maker = maker;
    bestMarker = maker.apply(shortest);
    asked.forEach(wish -> before.put(wish, Rules.amount(wish, bestMarker)));
    best = shortest;
    bestScore = asked.size();
    offer(shortest);
  }

  Found best() {
    return best;
  }

  public Marker marker() {
    return bestMarker;
  }

  /** Whether a marker may take so much cloth. */
  boolean affords(double clothMm) {
    return clothMm <= longestMm;
  }

  /**
   * Takes a marker if it is legal, not too long, brings no wish farther off and all together nearer
   * than the best so far.
   *
   * @return whether it was taken
   */
  public boolean offer(Found found) {
    if (!affords(found.clothMm())) {
      return false;
    }
    Marker marker = maker.apply(found);
    if (asked.contains(Wish.GARMENTS_TOGETHER)
        && (marker.lay().cloth().repeat().isEmpty() || marker.lay().matches().isEmpty())) {
      marker = Bundling.of(marker);
    }
    double score = score(marker, found.clothMm());
    if (score >= bestScore - LEAST_GAIN || !Check.of(marker).isEmpty()) {
      return false;
    }
    best = found;
    bestMarker = marker;
    bestScore = score;
    return true;
  }

  /** What is left of the wishes, each 1 without any effort, and what is spent; less is better. */
  private double score(Marker marker, double clothMm) {
    List<Double> left = new ArrayList<>();
    for (Wish wish : asked) {
      double now = Rules.amount(wish, marker);
      double then = before.get(wish);
      if (now > then * (1 + 1e-9)) {
        return Double.POSITIVE_INFINITY;
      }
      left.add(then == 0 ? 0 : now / then);
    }
    double spent =
        longestMm > shortestMm ? Math.max(0, clothMm - shortestMm) / (longestMm - shortestMm) : 0;
    return left.stream().mapToDouble(d -> d).sum() + WORTH * spent;
  }
}
