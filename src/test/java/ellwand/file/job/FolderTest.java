package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import ellwand.file.source.Folder;
import ellwand.job.OrderJob;
import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderTest {

  private static final String STYLE =
      """
      ellwand: 1
      unit: cm
      style:
        name: cushion
        allowance: 1
        pieces:
          face: {cut: {main: 2}, outline: [[0, 0], [40, 0], [40, 40], [0, 40]]}
      """;

  private static final String ORDER =
      """
      ellwand: 1
      unit: cm
      style: {file: styles/cushion.yaml}
      cloths:
        main: {width: 140}
      order:
        colours: {red: {one size: 6}}
        max-plies: 10
        max-garments: 4
        table: 6 m
      """;

  @TempDir Path disk;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static Folder inMemory() {
    return Folder.EMPTY
        .with("works/order.yaml", bytes(ORDER))
        .with("works/styles/cushion.yaml", bytes(STYLE));
  }

  private static String refusal(Folder folder) {
    return assertThrows(InputException.class, () -> OrderJobReader.read("works/order.yaml", folder))
        .getMessage();
  }

  @Test
  void whatIsInMemoryReadsLikeWhatIsOnDisk() throws IOException {
    Path job = Files.writeString(disk.resolve("order.yaml"), ORDER);
    Files.createDirectories(disk.resolve("styles"));
    Files.writeString(disk.resolve("styles/cushion.yaml"), STYLE);
    OrderJob there = OrderJobReader.read(job);
    OrderJob here = OrderJobReader.read("works/order.yaml", inMemory());
    assertEquals("works/order.yaml", here.origin().path());
    assertEquals(there.origin().sha256(), here.origin().sha256());
    assertEquals(there.cloths(), here.cloths());
    assertEquals("cushion", here.style().orElseThrow().style().name());
  }

  @Test
  void everyFileOfAnOrderIsReadOnce() {
    List<String> read = new ArrayList<>();
    Folder memory = inMemory();
    OrderJobReader.read(
        "works/order.yaml",
        new Folder() {
          @Override
          public byte[] read(String name, int mostBytes) {
            read.add(name);
            return memory.read(name, mostBytes);
          }

          @Override
          public boolean holds(String name) {
            return memory.holds(name);
          }
        });
    assertEquals(List.of("works/order.yaml", "works/styles/cushion.yaml"), read);
  }

  @Test
  void aFileThatIsNotThereIsTheFaultOfTheLineThatNamesIt() {
    assertEquals(
        "works/order.yaml:3: works/styles/cushion.yaml: there is no such file."
            + " See that its path is right.",
        refusal(Folder.EMPTY.with("works/order.yaml", bytes(ORDER))));
  }

  @Test
  void whatLiesInMemoryMayNotBeLargerThanAFile() {
    byte[] large = bytes("#" + "x".repeat(5_000_000) + "\n" + ORDER);
    assertEquals(
        "works/order.yaml: the file is larger than 5 MB. Name a smaller one.",
        refusal(Folder.EMPTY.with("works/order.yaml", large)));
  }

  @Test
  void aPipeIsNotWaitedFor() throws IOException, InterruptedException {
    Path pipe = disk.resolve("pipe");
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "no pipes here");
    assertEquals(0, new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor());
    assertEquals(
        pipe + ": this is a pipe or a device, not a file. Save it as a file, and name that.",
        assertThrows(InputException.class, () -> JobReader.read(pipe)).getMessage());
  }
}
