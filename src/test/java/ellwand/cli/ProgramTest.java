package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own, in surroundings that a test cannot have. */
class ProgramTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      style:
        name: étui
        allowance: 1
        pieces:
          côté: {cut: {%1$s: %2$d}, outline: [[0, 0], [20, 0], [20, 10], [0, 10]]}
      cloths:
        %1$s: {width: 60}
      order:
        garments: 1
      """;

  @TempDir private Path folder;

  private Path job(String cloth, int copies) throws IOException {
    return Files.writeString(folder.resolve("job.yaml"), JOB.formatted(cloth, copies));
  }

  /** Where letters are plain and decimals have commas, with so much memory. */
  private Ran run(String memory, Object... args) throws IOException, InterruptedException {
    List<String> words =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Duser.language=de",
                "-Duser.country=DE",
                "-Xmx" + memory,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    for (Object arg : args) {
      words.add(arg.toString());
    }
    Path out = folder.resolve("stdout");
    Path err = folder.resolve("stderr");
    ProcessBuilder program =
        new ProcessBuilder(words).redirectOutput(out.toFile()).redirectError(err.toFile());
    program.environment().put("LC_ALL", "C");
    int code = program.start().waitFor();
    return new Ran(
        code,
        Files.readString(out, StandardCharsets.US_ASCII),
        Files.readString(err, StandardCharsets.US_ASCII));
  }

  /** Java 17 encodes the names of files as the locale says, and C has no letters but a to z. */
  @Test
  void aNameThatNoFileCanHaveIsRefusedBeforeTheSearch() throws Exception {
    Path out = folder.resolve("out");
    Ran ran = run("512m", "lay", job("côtelé", 2), "--effort", "10min", "--out", out);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains("no file can be called c?tel?.svg in this locale"), ran.err());
    assertTrue(ran.err().contains("LC_ALL=C.UTF-8"), ran.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void otherNamesArePrintedAsFarAsTheLocaleCan() throws Exception {
    Ran ran =
        run("512m", "lay", job("main", 2), "--effort", "20steps", "--out", folder.resolve("out"));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("?tui: 1 garment"), ran.out());
    Ran json = run("512m", "check", "--json", job("main", 2));
    assertEquals(0, json.code(), json.err());
  }

  @Test
  void numbersAreWrittenAlikeEverywhere() throws Exception {
    String order = "colours: {red: {S: 4}}, lengths: {S: 1 m}, max-plies: 4, max-garments: 1";
    Path job =
        Files.writeString(
            folder.resolve("order.yaml"),
            "{ellwand: 1, order: {" + order + ", cost: {lay: 12, cloth: 2.50 per m}}}");
    Ran ran = run("512m", "order", job, "--effort", "20steps", "--out", folder.resolve("out"));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.err().contains("cost 22.00"), ran.err());
  }

  @Test
  void tooLittleMemoryIsSaid() throws Exception {
    Path out = folder.resolve("out");
    Ran ran = run("20m", "lay", job("main", 1999), "--effort", "2000steps", "--out", out);
    assertEquals(3, ran.code(), ran.err());
    assertTrue(ran.err().contains("There is not enough memory: all 20 MB"), ran.err());
    assertTrue(ran.err().contains("java -Xmx40m"), ran.err());
    assertFalse(ran.err().contains("\tat "), ran.err());
    assertFalse(Files.exists(out));
  }

  /** Twice in this process, warm the second time, and once in one of its own. */
  @Test
  void theSameStepsGiveTheSameMarkersByteForByte() throws Exception {
    String first = markers(Ran.of(laying(1, "first")), "first");
    assertEquals(first, markers(Ran.of(laying(1, "again")), "again"));
    assertEquals(first, markers(run("512m", laying(1, "apart")), "apart"));
    assertNotEquals(first, markers(Ran.of(laying(2, "other")), "other"));
  }

  /** With so few steps the threads often find layouts of one length, in any sequence. */
  @Test
  void whichThreadIsFirstDecidesNothing() throws Exception {
    String order = "sample-markers/beck-tunic/order.yaml";
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 5; i++) {
      Path to = out("order" + i);
      Ran ran = Ran.of("order", order, "--effort", "300steps", "--threads", 2, "--out", to);
      assertEquals(0, ran.code(), ran.err());
      seen.add(
          Files.readString(to.resolve("main-2.marker.json"))
              + Files.readString(to.resolve("main-3.marker.json")));
    }
    assertEquals(1, seen.size());
  }

  /** Stations to choose, two ways to fold the lining, and threads that meet. */
  private Object[] laying(int seed, String name) {
    String job = "sample-markers/weir-jacket/job.yaml";
    return new Object[] {
      "lay", job, "--effort", "1500steps", "--seed", seed, "--threads", 2, "--out", out(name)
    };
  }

  private Path out(String name) {
    return folder.resolve(name);
  }

  private String markers(Ran ran, String name) throws IOException {
    assertEquals(0, ran.code(), ran.err());
    return Files.readString(out(name).resolve("main.marker.json"))
        + Files.readString(out(name).resolve("lining.marker.json"));
  }
}
