package ellwand.rule;

import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.List;

/**
 * How handy a marker is for whoever cuts it; lengths in mm, areas in square mm.
 *
 * @param garmentSpreadMm how far pieces lie from the middle of their garment, on average
 * @param largestLeftOverMm2 the largest free rectangle in any zone, all its plies
 * @param otherLeftOverMm2 what is left over besides that
 * @param straightCuts how many straight cuts across the lay part its pieces and cut none
 * @param straightCutsAtMm where they are, from where the marker begins: the cut end, or a fold
 *     across
 * @param stretchMm how long the stretches between them are, on average
 * @param smallPieces how many small pieces there are
 * @param smallNearEnd how many of them lie nearer to an end than a hand's breadth
 * @param smallTooNearMm how much nearer they lie than that, all together
 * @param smallOffEndMm how near the nearest comes to an end; 0 if there is none
 */
public record Handling(
    double garmentSpreadMm,
    double largestLeftOverMm2,
    double otherLeftOverMm2,
    int straightCuts,
    List<Double> straightCutsAtMm,
    double stretchMm,
    int smallPieces,
    int smallNearEnd,
    double smallTooNearMm,
    double smallOffEndMm) {

  /** The longest stretch between straight cuts, or between one and an end, mm. */
  public double longestStretchMm() {
    double longest = 0;
    double from = 0;
    for (double cut : straightCutsAtMm) {
      longest = Math.max(longest, cut - from);
      from = cut;
    }
    return Math.max(longest, stretchMm * (straightCuts + 1) - from);
  }

  public Handling {
    straightCutsAtMm = List.copyOf(straightCutsAtMm);
  }

  /** Works out all of it. */
  public static Handling of(Marker marker) {
    return of(marker, FreePlace.of(marker));
  }

  /**
   * The same where it is known what is left over.
   *
   * @param free as {@link FreePlace#of} finds it
   */
  public static Handling of(Marker marker, List<FreePlace> free) {
    double largest = FreePlace.largestMm2(free);
    List<Double> cuts = StraightCuts.placesMm(marker);
    List<Copy> small = SmallOffEnd.small(marker);
    double length = marker.lengthMm();
    List<Double> offEnds = small.stream().map(c -> SmallOffEnd.offEndMm(length, c)).toList();
    List<Double> tooNear =
        offEnds.stream().map(mm -> SmallOffEnd.ENOUGH_MM - mm).filter(mm -> mm > 0).toList();
    return new Handling(
        GarmentsTogether.spreadMm(marker),
        largest,
        Math.max(0, OneLeftOver.leftMm2(marker) - largest),
        cuts.size(),
        cuts,
        StraightCuts.stretchMm(marker),
        small.size(),
        tooNear.size(),
        tooNear.stream().mapToDouble(mm -> mm).sum(),
        offEnds.stream().mapToDouble(mm -> mm).min().orElse(0));
  }

  /** What the largest left-over is of all that is left, 0 to 1. */
  public double largestShare() {
    double all = largestLeftOverMm2 + otherLeftOverMm2;
    return all == 0 ? 1 : largestLeftOverMm2 / all;
  }
}
