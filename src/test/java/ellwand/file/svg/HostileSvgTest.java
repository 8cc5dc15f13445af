package ellwand.file.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Converting;
import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Files that mean harm, or are broken, are refused with a message that says where. */
class HostileSvgTest {

  private static final String OPEN = "<svg xmlns='http://www.w3.org/2000/svg' width='9in'>\n";

  private static void convert(byte[] svg) {
    Converting.read("a.svg", svg).outputs("a.yaml", "b.svg").get(0).bytes();
  }

  private static void assertRefused(String svg, String why) {
    InputException e =
        assertThrows(
            InputException.class, () -> convert(svg.getBytes(StandardCharsets.UTF_8)), why);
    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertTrue(e.getMessage().startsWith("a.svg"), e.getMessage());
  }

  @Test
  void whatRefersToOtherFilesIsNotLookedUp() throws IOException {
    Path secret = Files.createTempFile("secret", ".txt");
    Files.writeString(secret, "M0 0h90v90z");
    String dtd = "<!DOCTYPE svg [<!ENTITY x SYSTEM '" + secret.toUri() + "'>]>\n";
    assertRefused(dtd + OPEN + "<text>&x;</text></svg>", "it uses an entity");
    assertRefused(dtd + OPEN + "<path d='&x;'/></svg>", "it uses an entity");
    assertRefused(OPEN + "<use href='" + secret.toUri() + "#a'/></svg>", "no closed line in it");
    Files.delete(secret);
  }

  @Test
  void entitiesDoNotMultiply() {
    StringBuilder bomb = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 'ha'>\n");
    for (int i = 1; i < 30; i++) {
      bomb.append("<!ENTITY a%d '&a%d;&a%d;'>\n".formatted(i, i - 1, i - 1));
    }
    assertRefused(bomb + "]>" + OPEN + "<text>&a29;</text></svg>", "it uses an entity");
    String block = "<!DOCTYPE svg [<!ENTITY a '" + "ha".repeat(1_000) + "'>]>\n" + OPEN;
    assertRefused(block + "<text>" + "&a;".repeat(900) + "</text></svg>", "it uses an entity");
  }

  @Test
  void usesDoNotMultiplyOrGoRound() {
    assertRefused(OPEN + "<g id='a'><use href='#a'/></g></svg>", "a.svg:2: what it uses ends up");
    assertRefused(
        OPEN + "<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g></svg>",
        "ends up using itself");
    StringBuilder many = new StringBuilder(OPEN + "<defs><path id='u0' d='M0 0h9v9z'/>");
    for (int i = 1; i < 40; i++) {
      many.append(
          "<g id='u%d'><use href='#u%d'/><use href='#u%d'/></g>\n".formatted(i, i - 1, i - 1));
    }
    assertRefused(many + "</defs><use href='#u39'/></svg>", "more than 100,000 things");
    StringBuilder chain = new StringBuilder(OPEN + "<defs><path id='u0' d='M0 0h9v9z'/>");
    for (int i = 1; i < 20000; i++) {
      chain.append("<use id='u%d' href='#u%d'/>\n".formatted(i, i - 1));
    }
    assertRefused(chain + "</defs><use href='#u19999'/></svg>", "more than 100 uses");
  }

  @Test
  void numbersBeyondAllMeasureAreRefused() {
    assertRefused(OPEN + "<path d='M0 0h1e300v9z'/></svg>", "a.svg:2: path: a point of it lies");
    assertRefused(OPEN + "<path d='M0 0h1e400v9z'/></svg>", "a number is expected at '1e400v9z'");
    assertRefused(OPEN + "<path d='M0 0hNaNv9z'/></svg>", "a number is expected at 'NaNv9z'");
    assertRefused(OPEN + "<path d='M0 0A1e200 1e200 0 0 1 9 9z'/></svg>", "more than 100 m away");
    assertRefused(
        OPEN
            + "<g transform='scale(1e308)'><g transform='scale(1e308)'>"
            + "<path d='M1 0h9v9z'/></g></g></svg>",
        "more than 100 m away");
    assertRefused(
        OPEN + "<g transform='turn(3)'/></svg>", "its transform 'turn(3)' cannot be read");
    assertRefused(OPEN + "<circle r='5em'/></svg>", "r '5em' is no length that is read");
    assertRefused(
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 0 0'/>", "its viewBox is no place");
  }

  @Test
  void depthAndNumberHaveLimits() {
    assertRefused(OPEN + "<g>".repeat(100_000), "more than 200 deep");
    assertRefused(OPEN + "<g/>".repeat(300_000) + "</svg>", "more than 200,000 elements");
    assertRefused(
        OPEN + "<path d='M0 0" + "h1v1h-1v-1".repeat(250_000) + "z'/></svg>",
        "more than 200,000 points");
    assertRefused(OPEN + "<path d='M0 0" + "h1v1".repeat(2_000) + "z'/></svg>", "has 4,001 points");
    assertRefused(OPEN + "<rect width='99' height='99'/>".repeat(3), "this is no whole XML file");
  }

  /** Both ends of each of the two lines at the end of a third are nearer than a gap. */
  @Test
  void linesShorterThanAGapDoNotLeadRoundForEver() {
    convert(
        (OPEN
                + "<path d='M200 200h200v200h-200z'/>"
                + "<path d='M10 10h30'/><path d='M40 10h1'/><path d='M41 10l1 0.1'/></svg>")
            .getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void manyOutlinesAreRefused() {
    StringBuilder many = new StringBuilder(OPEN);
    for (int i = 0; i < 40_000; i++) {
      many.append(
          "<rect x='%d' y='%d' width='90' height='90'/>".formatted(i % 250 * 95, i / 250 * 95));
    }
    assertRefused(many + "</svg>", "more than 500 closed outlines");
  }

  @Test
  void anOutlineThatCrossesItselfIsNamed() {
    assertRefused(
        OPEN + "\n<path id='bow tie' d='M0 0l300 300v-300l-300 250z'/></svg>",
        "a.svg:3: piece bow tie: the outline crosses or touches itself");
  }

  @Test
  void scriptsAndLinksAreNotFollowed() {
    convert(
        (OPEN
                + "<script>alert(1)</script><a href='http://example.org/'><rect width='99'"
                + " height='99' onclick='alert(1)'/></a><image"
                + " href='http://example.org/a.png'/></svg>")
            .getBytes(StandardCharsets.UTF_8));
  }

  /** Whatever becomes of a file, it is read or refused, and nothing else. */
  @Property(tries = 300)
  void brokenFilesAreReadOrRefused(@ForAll long seed) throws IOException {
    Random random = new Random(seed);
    String name = random.nextBoolean() ? "layers-in-mm.svg" : "classes-in-px.svg";
    byte[] bytes =
        Files.readAllBytes(Path.of("src/test/resources/ellwand/file/drawings").resolve(name));
    byte[] broken = Broken.bytes(bytes, random);
    try {
      convert(broken);
    } catch (InputException e) {
      assertEquals(0, e.problems().stream().filter(p -> p.file().isEmpty()).count());
    }
  }
}
