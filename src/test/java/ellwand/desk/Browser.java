package ellwand.desk;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;

/** A real browser, where the machine has one. */
final class Browser implements AutoCloseable {

  private static final List<Path> BROWSERS =
      List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  /** Long enough on a machine that has much else to do. */
  private static final Duration PATIENCE = Duration.ofMinutes(4);

  private final ChromeDriver driver;
  private final Path downloads;

  /** Steps from the middle of a shape's box, in pixels, to where it lies uncovered all round. */
  private static final String FREE_PLACE =
      """
      const shape = arguments[0];
      shape.scrollIntoView({block: 'nearest', inline: 'nearest'});
      const box = shape.getBoundingClientRect();
      const middle = [box.x + box.width / 2, box.y + box.height / 2];
      const hit = (x, y) => shape.contains(document.elementFromPoint(x, y));
      const free = (x, y) => hit(x - 3, y - 3) && hit(x + 3, y - 3) && hit(x - 3, y + 3) && hit(x + 3, y + 3);
      let best = null;
      for (let i = 1; i < 24; i++) {
        for (let k = 1; k < 24; k++) {
          const x = box.x + box.width * i / 24;
          const y = box.y + box.height * k / 24;
          const off = Math.hypot(x - middle[0], y - middle[1]);
          if (free(x, y) && (!best || off < best.off)) {
            best = {off, at: [Math.round(x - middle[0]), Math.round(y - middle[1])]};
          }
        }
      }
      return best && best.at;
      """;

  private Browser(ChromeDriver driver, Path downloads) {
    this.driver = driver;
    this.downloads = downloads;
  }

  /** Skips the test where there is no browser, unless the environment forbids that. */
  static Browser open(Path downloads) {
    java.util.Optional<Path> binary = BROWSERS.stream().filter(Files::exists).findFirst();
    if (binary.isEmpty() || !Files.exists(DRIVER)) {
      if ("required".equals(System.getenv("ELLWAND_BROWSER_TESTS"))) {
        fail("a browser is required here, but " + BROWSERS + " or " + DRIVER + " is missing");
      }
      assumeTrue(false, "no Chromium with its driver is installed: the desk was not tried in one");
    }
    ChromeOptions options = new ChromeOptions();
    options.setBinary(binary.orElseThrow().toString());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-background-networking",
        "--disable-component-update",
        "--no-first-run",
        "--window-size=1280,900");
    options.setExperimentalOption(
        "prefs", Map.of("download.default_directory", downloads.toString()));
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
    return new Browser(new ChromeDriver(service, options), downloads);
  }

  ChromeDriver driver() {
    return driver;
  }

  void go(String address) {
    driver.get(address);
  }

  void size(int width, int height) {
    driver.manage().window().setSize(new Dimension(width, height));
  }

  /** The first element that there is, sooner or later. */
  WebElement see(String css) {
    return until(
        css + " is there",
        d -> d.findElements(By.cssSelector(css)).stream().findFirst().orElse(null));
  }

  /** A button or link with these words. */
  WebElement named(String words) {
    String path = "//*[self::button or self::a][normalize-space()='%s']".formatted(words);
    return until(
        "'" + words + "' is there",
        d ->
            d.findElements(By.xpath(path)).stream()
                .filter(WebElement::isEnabled)
                .findFirst()
                .orElse(null));
  }

  void click(String words) {
    until(
        "'" + words + "' can be clicked",
        d -> {
          named(words).click();
          return true;
        });
  }

  /** Types into a field that may be drawn anew meanwhile. */
  void type(String css, CharSequence... keys) {
    until(
        css + " takes what is typed",
        d -> {
          see(css).sendKeys(keys);
          return true;
        });
  }

  /** Clicks on what may be drawn anew meanwhile. */
  void tap(String css) {
    until(
        css + " can be clicked",
        d -> {
          see(css).click();
          return true;
        });
  }

  /** A hand above a shape, near its middle and where nothing hides it. */
  Actions over(WebElement shape) {
    List<?> at = until("it can be touched", d -> (List<?>) script(FREE_PLACE, shape));
    return new Actions(driver)
        .moveToElement(shape, ((Number) at.get(0)).intValue(), ((Number) at.get(1)).intValue());
  }

  String text(String css) {
    return until(css + " says something", d -> see(css).getText());
  }

  void waitFor(String what, java.util.function.BooleanSupplier there) {
    until(what, d -> there.getAsBoolean() ? Boolean.TRUE : null);
  }

  private <T> T until(String what, Function<ChromeDriver, T> there) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    RuntimeException last = null;
    while (System.nanoTime() < end) {
      try {
        T found = there.apply(driver);
        if (found != null) {
          return found;
        }
      } catch (StaleElementReferenceException
          | org.openqa.selenium.ElementNotInteractableException e) {
        last = e;
      }
      pause();
    }
    shot("failed");
    throw new AssertionError("not within four minutes: " + what, last);
  }

  private static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  Object script(String code, Object... with) {
    return driver.executeScript(code, with);
  }

  /** What axe finds that is serious or worse. */
  List<String> serious() {
    return new AxeBuilder()
        .analyze(driver).getViolations().stream()
            .filter(rule -> Set.of("serious", "critical").contains(rule.getImpact()))
            .map(Browser::told)
            .toList();
  }

  private static String told(Rule rule) {
    return rule.getId() + ": " + rule.getHelp() + " " + rule.getNodes().get(0).getHtml();
  }

  /** A file that was downloaded, when it is whole. */
  Path downloaded(String name) {
    Path file = downloads.resolve(name);
    waitFor(
        name + " is downloaded",
        () -> {
          try (Stream<Path> all = Files.list(downloads)) {
            return Files.exists(file) && all.noneMatch(p -> p.toString().endsWith(".crdownload"));
          } catch (IOException e) {
            return false;
          }
        });
    return file;
  }

  /** Kept beside the classes, to be looked at. */
  void shot(String name) {
    try {
      Path folder = Path.of("target", "desk");
      Files.createDirectories(folder);
      Files.write(folder.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
