package ellwand.rule;

import ellwand.cloth.Wish;
import ellwand.lay.Marker;
import java.util.List;
import java.util.Map;

/** All rules, declared once. */
public final class Rules {

  /** What a marker must keep, in the order that findings are told. */
  public static final List<Rule> HARD =
      List.of(
          ZonesOfCloth.RULE,
          Counts.COUNT,
          Counts.HAND,
          OwnLine.RULE,
          RightForm.FORM,
          RightForm.ON_FOLD,
          OnGrain.RULE,
          Headings.RULE,
          InsideZone.RULE,
          KeptOut.RULE,
          InRepeat.RULE,
          Apart.OVERLAP,
          Apart.GAP,
          StatedTruly.LENGTHS,
          StatedTruly.UTILISATION);

  /** What it should keep besides, where the cutter wishes it. */
  public static final Map<Wish, Rule> SOFT =
      Map.of(
          Wish.GARMENTS_TOGETHER, GarmentsTogether.RULE,
          Wish.ONE_LEFT_OVER, OneLeftOver.RULE,
          Wish.STRAIGHT_CUTS, StraightCuts.RULE,
          Wish.SMALL_OFF_END, SmallOffEnd.RULE);

  private Rules() {}

  /** How far a marker is from a wish, in the unit of its rule; less is better, 0 is best. */
  public static double amount(Wish wish, Marker marker) {
    return SOFT.get(wish).findings(Inspection.of(marker)).stream()
        .mapToDouble(Finding::amount)
        .sum();
  }
}
