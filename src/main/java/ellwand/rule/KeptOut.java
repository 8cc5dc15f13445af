package ellwand.rule;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Flaw;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Copies keep off the flaws of the cloth. Each copy is unfolded onto the open cloth, ply by ply:
 * the other way round than the search does it, which folds the flaws.
 */
final class KeptOut {

  /** Amount: how wide the flaw in the copy is at its widest, mm. */
  static final Rule RULE =
      new Rule(
          "keep-outs",
          true,
          Rule.Counted.MM,
          "No piece takes cloth that is flawed or not there",
          KeptOut::findings);

  private KeptOut() {}

  private static List<Finding> findings(Rule rule, Inspection of) {
    Cloth cloth = of.marker().lay().cloth();
    if (cloth.flaws().isEmpty()) {
      return List.of();
    }
    Optional<LaidCloth> laid = LaidCloth.like(cloth, of.marker().fold(), of.marker().zones());
    double across = of.marker().acrossMm();
    List<Finding> findings = new ArrayList<>();
    for (Placed p : of.placed()) {
      Optional<Band> band = laid.flatMap(l -> l.band(p.copy().zone()));
      if (p.region().isPresent() && band.isPresent()) {
        for (Ply ply : band.get().layers()) {
          Outline open = ply.open(p.copy().outline(), across);
          for (Flaw flaw : cloth.flawsAllRound()) {
            taken(open, flaw, cloth)
                .map(taken -> finding(rule, p, flaw, taken, ply.laid(box(taken), across).box()))
                .ifPresent(findings::add);
          }
        }
      }
    }
    return findings;
  }

  private static Outline box(Region taken) {
    return Outline.of(taken.box());
  }

  /** What of a flaw the unfolded copy takes. */
  private static Optional<Region> taken(Outline open, Flaw flaw, Cloth cloth) {
    Outline barred = cloth.fromFirstCuttable(flaw.outline());
    if (!barred.box().touches(open.box())) {
      return Optional.empty();
    }
    Region taken = Region.of(open).intersect(Region.of(barred));
    double smaller = Math.min(open.area(), barred.area());
    return Optional.of(taken).filter(t -> t.area() > Meeting.OVERLAP_SHARE * smaller);
  }

  private static Finding finding(Rule rule, Placed p, Flaw flaw, Region taken, Box at) {
    double wide = Math.max(taken.thickness(), Double.MIN_NORMAL);
    return p.finding(
        rule,
        at.centre(),
        wide,
        unit ->
            Say.capital(p.name())
                + " takes "
                + Say.small(wide, unit)
                + " of flawed cloth ("
                + flaw.name()
                + ") "
                + Say.near(at.centre(), unit)
                + ".");
  }
}
