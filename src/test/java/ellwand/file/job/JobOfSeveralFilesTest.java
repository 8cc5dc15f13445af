package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.job.Job;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobOfSeveralFilesTest {

  private static final String STYLE =
      """
      ellwand: 1
      unit: cm
      style:
        name: scarf
        allowance: 1
        pieces:
          scarf: {cut: {main: 1}, outline: [[0, 0], [90, 0], [90, 20], [0, 20]]}
      """;

  private static final String JOB =
      """
      ellwand: 1
      unit: in
      style: {file: styles/scarf.yaml}
      cloths:
        main: {width: 40}
      """;

  @TempDir Path folder;

  private Path put(String name, String text) throws IOException {
    Path path = folder.resolve(name);
    Files.createDirectories(path.getParent());
    return Files.writeString(path, text);
  }

  private String refusal(Path job) {
    return assertThrows(InputException.class, () -> JobReader.read(job))
        .getMessage()
        .replace(folder + "/", "");
  }

  @Test
  void bareNumbersStandForTheUnitOfTheirOwnFile() throws IOException {
    put("styles/scarf.yaml", STYLE);
    Job job = JobReader.read(put("job.yaml", JOB));
    assertEquals(Unit.INCH, job.unit());
    assertEquals(1016, job.cloths().get(0).widthMm(), 1e-9);
    assertEquals(900, job.style().pieces("one size").get(0).edges().get(0).line().length(), 1e-6);
  }

  @Test
  void theDigestCoversEveryFile() throws IOException {
    put("styles/scarf.yaml", STYLE);
    Path job = put("job.yaml", JOB);
    String before = JobReader.read(job).origin().sha256();
    put("styles/scarf.yaml", STYLE.replace("90", "91"));
    assertNotEquals(before, JobReader.read(job).origin().sha256());
  }

  @Test
  void problemsNameTheFileTheyAreIn() throws IOException {
    put("styles/scarf.yaml", STYLE.replace("main: 1", "main: 0"));
    assertEquals(
        "styles/scarf.yaml:7: piece scarf: a piece is cut once or more, not 0 times."
            + " Leave the cloth out instead.",
        refusal(put("job.yaml", JOB)));
  }

  @Test
  void filesThatCannotServeAreRefused() throws IOException {
    Path job = put("job.yaml", JOB);
    assertEquals(
        "job.yaml:3: styles/scarf.yaml: there is no such file. See that its path is right.",
        refusal(job));
    put("styles/scarf.yaml", "ellwand: 1\nunit: cm\nstyle: {file: ../job.yaml}\n");
    assertEquals(
        "styles/scarf.yaml:3: this file ends up naming itself. Name the file that has the style.",
        refusal(job));
    put("styles/scarf.yaml", "ellwand: 1\nunit: cm\ncloths: {}\n");
    assertEquals(
        "styles/scarf.yaml:1: job.yaml looks for style: in this file, it has none."
            + " Put the style under the key style:, beside unit.",
        refusal(job));
    for (int i = 0; i < 20; i++) {
      put("f" + i + ".yaml", "ellwand: 1\nunit: cm\nstyle: {file: f" + (i + 1) + ".yaml}\n");
    }
    assertEquals(
        "f7.yaml:3: too many files name one another. Name the last of them directly.",
        refusal(folder.resolve("f0.yaml")));
  }
}
