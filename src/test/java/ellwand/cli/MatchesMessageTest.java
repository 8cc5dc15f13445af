package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Stop;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What cannot match is told with the file and line that ask for it, in every command. */
class MatchesMessageTest {

  private static final String ASKED = "    - [front.side seam @ 10, back.side seam @ 10]\n";

  @TempDir Path folder;

  /** Both centres are to lie on bars, and the side seams to match on the same bars. */
  @Test
  void whatCannotMatchIsToldWithItsFileAndLine() throws IOException {
    Path style = Path.of("sample-markers/tarn-waistcoat/job.yaml");
    String text = Files.readString(style);
    assertTrue(text.contains(ASKED));
    String both = "    - {points: [front.side seam @ 10, back.side seam @ 10], bars: both}\n";
    Path changed = folder.resolve("tarn-waistcoat/job.yaml");
    Files.createDirectories(changed.getParent());
    Files.writeString(changed, text.replace(ASKED, both));
    Path job = folder.resolve("tarn-checks/job.yaml");
    Files.createDirectories(job.getParent());
    Files.copy(Path.of("sample-markers/tarn-checks/job.yaml"), job);
    long line = text.substring(0, text.indexOf(ASKED)).lines().count() + 1;

    String out = folder.resolve("out").toString();
    String where =
        "tarn-waistcoat/job.yaml:" + line + ": piece front: side seam @ 10 cannot match ";
    refused(where, "lay", job.toString(), "--effort", "1steps", "--out", out);
    refused(where, "check", job.toString());
    assertTrue(Files.notExists(folder.resolve("out")));
  }

  private static void refused(String message, String... command) {
    StringWriter err = new StringWriter();
    CommandLine commands = Main.commandLine(Stop::new);
    commands.setErr(new PrintWriter(err));
    assertEquals(2, commands.execute(command));
    assertTrue(err.toString().contains(message), err.toString());
  }
}
