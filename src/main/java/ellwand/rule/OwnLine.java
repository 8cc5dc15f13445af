package ellwand.rule;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
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
        p.cut().ifPresent(cut -> compare(findings, rule, p, cut.cutting()));
      }
    }
    return findings;
  }

  private static void compare(List<Finding> findings, Rule rule, Placed p, Outline own) {
    Optional<SameLine> strays = strays(p.copy(), own);
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

  private static Optional<SameLine> strays(Copy copy, Outline own) {
    Motion motion = copy.motion();
    boolean somewhere = Placed.onAnyTable(new Point(motion.x(), motion.y()));
    return somewhere && Double.isFinite(motion.turnDegrees())
        ? Optional.of(SameLine.between(copy.outline(), own.moved(motion)))
        : Optional.empty();
  }
}
