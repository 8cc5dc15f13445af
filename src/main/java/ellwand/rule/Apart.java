package ellwand.rule;

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
    return of.meetings().stream()
        .filter(Meeting::overlaps)
        .map(
            m -> {
              double wide = Math.max(m.overlap().thickness(), Double.MIN_NORMAL);
              return new Finding(
                  rule,
                  m.pieces(),
                  m.copies(),
                  Optional.of(m.place()),
                  wide,
                  unit ->
                      Say.capital(m.one().name())
                          + " overlaps "
                          + m.otherName()
                          + " by "
                          + Say.small(wide, unit)
                          + " "
                          + Say.near(m.place(), unit)
                          + ".");
            })
        .toList();
  }

  private static List<Finding> narrowGaps(Rule rule, Inspection of) {
    double gap = of.marker().lay().cloth().gapMm();
    return of.meetings().stream()
        .filter(m -> !m.overlaps())
        .map(
            m ->
                new Finding(
                    rule,
                    m.pieces(),
                    m.copies(),
                    Optional.of(m.place()),
                    gap - m.distanceMm(),
                    unit ->
                        Say.capital(m.one().name())
                            + " and "
                            + m.otherName()
                            + " are "
                            + Say.small(m.distanceMm(), unit)
                            + " apart "
                            + Say.near(m.place(), unit)
                            + "; this cloth asks for "
                            + Say.small(gap, unit)
                            + "."))
        .toList();
  }
}
