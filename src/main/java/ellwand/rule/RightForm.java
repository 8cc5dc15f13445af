package ellwand.rule;

import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece.Stroke;
import ellwand.lay.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Copies lie in a form that their piece and their zone allow. */
final class RightForm {

  /** Amount: 1 for each copy. */
  static final Rule FORM =
      new Rule(
          "form",
          true,
          Rule.Counted.PIECES,
          "Every piece lies in a form that its zone of the cloth can cut",
          RightForm::forms);

  /** Amount: how far the fold edge lies off the fold of the cloth, mm. */
  static final Rule ON_FOLD =
      new Rule(
          "fold",
          true,
          Rule.Counted.MM,
          "Half pieces stand with their fold edge on a fold of the cloth",
          RightForm::folds);

  private RightForm() {}

  private static List<Finding> forms(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Placed p : of.placed()) {
      fault(p)
          .ifPresent(
              fault ->
                  findings.add(
                      p.finding(
                          rule,
                          1,
                          unit ->
                              Say.capital(p.name())
                                  + " "
                                  + Say.near(p.box().centre(), unit)
                                  + " "
                                  + fault
                                  + ".")));
    }
    return findings;
  }

  private static Optional<String> fault(Placed p) {
    if (p.zone().isEmpty()) {
      return Optional.of("lies in zone " + p.copy().zone() + ", which the cloth does not have");
    }
    Form form = p.copy().form();
    if (p.cut().isPresent()) {
      boolean half = p.cut().get().piece().fold().isPresent();
      if ((form == Form.HALF || form == Form.OPENED) && !half) {
        return Optional.of("is no half piece, but lies as one");
      }
      if (form == Form.WHOLE && half) {
        return Optional.of("is a half piece: it must stand on a fold or be opened out");
      }
    }
    if (form == Form.PAIR && !p.inDoubleZone()) {
      return Optional.of("lies as a pair, but there is one ply only");
    }
    if (form == Form.HALF && p.zone().get().foldEdges().isEmpty()) {
      return Optional.of("is to be cut on the fold, but its zone has no fold edge");
    }
    return Optional.empty();
  }

  private static List<Finding> folds(Rule rule, Inspection of) {
    List<Finding> findings = new ArrayList<>();
    for (Placed p : of.placed()) {
      if (p.copy().form() != Form.HALF
          || p.zone().isEmpty()
          || p.zone().get().foldEdges().isEmpty()
          || p.cut().flatMap(c -> c.fold()).isEmpty()) {
        continue;
      }
      double off = off(p.cut().get().fold().get().moved(p.copy().motion()), p.zone().get());
      if (!(off <= Rule.ROUNDING_MM)) {
        findings.add(
            p.finding(
                rule,
                off,
                unit ->
                    "The fold edge of "
                        + p.name()
                        + " lies "
                        + Say.small(off, unit)
                        + " off the fold "
                        + Say.near(p.box().centre(), unit)
                        + "."));
      }
    }
    return findings;
  }

  private static double off(Stroke fold, Zone zone) {
    return zone.foldEdges().stream()
        .mapToDouble(
            side ->
                switch (side) {
                  case LOW_Y -> off(zone.box().minY(), fold.from().y(), fold.to().y());
                  case HIGH_Y -> off(zone.box().maxY(), fold.from().y(), fold.to().y());
                  case LOW_X -> off(zone.box().minX(), fold.from().x(), fold.to().x());
                })
        .min()
        .orElseThrow();
  }

  private static double off(double line, double one, double other) {
    return Math.max(Math.abs(one - line), Math.abs(other - line));
  }
}
