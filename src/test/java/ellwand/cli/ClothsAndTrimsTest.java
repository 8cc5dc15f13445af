package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A skirt whose back is a pair in wool and whole in the lining, and what to buy for it. */
class ClothsAndTrimsTest {

  private static final Path SKIRT = Path.of("src/test/resources/ellwand/file/skirt.yaml");

  @TempDir private Path out;

  @Test
  void isLaidCheckedAndBoughtFor() throws IOException {
    Ran lay = Ran.of("lay", SKIRT, "--effort", "50steps", "--out", out);
    assertEquals(0, lay.code(), lay.err());
    for (String cloth : new String[] {"wool", "lining"}) {
      Ran check = Ran.of("check", out.resolve(cloth + ".marker.json"));
      assertEquals(0, check.code(), check.out());
    }
    assertTrue(lay.out().contains("4 x back"), lay.out());
    assertTrue(lay.out().contains("2 x back"), lay.out());
    String list = Files.readString(out.resolve("shopping-list.txt"));
    // (2 x 15 + 2 x 15) x 85 % + 2 cm are 53 cm, for two garments 1.06 m, in steps of 10 cm.
    assertTrue(list.contains("1.10 m"), list);
    // Two zips as long as the side seam, the root of 36 x 36 + 5 x 5.
    assertTrue(list.contains("zip, 36.3 cm long"), list);
    // 4 buttons in a pack of 6; 1.32 + 4.80 + 1.80.
    assertTrue(list.contains("trims 7.92 EUR"), list);
  }

  @Test
  void theLengthOfEveryEdgeCanBeRead() {
    Ran check = Ran.of("check", SKIRT, "--lengths");
    assertEquals(0, check.code(), check.err());
    assertTrue(
        check
            .out()
            .startsWith(
                "front, size 110, half: centre front 36.0 cm, waist 15.0 cm, side 36.3 cm, hem"
                    + " 20.0 cm"),
        check.out());
    assertTrue(Ran.of("check", SKIRT, "--lengths", "--json").out().contains("\"sewnMm\""));
  }

  @Test
  void bothFormsAreDrawn() throws IOException {
    Path svg = out.resolve("pieces.svg");
    assertEquals(0, Ran.of("draw", SKIRT, "--out", svg).code());
    String drawn = Files.readString(svg);
    assertTrue(drawn.contains("back (wool), size 110"), drawn);
    assertTrue(drawn.contains("back (lining), size 110"), drawn);
  }

  @Test
  void aCopyThatLiesOnTheFoldOnlyHasNoSeamThere() throws IOException {
    Path job = out.resolve("copy.yaml");
    String facing = "    facing: {cut: {lining: 1 on fold}, from: back}\n";
    Files.writeString(job, Files.readString(SKIRT).replace("  trims:\n", facing + "  trims:\n"));
    Ran check = Ran.of("check", job);
    assertEquals(0, check.code(), check.err());
    Path always = out.resolve("always.yaml");
    Files.writeString(always, Files.readString(SKIRT).replace("wool: pair", "wool: 1 on fold"));
    Ran refused = Ran.of("check", always);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("a fold edge has no seam"), refused.err());
  }
}
