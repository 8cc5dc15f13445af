package ellwand.file.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

  @TempDir private Path folder;

  @Test
  void whatAnEndedProgramLeftGoes() throws IOException {
    // No process has so long a number.
    Path left = Files.writeString(folder.resolve(".pieces.svg.123456789012345678"), "<svg");
    long other = ProcessHandle.current().parent().orElseThrow().pid();
    Path atWork = Files.writeString(folder.resolve(".pieces.svg." + other), "<svg");
    Path strange = Files.writeString(folder.resolve(".pieces.svg.old"), "<svg/>");
    WholeFile.write(folder.resolve("pieces.svg"), new byte[] {'x'});
    assertFalse(Files.exists(left));
    assertTrue(Files.exists(atWork));
    assertTrue(Files.exists(strange));
    assertEquals("x", Files.readString(folder.resolve("pieces.svg")));
  }

  @Test
  void whatCannotBeWrittenIsRefusedBeforeAndNothingStays() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    assertRefused("in the way", file.resolve("out.pdf"));
    assertRefused("in the way", file.resolve("a/b/out.pdf"));
    assertRefused("in the way", Files.createDirectory(folder.resolve("folder")));
    assertRefused(
        "in the way",
        Files.createSymbolicLink(folder.resolve("link"), Path.of("nowhere")).resolve("out.pdf"));
    WholeFile.refuseUnwritable(file);
    WholeFile.refuseUnwritable(folder.resolve("a/b/out.pdf"));
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(
          "[file, folder, link]",
          all.map(p -> p.getFileName().toString()).sorted().toList().toString());
    }
  }

  /** Nobody can make a file there, whatever the rights that the folder names. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aFileSystemThatTakesNoFilesIsRefusedBefore() {
    assertRefused("cannot be written", Path.of("/proc/ellwand/out.pdf"));
    String message =
        assertThrows(
                InputException.class, () -> RunFolder.at(Path.of("/proc/ellwand/out")).writable())
            .getMessage();
    assertTrue(message.startsWith("/proc/ellwand/out: it cannot be written: "), message);
  }

  private static void assertRefused(String why, Path path) {
    String message =
        assertThrows(InputException.class, () -> WholeFile.refuseUnwritable(path)).getMessage();
    assertTrue(message.startsWith(path + ": it cannot be written: "), message);
    assertTrue(message.contains(why), message);
  }
}
