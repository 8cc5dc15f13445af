package ellwand.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every garment gets what it wants, no more, and of the right hand. */
final class Counts {

  /** Amount: pieces missing or too many. */
  static final Rule COUNT =
      new Rule(
          "count",
          true,
          Rule.Counted.PIECES,
          "Every piece is there as often as its garment needs it",
          Counts::count);

  /** Amount: pieces of the wrong hand. */
  static final Rule HAND =
      new Rule(
          "hand",
          true,
          Rule.Counted.PIECES,
          "Left pieces are left and right pieces are right",
          Counts::hand);

  private Counts() {}

  private static List<Finding> count(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Tally t : Tally.of(of)) {
      int more = t.delivered() - t.needed();
      if (t.needed() == 0) {
        Placed first = t.placed().get(0);
        findings.add(
            first.finding(
                rule,
                more,
                unit -> "The marker has " + t.name() + ", which the job does not ask for."));
      } else if (more > 0) {
        Placed last = t.placed().get(t.placed().size() - 1);
        findings.add(last.finding(rule, more, unit -> amounts(t, "There are too many of ")));
      } else if (more < 0) {
        findings.add(
            new Finding(
                rule,
                List.of(t.piece()),
                List.of(),
                Optional.empty(),
                -more,
                unit -> amounts(t, "There are too few of ")));
      }
    }
    return findings;
  }

  private static String amounts(Tally t, String how) {
    return how
        + t.name()
        + ": "
        + Say.number(t.needed(), "piece is", "pieces are")
        + " wanted, the marker cuts "
        + t.delivered()
        + ".";
  }

  private static List<Finding> hand(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Tally t : Tally.of(of)) {
      int wrong = t.wrongHands();
      if (wrong > 0) {
        Placed at = t.suspects().get(t.suspects().size() - 1);
        findings.add(
            at.finding(
                rule,
                wrong,
                unit ->
                    Say.capital(t.name())
                        + " has the wrong hand "
                        + Say.near(at.box().centre(), unit)
                        + ": "
                        + wantedHands(t)
                        + "."));
      }
    }
    return findings;
  }

  private static String wantedHands(Tally t) {
    return t.pairs() > 0
        ? "each pair wants one piece as drawn and one turned over"
        : "it is wanted as drawn, not turned over";
  }
}
