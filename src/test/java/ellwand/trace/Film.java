package ellwand.trace;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** What becomes of light behind a simulated lens: blur, noise, numbers, a file. */
final class Film {

  private Film() {}

  static BufferedImage developed(float[][] light, int width, int height, Scene.Flaws flaws) {
    Random random = new Random(flaws.seed());
    double[] noise = new double[1 << 16];
    Arrays.setAll(noise, i -> random.nextGaussian());
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
    for (int c = 0; c < 3; c++) {
      float[] channel =
          moved(blurred(light[c], width, height, flaws.blurPx()), width, height, flaws);
      for (int i = 0; i < pixels.length; i++) {
        double value = srgb(channel[i]) + flaws.noise() * noise[random.nextInt(noise.length)];
        int level = (int) Math.round(255 * Math.min(1, Math.max(0, value)));
        pixels[i] |= level << (16 - 8 * c);
      }
    }
    return picture;
  }

  /** The mean of what was seen along the way. */
  private static float[] moved(float[] from, int width, int height, Scene.Flaws flaws) {
    if (flaws.movedPx() <= 0) {
      return from;
    }
    double turn = new Random(flaws.seed() + 1).nextDouble() * Math.PI;
    int steps = (int) Math.ceil(2 * flaws.movedPx()) + 1;
    float[] to = new float[from.length];
    for (int k = 0; k < steps; k++) {
      double far = flaws.movedPx() * ((double) k / (steps - 1) - 0.5);
      double dx = far * Math.cos(turn);
      double dy = far * Math.sin(turn);
      int left = (int) Math.floor(dx);
      int up = (int) Math.floor(dy);
      float a = (float) (dx - left);
      float b = (float) (dy - up);
      for (int y = 0; y < height; y++) {
        int upper = Math.min(height - 1, Math.max(0, y + up)) * width;
        int lower = Math.min(height - 1, Math.max(0, y + up + 1)) * width;
        for (int x = 0; x < width; x++) {
          int l = Math.min(width - 1, Math.max(0, x + left));
          int r = Math.min(width - 1, Math.max(0, x + left + 1));
          to[y * width + x] +=
              ((1 - b) * ((1 - a) * from[upper + l] + a * from[upper + r])
                      + b * ((1 - a) * from[lower + l] + a * from[lower + r]))
                  / steps;
        }
      }
    }
    return to;
  }

  private static float[] blurred(float[] from, int width, int height, double sigma) {
    if (sigma <= 0) {
      return from;
    }
    int reach = (int) Math.ceil(3 * sigma);
    float[] weights = new float[2 * reach + 1];
    float sum = 0;
    for (int i = -reach; i <= reach; i++) {
      weights[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
      sum += weights[i + reach];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return along(along(from, width, height, weights, true), width, height, weights, false);
  }

  private static float[] along(float[] from, int width, int height, float[] weights, boolean rows) {
    int reach = weights.length / 2;
    float[] to = new float[from.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
          int u = rows ? Math.min(width - 1, Math.max(0, x + i)) : x;
          int v = rows ? y : Math.min(height - 1, Math.max(0, y + i));
          sum += weights[i + reach] * from[v * width + u];
        }
        to[y * width + x] = sum;
      }
    }
    return to;
  }

  /** Light that the numbers of a picture stand for (IEC 61966-2-1). */
  static final double[] LINEAR = new double[256];

  static {
    for (int i = 0; i < 256; i++) {
      double v = i / 255.0;
      LINEAR[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
  }

  private static final float[] SRGB = new float[1 << 14];

  static {
    for (int i = 0; i < SRGB.length; i++) {
      double v = (i + 0.5) / SRGB.length;
      SRGB[i] = (float) (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055);
    }
  }

  static float srgb(float linear) {
    return SRGB[Math.min(SRGB.length - 1, Math.max(0, (int) (linear * SRGB.length)))];
  }

  static byte[] jpeg(BufferedImage picture, int quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(quality / 100f);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
