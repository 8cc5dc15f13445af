package ellwand.draw.marker;

import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Fit;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.PngPicture;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.SvgWriter;
import ellwand.figures.Figures;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.function.Supplier;

/** A marker as it is shown: on screen, on one page, or full size. */
public final class MarkerDrawing {

  private static final double DOTS_PER_INCH = 200;

  /** Letters on large prints are this much larger than on A4, since they are read from afar. */
  private static final double LARGE_PRINT = 2.5;

  private final MarkerSheet sheet;
  private final Supplier<MarkerSheet> unbroken;
  private final Fit fit;

  private MarkerDrawing(MarkerSheet sheet, Supplier<MarkerSheet> unbroken) {
    this.sheet = sheet;
    this.unbroken = unbroken;
    this.fit = fit(sheet, 0);
  }

  /**
   * @param figures of this marker
   * @param unit for rulers and figures
   */
  public static MarkerDrawing of(Marker marker, Figures figures, MarkerHead head, Unit unit) {
    return new MarkerDrawing(
        new MarkerSheet(marker, figures, head, unit),
        () -> new MarkerSheet(marker, figures, head, unit, 1));
  }

  /**
   * @param keptMm height of the page that is kept for other things
   */
  static Fit fit(MarkerSheet sheet, double keptMm) {
    return Fit.onA4(
        (paper, scale) -> {
          Reading reading = new Reading(scale);
          double width = paper.innerWidthMm() * scale;
          return sheet.pictureWidthMm(reading) <= width
              && sheet.heightMm(width, reading) <= (paper.innerHeightMm() - keptMm) * scale;
        });
  }

  /** SVG in UTF-8, true to size in mm, lettered so that it reads well printed on one A4 page. */
  public byte[] svg() {
    double margin = Paper.MARGIN_MM * fit.scale();
    return SvgWriter.bytes(drawing(sheet, fit, 1).withMargin(margin));
  }

  /**
   * @param stated the scale that the sheet says it has
   */
  static Drawing drawing(MarkerSheet sheet, Fit fit, double stated) {
    return sheet.drawing(
        fit.paper().innerWidthMm() * fit.scale(), new Reading(fit.scale()), stated);
  }

  /** A PNG picture of what is on the A4 page, 200 dots to the inch of that page. */
  public byte[] png() {
    return PngPicture.of(drawing(sheet, fit, fit.scale()), fit.scale(), DOTS_PER_INCH);
  }

  /** One A4 page, upright or on its side, whichever shows the marker larger, its scale stated. */
  public byte[] pdf() {
    return PdfWriter.onePage(drawing(sheet, fit, fit.scale()), fit.scale(), fit.paper());
  }

  /**
   * One page as large as it must be, the picture in one row however long.
   *
   * @param scale mm of cloth for one mm of paper; 1 is full size
   */
  public byte[] pdf(double scale) {
    if (!(scale > 0)) {
      throw new IllegalArgumentException("a scale must be above 0, not " + scale);
    }
    Reading reading = new Reading(scale < fit.scale() / LARGE_PRINT ? scale * LARGE_PRINT : scale);
    MarkerSheet one = unbroken.get();
    double width = Math.max(one.pictureWidthMm(reading), reading.mm(Paper.A4.innerWidthMm()));
    Drawing drawing = one.drawing(width, reading, scale);
    return PdfWriter.onePage(drawing, scale);
  }
}
