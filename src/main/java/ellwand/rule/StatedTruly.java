package ellwand.rule;

import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a marker's file says of itself is so. */
final class StatedTruly {

  /** As of a share written with four decimals. */
  private static final double TOLERANCE_SHARE = 1e-4;

  /** Amount: mm between what is stated and what is. */
  static final Rule LENGTHS =
      new Rule(
          "stated lengths",
          true,
          Rule.Counted.MM,
          "The lengths that the file states are the marker's",
          StatedTruly::lengths);

  /** Amount: between what is stated and what is, 1 for all of the cloth. */
  static final Rule UTILISATION =
      new Rule(
          "stated utilisation",
          true,
          Rule.Counted.SHARE,
          "The utilisation that the file states is the marker's",
          StatedTruly::utilisation);

  private StatedTruly() {}

  private static List<Finding> lengths(Rule rule, Inspection of) {
    if (of.stated().isEmpty()) {
      return List.of();
    }
    Stated stated = of.stated().get();
    Marker marker = of.marker();
    List<Finding> findings = new ArrayList<>();
    length(findings, rule, "marker length", stated.lengthMm(), marker.lengthMm());
    length(findings, rule, "cloth length", stated.clothLengthMm(), marker.clothLengthMm());
    length(findings, rule, "marker width", stated.markerWidthMm(), marker.markerWidthMm());
    length(findings, rule, "gap between pieces", stated.gapMm(), marker.lay().cloth().gapMm());
    return findings;
  }

  private static void length(
      List<Finding> findings, Rule rule, String what, double stated, double real) {
    double off = Math.abs(stated - real);
    if (!(off <= Rule.ROUNDING_MM)) {
      findings.add(
          finding(
              rule,
              off,
              unit ->
                  "The file states a "
                      + what
                      + " of "
                      + Say.length(stated, unit)
                      + ", it is "
                      + Say.length(real, unit)
                      + "."));
    }
  }

  private static List<Finding> utilisation(Rule rule, Inspection of) {
    double real = of.marker().utilisation();
    return of.stated().map(Stated::utilisation).stream()
        .filter(stated -> !(Math.abs(stated - real) <= TOLERANCE_SHARE))
        .map(
            stated ->
                finding(
                    rule,
                    Math.abs(stated - real),
                    unit ->
                        String.format(
                            Locale.ROOT,
                            "The file states a utilisation of %.2f %%, it is %.2f %%.",
                            100 * stated,
                            100 * real)))
        .toList();
  }

  private static Finding finding(Rule rule, double amount, Finding.Words words) {
    return new Finding(rule, List.of(), List.of(), Optional.empty(), amount, words);
  }
}
