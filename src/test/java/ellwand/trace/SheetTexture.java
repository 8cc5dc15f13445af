package ellwand.trace;

import java.awt.image.BufferedImage;

/** A printed sheet. */
final class SheetTexture {

  private final Scene.LaidSheet laid;
  private final double perMm;
  private final int[] pixels;
  private final int width;
  private final double cos;
  private final double sin;

  SheetTexture(Scene.LaidSheet laid, double mmPerPixel) {
    this.laid = laid;
    // One of few, so that a sheet is printed once for many photos.
    int dots = Math.max(1, Integer.highestOneBit((int) (mmPerPixel * PrintedSheets.DPI / 25.4)));
    perMm = PrintedSheets.DPI / 25.4 / dots;
    BufferedImage raster = PrintedSheets.page(laid.sheet(), dots);
    pixels = Raster.pixels(raster);
    width = raster.getWidth();
    double turn = Math.toRadians(laid.where().turnDegrees());
    cos = Math.cos(turn);
    sin = Math.sin(turn);
  }

  /** Paints over the colour where the ray meets the sheet; it goes so far in x and y as in z. */
  void colour(double x, double y, double slopeX, double slopeY, double[] colour) {
    double paperWidth = laid.sheet().paper().widthMm();
    double paperHeight = laid.sheet().paper().heightMm();
    double height = 0;
    double u = 0;
    double v = 0;
    for (int i = 0; i < (laid.curlMm() == 0 ? 1 : 6); i++) {
      double dx = x + slopeX * height - laid.where().x();
      double dy = y + slopeY * height - laid.where().y();
      u = cos * dx + sin * dy;
      v = -sin * dx + cos * dy;
      double side = 2 * u / paperWidth - 1;
      height = laid.curlMm() * side * side;
    }
    // A sheet printed smaller has more white round the field.
    double onPageX = paperWidth / 2 + (u - paperWidth / 2) / laid.printedAt();
    double onPageY = paperHeight / 2 + (v - paperHeight / 2) / laid.printedAt();
    boolean onPaper = u >= 0 && v >= 0 && u <= paperWidth && v <= paperHeight;
    if (onPaper
        && !Raster.sample(
            pixels, width, onPageX * perMm - 0.5, (paperHeight - onPageY) * perMm - 0.5, colour)) {
      colour[0] = 1;
      colour[1] = 1;
      colour[2] = 1;
    }
  }
}
