package ellwand.draw;

import ellwand.figures.Figures;
import ellwand.lay.Marker;
import ellwand.units.Unit;

/** A marker as it is shown: on screen, on one page, or full size. */
public final class MarkerDrawing {

  private final Marker marker;
  private final Figures figures;
  private final Unit unit;

  private MarkerDrawing(Marker marker, Figures figures, Unit unit) {
    this.marker = marker;
    this.figures = figures;
    this.unit = unit;
  }

  /**
   * @param figures of this marker
   * @param unit for rulers and figures
   */
  public static MarkerDrawing of(Marker marker, Figures figures, Unit unit) {
    return new MarkerDrawing(marker, figures, unit);
  }

  /** SVG in UTF-8, true to size in mm, lettered so that it reads well printed on one A4 page. */
  public byte[] svg() {
    throw new UnsupportedOperationException("lands shortly, for " + marker + figures + unit);
  }

  /** A PNG picture of the A4 page. */
  public byte[] png() {
    throw new UnsupportedOperationException("lands shortly");
  }

  /** One A4 page, upright or on its side, whichever shows the marker larger, its scale stated. */
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
