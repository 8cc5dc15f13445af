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
import ellwand.lay.Wanted;
import ellwand.pattern.Asks;
import ellwand.pattern.Cut;
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
  private final Lay lay;
  private final Cloth cloth;
  private final Repeat repeat;
  private final LaidCloth laid;
  private final MatchedMarks matched;
  private final List<Finding> findings = new ArrayList<>();

  private InRepeat(Rule rule, Inspection of, Repeat repeat) {
    this.rule = rule;
    this.repeat = repeat;
    lay = of.marker().lay();
    cloth = lay.cloth();
    laid =
        LaidCloth.like(cloth, of.marker().fold(), of.marker().zones())
            .orElseGet(() -> LaidCloth.of(cloth, Fold.OPEN));
    matched = new MatchedMarks(lay, repeat, laid);
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

  /** Of each piece that is kept; of a half the side that is as drawn, on whichever ply. */
  private List<Phase> phases(Placed p, String words) {
    Optional<Band> band = laid.band(p.copy().zone());
    Optional<Wanted> wanted = lay.wantedBy(p.copy());
    Optional<Point> mark = wanted.map(w -> w.cut().marks().get(words));
    if (band.isEmpty() || mark.isEmpty()) {
      return List.of();
    }
    Cut.How how = wanted.get().how();
    List<Phase> phases = new ArrayList<>();
    for (Ply ply : p.pliesCut(band.get(), how)) {
      if (how == Cut.How.PAIR || !p.turnedOver(ply)) {
        phases.add(phase(p, ply, mark.get(), 1));
      } else if (p.copy().form() != Form.HALF) {
        // It is kept as one that is as drawn, with what is drawn to the left on its left.
        phases.add(phase(p, ply, wanted.get().cut().turnedOver(mark.get()), -1));
      }
    }
    return phases;
  }

  private Phase phase(Placed p, Ply ply, Point mark, int hand) {
    Motion motion = p.copy().motion();
    Point at = motion.apply(mark);
    double y = ply.open(at.y());
    double left = ply.open(motion.apply(mark.plus(new Point(0, hand))).y()) - y;
    double up = Heading.ofTurn(motion.turnDegrees(), motion.flipped()) == Heading.UP ? 1 : -1;
    double fromEdge = y + cloth.selvedgeMm();
    return new Phase(
        up * (at.x() - repeat.startAlongMm()),
        (left < -1e-6 ? -1 : 1) * (fromEdge - repeat.startAcrossMm()));
  }

  private void place(Placed p) {
    Optional<Asks.Place> place = p.cut().flatMap(cut -> cut.piece().asks().place());
    List<Phase> phases = place.map(at -> phases(p, at.mark())).orElse(List.of());
    if (phases.isEmpty()) {
      return;
    }
    Asks.Place asked = place.get();
    double off =
        asked.onBorder()
            ? repeat.borderMm().map(border -> offBorder(p, asked.mark(), border)).orElse(0.0)
            : phases.stream().mapToDouble(phase -> off(phase, asked)).max().orElseThrow();
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

  private double off(Phase phase, Asks.Place asked) {
    boolean along = asked.alongMm().isPresent() || repeat.halfDrop();
    boolean across = asked.acrossMm().isPresent() || repeat.halfDrop();
    return repeat.offMm(
        along ? phase.along() - asked.alongMm().orElse(0.0) : 0,
        across ? phase.across() - asked.acrossMm().orElse(0.0) : 0);
  }

  /** How far the copy is off the border, on whichever of its plies it is further, mm. */
  private double offBorder(Placed p, String mark, double border) {
    Band band = laid.band(p.copy().zone()).orElseThrow();
    Cut.How how = lay.wantedBy(p.copy()).orElseThrow().how();
    double laidY = p.copy().motion().apply(p.cut().orElseThrow().marks().get(mark)).y();
    return p.pliesCut(band, how).stream()
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
