package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What can be known to fail is refused before anything is searched. */
@Timeout(120)
class RefusedBeforeTest {

  private static final Path BIB = Path.of("src/test/resources/ellwand/cli/bib.yaml");

  /** Nobody sells a bolt so narrow. */
  private static final String NARROW = "width: 12";

  @TempDir private Path folder;

  /** A command that would search for long, and says one thing instead. */
  private static void refused(String message, Object... args) {
    List<Object> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--effort", "10min"));
    Ran ran = Ran.of(all.toArray());
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains(message), ran.err());
    assertFalse(ran.err().contains("first marker"), ran.err());
    assertEquals("", ran.out());
  }

  /** Cases from an attack: the cut sheet in place of a marker, names that differ in capitals. */
  @Test
  void filesOfOneNameAreRefusedBeforeAnythingIsSearched() throws IOException {
    String bib = Files.readString(BIB);
    for (String name : List.of("cut-sheet", "Main")) {
      Path job = Files.writeString(folder.resolve("job.yaml"), bib.replace("lining", name));
      Path clash = folder.resolve("clash");
      refused("two files would be called " + name, "lay", job, "--out", clash);
      refused("Give cloth " + name + " another name.", "lay", job, "--out", clash);
      assertFalse(Files.exists(folder.resolve("clash")));
    }
  }

  @Test
  void whatCannotBeWritten() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    Path order = Bibs.job(folder, "");
    for (Path out : List.of(file, file.resolve("out"))) {
      refused("in the way", "lay", BIB, "--out", out);
      refused("in the way", "compare", BIB, "--out", out);
      refused("in the way", "fit", BIB, "--on", "1m x 2m", "--out", out);
      refused("in the way", "order", order, "--out", out);
      refused("in the way", "print", BIB, "--of", "marker", "--out", out.resolve("a.pdf"));
    }
    Ran draw = Ran.of("draw", BIB, "--out", file.resolve("a.svg"));
    assertEquals(2, draw.code());
    assertTrue(draw.err().contains("in the way"), draw.err());
  }

  /** Where even who may write everywhere cannot. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void whatNobodyCanWrite() {
    refused("/proc/ellwand: it cannot be written", "lay", BIB, "--out", "/proc/ellwand");
    refused("it cannot be written", "print", BIB, "--of", "marker", "--out", "/proc/a/b.pdf");
  }

  @Test
  void nothingIsLeftOfAFolderThatWasTried() throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), narrowLining());
    refused("cloth lining has only", "lay", job, "--out", folder.resolve("a/b"));
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(List.of(job), all.toList());
    }
  }

  @Test
  void aRollOnWhichTheClothHasNoRoom() {
    refused(
        "at least 45.2 cm wide with its words, and of a roll 30cm wide 28.0 cm are printed",
        "print",
        BIB,
        "--of",
        "marker",
        "--paper",
        "roll:30cm",
        "--out",
        folder.resolve("a.pdf"));
  }

  private static String narrowLining() throws IOException {
    return Files.readString(BIB).replace("width: 70", NARROW);
  }

  @Test
  void theLastClothOfAJobOrAnOrder() throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), narrowLining());
    refused("but cloth lining has only", "lay", job);
    refused("but cloth lining has only", "lay", job, "--use-remnants");
    Path order =
        Files.writeString(
            folder.resolve("order.yaml"),
            narrowLining()
                .replace(
                    "order:\n  garments: 1",
                    """
                    order:
                      colours: {red: {one: 4}}
                      max-plies: 4
                      max-garments: 2
                      table: 3 m
                      end-loss: 2 cm
                      cost: {lay: 5, cloth: 5 per m}\
                    """));
    refused("but cloth lining has only", "order", order);
  }
}
