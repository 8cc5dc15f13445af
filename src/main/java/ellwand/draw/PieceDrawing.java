package ellwand.draw;

import ellwand.cutting.CutPiece;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;

/** The pieces of a style with all their lines, side by side, tops up. */
public final class PieceDrawing {

  private PieceDrawing() {}

  /**
   * @param style its name
   * @param piecesBySize as cut, sizes in the order in which they are to be shown
   * @param unit that allowances are shown in
   */
  public static PieceDrawing of(String style, Map<String, List<CutPiece>> piecesBySize, Unit unit) {
    throw new UnsupportedOperationException("lands shortly, for " + style + piecesBySize + unit);
  }

  /** SVG in UTF-8, true to size in mm, lettered so that it reads well printed on one A4 page. */
  public byte[] svg() {
    throw new UnsupportedOperationException("lands shortly");
  }

  /** A PNG picture of the A4 page. */
  public byte[] png() {
    throw new UnsupportedOperationException("lands shortly");
  }

  /** One A4 page, its scale stated. */
  public byte[] pdf() {
    throw new UnsupportedOperationException("lands shortly");
  }

  /**
   * One page as large as it must be.
   *
   * @param scale mm of cloth for one mm of paper; 1 is full size
   */
  public byte[] pdf(double scale) {
    throw new UnsupportedOperationException("lands shortly, at 1:" + scale);
  }
}
