package ellwand.rule;

import ellwand.cutting.CutPiece;
import ellwand.pattern.Asks;
import ellwand.pattern.Mark;
import ellwand.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Trial pieces that ask for their place in a repeat. Lengths in mm. */
public final class Asking {

  private Asking() {}

  /** The piece with a mark called "at" somewhere on its first edge, which may want a place. */
  public static CutPiece marked(CutPiece cut, double onFirstEdge, Optional<Asks.Place> place) {
    return marked(
        cut, List.of(new Mark("at", cut.piece().edges().get(0).name(), onFirstEdge)), place);
  }

  /** The piece with these marks, the first of which may want a place. */
  public static CutPiece marked(CutPiece cut, List<Mark> marks, Optional<Asks.Place> place) {
    Piece piece = cut.piece().asking(new Asks(Optional.empty(), place, marks));
    return new CutPiece(
        piece,
        cut.cutting(),
        cut.sewing(),
        cut.notches(),
        cut.innerLines(),
        cut.fold(),
        marks.stream().collect(Collectors.toMap(Mark::words, m -> m.on(piece))));
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
