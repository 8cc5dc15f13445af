package ellwand.file.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
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
}
