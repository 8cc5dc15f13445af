package ellwand.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every copy is its piece: not shrunk, not redrawn, not elsewhere than its pose says. */
final class OwnLine {

  /** Amount: how far the outline strays from the piece's cutting line in place, mm. */
  static final Rule RULE =
      new Rule(
          "cutting line",
          true,
          Rule.Counted.MM,
          "Every outline is its piece's own cutting line, moved as stated",
          OwnLine::findings);

  private OwnLine() {}

  private static List<Finding> findings(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Placed p : of.placed()) {
      if (p.region().isEmpty()) {
        findings.add(
            p.finding(
                rule,
                Double.POSITIVE_INFINITY,
                unit -> "The outline of " + p.name() + " crosses itself or leads nowhere."));
      } else {
        p.cut().ifPresent(cut -> compare(findings, rule, p));
      }
    }
    return findings;
  }

  private static void compare(List<Finding> findings, Rule rule, Placed p) {
    Optional<SameLine> strays = p.strays();
    if (strays.isEmpty()) {
      findings.add(
          p.finding(
              rule,
              Double.POSITIVE_INFINITY,
              unit -> "The stated place of " + p.name() + " is none."));
    } else if (!strays.get().same()) {
      SameLine by = strays.get();
      findings.add(
          p.finding(
              rule,
              by.place(),
              by.mm(),
              unit ->
                  "The outline of "
                      + p.name()
                      + " is not its cutting line in the stated place: it strays by "
                      + Say.small(by.mm(), unit)
                      + " "
                      + Say.near(by.place(), unit)
                      + "."));
    }
  }
}
