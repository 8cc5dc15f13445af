package ellwand.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** A desk on an empty folder in a real browser, and what every journey does there. */
abstract class InBrowser {

  static final String SIDE = ".edge[aria-label^='back, side seam']";

  @TempDir static Path downloads;
  static Browser browser;

  @TempDir Path folder;
  Desk desk;

  @BeforeAll
  static void browser() {
    browser = Browser.open(downloads);
  }

  @AfterAll
  static void quit() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void open() {
    desk = Desk.start(folder, "127.0.0.1", 0);
    browser.size(1280, 900);
    browser.go(desk.address());
  }

  @AfterEach
  void close() {
    desk.close();
  }

  void begin() {
    browser.click("weir jacket");
    browser.see(".edge");
  }

  /** Lays a cloth and keeps the first marker. */
  void lay(String cloth) {
    browser.click("Table");
    browser.see("svg.table");
    browser.script(
        "const s = document.querySelector('#place select'); s.value = arguments[0];"
            + "s.dispatchEvent(new Event('change'))",
        cloth);
    browser.click("Lay");
    browser.see(".copy");
    browser.click("Keep this one");
    browser.named("Look for a shorter one");
  }

  /** With the keyboard. */
  void press(String words) {
    browser.waitFor(
        "Enter is pressed on " + words,
        () -> {
          browser.named(words).sendKeys(Keys.ENTER);
          return true;
        });
  }

  void clickEdge(String edge) {
    browser.see(edge);
    browser.script(
        "const g = document.querySelector(arguments[0]), r = g.getBoundingClientRect();"
            + "g.dispatchEvent(new MouseEvent('click', {bubbles: true,"
            + " clientX: r.x + r.width / 2, clientY: r.y + r.height / 2}))",
        edge);
  }

  /** What the job holds that {@link #begin} began. */
  String file() {
    try {
      return Files.readString(folder.resolve("weir-jacket.yaml"));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
