package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.trace.SimulatedPhotos;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReferenceSheetCommandTest {

  @TempDir private Path folder;

  @Test
  void printsSheetsWithTheirNumbers() throws IOException {
    Path pdf = folder.resolve("sheets.pdf");
    Ran ran = Ran.of("convert", "--reference", "A4", "--sheets", "3", "--out", pdf);
    assertEquals(Main.DONE, ran.code(), ran.err());
    String words = Ran.words(pdf);
    assertTrue(words.contains("reference sheet A4, number 3"), words);
    assertFalse(words.contains("number 4"), words);
    assertTrue(words.contains("100 mm each way"), words);
  }

  @Test
  void saysWhatIsWrongWithTheOptions() {
    Path pdf = folder.resolve("sheets.pdf");
    assertRefused("Use A4 or Letter", "convert", "--reference", "A5", "--out", pdf);
    assertRefused(
        "Ask for 1 to 7 sheets", "convert", "--reference", "A4", "--sheets", "8", "--out", pdf);
    assertRefused("name it", "convert", "--reference", "A4");
    assertRefused("reads no files", "convert", "photo.jpg", "--reference", "A4", "--out", pdf);
    assertRefused("name a file to read", "convert", "--out", pdf);
    assertFalse(Files.exists(pdf));
  }

  private static void assertRefused(String words, Object... args) {
    Ran ran = Ran.of(args);
    assertEquals(Main.BAD_INPUT, ran.code());
    assertTrue(ran.err().contains(words), ran.err());
  }

  @Test
  void aCameraIsCheckedByMeasuringSheetsByOneAnother() throws IOException {
    Path photo = folder.resolve("two.jpg");
    Files.write(photo, SimulatedPhotos.twoSheets());
    Ran ran = Ran.of("convert", "--check", photo, "--json");
    assertEquals(Main.DONE, ran.code(), ran.err());
    assertEquals(2, ran.json().path("findings").size());
    ran.json()
        .path("findings")
        .forEach(
            f -> {
              // As printed on every sheet: 3 x 5 squares of 35 mm.
              assertEquals(105, f.path("widthMm").asDouble(), 0.5);
              assertEquals(175, f.path("heightMm").asDouble(), 0.5);
              assertTrue(f.path("offMm").asDouble() < f.path("expectedMm").asDouble());
            });
    Path one = folder.resolve("one.jpg");
    Files.write(one, SimulatedPhotos.oneSheet());
    assertRefused("no sheet can be measured by another one", "convert", "--check", one);
  }
}
