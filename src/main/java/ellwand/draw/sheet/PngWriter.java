package ellwand.draw.sheet;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes a picture of opaque colours as PNG (ISO/IEC 15948). Drawings have large even areas, which
 * come out as small without filters; the JDK's writer spends most of its time on trying these, and
 * a good while on finding itself.
 */
final class PngWriter {

  private static final byte[] SIGNATURE = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};
  private static final int BITS = 8;
  private static final int TRUECOLOUR = 2;
  private static final int BUFFER = 1 << 16;

  private PngWriter() {}

  /**
   * @param image of type {@link BufferedImage#TYPE_INT_RGB}
   */
  static byte[] bytes(BufferedImage image) throws IOException {
    if (image.getType() != BufferedImage.TYPE_INT_RGB) {
      throw new IllegalArgumentException("a picture of type " + image.getType());
    }
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(SIGNATURE);
    chunk(file, "IHDR", header(image));
    chunk(file, "IDAT", rows(image));
    chunk(file, "IEND", new byte[0]);
    return file.toByteArray();
  }

  private static byte[] header(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeInt(image.getWidth());
    out.writeInt(image.getHeight());
    // Compression, filters and order of rows have one usual value each, 0.
    out.write(new byte[] {BITS, TRUECOLOUR, 0, 0, 0});
    return bytes.toByteArray();
  }

  /** Each row begins with its filter, which is none. */
  private static byte[] rows(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    int[] pixels = new int[image.getWidth()];
    byte[] row = new byte[1 + 3 * pixels.length];
    Deflater deflater = new Deflater();
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, BUFFER)) {
      for (int y = 0; y < image.getHeight(); y++) {
        image.getRaster().getDataElements(0, y, pixels.length, 1, pixels);
        for (int x = 0; x < pixels.length; x++) {
          row[3 * x + 1] = (byte) (pixels[x] >> 16);
          row[3 * x + 2] = (byte) (pixels[x] >> 8);
          row[3 * x + 3] = (byte) pixels[x];
        }
        out.write(row);
      }
    } finally {
      deflater.end();
    }
    return bytes.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream file, String name, byte[] content)
      throws IOException {
    byte[] type = name.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(type);
    sum.update(content);
    DataOutputStream out = new DataOutputStream(file);
    out.writeInt(content.length);
    out.write(type);
    out.write(content);
    out.writeInt((int) sum.getValue());
  }
}
