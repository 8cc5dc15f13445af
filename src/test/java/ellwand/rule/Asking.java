package ellwand.rule;

import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.pattern.Asks;
import ellwand.pattern.Mark;
import ellwand.pattern.Piece;
import java.util.Map;
import java.util.Optional;

/** Trial pieces that ask for their place in a repeat. Lengths in mm. */
public final class Asking {

  private Asking() {}

  /** The piece with a mark called "at" somewhere on its first edge, which may want a place. */
  public static CutPiece marked(CutPiece cut, double onFirstEdge, Optional<Asks.Place> place) {
    Piece bare = cut.piece();
    Mark mark = new Mark("at", bare.edges().get(0).name(), onFirstEdge);
    Piece piece = bare.asking(new Asks(Optional.empty(), place, java.util.List.of(mark)));
    Point at = mark.on(piece);
    return new CutPiece(
        piece,
        cut.cutting(),
        cut.sewing(),
        cut.notches(),
        cut.innerLines(),
        cut.fold(),
        Map.of("at", at));
  }

  /** Wants its mark so far from the middle of a bar; NaN for anywhere. */
  public static Optional<Asks.Place> at(double along, double across) {
    return Optional.of(new Asks.Place("at", stated(along), stated(across), false));
  }

  /** Wants its mark on the line of the cloth's border. */
  public static Optional<Asks.Place> onBorder() {
    return Optional.of(new Asks.Place("at", Optional.empty(), Optional.empty(), true));
  }

  private static Optional<Double> stated(double mm) {
    return Double.isNaN(mm) ? Optional.empty() : Optional.of(mm);
  }
}
