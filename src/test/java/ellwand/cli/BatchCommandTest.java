package ellwand.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import ellwand.Scarf;
import ellwand.file.source.Json;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchCommandTest {

  private static final String SCARF = Scarf.job(3);

  @TempDir private Path folder;

  @BeforeEach
  void jobs() throws IOException {
    Files.createDirectories(folder.resolve("jobs/winter"));
    Files.writeString(folder.resolve("jobs/scarf.yaml"), SCARF);
    Files.writeString(
        folder.resolve("jobs/winter/order.yaml"),
        SCARF
            .replace("name: Scarf", "name: Scarf\n  size: S")
            .replace(
                "order: {garments: 3}",
                """
                sizes: {names: [S]}
                order: {colours: {red: {S: 6}}, max-plies: 3, max-garments: 2}\
                """));
  }

  private Ran batch(Path from, String... more) {
    List<String> args = new ArrayList<>(List.of("batch", from.toString(), "--effort", "20steps"));
    args.addAll(List.of(more));
    return Ran.of(args.toArray());
  }

  private Path list(String... lines) throws IOException {
    return Files.writeString(folder.resolve("night.txt"), String.join("\n", lines));
  }

  private Map<String, JsonNode> index() throws IOException {
    Map<String, JsonNode> entries = new TreeMap<>();
    Json.read(Files.readAllBytes(folder.resolve("night-batch/index.json")))
        .path("jobs")
        .forEach(entry -> entries.put(entry.path("name").asText(), entry));
    return entries;
  }

  private static Map<String, FileTime> written(Path in) throws IOException {
    Map<String, FileTime> times = new TreeMap<>();
    try (Stream<Path> files = Files.walk(in)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        times.put(in.relativize(file).toString(), Files.getLastModifiedTime(file));
      }
    }
    return times;
  }

  @Test
  void eachJobIsMadeAsItsCommandAloneWouldMakeIt() throws IOException {
    Path list =
        list("# tonight", "", "jobs/scarf.yaml --seed 7", "fit jobs/scarf.yaml --on '90 cm x 1 m'");
    Ran ran = batch(list, "--threads", "1");
    assertEquals(0, ran.code(), ran.err());
    Path alone = folder.resolve("alone");
    Path job = list.toAbsolutePath().resolveSibling("jobs/scarf.yaml");
    Ran single =
        Ran.of(
            "lay",
            job.toString(),
            "--effort",
            "20steps",
            "--seed",
            "7",
            "--threads",
            "1",
            "--out",
            alone.toString());
    assertEquals(0, single.code(), single.err());
    for (String file : List.of("main.marker.json", "main.svg", "figures.json")) {
      assertArrayEquals(
          Files.readAllBytes(alone.resolve(file)),
          Files.readAllBytes(folder.resolve("night-batch/jobs/scarf-out").resolve(file)));
    }
    assertTrue(Files.exists(folder.resolve("night-batch/jobs/scarf-fit/main.marker.json")));
    String page = Files.readString(folder.resolve("night-batch/index.html"));
    assertTrue(page.contains("href=\"./jobs/scarf-out/\"") && page.contains("main.png"), page);
    assertTrue(ran.err().contains("1 left") && ran.err().contains("none left"), ran.err());
  }

  @Test
  void whatIsDoneIsKeptAndWhatHasChangedIsMadeAnew() throws IOException {
    Path list = list("jobs/scarf.yaml", "jobs/winter/order.yaml");
    assertEquals(0, batch(list).code());
    Map<String, FileTime> first = written(folder.resolve("night-batch/jobs"));
    Ran again = batch(list);
    assertTrue(again.err().contains("0 to do, 2 done before"), again.err());
    assertEquals(first, written(folder.resolve("night-batch/jobs")));

    Files.writeString(
        folder.resolve("jobs/scarf.yaml"), SCARF.replace("garments: 3", "garments: 4"));
    Ran changed = batch(list);
    assertTrue(changed.err().contains("1 to do, 1 done before"), changed.err());
    assertTrue(index().get("jobs/scarf-out").path("said").asText().contains("4 garments"));

    Files.delete(folder.resolve("night-batch/jobs/winter/order-out/order.json"));
    Ran deleted = batch(list);
    assertTrue(deleted.err().contains("1 to do, 1 done before"), deleted.err());
    assertTrue(Files.exists(folder.resolve("night-batch/jobs/winter/order-out/order.json")));

    Ran other = batch(list, "--seed", "2");
    assertTrue(other.err().contains("2 to do"), other.err());
  }

  @Test
  void aJobThatCannotBeMadeIsToldAndDoesNotStopTheOthers() throws IOException {
    Files.writeString(folder.resolve("jobs/wide.yaml"), SCARF.replace("width: 90", "width: 10"));
    Files.writeString(folder.resolve("jobs/empty.yaml"), "");
    Path list =
        list(
            "jobs/empty.yaml",
            "jobs/wide.yaml",
            "fit jobs/scarf.yaml --on '90 cm x 5 cm'",
            "jobs/scarf.yaml");
    Ran ran = batch(list);
    assertEquals(Main.BAD_INPUT, ran.code());
    Map<String, JsonNode> index = index();
    assertEquals("refused", index.get("jobs/empty-out").path("state").asText());
    assertTrue(index.get("jobs/empty-out").path("said").asText().contains("the file is empty"));
    assertEquals("refused", index.get("jobs/wide-out").path("state").asText());
    assertTrue(index.get("jobs/wide-out").path("said").asText().contains("square"));
    assertEquals("no", index.get("jobs/scarf-fit").path("state").asText());
    assertEquals("done", index.get("jobs/scarf-out").path("state").asText());
    assertFalse(Files.exists(folder.resolve("night-batch/jobs/wide-out")));
    assertTrue(ran.err().contains("empty.yaml: the file is empty"), ran.err());
  }

  @Test
  void aLineThatIsNoCommandIsToldBeforeAnythingIsMade() throws IOException {
    Path list =
        list(
            "jobs/scarf.yaml # the usual one",
            "press jobs/scarf.yaml",
            "lay jobs/scarf.yaml --out elsewhere",
            "jobs/scarf.yaml --threads 0",
            "fit jobs/scarf.yaml --on 'tweed offcut");
    Ran ran = batch(list);
    assertEquals(Main.BAD_INPUT, ran.code());
    assertTrue(ran.err().contains("night.txt:2: press is no command of a batch"), ran.err());
    assertTrue(
        ran.err().contains("night.txt:3: results and helpers are the batch's own"), ran.err());
    assertTrue(ran.err().contains("night.txt:4: --threads takes a number"), ran.err());
    assertTrue(ran.err().contains("night.txt:5: a quote is not closed"), ran.err());
    assertFalse(ran.err().contains("night.txt:1"), ran.err());
    assertFalse(Files.exists(folder.resolve("night-batch")));
  }

  @Test
  void ofAFolderEveryJobAndOrderIsMadeButNoStyle() throws IOException {
    Files.writeString(
        folder.resolve("jobs/winter/style.yaml"),
        "ellwand: 1\nunit: cm\nstyle: {name: Hood, allowance: 0}\n");
    Ran ran = batch(folder.resolve("jobs"), "--json");
    assertEquals(0, ran.code(), ran.err());
    List<String> asked = new ArrayList<>();
    Json.read(ran.out().getBytes(UTF_8))
        .path("jobs")
        .forEach(entry -> asked.add(entry.path("asked").asText()));
    assertEquals(List.of("lay scarf.yaml", "order winter/order.yaml"), asked);
    assertTrue(Files.exists(folder.resolve("jobs-batch/winter/order-out/order.pdf")));
  }

  /** A process that is killed leaves what it has done; the next goes on from there. */
  @Test
  void killedItGoesOnWhereItWas() throws IOException, InterruptedException {
    Path list =
        list("jobs/scarf.yaml", "jobs/scarf.yaml --seed 2", "jobs/scarf.yaml --seed 3 --effort 1h");
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "batch",
                list.toString(),
                "--effort",
                "20steps")
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said").toFile())
            .start();
    long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(3);
    while (!Files.readString(folder.resolve("said")).contains("--effort 1h")
        && program.isAlive()
        && System.nanoTime() < end) {
      Thread.sleep(50);
    }
    program.destroyForcibly().waitFor();
    Map<String, JsonNode> index = index();
    assertEquals("done", index.get("jobs/scarf-out-2").path("state").asText());
    assertEquals("left", index.get("jobs/scarf-out-3").path("state").asText());
    Map<String, FileTime> before = written(folder.resolve("night-batch/jobs"));
    list("jobs/scarf.yaml", "jobs/scarf.yaml --seed 2", "jobs/scarf.yaml --seed 3");
    Ran ran = batch(list);
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.err().contains("1 to do, 2 done before"), ran.err());
    Map<String, FileTime> after = written(folder.resolve("night-batch/jobs"));
    after.keySet().removeIf(file -> file.startsWith("scarf-out-3"));
    assertEquals(before, after);
  }

  @Test
  void theSameJobTwiceHasTwoFolders() throws IOException {
    Path list = list("jobs/scarf.yaml", "jobs/scarf.yaml --seed 2");
    assertEquals(0, batch(list).code());
    assertEquals(List.of("jobs/scarf-out", "jobs/scarf-out-2"), List.copyOf(index().keySet()));
    assertNotEquals(
        index().get("jobs/scarf-out").path("key"), index().get("jobs/scarf-out-2").path("key"));
  }
}
