package ellwand.file.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Converting;
import ellwand.file.job.AnyDesign;
import ellwand.file.job.StyleFile;
import ellwand.file.job.StyleWriter;
import ellwand.file.source.Folder;
import ellwand.job.Wear;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A style that is drawn as SVG and read again is the same; what is moved in the drawing moves. */
class StyleSvgTest {

  private static final Path JACKET = Path.of("sample-markers/weir-jacket/job.yaml");

  private static StyleFile back(byte[] svg) {
    return Converting.read("a.svg", svg).file();
  }

  private static String yaml(StyleFile file) {
    return new String(StyleWriter.bytes(file.design(), file.wear()), StandardCharsets.UTF_8);
  }

  @TestFactory
  Stream<DynamicTest> everySampleComesBackAsItWas() throws IOException {
    List<Path> samples;
    try (Stream<Path> all = Files.walk(Path.of("sample-markers"))) {
      samples = all.filter(p -> p.endsWith("job.yaml")).sorted().toList();
    }
    assertTrue(samples.size() > 5, samples::toString);
    return samples.stream()
        .map(
            path ->
                DynamicTest.dynamicTest(
                    path.toString(),
                    () -> {
                      StyleFile file = StyleFile.read(path.toString(), Folder.DISK);
                      assertEquals(yaml(file), yaml(back(StyleSvg.bytes(file))));
                    }));
  }

  @Property(tries = 40)
  void anyStyleComesBackAsItWas(@ForAll long seed) {
    byte[] written = StyleWriter.bytes(AnyDesign.of(new Random(seed)), Set.of(Wear.CHILDREN));
    StyleFile file = StyleFile.read("a.yaml", Folder.EMPTY.with("a.yaml", written));
    byte[] svg = StyleSvg.bytes(file);
    assertSameNumbers(yaml(file), yaml(back(svg)));
  }

  /** Word for word; numbers to a millionth of their unit. */
  private static void assertSameNumbers(String expected, String found) {
    String[] these = expected.split("(?=[\\s,\\[\\]])|(?<=[\\s,\\[\\]])");
    String[] those = found.split("(?=[\\s,\\[\\]])|(?<=[\\s,\\[\\]])");
    assertEquals(these.length, those.length, expected + "\n" + found);
    for (int i = 0; i < these.length; i++) {
      if (these[i].matches("-?\\d+\\.\\d+") && those[i].matches("-?\\d+(\\.\\d+)?")) {
        assertEquals(
            Double.parseDouble(these[i]), Double.parseDouble(those[i]), 1e-6, expected + found);
      } else {
        assertEquals(these[i], those[i], expected + "\n" + found);
      }
    }
  }

  @Test
  void theSameStyleGivesTheSameBytes() {
    StyleFile file = StyleFile.read(JACKET.toString(), Folder.DISK);
    assertEquals(
        new String(StyleSvg.bytes(file), StandardCharsets.UTF_8),
        new String(StyleSvg.bytes(back(StyleSvg.bytes(file))), StandardCharsets.UTF_8));
  }

  @Test
  void whatIsMovedInADrawingProgramMoves() {
    StyleFile file = StyleFile.read(JACKET.toString(), Folder.DISK);
    String svg = new String(StyleSvg.bytes(file), StandardCharsets.UTF_8);
    // A whole piece, turned and shifted: nothing changes but the last digits.
    String turned =
        svg.replace(
            "<g id='piece-5' class='piece'>",
            "<g id='piece-5' class='piece' transform='translate(700,300) rotate(90)'>");
    assertSameNumbers(yaml(file), yaml(back(turned.getBytes(StandardCharsets.UTF_8))));
    // One piece taken out.
    String without = svg.replaceAll("(?s)  <g id='piece-5'.*?</g>\n", "");
    assertEquals(
        yaml(file).replaceAll("(?s)    pocket:.*?    peplum:", "    peplum:"),
        yaml(back(without.getBytes(StandardCharsets.UTF_8))));
  }
}
