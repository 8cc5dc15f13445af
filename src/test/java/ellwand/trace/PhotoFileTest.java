package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoFileTest {

  private static final int WIDTH = 400;
  private static final int HEIGHT = 320;

  /** White with its upper left quarter black. */
  private static BufferedImage corner() {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, WIDTH, HEIGHT);
    graphics.setColor(Color.BLACK);
    graphics.fillRect(0, 0, WIDTH / 2, HEIGHT / 2);
    return picture;
  }

  private static byte[] jpeg() {
    return Film.jpeg(corner(), 90);
  }

  private static boolean black(BufferedImage picture, double x, double y) {
    int rgb = picture.getRGB((int) (x * picture.getWidth()), (int) (y * picture.getHeight()));
    return (rgb & 255) < 128;
  }

  /**
   * Where the stored picture's first row and column are seen, by Exif 2.3, tag Orientation: 6 has
   * the first row on the right and the first column at the top.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void isTurnedUpright(int orientation) {
    PhotoFile photo = PhotoFile.read("photo.jpg", Exif.in(jpeg(), orientation, 26));
    boolean right = orientation == 2 || orientation == 3 || orientation == 6 || orientation == 7;
    boolean below = orientation == 3 || orientation == 4 || orientation == 7 || orientation == 8;
    assertEquals(orientation >= 5 ? HEIGHT : WIDTH, photo.picture().getWidth());
    for (double x : new double[] {0.25, 0.75}) {
      for (double y : new double[] {0.25, 0.75}) {
        boolean expected = x > 0.5 == right && y > 0.5 == below;
        assertEquals(expected, black(photo.picture(), x, y), x + "," + y);
      }
    }
  }

  @Test
  void theFocalLengthIsToldAsAShareOfTheDiagonal() {
    PhotoFile photo = PhotoFile.read("photo.jpg", Exif.in(jpeg(), 1, 26));
    // The diagonal of 24 x 36 mm is 43.27 mm.
    assertEquals(26 / 43.27, photo.focalShare().orElseThrow(), 1e-4);
    assertTrue(PhotoFile.read("photo.jpg", jpeg()).focalShare().isEmpty());
  }

  @Test
  void whatIsNoPictureIsRefused() {
    byte[] words = "these are words".getBytes(StandardCharsets.UTF_8);
    assertFalse(Photos.looksLike(words));
    assertTrue(Photos.looksLike(jpeg()));
    assertRefused(words, "no picture");
    assertRefused(new byte[0], "empty");
    assertRefused(Film.jpeg(new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB), 80), "200 x");
  }

  /** 20,000 x 20,000 pixels would take 1.6 GB; the tests have less, and the file is tiny. */
  @Test
  void aHugePictureIsRefusedBeforeItIsDecoded() {
    byte[] bomb = png(20_000, 20_000);
    assertTrue(bomb.length < 2000);
    assertRefused(bomb, "400 megapixels");
  }

  /** Which is in memory as a whole before any of it is decoded. */
  @Test
  void aLargeProgressiveJpegIsRefusedBeforeItIsDecoded() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(to);
      writer.write(null, new IIOImage(corner(), null, null), how);
    }
    byte[] bytes = out.toByteArray();
    assertEquals(WIDTH, PhotoFile.read("photo.jpg", bytes).picture().getWidth());
    // The frame's head, ISO/IEC 10918-1: FF C2, length, precision, then height and width.
    int frame = 0;
    while ((bytes[frame] & 255) != 0xFF || (bytes[frame + 1] & 255) != 0xC2) {
      frame++;
    }
    ByteBuffer.wrap(bytes).putShort(frame + 5, (short) 9_000).putShort(frame + 7, (short) 6_000);
    assertRefused(bytes, "54 megapixels, and 50 are the most of a progressive JPEG");
  }

  private static void assertRefused(byte[] bytes, String words) {
    InputException refused =
        assertThrows(InputException.class, () -> PhotoFile.read("photo.jpg", bytes));
    assertTrue(refused.getMessage().contains(words), refused.getMessage());
  }

  /** By the PNG specification (ISO/IEC 15948), with next to no picture in it. */
  private static byte[] png(int width, int height) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 137, 80, 78, 71, 13, 10, 26, 10});
    byte[] head = ByteBuffer.allocate(13).putInt(width).putInt(height).put((byte) 8).array();
    chunk(out, "IHDR", head);
    Deflater deflater = new Deflater();
    deflater.setInput(new byte[10_000]);
    deflater.finish();
    byte[] data = new byte[200];
    chunk(out, "IDAT", Arrays.copyOf(data, deflater.deflate(data)));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String kind, byte[] data) {
    byte[] name = kind.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(name);
    sum.update(data);
    out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
    out.writeBytes(name);
    out.writeBytes(data);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
  }

  /** Squares of 3 by 3 in strips of 2 rows of them; what is left at the sides is cut off. */
  @Test
  void aLargePictureIsReadInStripsOfFewerPixels() throws IOException {
    BufferedImage large = new BufferedImage(1001, 700, BufferedImage.TYPE_3BYTE_BGR);
    Random dice = new Random(3);
    for (int y = 0; y < 700; y++) {
      for (int x = 0; x < 1001; x++) {
        large.setRGB(x, y, dice.nextInt(0x1000000));
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(large, "png", out);
    PhotoFile.Decoded read = PhotoFile.decoded(out.toByteArray(), 1_000_000, 80_000, 6100);
    assertEquals(3, read.side());
    BufferedImage fewer = read.picture();
    assertEquals(333, fewer.getWidth());
    assertEquals(233, fewer.getHeight());
    for (int at : new int[] {0, 1, 100, 232}) {
      double sum = 0;
      for (int i = 0; i < 9; i++) {
        sum += large.getRGB(3 * at + i % 3, 3 * at + i / 3) & 255;
      }
      assertEquals(sum / 9, fewer.getRGB(at, at) & 255, 0.51);
    }
  }

  @Test
  void aTransparentPngLiesOnWhite() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(400, 400, BufferedImage.TYPE_INT_ARGB), "png", out);
    PhotoFile photo = PhotoFile.read("scan.png", out.toByteArray());
    assertEquals(0xFFFFFF, photo.picture().getRGB(10, 10) & 0xFFFFFF);
  }

  /** Whatever bytes are broken: a picture or a refusal, and nothing else. */
  @Property(tries = 60)
  void brokenFilesAreRefusedOrRead(
      @ForAll @IntRange(min = 0, max = 5000) int at,
      @ForAll byte value,
      @ForAll @IntRange(min = 0, max = 100) int percentKept) {
    byte[] bytes = Exif.in(jpeg(), 6, 26);
    bytes[at % bytes.length] = value;
    bytes[at * 31 % bytes.length] = (byte) (value + 1);
    byte[] cut = Arrays.copyOf(bytes, bytes.length * percentKept / 100);
    try {
      PhotoFile.read("photo.jpg", cut);
    } catch (InputException refused) {
      assertFalse(refused.problems().isEmpty());
    }
  }
}
