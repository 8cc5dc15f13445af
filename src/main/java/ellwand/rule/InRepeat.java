package ellwand.rule;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.cloth.Repeat;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.pattern.Asks;
import ellwand.pattern.Match;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Pieces lie where in the cloth's repeat they ask to. Measured at places on the sewing line
 * (stripes and checks match there, not on the cutting line: Successful Sewing, p. 108), carried to
 * the open cloth by the copy's own motion; a piece that heads down counts from its own top.
 */
final class InRepeat {

  /** Amount: how far a place is off the one it asks for, mm. */
  static final Rule RULE =
      new Rule(
          "repeat",
          true,
          Rule.Counted.MM,
          "Pieces lie where they ask to in the stripes, checks or border of the cloth",
          InRepeat::findings);

  private final Rule rule;
  private final Cloth cloth;
  private final Repeat repeat;
  private final LaidCloth laid;
  private final MatchedMarks matched;
  private final List<Finding> findings = new ArrayList<>();

  private InRepeat(Rule rule, Inspection of, Repeat repeat) {
    this.rule = rule;
    this.repeat = repeat;
    cloth = of.marker().lay().cloth();
    laid =
        LaidCloth.like(cloth, of.marker().fold(), of.marker().zones())
            .orElseGet(() -> LaidCloth.of(cloth, Fold.OPEN));
    matched = new MatchedMarks(of.marker().lay(), repeat, laid);
  }

  /**
   * A place in the repeat, from the middle of a bar in the piece's own direction, mm.
   *
   * @param along towards the piece's top
   * @param across to the left of that, as drawn
   */
  private record Phase(double along, double across) {}

  private static List<Finding> findings(Rule rule, Inspection of) {
    Optional<Repeat> repeat = of.marker().lay().cloth().repeatLaid(of.marker().fold());
    if (repeat.isEmpty()) {
      return List.of();
    }
    InRepeat check = new InRepeat(rule, of, repeat.get());
    of.placed().forEach(check::place);
    of.marker().lay().matches().forEach(match -> check.match(match, of.placed()));
    return check.findings;
  }

  private Optional<Phase> phase(Placed p, String mark) {
    Optional<Band> band = laid.band(p.copy().zone());
    Optional<Point> at = p.cut().map(cut -> cut.marks().get(mark));
    if (band.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    Motion motion = p.copy().motion();
    // The ply that lies right side up, where there is one.
    Ply ply = band.get().layers().get(band.get().layers().size() - 1);
    Point laidAt = motion.apply(at.get());
    double y = ply.open(laidAt.y());
    double left = ply.open(motion.apply(at.get().plus(new Point(0, 1))).y()) - y;
    double up = Heading.ofTurn(motion.turnDegrees(), motion.flipped()) == Heading.UP ? 1 : -1;
    double fromEdge = y + cloth.selvedgeMm();
    return Optional.of(
        new Phase(
            up * (laidAt.x() - repeat.startAlongMm()),
            (left < -1e-6 ? -1 : 1) * (fromEdge - repeat.startAcrossMm())));
  }

  private void place(Placed p) {
    Optional<Asks.Place> place = p.cut().flatMap(cut -> cut.piece().asks().place());
    Optional<Phase> phase = place.flatMap(at -> phase(p, at.mark()));
    if (phase.isEmpty()) {
      return;
    }
    Asks.Place asked = place.get();
    double off;
    if (asked.onBorder()) {
      off = repeat.borderMm().map(border -> offBorder(p, asked.mark(), border)).orElse(0.0);
    } else {
      boolean along = asked.alongMm().isPresent() || repeat.halfDrop();
      boolean across = asked.acrossMm().isPresent() || repeat.halfDrop();
      off =
          repeat.offMm(
              along ? phase.get().along() - asked.alongMm().orElse(0.0) : 0,
              across ? phase.get().across() - asked.acrossMm().orElse(0.0) : 0);
    }
    if (!(off <= Rule.ROUNDING_MM)) {
      findings.add(
          p.finding(
              rule,
              off,
              unit ->
                  Say.capital(p.name())
                      + " has its "
                      + asked.mark()
                      + " "
                      + Say.small(off, unit)
                      + " off its place "
                      + (asked.onBorder() ? "on the border " : "in the repeat ")
                      + Say.near(p.box().centre(), unit)
                      + "."));
    }
  }

  /** How far the copy is off the border, on whichever of its plies it is further, mm. */
  private double offBorder(Placed p, String mark, double border) {
    List<Ply> plies = laid.band(p.copy().zone()).orElseThrow().layers();
    boolean all = p.copy().form() == Form.PAIR || p.copy().form() == Form.HALF;
    double laidY = p.copy().motion().apply(p.cut().orElseThrow().marks().get(mark)).y();
    return plies.subList(all ? 0 : plies.size() - 1, plies.size()).stream()
        .mapToDouble(ply -> Math.abs(ply.open(laidY) + cloth.selvedgeMm() - border))
        .max()
        .orElse(0);
  }

  private void match(Match match, List<Placed> placed) {
    for (Placed one : named(match.piece(), placed)) {
      for (Placed other : named(match.otherPiece(), placed)) {
        if (sameGarment(one, other)) {
          OptionalDouble off = matched.offMm(match, one, other);
          if (!(off.orElse(0) <= repeat.matchWithinMm() + Rule.ROUNDING_MM)) {
            findings.add(mismatch(match, one, other, off.getAsDouble()));
          }
        }
      }
    }
  }

  /** How far the match that is met worst misses, mm; empty if nothing is to match. */
  static Optional<WorstMatch> worst(Inspection of) {
    return of.marker()
        .lay()
        .cloth()
        .repeatLaid(of.marker().fold())
        .flatMap(repeat -> new InRepeat(RULE, of, repeat).worst(of.placed(), of.marker().lay()));
  }

  private Optional<WorstMatch> worst(List<Placed> placed, Lay lay) {
    List<WorstMatch> met = new ArrayList<>();
    for (Match match : lay.matches()) {
      for (Placed one : named(match.piece(), placed)) {
        for (Placed other : named(match.otherPiece(), placed)) {
          if (sameGarment(one, other)) {
            matched.offMm(match, one, other).ifPresent(mm -> met.add(new WorstMatch(match, mm)));
          }
        }
      }
    }
    return met.stream().max(Comparator.comparingDouble(WorstMatch::mm));
  }

  private static List<Placed> named(String piece, List<Placed> placed) {
    return placed.stream().filter(p -> p.copy().piece().equals(piece)).toList();
  }

  private static boolean sameGarment(Placed a, Placed b) {
    return a.copy().size().equals(b.copy().size())
        && !Collections.disjoint(a.copy().garments(), b.copy().garments());
  }

  private Finding mismatch(Match match, Placed one, Placed other, double off) {
    return new Finding(
        rule,
        List.of(match.piece(), match.otherPiece()),
        List.of(one.index(), other.index()),
        Optional.of(one.box().centre()),
        off,
        unit ->
            Say.capital(one.name())
                + " does not match "
                + other.name()
                + ": "
                + match.mark()
                + " and "
                + match.otherMark()
                + " lie "
                + Say.small(off, unit)
                + " apart in the repeat.");
  }
}
