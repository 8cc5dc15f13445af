package ellwand.trace;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Pixels that are looked at between their centres. */
final class Raster {

  private Raster() {}

  /** Mixes the colours of a raster, in linear light, between the centres of four pixels. */
  static boolean sample(int[] pixels, int width, double u, double v, double[] colour) {
    int height = pixels.length / width;
    if (!(u >= 0 && v >= 0 && u < width - 1 && v < height - 1)) {
      return false;
    }
    int x = (int) u;
    int y = (int) v;
    double a = u - x;
    double b = v - y;
    int at = y * width + x;
    for (int c = 0; c < 3; c++) {
      int shift = 16 - 8 * c;
      colour[c] =
          (1 - b)
                  * ((1 - a) * Film.LINEAR[pixels[at] >> shift & 255]
                      + a * Film.LINEAR[pixels[at + 1] >> shift & 255])
              + b
                  * ((1 - a) * Film.LINEAR[pixels[at + width] >> shift & 255]
                      + a * Film.LINEAR[pixels[at + width + 1] >> shift & 255]);
    }
    return true;
  }

  static int[] pixels(BufferedImage picture) {
    return ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
  }
}
