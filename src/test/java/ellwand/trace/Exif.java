package ellwand.trace;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;

/** Writes what a camera says of a photo into a JPEG file, by Exif 2.3 (JEITA CP-3451C). */
final class Exif {

  private static final int SHORT = 3;
  private static final int LONG = 4;

  private Exif() {}

  /**
   * The same JPEG with an APP1 segment.
   *
   * @param orientation 1 to 8
   * @param focal35Mm equivalent focal length on 35 mm film
   */
  static byte[] in(byte[] jpeg, int orientation, int focal35Mm) {
    ByteBuffer tiff = ByteBuffer.allocate(56);
    tiff.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    entry(tiff, 0x0112, SHORT, orientation << 16);
    entry(tiff, 0x8769, LONG, 38);
    tiff.putInt(0);
    tiff.putShort((short) 1);
    entry(tiff, 0xA405, SHORT, focal35Mm << 16);
    tiff.putInt(0);
    byte[] body = tiff.array();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    int length = 2 + 6 + body.length;
    out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
    out.writeBytes(new byte[] {'E', 'x', 'i', 'f', 0, 0});
    out.writeBytes(body);
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  private static void entry(ByteBuffer tiff, int tag, int type, int value) {
    tiff.putShort((short) tag).putShort((short) type).putInt(1).putInt(value);
  }
}
