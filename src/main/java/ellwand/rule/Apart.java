package ellwand.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Copies keep off each other. */
final class Apart {

  private Apart() {}

  /** Amount: how wide the overlap is at its widest, mm. */
  static final Rule OVERLAP =
      new Rule(
          "overlap", true, Rule.Counted.MM, "No two pieces take the same cloth", Apart::overlaps);

  /** Amount: what is missing of the gap, mm. */
  static final Rule GAP =
      new Rule(
          "gap",
          true,
          Rule.Counted.MM,
          "Pieces keep the cloth's gap between them",
          Apart::narrowGaps);

  private static List<Finding> overlaps(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Meeting m : of.meetings().measured()) {
      if (m.overlaps()) {
        findings.add(
            finding(
                rule,
                m,
                m.mm(),
                unit ->
                    Say.capital(m.one().name())
                        + " overlaps "
                        + m.otherName()
                        + " by "
                        + Say.small(m.mm(), unit)
                        + " "
                        + Say.near(m.place(), unit)
                        + "."));
      }
    }
    int more = of.meetings().more();
    // How far these overlap nobody has measured.
    findings.addAll(
        Finding.ofWhole(
            rule,
            more * Double.MIN_NORMAL,
            unit ->
                "At least " + Say.number(more, "more pair", "more pairs") + " of pieces overlap."));
    return findings;
  }

  private static List<Finding> narrowGaps(Rule rule, Inspection of) {
    double gap = of.marker().lay().cloth().gapMm();
    return of.meetings().measured().stream()
        .filter(m -> !m.overlaps())
        .map(
            m ->
                finding(
                    rule,
                    m,
                    gap - m.mm(),
                    unit ->
                        Say.capital(m.one().name())
                            + " and "
                            + m.otherName()
                            + " are "
                            + Say.small(m.mm(), unit)
                            + " apart "
                            + Say.near(m.place(), unit)
                            + "; this cloth asks for "
                            + Say.small(gap, unit)
                            + "."))
        .toList();
  }

  private static Finding finding(Rule rule, Meeting m, double amount, Finding.Words words) {
    return new Finding(rule, m.pieces(), m.copies(), Optional.of(m.place()), amount, words);
  }
}
