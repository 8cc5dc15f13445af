package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PngPicture;
import ellwand.draw.sheet.SvgWriter;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.Test;

class PictureTest {

  private static final int BLOCK = 24;

  @Test
  void svgShownByBatikLooksLikeThePicture() throws Exception {
    Marker marker = Samples.jacket();
    MarkerSheet sheet =
        new MarkerSheet(marker, Samples.figures(marker), Samples.head(marker), Unit.CM);
    Drawing drawing = MarkerDrawing.drawing(sheet, MarkerDrawing.fit(sheet, 0), 1);
    BufferedImage ours = image(PngPicture.of(drawing, 4, 72));
    int margin = (int) Math.round(Paper.MARGIN_MM / 25.4 * 72);
    int width = (int) Math.round(drawing.frame().length() / 4 / 25.4 * 72);
    int height = (int) Math.round(drawing.frame().width() / 4 / 25.4 * 72);
    BufferedImage batik = image(shown(SvgWriter.bytes(drawing), width));
    assertEquals(height, batik.getHeight(), 2);
    // Type and smoothing differ, so blocks of pixels are compared.
    for (int x = 0; x + BLOCK <= width; x += BLOCK) {
      for (int y = 0; y + BLOCK <= Math.min(height, batik.getHeight()); y += BLOCK) {
        double[] a = mean(ours, x + margin, y + margin);
        double[] b = mean(batik, x, y);
        for (int i = 0; i < 3; i++) {
          assertEquals(a[i], b[i], 25, "at " + x + ", " + y);
        }
      }
    }
  }

  @Test
  void pictureIsOfASensibleSize() throws Exception {
    for (Marker marker : List.of(Samples.jacket(), Samples.overalls())) {
      byte[] png =
          MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).png();
      BufferedImage image = image(png);
      // A4 at 200 dots to the inch: 1654 x 2339.
      assertTrue(image.getWidth() >= 1500 && image.getWidth() <= 2340, "" + image.getWidth());
      assertTrue(image.getHeight() >= 500 && image.getHeight() <= 2340, "" + image.getHeight());
      assertTrue(png.length < 1_000_000);
    }
  }

  private static byte[] shown(byte[] svg, int width) throws Exception {
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.addTranscodingHint(PNGTranscoder.KEY_WIDTH, (float) width);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    transcoder.transcode(
        new TranscoderInput(new ByteArrayInputStream(svg)), new TranscoderOutput(png));
    return png.toByteArray();
  }

  private static BufferedImage image(byte[] png) throws Exception {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  private static double[] mean(BufferedImage image, int left, int top) {
    double[] sum = new double[3];
    for (int x = left; x < left + BLOCK; x++) {
      for (int y = top; y < top + BLOCK; y++) {
        int rgb = image.getRGB(x, y);
        sum[0] += rgb >> 16 & 255;
        sum[1] += rgb >> 8 & 255;
        sum[2] += rgb & 255;
      }
    }
    for (int i = 0; i < 3; i++) {
      sum[i] /= BLOCK * BLOCK;
    }
    return sum;
  }
}
