package ellwand.nest;

import ellwand.cloth.Fold;
import ellwand.lay.Marker;
import ellwand.nest.pose.NoRoomException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How one way of folding the cloth fared.
 *
 * @param marker the best that was made so; empty if none was
 * @param pleasing what serves the cutter's wishes best in the place of that; empty if nothing is
 *     wished, or if another way of folding takes less cloth
 * @param noRoom why none could be; empty if one was made, or if the search was stopped before it
 * @param carried whether the marker was taken over from cloth that lies otherwise, or found from
 *     there
 */
public record Tried(
    Fold fold,
    Optional<Marker> marker,
    Optional<Marker> pleasing,
    Optional<NoRoomException> noRoom,
    boolean carried) {

  /** The same with a shorter marker, taken over from cloth that lies otherwise. */
  public Tried with(Marker shorter) {
    return new Tried(fold, Optional.of(shorter), pleasing, Optional.empty(), true);
  }

  /** Whether it takes more cloth than another marker, by more than rounding. */
  public boolean isLongerThan(Marker other) {
    return marker
        .map(m -> m.clothLengthMm() > other.clothLengthMm() + Carried.SAME_MM)
        .orElse(true);
  }

  /**
   * The marker that takes least cloth; of those that take as much the first that lies as it was
   * found. Empty if there is none.
   */
  public static Optional<Marker> shortest(List<Tried> all) {
    double least =
        all.stream()
            .flatMap(tried -> tried.marker().stream())
            .mapToDouble(Marker::clothLengthMm)
            .min()
            .orElse(0);
    return all.stream()
        .filter(tried -> tried.marker().isPresent())
        .filter(tried -> tried.marker().get().clothLengthMm() <= least + Carried.SAME_MM)
        .min(Comparator.comparing(Tried::carried))
        .flatMap(Tried::marker);
  }
}
