package ellwand.rule;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Joining;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.pattern.Bars;
import ellwand.pattern.Cut;
import ellwand.pattern.Match;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How far marks that are to match miss each other, on each of the seams at which they are sewn. */
final class MatchedMarks {

  private final Lay lay;
  private final Cloth cloth;
  private final Repeat repeat;
  private final LaidCloth laid;

  MatchedMarks(Lay lay, Repeat repeat, LaidCloth laid) {
    this.lay = lay;
    this.cloth = lay.cloth();
    this.repeat = repeat;
    this.laid = laid;
  }

  /**
   * A mark on one of the pieces that a copy yields: from the middle of a bar of the open cloth,
   * right side up and turned so that the piece heads up, mm.
   *
   * @param turnedOver the piece is of the other hand than drawn
   */
  private record Sewn(boolean turnedOver, double along, double across) {}

  /** The worst of all the seams between two copies, mm; empty if they share none. */
  OptionalDouble offMm(Match match, Placed one, Placed other) {
    Optional<Wanted> first = lay.wantedBy(one.copy());
    Optional<Wanted> second = lay.wantedBy(other.copy());
    if (first.isEmpty() || second.isEmpty()) {
      return OptionalDouble.empty();
    }
    boolean along = match.bars() != Bars.ALONG || repeat.halfDrop();
    boolean across = match.bars() != Bars.ACROSS || repeat.halfDrop();
    Joining joining = Joining.of(match, first.get(), second.get(), repeat);
    List<Double> off = new ArrayList<>();
    for (Sewn a : sewn(one, first.get(), match.mark())) {
      for (Sewn b : sewn(other, second.get(), match.otherMark())) {
        boolean join = joining.sameHand() == (a.turnedOver == b.turnedOver);
        double apartAlong = along ? a.along - b.along : 0;
        if (join && across) {
          off.add(repeat.offMm(apartAlong, acrossMm(joining, a, b)));
        } else if (along && !repeat.halfDrop()) {
          off.add(repeat.offMm(apartAlong, 0));
        }
      }
    }
    return off.stream().mapToDouble(mm -> mm).max();
  }

  private double acrossMm(Joining joining, Sewn a, Sewn b) {
    if (!joining.atAnAngle()) {
      return a.across - b.across;
    }
    // Without a mirror line bars miss each other somewhere wherever the marks lie.
    return repeat.evenAcross() ? a.across + b.across : repeat.acrossMm() / 2;
  }

  private List<Sewn> sewn(Placed p, Wanted wanted, String words) {
    Optional<Point> mark = Optional.ofNullable(wanted.cut().marks().get(words));
    Optional<Band> band = laid.band(p.copy().zone());
    if (mark.isEmpty() || band.isEmpty()) {
      return List.of();
    }
    CutPiece cut = wanted.cut();
    boolean opened = wanted.how() == Cut.How.FOLD && p.copy().form() != Form.HALF;
    List<Sewn> sewn = new ArrayList<>();
    for (Ply ply : p.pliesCut(band.get(), wanted.how())) {
      boolean other = wanted.how() == Cut.How.WHOLE && p.turnedOver(ply);
      sewn.add(sewn(p, ply, other ? cut.turnedOver(mark.get()) : mark.get(), other));
      if (opened) {
        sewn.add(sewn(p, ply, cut.turnedOver(mark.get()), true));
      }
    }
    return sewn;
  }

  private Sewn sewn(Placed p, Ply ply, Point mark, boolean mirrored) {
    Motion motion = p.copy().motion();
    Point at = motion.apply(mark);
    int up = Heading.ofTurn(motion.turnDegrees(), motion.flipped()) == Heading.UP ? 1 : -1;
    double fromEdge = ply.open(at.y()) + cloth.selvedgeMm();
    return new Sewn(
        p.turnedOver(ply) ^ mirrored,
        up * (at.x() - repeat.startAlongMm()),
        (ply.backwards() ? -up : up) * (fromEdge - repeat.startAcrossMm()));
  }
}
