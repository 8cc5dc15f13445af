package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Ways through all places of the desk, by people who go about it otherwise. */
class JourneysInBrowserTest extends InBrowser {

  private static final List<String> PLACES =
      List.of("Pieces", "Cloths", "Table", "Order", "Paper", "New", "First steps");

  private static void replace(String css, String text, Keys then) {
    browser.type(css, Keys.chord(Keys.CONTROL, "a"), text, then);
  }

  private String file(String name) {
    try {
      return Files.readString(folder.resolve(name));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void throughAllPlacesWithTheKeyboardAlone() {
    press("beck tunic");
    browser.type(".edge[aria-label^='back, side seam']", Keys.ENTER);
    browser.type("aside input[name=at]", "8", Keys.ENTER);
    browser.waitFor(
        "the notch", () -> file("beck-tunic.yaml").contains("{edge: side seam, at: 8 cm}"));
    browser.type(".name[aria-label^='back,']", Keys.ENTER);
    press("Add a step");
    browser.type("form.step input[name=mark]", "pocket top");
    browser.type("form.step select[name=on]", "side seam");
    browser.type("form.step input[name=at]", "1/3", Keys.ENTER);
    browser.see(".point[aria-label='back, point pocket top']");

    press("Cloths");
    replace("section[aria-label='Cloth main'] input[data-at=width]", "155 cm", Keys.TAB);
    browser.waitFor("the width", () -> file("beck-tunic.yaml").contains("width: 155 cm"));

    press("Order");
    browser.type("input[name=colour]", "rust", Keys.ENTER);
    browser.type("input[aria-label='rust, size 98']", "2", Keys.TAB);
    browser.waitFor("the order", () -> browser.text("#place").contains("3 garments"));

    press("Paper");
    press("Show the pages");
    press("Next page");
    browser.waitFor("the second", () -> browser.text(".sheet").contains("Page 2 of"));
    press("Projector");
    browser.see("dialog .square");
    browser.type("dialog svg", "s");
    browser.see("dialog .piece");
    browser.type("dialog svg", Keys.ESCAPE);
    browser.waitFor(
        "it is over", () -> browser.driver().findElements(By.tagName("dialog")).isEmpty());

    press("New");
    press("First steps");
    browser.waitFor("the guide", () -> browser.text("#place").contains("ten minutes"));
    press("Pieces");
    press("Undo");
    browser.waitFor("undone", () -> !file("beck-tunic.yaml").contains("155 cm"));
  }

  /** Words as long as German has them leave every place within the page. */
  @Test
  void longWordsBreakNothing() throws IOException {
    String piece = "Vorderteilbelegverstaerkung mit Knopflochleiste";
    String cloth = "Oberstoffverstaerkungseinlagengewebe";
    browser.click("weir jacket");
    browser.see(".name");
    Files.writeString(
        folder.resolve("weir-jacket.yaml"),
        file("weir-jacket.yaml")
            .replace("main:", cloth + ":")
            .replace("pocket:", piece + ":")
            .replace("side seam", "Seitennahtverlaengerungszugabe")
            .replace("Weir jacket for", "Kinderjackenschnittmusterbogen fuer"));
    browser.driver().navigate().refresh();
    browser.see(".name[aria-label^='" + piece + "']");
    for (int width : new int[] {1280, 768}) {
      browser.size(width, 1024);
      for (String place : PLACES) {
        browser.click(place);
        browser.waitFor(place, () -> !browser.text("#place").isBlank());
        if (place.equals("Pieces")) {
          browser.type(".edge[aria-label*='Seitennaht']", Keys.ENTER);
        }
        assertEquals(
            Boolean.FALSE,
            browser.script("return document.documentElement.scrollWidth > innerWidth + 1"),
            place + " is wider than a page of " + width);
        browser.shot("long-" + width + "-" + place.toLowerCase());
      }
    }
  }

  /** Killed as by a power cut, started again: everything is there, the old lock is no hindrance. */
  @Test
  void aKilledDeskLosesNothing() throws IOException {
    desk.close();
    Process killed = process();
    try {
      browser.go(address(killed));
      browser.click("weir jacket");
      browser.type(".edge[aria-label^='back, side seam']", Keys.ENTER);
      replace("input[name=allowance]", "2.1 cm", Keys.ENTER);
      browser.waitFor("it is kept", () -> file("weir-jacket.yaml").contains("2.1 cm"));
      browser.click("Table");
      browser.click("Lay");
      browser.see(".copy");
    } finally {
      killed.destroyForcibly().onExit().join();
    }
    String slip = browser.text("#slip").replaceAll(" \\.\\.\\. searching", "");
    browser.click("Pieces");
    browser.waitFor("it is told", () -> browser.text("#says").contains("does not answer"));
    Process again = process();
    try {
      browser.go(address(again));
      browser.click("weir-jacket");
      browser.waitFor("the marker", () -> browser.text("#slip").contains("buy"));
      assertEquals(slip.split("lining")[0], browser.text("#slip").split("lining")[0]);
      browser.see(".edge[aria-label*='2.1 cm']");
      browser.click("Undo");
      browser.waitFor("and what was before", () -> !file("weir-jacket.yaml").contains("2.1 cm"));
    } finally {
      again.destroyForcibly().onExit().join();
    }
    open();
  }

  private Process process() throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            "ellwand.cli.Main",
            "desk",
            folder.toString(),
            "--no-browser")
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static String address(Process process) throws IOException {
    BufferedReader out = process.inputReader();
    String said = out.readLine();
    return said.substring(said.indexOf("http"));
  }

  @Test
  void aScannedPieceIsDrawnOverAndNamed() throws IOException {
    // 12 cm by 10 cm of pale paper on the dark lid of a scanner, at 100 dots per inch.
    BufferedImage scan = new BufferedImage(800, 700, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = scan.createGraphics();
    graphics.setColor(new Color(0x303236));
    graphics.fillRect(0, 0, 800, 700);
    graphics.setColor(new Color(0xF2F1EC));
    double perMm = 100 / 25.4;
    graphics.fill(new Rectangle2D.Double(150, 140, 120 * perMm, 100 * perMm));
    graphics.dispose();
    Path file = downloads.resolve("patch pocket.png");
    ImageIO.write(scan, "png", file.toFile());

    browser.type("input[name=photos]", file.toString());
    browser.type("input[name=dots]", "100", Keys.ENTER);
    browser.see(".photo .joint");
    browser.waitFor(
        "the picture is there",
        () ->
            (Boolean)
                browser.script(
                    "return performance.getEntriesByType('resource').some(e =>"
                        + " e.name.includes('photos/picture') && e.decodedBodySize > 999)"));
    browser.shot("photo");
    assertEquals(List.of(), browser.serious(), "the photo");
    assertEquals(List.of(100L, 100L, 120L, 120L), lengths());

    WebElement corner = browser.see(".joint[aria-label='corner 1']");
    double dotsPerMm = number("document.querySelector('.photo svg').getScreenCTM().a");
    new Actions(browser.driver())
        .clickAndHold(corner)
        .moveByOffset((int) Math.round(20 * dotsPerMm), 0)
        .release()
        .perform();
    browser.waitFor("it is dragged", () -> !lengths().equals(List.of(100L, 100L, 120L, 120L)));
    for (int i = 0; i < 3; i++) {
      browser.type(".joint[aria-label='corner 1']", Keys.ARROW_LEFT);
    }
    // The corner went 17 mm along one edge of 120 mm, which pulls the one of 100 mm aslant.
    List<List<Long>> either =
        List.of(List.of(100L, 101L, 103L, 120L), List.of(100L, 101L, 120L, 137L));
    assertTrue(either.contains(lengths()), lengths().toString());
    browser.shot("photo-dragged");

    browser.type("form input[aria-label^='Name of edge']", Keys.chord(Keys.CONTROL, "a"), "top");
    replace("input[name=called]", "patch pocket", Keys.TAB);
    browser.click("Go on");
    browser.see(".found");
    browser.click("Make it a style");
    browser.see(".edge[aria-label^='patch pocket, top']");
    browser.see(".edge[aria-label*='12.0 cm']");
  }

  /** Of all edges, mm, ascending. */
  private static List<Long> lengths() {
    return browser.driver().findElements(By.cssSelector(".length")).stream()
        .map(e -> Math.round(10 * Double.parseDouble(e.getText().replace(" cm", ""))))
        .sorted()
        .toList();
  }

  private static double number(String code) {
    return ((Number) browser.script("return " + code)).doubleValue();
  }

  @Test
  void everyNewPlaceIsForEverybody() {
    browser.click("garth waistcoat");
    browser.type(".name[aria-label^='altered front']", Keys.ENTER);
    browser.click("Add a step");
    browser.see("form.step");
    assertEquals(List.of(), browser.serious(), "a step");
    browser.type(".edge[aria-label^='back, ']", Keys.ENTER);
    browser.see("aside input[name=at]");
    assertEquals(List.of(), browser.serious(), "an edge");
    browser.click("Paper");
    browser.click("Show the pages");
    browser.see(".pages img");
    assertEquals(List.of(), browser.serious(), "pages");
    browser.click("First steps");
    browser.see(".guide img");
    assertEquals(List.of(), browser.serious(), "first steps");
  }
}
