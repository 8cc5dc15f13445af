package ellwand.nest.repeat;

import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.lay.Joining;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.repeat.Free.Axis;
import ellwand.pattern.Bars;
import ellwand.pattern.Cut.How;
import ellwand.pattern.Match;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The matches of one size along or across the cloth, as sums about where its pieces lie. */
final class Ties {

  /** Of the frame that a piece is drawn in. */
  static final Point ORIGIN = new Point(0, 0);

  private final Repeat repeat;
  private final Axis axis;
  private final Map<String, Wanted> pieces = new LinkedHashMap<>();
  private final List<Tie> all = new ArrayList<>();

  /**
   * What lies in one place in the repeat: a piece with its mirror image, or each by itself where
   * the repeat looks different from either side.
   */
  record Tied(String piece, boolean turnedOver) {}

  /**
   * A mark as it is sewn on: from the middle of a bar it lies sign times the body's origin and
   * {@code atMm}, counted as on the cloth where pieces as drawn head up.
   */
  record SewnMark(Tied body, int sign, double atMm) {}

  /**
   * Two marks that lie alike: the one as far from a bar as the other, times the sign.
   *
   * @param match what asks for it
   */
  record Tie(Match match, SewnMark one, SewnMark other, int sign) {

    /** What the other's origin counts in where the one's lies. */
    int turn() {
      return one.sign * other.sign * sign;
    }

    /** What is added to that, mm. */
    double apartMm() {
      return turn() * other.atMm - one.atMm;
    }

    Tie back() {
      return new Tie(match, other, one, sign);
    }
  }

  /**
   * @throws InputException if bars would have to look the same from either side and do not
   */
  Ties(Lay lay, Repeat repeat, String size, Axis axis) {
    this.repeat = repeat;
    this.axis = axis;
    for (Wanted w : lay.wanted()) {
      if (w.size().equals(size)) {
        pieces.putIfAbsent(w.cut().name(), w);
      }
    }
    for (Match match : lay.matches()) {
      if (counts(match)) {
        tie(match, pieces.get(match.piece()), pieces.get(match.otherPiece()));
      }
    }
  }

  private boolean counts(Match match) {
    Bars bars = axis == Axis.ALONG ? Bars.ACROSS : Bars.ALONG;
    return (match.bars() == bars || match.bars() == Bars.BOTH || repeat.halfDrop())
        && (axis == Axis.ALONG ? repeat.alongMm() : repeat.acrossMm()) > 0
        && pieces.containsKey(match.piece())
        && pieces.containsKey(match.otherPiece());
  }

  private void tie(Match match, Wanted one, Wanted other) {
    if (!bySide()) {
      side(one, match.mark(), false)
          .ifPresent(
              a ->
                  side(other, match.otherMark(), false)
                      .ifPresent(b -> all.add(new Tie(match, a, b, 1))));
      return;
    }
    Joining joining = Joining.of(match, one, other, repeat);
    if (joining.atAnAngle() && !repeat.evenAcross()) {
      throw new InputException(
          match.problem(
              match.mark()
                  + " cannot match "
                  + match.otherPiece()
                  + "."
                  + match.otherMark()
                  + " on stripes along the cloth: the seam leans across them, so that they would meet"
                  + " in a mirror, and this repeat has no mirror line",
              // The columns of a half drop match both ways whatever is asked.
              (repeat.halfDrop() ? "Take" : "Ask for bars: across, take")
                  + " cloth with an even repeat, or leave the match out"));
    }
    int sign = axis == Axis.ACROSS && joining.atAnAngle() ? -1 : 1;
    for (boolean mirrored : new boolean[] {false, true}) {
      Optional<SewnMark> a = side(one, match.mark(), mirrored);
      Optional<SewnMark> b = side(other, match.otherMark(), mirrored == joining.sameHand());
      if (a.isPresent() && b.isPresent()) {
        all.add(new Tie(match, a.get(), b.get(), sign));
      }
    }
  }

  /** A mark on the hand that is as drawn or mirrored; empty if none of that hand is cut. */
  private Optional<SewnMark> side(Wanted wanted, String mark, boolean mirrored) {
    CutPiece cut = wanted.cut();
    Point at = cut.marks().get(mark);
    Tied body = body(wanted, mirrored);
    return switch (wanted.how()) {
      case WHOLE -> mirrored ? Optional.empty() : Optional.of(new SewnMark(body, 1, mm(at)));
      case PAIR ->
          Optional.of(new SewnMark(body, mirrored && axis == Axis.ACROSS ? -1 : 1, mm(at)));
      case FOLD -> {
        CutPiece.Stroke fold = cut.fold().orElseThrow();
        yield Optional.of(
            new SewnMark(body, 1, mm(mirrored ? at.mirrored(fold.from(), fold.to()) : at)));
      }
    };
  }

  /** What lies in one place with a copy of a piece. */
  Tied body(Wanted wanted, boolean turnedOver) {
    boolean apart = wanted.how() == How.PAIR && bySide() && !repeat.evenAcross();
    return new Tied(wanted.cut().name(), turnedOver && apart);
  }

  /** Bars across lie alike on both hands, so that they also match at the centre. */
  private boolean bySide() {
    return axis == Axis.ACROSS || repeat.halfDrop();
  }

  /** Where a place of a drawn piece is this way, mm. */
  double mm(Point drawn) {
    return axis == Axis.ALONG ? drawn.x() : drawn.y();
  }

  List<Tie> all() {
    return all;
  }

  Collection<Wanted> pieces() {
    return pieces.values();
  }

  Wanted wanted(String piece) {
    return pieces.get(piece);
  }
}
