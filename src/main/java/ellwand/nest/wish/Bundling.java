package ellwand.nest.wish;

import ellwand.cloth.Direction;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Deals copies that are alike out among the garments anew, so that the pieces of each garment lie
 * near each other. No copy moves, so it costs nothing.
 */
final class Bundling {

  private static final double LEAST_GAIN_MM2 = 1e-6;

  private final List<Point> middles;
  private final int[] garments;
  private final Map<Integer, Sum> sums = new HashMap<>();
  private final Map<String, Boolean> handed = new HashMap<>();
  private final Collection<List<Integer>> alike;

  /** Copies that may change garments with each other. */
  private record Alike(
      String piece, String size, Form form, Optional<Boolean> flipped, Optional<Heading> heading) {}

  /** What the middles of a garment's pieces add up to. */
  private static final class Sum {
    private int count;
    private double x;
    private double y;

    /** What is gained for the sum of squares when its mean moves away from nought. */
    private double squareOfMean(double moreX, double moreY) {
      return ((x + moreX) * (x + moreX) + (y + moreY) * (y + moreY)) / count;
    }

    private void add(double moreX, double moreY) {
      x += moreX;
      y += moreY;
    }
  }

  private Bundling(Marker marker, boolean sorted) {
    List<Copy> copies = marker.copies();
    middles = copies.stream().map(c -> c.outline().box().centre()).toList();
    garments = copies.stream().mapToInt(Copy::garment).toArray();
    Map<String, CutPiece> cuts = new HashMap<>();
    marker.lay().wanted().stream()
        .map(Wanted::cut)
        .forEach(cut -> cuts.putIfAbsent(cut.name(), cut));
    Direction direction = marker.lay().cloth().direction();
    Map<Alike, List<Integer>> kinds = new LinkedHashMap<>();
    for (int i = 0; i < garments.length; i++) {
      // What two garments share stays theirs.
      if (copies.get(i).secondGarment().isEmpty()) {
        kinds.computeIfAbsent(kind(copies.get(i), cuts, direction), k -> new ArrayList<>()).add(i);
      }
    }
    alike = kinds.values();
    if (sorted) {
      alike.forEach(this::sort);
    }
    for (int i = 0; i < garments.length; i++) {
      count(garments[i], middles.get(i));
      Point middle = middles.get(i);
      copies.get(i).secondGarment().ifPresent(second -> count(second, middle));
    }
  }

  private void count(int garment, Point middle) {
    Sum sum = sums.computeIfAbsent(garment, g -> new Sum());
    sum.count++;
    sum.add(middle.x(), middle.y());
  }

  private Alike kind(Copy copy, Map<String, CutPiece> cuts, Direction direction) {
    boolean handed =
        copy.form() == Form.WHOLE
            && this.handed.computeIfAbsent(copy.piece(), p -> !cuts.get(p).symmetric());
    return new Alike(
        copy.piece(),
        copy.size(),
        copy.form(),
        handed ? Optional.of(copy.motion().flipped()) : Optional.empty(),
        direction == Direction.ONE_WAY_PER_GARMENT
            ? Optional.of(copy.heading())
            : Optional.empty());
  }

  /** The same marker with its pieces dealt out so; itself where that gains nothing. */
  static Marker of(Marker marker) {
    Bundling kept = new Bundling(marker, false).improved();
    Bundling sorted = new Bundling(marker, true).improved();
    int[] garments = (sorted.score() > kept.score() ? sorted : kept).garments;
    List<Copy> copies = new ArrayList<>();
    for (int i = 0; i < garments.length; i++) {
      Copy copy = marker.copies().get(i);
      copies.add(copy.garment() == garments[i] ? copy : copy.forGarment(garments[i]));
    }
    return marker.with(copies);
  }

  /** The first copies along the cloth go to the first garment. */
  private void sort(List<Integer> copies) {
    List<Integer> dealt = copies.stream().map(i -> garments[i]).sorted().toList();
    List<Integer> along =
        copies.stream().sorted(Comparator.comparingDouble(i -> middles.get(i).x())).toList();
    for (int k = 0; k < along.size(); k++) {
      garments[along.get(k)] = dealt.get(k);
    }
  }

  /** Swaps two at a time while that brings garments nearer together. */
  private Bundling improved() {
    boolean better = true;
    while (better) {
      better = false;
      for (List<Integer> copies : alike) {
        for (int i = 0; i < copies.size(); i++) {
          for (int k = i + 1; k < copies.size(); k++) {
            better |= swapped(copies.get(i), copies.get(k));
          }
        }
      }
    }
    return this;
  }

  /** The sum of squared distances is what it is at first less this, so more is better. */
  private double score() {
    return sums.values().stream().mapToDouble(s -> s.squareOfMean(0, 0)).sum();
  }

  private boolean swapped(int a, int b) {
    if (garments[a] == garments[b]) {
      return false;
    }
    Sum one = sums.get(garments[a]);
    Sum other = sums.get(garments[b]);
    double dx = middles.get(b).x() - middles.get(a).x();
    double dy = middles.get(b).y() - middles.get(a).y();
    double gain =
        one.squareOfMean(dx, dy)
            + other.squareOfMean(-dx, -dy)
            - one.squareOfMean(0, 0)
            - other.squareOfMean(0, 0);
    if (gain <= LEAST_GAIN_MM2) {
      return false;
    }
    one.add(dx, dy);
    other.add(-dx, -dy);
    int kept = garments[a];
    garments[a] = garments[b];
    garments[b] = kept;
    return true;
  }
}
