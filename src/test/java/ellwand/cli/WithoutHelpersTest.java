package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program without the jar for helpers beside it, as a process of its own. */
class WithoutHelpersTest {

  private static final List<String> SECOND_JAR =
      List.of("pekko", "scala-library", "agrona", "typesafe", "reactive-streams", "cbor");

  @TempDir private Path folder;

  private record Run(int code, String said) {}

  @Test
  void commandsDoWithoutIt() throws Exception {
    Path out = folder.resolve("out");
    Run run = run("lay", job(), "--effort", "5steps", "--out", out.toString());
    assertEquals(0, run.code(), run::said);
    assertTrue(Files.exists(out.resolve("figures.json")));
  }

  @Test
  void whoAsksForHelpersIsToldWhatIsMissing() throws Exception {
    Path out = folder.resolve("out");
    for (Run run :
        List.of(
            run("lay", job(), "--effort", "5steps", "--with-helpers", "--out", out.toString()),
            run("helper", "--join", "127.0.0.1"))) {
      assertEquals(2, run.code(), run::said);
      assertTrue(run.said().contains("ellwand-helpers.jar is missing"), run::said);
    }
    assertFalse(Files.exists(out));
  }

  private static String job() {
    return Path.of("sample-markers", "weir-jacket", "job.yaml").toString();
  }

  private static Run run(String... args) throws IOException, InterruptedException {
    String classes =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> SECOND_JAR.stream().noneMatch(entry::contains))
            .collect(Collectors.joining(File.pathSeparator));
    List<String> line = new ArrayList<>();
    line.add(ProcessHandle.current().info().command().orElse("java"));
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", classes, "ellwand.cli.Main"));
    line.addAll(List.of(args));
    Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Run(process.waitFor(), said);
  }
}
