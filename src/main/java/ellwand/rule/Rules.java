package ellwand.rule;

import java.util.List;

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

  private Rules() {}
}
