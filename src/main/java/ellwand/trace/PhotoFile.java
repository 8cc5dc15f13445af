package ellwand.trace;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.jpeg.JpegDirectory;
import ellwand.problem.InputException;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A photo or scan as decoded.
 *
 * @param file as the user named it
 * @param picture upright, of type {@link BufferedImage#TYPE_INT_RGB}
 * @param side so many of the file's pixels each way became one
 * @param camera the same for photos of one camera at one zoom and size, as far as the file says
 * @param focalShare focal length as a share of the picture's diagonal, where the file says it
 */
record PhotoFile(
    String file, BufferedImage picture, int side, String camera, OptionalDouble focalShare) {

  /** More is refused before it is decoded: it takes up memory and shows no more. */
  private static final long MOST_PIXELS = 100_000_000;

  /** Of a progressive JPEG fewer, since all of it is in memory before its first pixel is known. */
  private static final long MOST_PROGRESSIVE = 50_000_000;

  /** Beyond, squares of pixels become one: 16 megapixels tell tenths of a mm on a table. */
  private static final long MOST_KEPT = 16_500_000;

  /** So many are decoded at once where they become fewer. */
  private static final long MOST_AT_ONCE = 26_000_000;

  private static final int LEAST_SIDE = 300;

  /** The frame that begins a progressive JPEG, ISO/IEC 10918-1: SOF 2. */
  private static final int PROGRESSIVE = 2;

  /** Diagonal of 35 mm film, 24 x 36 mm, that EXIF's equivalent focal length refers to. */
  private static final double FILM_DIAGONAL_MM = Math.hypot(24, 36);

  /** Whether a file is a picture that can be decoded, by its content. */
  static boolean looksLike(byte[] bytes) {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      return ImageIO.getImageReaders(in).hasNext();
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * Decodes a picture and turns it upright as its EXIF says.
   *
   * @throws InputException if it is none, damaged, too large or too small
   */
  static PhotoFile read(String file, byte[] bytes) {
    Optional<Metadata> said = metadata(bytes);
    boolean progressive =
        said.map(m -> m.getFirstDirectoryOfType(JpegDirectory.class))
            .map(d -> d.getInteger(JpegDirectory.TAG_COMPRESSION_TYPE))
            .filter(process -> process == PROGRESSIVE)
            .isPresent();
    Decoded decoded =
        decoded(bytes, progressive ? MOST_PROGRESSIVE : MOST_PIXELS, MOST_KEPT, MOST_AT_ONCE);
    BufferedImage upright = turned(decoded.picture, orientation(said));
    int width = upright.getWidth();
    int height = upright.getHeight();
    String camera =
        text(said, ExifIFD0Directory.class, ExifDirectoryBase.TAG_MAKE)
            + text(said, ExifIFD0Directory.class, ExifDirectoryBase.TAG_MODEL)
            + text(said, ExifSubIFDDirectory.class, ExifDirectoryBase.TAG_FOCAL_LENGTH)
            + text(said, ExifSubIFDDirectory.class, ExifDirectoryBase.TAG_DIGITAL_ZOOM_RATIO)
            + width
            + "x"
            + height;
    return new PhotoFile(file, upright, decoded.side, camera, focalShare(said));
  }

  /** As red, green and blue in whole numbers; squares of so many pixels each way became one. */
  record Decoded(BufferedImage picture, int side) {}

  /**
   * As it is stored.
   *
   * @param most pixels that are decoded at all
   * @param mostKept of a picture with more pixels, squares of them become one, their mean
   * @param mostAtOnce what is decoded of such a picture at once
   */
  static Decoded decoded(byte[] bytes, long most, long mostKept, long mostAtOnce) {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw InputException.of(
            bytes.length == 0 ? "the file is empty" : "this is no picture that can be read",
            "Name a photo or scan as JPEG, PNG, TIFF or BMP");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        InputException.unless(
            pixels <= most,
            "the picture has %d megapixels, and %d are the most%s"
                .formatted(
                    (pixels + 999_999) / 1_000_000,
                    most / 1_000_000,
                    most < MOST_PIXELS ? " of a progressive JPEG" : ""),
            "Take the photo with the camera's usual size, 12 megapixels or so, or scan with fewer"
                + " dpi");
        InputException.unless(
            Math.min(reader.getWidth(0), reader.getHeight(0)) >= LEAST_SIDE,
            "the picture is only %d x %d pixels".formatted(reader.getWidth(0), reader.getHeight(0)),
            "Take it as the camera stores it, not as a preview");
        int side = Math.max(1, (int) Math.ceil(Math.sqrt((double) pixels / mostKept)));
        return new Decoded(
            side == 1 ? plain(reader.read(0)) : fewer(reader, side, mostAtOnce), side);
      } finally {
        reader.dispose();
      }
    } catch (IOException | IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
      throw InputException.of(
          "the picture is damaged, or of a kind that is not read here",
          "Save it anew as JPEG or PNG with any picture program");
    }
  }

  /** Decoded in strips, so that the whole is never in memory: of every square the mean. */
  private static BufferedImage fewer(ImageReader reader, int side, long mostAtOnce)
      throws IOException {
    int wide = reader.getWidth(0);
    int width = wide / side;
    int height = reader.getHeight(0) / side;
    BufferedImage fewer = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int strip = (int) Math.max(1, mostAtOnce / wide / side);
    int[] from = new int[wide * side];
    int[] to = new int[width];
    for (int top = 0; top < height; top += strip) {
      int rows = Math.min(strip, height - top);
      ImageReadParam part = reader.getDefaultReadParam();
      part.setSourceRegion(new Rectangle(0, top * side, wide, rows * side));
      BufferedImage read = plain(reader.read(0, part));
      for (int y = 0; y < rows; y++) {
        read.getRGB(0, y * side, wide, side, from, 0, wide);
        for (int x = 0; x < width; x++) {
          to[x] = mean(from, wide, x * side, side);
        }
        fewer.setRGB(0, top + y, width, 1, to, 0, width);
      }
    }
    return fewer;
  }

  private static int mean(int[] rows, int wide, int left, int side) {
    int red = 0;
    int green = 0;
    int blue = 0;
    for (int y = 0; y < side; y++) {
      for (int x = left; x < left + side; x++) {
        int rgb = rows[y * wide + x];
        red += rgb >> 16 & 255;
        green += rgb >> 8 & 255;
        blue += rgb & 255;
      }
    }
    int all = side * side;
    return (red + all / 2) / all << 16 | (green + all / 2) / all << 8 | (blue + all / 2) / all;
  }

  /** What is transparent lies on white. */
  private static BufferedImage plain(BufferedImage picture) {
    if (picture.getType() == BufferedImage.TYPE_INT_RGB) {
      return picture;
    }
    BufferedImage plain =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = plain.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, plain.getWidth(), plain.getHeight());
    graphics.drawImage(picture, 0, 0, null);
    graphics.dispose();
    return plain;
  }

  private static Optional<Metadata> metadata(byte[] bytes) {
    try {
      return Optional.of(ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes)));
    } catch (ImageProcessingException | IOException e) {
      return Optional.empty();
    }
  }

  private static <D extends Directory> String text(
      Optional<Metadata> said, Class<D> directory, int tag) {
    return said.map(m -> m.getFirstDirectoryOfType(directory))
        .map(d -> d.getString(tag))
        .map(t -> t + " ")
        .orElse("");
  }

  private static OptionalDouble focalShare(Optional<Metadata> said) {
    Integer mm =
        said.map(m -> m.getFirstDirectoryOfType(ExifSubIFDDirectory.class))
            .map(d -> d.getInteger(ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH))
            .orElse(0);
    return mm >= 8 && mm <= 400 ? OptionalDouble.of(mm / FILM_DIAGONAL_MM) : OptionalDouble.empty();
  }

  /** By EXIF: 1 for upright, up to 8 for the other quarter turns and mirrored ones. */
  private static int orientation(Optional<Metadata> said) {
    Integer value =
        said.map(m -> m.getFirstDirectoryOfType(ExifIFD0Directory.class))
            .map(d -> d.getInteger(ExifDirectoryBase.TAG_ORIENTATION))
            .orElse(1);
    return value >= 1 && value <= 8 ? value : 1;
  }

  private static BufferedImage turned(BufferedImage from, int orientation) {
    if (orientation == 1) {
      return from;
    }
    int width = from.getWidth();
    int height = from.getHeight();
    boolean onSide = orientation >= 5;
    BufferedImage to =
        new BufferedImage(
            onSide ? height : width, onSide ? width : height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int right = width - 1 - x;
        int below = height - 1 - y;
        int rgb = from.getRGB(x, y);
        switch (orientation) {
          case 2 -> to.setRGB(right, y, rgb);
          case 3 -> to.setRGB(right, below, rgb);
          case 4 -> to.setRGB(x, below, rgb);
          case 5 -> to.setRGB(y, x, rgb);
          case 6 -> to.setRGB(below, x, rgb);
          case 7 -> to.setRGB(below, right, rgb);
          default -> to.setRGB(y, right, rgb);
        }
      }
    }
    return to;
  }
}
