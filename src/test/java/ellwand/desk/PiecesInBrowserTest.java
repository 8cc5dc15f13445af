package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Pieces changed on the page: by steps, notches and names. */
class PiecesInBrowserTest extends InBrowser {

  @Test
  void aPieceIsAlteredAndSeenBeforeAndAfter() throws IOException {
    browser.click("weir jacket");
    browser.type(".name[aria-label^='back,']", Keys.ENTER);
    browser.click("Add a step");
    browser.type("form.step input[name=mark]", "low side");
    browser.tap("form.step select[name=on]");
    clickEdge(SIDE);
    assertEquals("side seam", browser.see("form.step select[name=on]").getAttribute("value"));
    browser.type("form.step input[name=at]", "99", Keys.ENTER);
    browser.waitFor("the mistake is told", () -> browser.text(".wrong").contains("side seam"));
    browser.type("form.step input[name=at]", Keys.chord(Keys.CONTROL, "a"), "1/2", Keys.ENTER);
    browser.waitFor("it is done", () -> browser.text("aside").contains("low side"));
    assertTrue(file().contains("alter: [{mark: low side, 'on': side seam, at: 1/2}]"), file());

    browser.click("Add a step");
    choose("kind", "Lengthen");
    browser.type("form.step input[name=lengthen]", "3");
    browser.tap("form.step select[name=at]");
    browser.type(".point[aria-label='back, point low side']", Keys.ENTER);
    browser.shot("step");
    browser.click("Do it");
    browser.waitFor("it is longer", () -> file().contains("{lengthen: 3 cm, at: low side}"));
    browser.see(".before");
    browser.click("See before and after");
    browser.waitFor(
        "the picture is there",
        () ->
            (Boolean)
                browser.script("return document.querySelector('dialog img').naturalWidth > 99"));
    browser.shot("before-and-after");
    browser.click("Close");

    browser.tap("button[aria-label='Change step 2']");
    browser.type(
        "form.step input[name=lengthen]", Keys.chord(Keys.CONTROL, "a"), "25 mm", Keys.ENTER);
    browser.waitFor("it is changed", () -> file().contains("{lengthen: 25 mm, at: low side}"));
    browser.tap("button[aria-label='Take step 1 out']");
    browser.waitFor("what needs it is told", () -> browser.text(".wrong").contains("low side"));
    browser.tap("button[aria-label='Take step 2 out']");
    browser.waitFor("it is gone", () -> !file().contains("lengthen"));
    browser.waitFor("so is its row", () -> !browser.text("aside").contains("2.5 cm"));
    browser.tap("button[aria-label='Take step 1 out']");
    browser.waitFor("all are", () -> browser.text("aside").contains("None yet"));
    WebElement cut = browser.see("input[data-cut=main]");
    cut.sendKeys(Keys.chord(Keys.CONTROL, "a"), "three", Keys.TAB);
    browser.waitFor("the mistake is told", () -> browser.text(".wrong").contains("three"));
  }

  @Test
  void notchesAreSetMovedAndTakenOff() {
    begin();
    clickEdge(SIDE);
    clickEdge(SIDE);
    WebElement at = browser.see("aside input[name=at]");
    browser.waitFor("where it was clicked", () -> at.getAttribute("value").endsWith(" cm"));
    browser.see(".spot");
    at.sendKeys(Keys.chord(Keys.CONTROL, "a"), "4", Keys.ENTER);
    browser.waitFor("it is there", () -> file().contains("{edge: side seam, at: 4 cm}"));
    browser.type("aside input[data-notch='2']", Keys.chord(Keys.CONTROL, "a"), "55", Keys.TAB);
    browser.waitFor("it is refused", () -> browser.text(".wrong").contains("beyond the end"));
    browser.type("aside input[data-notch='2']", Keys.chord(Keys.CONTROL, "a"), "4.5", Keys.TAB);
    browser.waitFor("it is moved", () -> file().contains("{edge: side seam, at: 4.5 cm}"));
    browser.shot("notches");
    browser.tap("button[aria-label='Take notch 1 off']");
    browser.waitFor("it is off", () -> !file().contains("edge: side seam"));
  }

  @Test
  void namesAreChangedWhereverTheyStand() {
    begin();
    clickEdge(SIDE);
    rename("under arm seam");
    browser.see(".edge[aria-label^='back, under arm seam']");
    browser.waitFor("the panel follows", () -> browser.text("aside").contains("under arm seam"));
    browser.type(".name[aria-label^='back,']", Keys.ENTER);
    rename("rear");
    browser.see(".name[aria-label^='rear,']");
    assertTrue(file().contains("from: [rear.waist, front.waist]"), file());
    browser.type(".point[aria-label='rear, point underarm']", Keys.ENTER);
    rename("armpit");
    browser.see(".point[aria-label='rear, point armpit']");
    assertTrue(file().contains("under arm seam: {from: waist side, to: armpit"), file());
    browser.type(".name[aria-label^='rear,']", Keys.ENTER);
    rename("front");
    browser.waitFor("it is refused", () -> browser.text(".wrong").contains("called front"));
  }

  private void rename(String name) {
    browser.type("aside input[name=name]", Keys.chord(Keys.CONTROL, "a"), name, Keys.ENTER);
  }

  private void choose(String field, String words) {
    browser.script(
        "const s = document.querySelector(`select[name='${arguments[0]}']`);"
            + "s.value = [...s.options].find(o => o.textContent === arguments[1]).value;"
            + "s.dispatchEvent(new Event('change'))",
        field,
        words);
  }
}
