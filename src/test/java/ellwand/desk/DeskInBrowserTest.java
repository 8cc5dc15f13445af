package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The desk as a maker meets it. */
class DeskInBrowserTest extends InBrowser {

  @Test
  void fromASampleToAMarkerOnPaper() throws IOException {
    browser.see("form");
    browser.shot("new");
    begin();
    clickEdge(SIDE);
    WebElement allowance = browser.see("input[name=allowance]");
    allowance.clear();
    allowance.sendKeys("nonsense", Keys.ENTER);
    browser.waitFor("the mistake is told", () -> browser.text(".wrong").contains("nonsense"));
    allowance.clear();
    allowance.sendKeys("2 cm", Keys.ENTER);
    browser.waitFor("the file has it", () -> file().contains("allowance: 2 cm"));
    browser.see(".edge[aria-label*='2.0 cm']");
    browser.shot("pieces");

    browser.click("Cloths");
    browser.see("input[data-at=width]");
    browser.shot("cloths");

    lay("main");
    lay("lining");
    browser.shot("table");
    String bought = browser.text("#slip");
    assertTrue(bought.contains("buy 0."), bought);

    dragIntoAnother();
    browser.waitFor("it is told", () -> browser.text("#place").contains("This cannot be cut"));
    assertTrue(browser.text("#place").contains("overlaps"), browser.text("#place"));
    browser.shot("amiss");
    browser.click("Put back");
    browser.waitFor("it is right", () -> browser.text("#place").contains("Every rule is kept"));

    slide();
    assertTrue(browser.text("#place").contains("Every rule is kept"), "a slide overlaps nothing");

    browser.click("Paper");
    browser.see("a[download='lining.plot.hpgl']");
    browser.click("lining.svg");
    browser.see(".preview img");
    browser.click("shopping-list.txt");
    browser.waitFor("it can be read", () -> browser.text(".preview pre").contains("lining"));
    browser.click("cut-sheet.pdf");
    browser.see(".sheet img");
    browser.click("Show the pages");
    browser.see(".pages button");
    browser.click("Next page");
    browser.waitFor("the second page", () -> browser.text(".sheet").contains("Page 2 of"));
    browser.waitFor(
        "all pages are drawn",
        () ->
            (Boolean)
                browser.script(
                    "return [...document.querySelectorAll('.pages img, .sheet img')]"
                        + ".every(i => i.naturalWidth > 99)"));
    browser.shot("paper");
    browser.tap("a[download='lining.pdf']");
    try (PDDocument pdf = Loader.loadPDF(browser.downloaded("lining.pdf").toFile())) {
      assertTrue(new PDFTextStripper().getText(pdf).contains("Weir jacket"));
    }

    String slip = browser.text("#slip");
    desk.close();
    desk = Desk.start(folder, "127.0.0.1", 0);
    browser.go(desk.address());
    browser.click("weir-jacket");
    browser.waitFor("nothing is lost", () -> browser.text("#slip").equals(slip));
  }

  @Test
  void aDrawingBecomesAStyle() throws IOException {
    Path drawing = downloads.resolve("apron pocket.svg");
    Files.writeString(
        drawing,
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="150mm" viewBox="0 0 200 150">
        <path id="pocket" d="M10 10 H130 V90 C130 120 10 120 10 90 Z"/></svg>\
        """);
    browser.type("input[type=file]", drawing.toString());
    browser.click("Read it");
    browser.see(".found");
    assertTrue(browser.text("#place").contains("12.0 x"), browser.text("#place"));
    assertTrue(browser.text("#place").contains("grain is taken to run up the page"));
    browser.shot("found");
    assertEquals(List.of(), browser.serious(), "what was found");
    browser.type(
        "input[aria-label='Name of pocket']", Keys.chord(Keys.CONTROL, "a"), "Brusttasche");
    browser.type(
        "input[aria-label='How often pocket is cut']", Keys.chord(Keys.CONTROL, "a"), "three");
    browser.click("Make it a style");
    browser.waitFor("the mistake is told", () -> browser.text(".wrong").contains("three"));
    browser.type(
        "input[aria-label='How often pocket is cut']",
        Keys.chord(Keys.CONTROL, "a"),
        "pair",
        Keys.ENTER);
    browser.see(".edge[aria-label^=Brusttasche]");
    assertTrue(Files.readString(folder.resolve("apron pocket.yaml")).contains("main: pair"));
    browser.click("Table");
    browser.click("Lay");
    browser.see(".copy");
    browser.named("Look for a shorter one");
  }

  @Test
  void whatIsNoDrawingIsRefused() throws IOException {
    Path text = downloads.resolve("notes.svg");
    Files.writeString(
        text, "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]><svg>&x;</svg>");
    browser.type("input[type=file]", text.toString());
    browser.click("Read it");
    browser.waitFor("it is refused", () -> !browser.text(".wrong").isBlank());
    assertFalse(browser.text("body").contains("root:"));
  }

  @Test
  void aBlockIsDraftedFromMeasures() {
    browser.see("input[name=chest]").clear();
    browser.type("input[name=chest]", "60");
    browser.click("Draft it");
    browser.waitFor("the caution", () -> browser.text("dialog").contains("toile"));
    browser.click("Go on");
    browser.see(".edge[aria-label^='front, armhole']");
  }

  @Test
  void anOutlineIsDrawnOnSquaredPaper() throws IOException {
    browser.tap("summary");
    WebElement paper = browser.see(".squared");
    browser.script("arguments[0].scrollIntoView({block: 'center'})", paper);
    for (int[] at : new int[][] {{-100, -100}, {60, -100}, {60, 120}, {-100, 90}}) {
      new Actions(browser.driver()).moveToElement(paper, at[0], at[1]).click().perform();
    }
    browser.type(".lengths input", Keys.chord(Keys.CONTROL, "a"), "20", Keys.TAB);
    browser.click("Make it a piece");
    browser.see(".edge[aria-label*='20.0 cm']");
    String file = Files.readString(folder.resolve("pocket.yaml"));
    double[] ys =
        java.util.regex.Pattern.compile("at: \\[[-\\d.]+, ([-\\d.]+)\\]")
            .matcher(file)
            .results()
            .mapToDouble(m -> Double.parseDouble(m.group(1)))
            .toArray();
    assertTrue(ys[1] < ys[0], "what was drawn at the right stays there: " + file);
  }

  @Test
  void thePiecesAreThrownOnTheCloth() {
    begin();
    browser.click("Paper");
    browser.click("Projector");
    browser.see("dialog .square");
    browser.waitFor(
        "it fills the screen",
        () -> (Boolean) browser.script("return document.fullscreenElement !== null"));
    double before = width(".square rect");
    // A square that came out at 40 cm is drawn half as large from now on.
    browser.type("input[name=measured]", "40", Keys.ENTER);
    assertEquals(before / 2, width(".square rect"), before / 100);
    browser.shot("projector-square");
    browser.click("Square or pieces");
    browser.waitFor(
        "all pieces are there",
        () -> browser.driver().findElements(By.cssSelector("dialog .piece")).size() == 6);
    // 10 cm of the square and 10 cm of the sleeve are as many dots.
    assertEquals(before / 2 / 200, width(".piece .beam") / pieceMm(), 0.01);

    double left = left(".piece .beam");
    new Actions(browser.driver())
        .keyDown(Keys.SHIFT)
        .sendKeys(Keys.ARROW_RIGHT)
        .keyUp(Keys.SHIFT)
        .perform();
    assertEquals(left - before / 2 / 20, left(".piece .beam"), 1.5, "1 cm farther");
    left = left(".piece .beam");
    new Actions(browser.driver()).sendKeys(Keys.ARROW_RIGHT).perform();
    Number screen = (Number) browser.script("return innerWidth");
    assertEquals(left - screen.doubleValue() / 2, left(".piece .beam"), 1.5, "half a screen");
    new Actions(browser.driver()).sendKeys(Keys.ARROW_LEFT).perform();

    double shape = corner();
    browser.click("Mirror");
    assertEquals(left, left(".piece .beam"), 1.5, "it stays where it is");
    assertTrue(Math.abs(shape - corner()) > 20, "and is turned over");
    browser.shot("projector");
    browser.click("End");
    browser.waitFor(
        "it is over", () -> browser.driver().findElements(By.tagName("dialog")).isEmpty());
    assertEquals(null, browser.script("return document.fullscreenElement"));
  }

  private double width(String css) {
    return number("document.querySelector('" + css + "').getBoundingClientRect().width");
  }

  private double left(String css) {
    return number("document.querySelector('" + css + "').getBoundingClientRect().left");
  }

  /** As wide as the first piece is in mm. */
  private double pieceMm() {
    return number("document.querySelector('.piece .beam').getBBox().width");
  }

  /** Where the first corner of the first piece is thrown. */
  private double corner() {
    return number(
        "(p => p.getPointAtLength(0).matrixTransform(p.getScreenCTM()).x)"
            + "(document.querySelector('.piece .beam'))");
  }

  private double number(String code) {
    return ((Number) browser.script("return " + code)).doubleValue();
  }

  private void dragIntoAnother() {
    browser.over(browser.see("[data-copy='0']")).keyDown(Keys.ALT).clickAndHold().perform();
    browser.over(browser.see("[data-copy='1']")).release().keyUp(Keys.ALT).perform();
  }

  private void slide() {
    browser
        .over(browser.see("[data-copy='0']"))
        .clickAndHold()
        .moveByOffset(15, 25)
        .release()
        .perform();
    browser.named("Put back");
  }

  @Test
  void withTheKeyboardAlone() {
    press("weir jacket");
    browser.see(".edge");
    browser.type(SIDE, Keys.ENTER);
    WebElement allowance = browser.see("input[name=allowance]");
    allowance.sendKeys(Keys.chord(Keys.CONTROL, "a"), "1.2 cm", Keys.ENTER);
    browser.waitFor("it can be undone", () -> browser.named("Undo").isEnabled());
    press("Undo");
    press("Table");
    press("Lay");
    browser.see(".copy");
    press("Keep this one");
    browser.named("Look for a shorter one");
    browser.type("[data-copy='0']", Keys.chord(Keys.ALT, Keys.ARROW_RIGHT));
    browser.named("Put back");
    press("Put back");
    browser.waitFor("it is right", () -> browser.text("#place").contains("Every rule is kept"));
  }

  @Test
  void anOrderIsWrittenPastedAndPlanned() throws IOException {
    browser.click("beck tunic");
    browser.see(".edge");
    browser.click("Order");
    browser.type("input[name=colour]", "ochre", Keys.ENTER);
    WebElement count = browser.see("input[aria-label='ochre, size 98']");
    browser.script(
        "const t = new DataTransfer(); t.setData('text', '6\\t4');"
            + "arguments[0].dispatchEvent(new ClipboardEvent('paste',"
            + " {clipboardData: t, bubbles: true, cancelable: true}))",
        count);
    browser.waitFor("both numbers are there", () -> browser.text("#place").contains("11 garments"));
    // As fast as one types, whatever is drawn anew meanwhile.
    browser.type("input[aria-label='ochre, size 110']", "7", Keys.TAB);
    new Actions(browser.driver()).sendKeys("8", Keys.TAB, "9", Keys.TAB).perform();
    browser.waitFor("all are there", () -> browser.text("#place").contains("35 garments"));
    for (int left : new int[] {26, 18, 11}) {
      browser.click("Undo");
      browser.waitFor("undone", () -> browser.text("#place").contains(left + " garments"));
    }
    browser.click("Plan the cut");
    browser.waitFor("it is thought of", () -> browser.text("#planning").contains("so far"));
    browser.click("Keep this plan");
    browser.waitFor("it is planned", () -> browser.text("#place").contains("11 garments"));
    browser.see(".lay .side rect");
    browser.waitFor(
        "every marker is drawn",
        () ->
            (Boolean)
                browser.script(
                    "const all = [...document.querySelectorAll('.lay img')];"
                        + "all.forEach(i => i.scrollIntoView());"
                        + "return all.length === document.querySelectorAll('.lay').length"
                        + " && all.every(i => i.naturalWidth > 99)"));
    assertTrue(browser.text(".savings").contains("One size a lay"), browser.text(".savings"));
    browser.shot("order");
    assertEquals(List.of(), browser.serious(), "the plan");
    browser.type(".thumb", Keys.ENTER);
    browser.see("dialog img");
    browser.click("Close");
    browser.tap("details summary");
    browser.tap("a[download='cut-tickets.csv']");
    String tickets = Files.readString(browser.downloaded("cut-tickets.csv"));
    assertTrue(tickets.contains("ochre"), tickets);
    assertTrue(Files.exists(folder.resolve("beck-tunic order.yaml")));
  }

  @Test
  void twoTabsSeeOneAnother() {
    begin();
    String address = browser.driver().getCurrentUrl();
    String first = browser.driver().getWindowHandle();
    browser.driver().switchTo().newWindow(org.openqa.selenium.WindowType.TAB);
    browser.go(address);
    browser.see(".edge");
    String second = browser.driver().getWindowHandle();
    browser.driver().switchTo().window(first);
    browser.type(SIDE, Keys.ENTER);
    browser.type("input[name=allowance]", Keys.chord(Keys.CONTROL, "a"), "2.2 cm", Keys.ENTER);
    browser.driver().switchTo().window(second);
    browser.see(".edge[aria-label*='2.2 cm']");
    browser.driver().close();
    browser.driver().switchTo().window(first);
  }

  @Test
  void onATablet() {
    begin();
    browser.size(768, 1024);
    for (String place : List.of("Pieces", "Cloths", "Table", "Order", "New")) {
      browser.click(place);
      browser.waitFor(place, () -> !browser.text("#place").isBlank());
      assertEquals(
          Boolean.FALSE,
          browser.script("return document.documentElement.scrollWidth > innerWidth + 1"),
          place + " is wider than the page");
      browser.shot("tablet-" + place.toLowerCase());
    }
  }

  @Test
  void everyPlaceIsForEverybody() {
    begin();
    lay("main");
    lay("lining");
    for (String place : List.of("Pieces", "Cloths", "Table", "Order", "Paper", "New")) {
      browser.click(place);
      browser.waitFor(place, () -> !browser.text("#place").isBlank());
      assertEquals(List.of(), browser.serious(), place);
    }
    assertFalse(browser.driver().findElements(By.id("slip")).isEmpty());
  }
}
