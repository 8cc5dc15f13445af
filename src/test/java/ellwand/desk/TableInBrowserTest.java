package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;

/** The cutter's hands on the table. */
class TableInBrowserTest extends InBrowser {

  private static final String RIGHT = "Every rule is kept";
  private static final String WRONG = "This cannot be cut";

  private void laid(String cloth) {
    begin();
    lay(cloth);
  }

  /** As the server has it. */
  private JsonNode marker(String cloth) {
    for (JsonNode table : Visitor.of(desk).get("/job/tables?name=weir-jacket.yaml").json()) {
      if (table.at("/goods/name").asText().equals(cloth)) {
        return table.path("marker");
      }
    }
    throw new AssertionError("there is no " + cloth);
  }

  private static WebElement copy(int number) {
    return browser.see("[data-copy='" + number + "']");
  }

  private static void pick(int number) {
    browser.over(copy(number)).click().perform();
  }

  private static void waitForWords(String words) {
    browser.waitFor(words, () -> browser.text("#place").contains(words));
  }

  private static int count(String css) {
    return browser.driver().findElements(By.cssSelector(css)).size();
  }

  private static void waitForCount(String css, int number) {
    browser.waitFor(number + " " + css, () -> count(css) == number);
  }

  private static boolean samePlace(JsonNode one, JsonNode other) {
    return one.path("x").equals(other.path("x")) && one.path("y").equals(other.path("y"));
  }

  private static void dragOnto(int number, int other) {
    browser.over(copy(number)).keyDown(Keys.ALT).clickAndHold().perform();
    browser.over(copy(other)).release().keyUp(Keys.ALT).perform();
  }

  @Test
  void whatIsPinnedStaysWhileTheRestIsTidied() {
    laid("main");
    JsonNode before = marker("main");
    pick(3);
    browser.click("Pin");
    browser.see(".copy.pinned .pin");
    assertTrue(copy(3).getAttribute("aria-label").contains("pinned"));
    copy(3).sendKeys(Keys.ARROW_RIGHT);
    browser.waitFor("it is told", () -> browser.text("#says").contains("is pinned"));

    dragOnto(4, 5);
    waitForWords(WRONG);
    browser.shot("table-overlap");
    browser.click("Tidy from here");
    waitForWords(RIGHT);
    browser.waitFor(
        "the search can be ended",
        () ->
            browser.driver().findElements(By.xpath("//button[.='Keep this one']")).stream()
                .peek(WebElement::click)
                .findAny()
                .isEmpty());
    JsonNode tidied = marker("main");
    assertTrue(samePlace(before.at("/copies/3"), tidied.at("/copies/3")));
    assertEquals("[3]", tidied.path("pinned").toString());

    browser.driver().navigate().refresh();
    browser.see(".copy.pinned");
    desk.close();
    open();
    browser.click("weir-jacket");
    browser.click("Table");
    browser.see(".copy.pinned");
    assertEquals("[3]", marker("main").path("pinned").toString());
  }

  @Test
  void twoChangePlacesAndGoBack() {
    laid("lining");
    JsonNode before = marker("lining").path("copies");
    pick(0);
    browser.click("Change places with ...");
    waitForWords("Now choose what changes places with it");
    pick(1);
    browser.waitFor(
        "they have", () -> !samePlace(before.path(0), marker("lining").at("/copies/0")));
    JsonNode after = marker("lining").path("copies");
    assertFalse(samePlace(before.path(1), after.path(1)));
    assertTrue(samePlace(before.path(2), after.path(2)));
    browser.click("Put back");
    browser.waitFor("they are back", () -> before.equals(marker("lining").path("copies")));
  }

  @Test
  void whatBelongsTogetherIsChosenAndMovedTogether() {
    laid("main");
    JsonNode before = marker("main").path("copies");
    String piece = before.path(0).path("piece").asText();
    String other = otherPiece(before, piece);
    browser.click("Several");
    choose(piece);
    choose(other);
    waitForCount(".copy.chosen", ofPieces(before, piece, other));
    WebElement one = copy(0);
    assertTrue(one.getAttribute("aria-label").startsWith(piece + ", garment 1, "));
    assertTrue(one.getAttribute("aria-label").contains("cuts "), one.getAttribute("aria-label"));
    browser
        .over(one)
        .keyDown(Keys.ALT)
        .clickAndHold()
        .moveByOffset(12, 9)
        .release()
        .keyUp(Keys.ALT)
        .perform();
    browser.waitFor(
        "they have moved", () -> !samePlace(before.path(0), marker("main").at("/copies/0")));
    JsonNode after = marker("main").path("copies");
    double along = Double.NaN;
    for (int i = 0; i < before.size(); i++) {
      double moved = after.path(i).path("x").asDouble() - before.path(i).path("x").asDouble();
      String name = before.path(i).path("piece").asText();
      boolean chosen = name.equals(piece) || name.equals(other);
      assertEquals(chosen, !samePlace(before.path(i), after.path(i)));
      if (chosen) {
        assertEquals(Double.isNaN(along) ? moved : along, moved, 1e-6);
        along = moved;
      }
    }
  }

  private static String otherPiece(JsonNode copies, String piece) {
    for (JsonNode copy : copies) {
      if (!copy.path("piece").asText().equals(piece)) {
        return copy.path("piece").asText();
      }
    }
    throw new AssertionError("there are several pieces");
  }

  private static int ofPieces(JsonNode copies, String piece, String other) {
    int count = 0;
    for (JsonNode copy : copies) {
      String name = copy.path("piece").asText();
      count += name.equals(piece) || name.equals(other) ? 1 : 0;
    }
    return count;
  }

  /** In the key to the drawing. */
  private static void choose(String piece) {
    browser.waitFor(
        piece + " is chosen",
        () -> {
          browser.driver().findElements(By.cssSelector("aside button.small")).stream()
              .filter(b -> b.getText().matches(piece + "( \\(\\d\\))?"))
              .findFirst()
              .orElseThrow()
              .click();
          return true;
        });
  }

  @Test
  void theTableWithTheKeyboardAlone() {
    laid("main");
    JsonNode before = marker("main");
    WebElement stop = browser.see(".copy[tabindex='0']");
    assertEquals(1, count(".copy[tabindex='0']"), "one stop on the way through the page");
    stop.sendKeys(Keys.HOME);
    focused().sendKeys(Keys.PAGE_DOWN);
    int second = Integer.parseInt(focused().getAttribute("data-copy"));
    focused().sendKeys("p");
    browser.see(".copy.pinned");
    focused().sendKeys("p");
    waitForCount(".copy.pinned", 0);
    focused().sendKeys(Keys.chord(Keys.ALT, Keys.SHIFT, Keys.ARROW_UP));
    browser.waitFor(
        "it is moved",
        () -> !samePlace(before.at("/copies/" + second), marker("main").at("/copies/" + second)));
    assertEquals(String.valueOf(second), focused().getAttribute("data-copy"), "focus stays");
    press("Put back");
    browser.waitFor(
        "it is back",
        () -> samePlace(before.at("/copies/" + second), marker("main").at("/copies/" + second)));
    copy(second).sendKeys("x");
    focused().sendKeys(Keys.PAGE_DOWN);
    focused().sendKeys(Keys.ENTER);
    browser.waitFor(
        "they have changed places",
        () -> !samePlace(before.at("/copies/" + second), marker("main").at("/copies/" + second)));
    focused().sendKeys(Keys.ESCAPE);
    waitForCount(".copy.chosen", 0);
    focused().sendKeys("+");
    browser.waitFor(
        "it is nearer",
        () ->
            (Boolean)
                browser.script(
                    "const b = document.querySelector('svg.table').viewBox.baseVal;"
                        + "return b.height < 1500"));
    focused().sendKeys("m");
    focused().sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
    focused().sendKeys(Keys.ENTER);
    focused().sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
    focused().sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
    focused().sendKeys(Keys.ENTER);
    browser.waitFor(
        "a length is told",
        () -> browser.text(".about").matches("Measured \\d.* along, .* across."));
  }

  private static WebElement focused() {
    return browser.driver().switchTo().activeElement();
  }

  @Test
  void aTapeIsDrawnToOutlines() {
    laid("lining");
    JsonNode first = marker("lining").path("copies").path(0);
    browser.click("Measure");
    WebElement one = copy(0);
    // From a corner of its box to the other: some pixels beside both, since it is drawn to them.
    int width = one.getSize().getWidth();
    int height = one.getSize().getHeight();
    new Actions(browser.driver())
        .moveToElement(one, -width / 2 + 4, height / 2 - 4)
        .clickAndHold()
        .moveByOffset(width / 2, 0)
        .moveByOffset(width / 2 - 8, 0)
        .release()
        .perform();
    browser.waitFor("it is told", () -> browser.text(".about").startsWith("Measured"));
    assertTrue(
        browser.text(".about").matches("Measured [\\d.]+ cm: [\\d.]+ cm along, .*"),
        browser.text(".about"));
    assertTrue(samePlace(first, marker("lining").path("copies").path(0)), "nothing is moved");
    browser.shot("table-measured");
  }

  @Test
  void whatIsLeftOverGoesOnTheShelf() throws IOException {
    laid("lining");
    browser.click("Left over");
    browser.see(".usable");
    browser.see(".rest");
    browser.shot("table-left-over");
    String size = browser.text("section[aria-label='Left over'] b");
    browser.see("button[aria-label='Keep A as a remnant']").click();
    waitForWords("on the shelf as lining left over");
    String job = Files.readString(folder.resolve("weir-jacket.yaml"));
    String length = size.replaceAll("^A: (?:\\d of )?([\\d.]+ cm) x .*", "$1");
    assertTrue(job.contains("lining left over"), job);
    assertTrue(job.contains("length: " + length), size + job);
    assertEquals(
        200, Visitor.of(desk).get("/job?name=weir-jacket.yaml").status(), "the job is sound");
    browser.click("Undo");
    browser.waitFor(
        "it is taken off again",
        () -> {
          try {
            return !Files.readString(folder.resolve("weir-jacket.yaml")).contains("left over");
          } catch (IOException e) {
            throw new AssertionError(e);
          }
        });
  }

  @Test
  void theClothIsLaidInAnotherWay() {
    laid("lining");
    String before = marker("lining").path("fold").asText();
    browser.click("Try another way");
    browser.shot("table-ways");
    String other = before.equals("open") ? "Folded lengthwise" : "Open, one layer";
    browser.see("button.way");
    browser.driver().findElements(By.cssSelector("button.way")).stream()
        .filter(way -> way.getText().startsWith(other))
        .findFirst()
        .orElseThrow()
        .click();
    browser.waitFor("it lies so", () -> !marker("lining").path("fold").asText().equals(before));
    browser.click("Keep this one");
    browser.named("Look for a shorter one");
    assertEquals("[]", marker("lining").path("findings").toString());
    browser.click("Put back");
    browser.waitFor(
        "it lies as before", () -> marker("lining").path("fold").asText().equals(before));
  }

  @Test
  void everyPrintIsOneClickAway() {
    laid("main");
    waitForWords("Cut sheet and shopping list: once lining can be cut.");
    assertEquals(6, count(".prints a"), "its own");
    lay("lining");
    waitForCount(".prints a", 8);
    Visitor maker = Visitor.of(desk);
    for (WebElement print : browser.driver().findElements(By.cssSelector(".prints a"))) {
      String address = print.getAttribute("href");
      String path = address.substring(address.indexOf("/job/"));
      assertEquals(200, maker.get(path).status(), path);
    }
  }

  /** On a tablet: two fingers, long words. */
  @Test
  void fingersOnATablet() {
    browser.click("weir jacket");
    browser.see(".edge");
    browser.size(768, 1024);
    lay("main");
    double before = viewWidth();
    WebElement table = browser.see("svg.table");
    pinch(table);
    browser.waitFor("it is nearer", () -> viewWidth() < before * 0.8);
    browser.click("All of it");
    browser.click("Several");
    pick(0);
    pick(1);
    waitForCount(".copy.chosen", 2);
    browser.script(
        "document.querySelectorAll('#place button, #place legend').forEach(e => {"
            + "e.lastChild.textContent = 'Oberkragenunterseitenbeschnittschablone'})");
    assertEquals(
        Boolean.FALSE,
        browser.script("return document.documentElement.scrollWidth > innerWidth + 1"),
        "long words break the page");
    browser.shot("table-long-words");
  }

  private static double viewWidth() {
    return ((Number)
            browser.script("return document.querySelector('svg.table').viewBox.baseVal.width"))
        .doubleValue();
  }

  private static void pinch(WebElement on) {
    List<Sequence> fingers = List.of(finger(on, "left", -20, -120), finger(on, "right", 20, 120));
    browser.driver().perform(fingers);
  }

  private static Sequence finger(WebElement on, String name, int from, int to) {
    PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, name);
    PointerInput.Origin origin = PointerInput.Origin.fromElement(on);
    return new Sequence(finger, 0)
        .addAction(finger.createPointerMove(Duration.ZERO, origin, from, 0))
        .addAction(finger.createPointerDown(0))
        .addAction(finger.createPointerMove(Duration.ofMillis(300), origin, to, 0))
        .addAction(finger.createPointerUp(0));
  }

  @Test
  void theTableIsForEverybody() {
    laid("main");
    pick(2);
    browser.click("Pin");
    browser.see(".copy.pinned");
    browser.click("Left over");
    browser.see(".usable");
    browser.click("Try another way");
    browser.see("button.way");
    browser.see(".keys summary").click();
    assertEquals(List.of(), browser.serious());
    browser.shot("table-all");
  }
}
