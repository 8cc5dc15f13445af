package ellwand.draw.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Pictures that the JDK reads again. */
class PngWriterTest {

  @Property(tries = 40)
  void everyPixelIsKept(
      @ForAll @IntRange(min = 1, max = 60) int width,
      @ForAll @IntRange(min = 1, max = 60) int height,
      @ForAll long seed)
      throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < height; y++) {
        image.setRGB(x, y, random.nextInt());
      }
    }
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngWriter.bytes(image)));
    assertEquals(width, read.getWidth());
    assertEquals(height, read.getHeight());
    assertArrayEquals(
        image.getRGB(0, 0, width, height, null, 0, width),
        read.getRGB(0, 0, width, height, null, 0, width));
  }
}
