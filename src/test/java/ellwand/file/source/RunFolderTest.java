package ellwand.file.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunFolderTest {

  @TempDir private Path temp;
  private Path out;

  @BeforeEach
  void name() {
    out = temp.resolve("a/out");
  }

  private static Map<String, byte[]> files(String... namesAndTexts) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  /** What a user sees there: name and text of each file. */
  private String seen() throws IOException {
    Map<String, String> seen = new TreeMap<>();
    try (Stream<Path> all = Files.list(out)) {
      for (Path path : all.toList()) {
        String name = path.getFileName().toString();
        if (!name.equals(".ellwand")) {
          seen.put(name, Files.isDirectory(path) ? "folder" : Files.readString(path));
        }
      }
    }
    return seen.toString();
  }

  private static String refusal(Runnable attempt) {
    return assertThrows(InputException.class, attempt::run).getMessage();
  }

  @Test
  void filesOfTheRunBeforeGoAndThoseOfOthersStay() throws IOException {
    RunFolder.at(out).write(files("first.svg", "1", "figures.json", "1"));
    Files.writeString(out.resolve("notes.txt"), "mine");
    RunFolder.at(out).write(files("second.svg", "2", "figures.json", "2"));
    assertEquals("{figures.json=2, notes.txt=mine, second.svg=2}", seen());
  }

  @Test
  void whatSomebodyChangedSinceStays() throws IOException {
    RunFolder.at(out).write(files("main.marker.json", "1"));
    Files.writeString(out.resolve("main.marker.json"), "edited");
    RunFolder.at(out).write(files("lining.marker.json", "2"));
    assertEquals("{lining.marker.json=2, main.marker.json=edited}", seen());
  }

  @Test
  void aRunThatWasEndedOnceWholeIsPutInItsPlaceByTheNext() throws IOException {
    RunFolder.at(out).write(files("first.svg", "1"));
    Path whole = Files.createDirectory(out.resolve(".ellwand-whole"));
    Files.writeString(whole.resolve("ended.svg"), "2");
    // No process has so long a number.
    Path part = Files.createDirectory(out.resolve(".ellwand-part-123456789012345678"));
    RunFolder.at(out).write(files("ended.svg", "3"));
    assertEquals("{ended.svg=3}", seen());
    assertFalse(Files.exists(part));
  }

  @Test
  void aRunThatWasEndedWhileItsFilesWereMovedIsTakenUpWhereItWas() throws IOException {
    RunFolder.at(out).write(files("a.svg", "1", "b.svg", "1"));
    // As after the old files and the old index went and the first of the new ones came.
    Path whole = Files.createDirectory(out.resolve(".ellwand-whole"));
    Files.move(out.resolve(".ellwand"), whole.resolve(".ellwand"));
    Files.move(out.resolve("b.svg"), whole.resolve("b.svg"));
    RunFolder.at(out).write(files("c.svg", "3"));
    assertEquals("{c.svg=3}", seen());
  }

  @Test
  void aFolderInTheWayIsRefusedAndNothingIsTouched() throws IOException {
    RunFolder.at(out).write(files("a.svg", "1"));
    Files.createDirectory(out.resolve("b.svg"));
    String message = refusal(() -> RunFolder.at(out).write(files("a.svg", "2", "b.svg", "2")));
    assertTrue(message.contains("b.svg: it cannot be written"), message);
    assertEquals("{a.svg=1, b.svg=folder}", seen());
  }

  @Test
  void aFileInThePlaceOfTheFolderIsRefusedBeforeAnythingIsMade() throws IOException {
    Files.writeString(temp.resolve("a"), "a file");
    String message = refusal(() -> RunFolder.at(out).writable());
    assertTrue(message.contains("a file or folder of the same name is in the way"), message);
  }

  @Test
  void namesThatDifferInCapitalsOnlyAreRefused() {
    String message =
        refusal(() -> RunFolder.at(out).write(files("Main.svg", "1", "main.svg", "2")));
    assertTrue(message.contains("Main.svg and main.svg are one file"), message);
    assertFalse(Files.exists(out));
  }

  @Test
  void anAlteredIndexDoesNotReachOutOfTheFolder() throws IOException {
    RunFolder.at(out).write(files("a.svg", "1"));
    Path outside = Files.writeString(temp.resolve("a/b.svg"), "1");
    Path index = out.resolve(".ellwand");
    Files.writeString(index, Files.readString(index).replace("a.svg", "../b.svg"));
    RunFolder.at(out).write(files("c.svg", "2"));
    assertTrue(Files.exists(outside));
  }
}
