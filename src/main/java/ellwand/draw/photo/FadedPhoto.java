package ellwand.draw.photo;

import ellwand.draw.sheet.Backdrop;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.trace.View;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Parts of a straightened picture as JPEG. */
public final class FadedPhoto {

  /** Enough to look at on a page, pixels. */
  private static final int LONGEST = 1600;

  private static final float QUALITY = 0.8f;

  /** Mixed with so much white that lines over it are seen. */
  private static final float WHITE = 0.4f;

  private FadedPhoto() {}

  /** What of a picture lies in a box, faded, small enough to look at. */
  static Backdrop under(View straightened, Box box) {
    BufferedImage picture = straightened.picture();
    Point upper = straightened.mapping().pixelAt(new Point(box.minX(), box.maxY()));
    Point lower = straightened.mapping().pixelAt(new Point(box.maxX(), box.minY()));
    int left = Math.max(0, (int) upper.x());
    int top = Math.max(0, (int) upper.y());
    int right = Math.min(picture.getWidth() - 1, (int) Math.ceil(lower.x()));
    int bottom = Math.min(picture.getHeight() - 1, (int) Math.ceil(lower.y()));
    Point first = straightened.mapping().mmAt(new Point(left - 0.5, top - 0.5));
    Point last = straightened.mapping().mmAt(new Point(right + 0.5, bottom + 0.5));
    double scale = Math.min(1, (double) LONGEST / Math.max(right - left + 1, bottom - top + 1));
    return new Backdrop(
        new Box(first.x(), last.y(), last.x(), first.y()),
        jpeg(picture.getSubimage(left, top, right - left + 1, bottom - top + 1), scale, WHITE));
  }

  /** A whole picture; what no photo shows is white. */
  public static byte[] jpeg(BufferedImage picture) {
    return jpeg(picture, 1, 0);
  }

  private static byte[] jpeg(BufferedImage picture, double scale, float white) {
    int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = small.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    graphics.drawImage(picture, 0, 0, width, height, null);
    graphics.setColor(new Color(1, 1, 1, white));
    graphics.fillRect(0, 0, width, height);
    graphics.dispose();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(QUALITY);
      writer.setOutput(out);
      writer.write(null, new IIOImage(small, null, null), how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
