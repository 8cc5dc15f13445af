package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every mistake is named with its line, piece and edge, and what to do about it. */
class BadJobTest {

  private static final Path RESOURCES = Path.of("src/test/resources/ellwand/file");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyMistakeOfAJobHasItsMessage() throws IOException {
    return Stream.concat(
        mistakes("apron.yaml", "mistakes.txt", JobReader::read),
        Stream.concat(
            mistakes("skirt.yaml", "skirt-mistakes.txt", JobReader::read),
            Stream.concat(
                mistakes("darts.yaml", "darts-mistakes.txt", JobReader::read),
                mistakes("waistcoat.yaml", "waistcoat-mistakes.txt", JobReader::read))));
  }

  @TestFactory
  Stream<DynamicTest> everyMistakeOfABlockHasItsMessage() throws IOException {
    return mistakes("blocks.yaml", "block-mistakes.txt", JobReader::read);
  }

  @TestFactory
  Stream<DynamicTest> everyMistakeOfAnOrderHasItsMessage() throws IOException {
    return Stream.concat(
        mistakes("order.yaml", "order-mistakes.txt", OrderJobReader::read),
        mistakes("order-of-bibs.yaml", "order-of-bibs-mistakes.txt", OrderJobReader::read));
  }

  private Stream<DynamicTest> mistakes(String good, String list, Consumer<Path> reader)
      throws IOException {
    String text = Files.readString(RESOURCES.resolve(good));
    reader.accept(Files.writeString(folder.resolve("good.yaml"), text));
    return Arrays.stream(Files.readString(RESOURCES.resolve(list)).split("\n\n"))
        .skip(1)
        .map(
            group ->
                DynamicTest.dynamicTest(
                    lines(group, "= "), () -> assertMistake(text, group, reader)));
  }

  private void assertMistake(String good, String group, Consumer<Path> reader) throws IOException {
    List<String> out = lines(group, "- ").lines().toList();
    List<String> in = lines(group, "+ ").lines().toList();
    String bad = good;
    for (int i = 0; i < out.size(); i++) {
      String old = unescaped(out.get(i));
      assertTrue(bad.contains(old), old);
      bad = bad.replace(old, i < in.size() ? unescaped(in.get(i)) : "");
    }
    assertEquals(
        lines(group, "= "), refusal(Files.writeString(folder.resolve("job.yaml"), bad), reader));
  }

  private static String lines(String group, String mark) {
    return group
        .lines()
        .filter(l -> l.startsWith(mark))
        .map(l -> l.substring(mark.length()))
        .collect(Collectors.joining("\n"));
  }

  private static String unescaped(String text) {
    return text.replace("\\n", "\n").replace("\\t", "\t");
  }

  private String refusal(String text) throws IOException {
    return refusal(text.getBytes(StandardCharsets.UTF_8));
  }

  /** All problems, one a line, without the folder. */
  private String refusal(byte[] bytes) throws IOException {
    return refusal(Files.write(folder.resolve("job.yaml"), bytes));
  }

  private String refusal(Path path) {
    return refusal(path, JobReader::read);
  }

  private String refusal(Path path, Consumer<Path> reader) {
    List<Problem> problems =
        assertThrows(InputException.class, () -> reader.accept(path)).problems();
    return problems.stream()
        .map(p -> p.toString().replace(folder + "/", ""))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void saysWhenThereIsNoJobToRead() throws IOException {
    assertEquals(
        "none.yaml: there is no such file. See that its path is right.",
        refusal(folder.resolve("none.yaml")));
    assertEquals(folder + ": this is a folder, not a file. Name a file in it.", refusal(folder));
    assertEquals(
        "job.yaml: the file is empty. See that the right file is named.", refusal(" \n\n"));
    assertEquals(
        "job.yaml:3: this is not text in UTF-8. Save the file as plain text with the encoding"
            + " UTF-8.",
        refusal("a: b\nc: d\ne: \u00e9\n".getBytes(StandardCharsets.ISO_8859_1)));
    assertEquals(
        "job.yaml: the file is larger than 5 MB. Name a smaller one.",
        refusal("# " + "x".repeat(5_000_000)));
    assertTrue(refusal("# only a comment\n").startsWith("job.yaml:2: this is no job"));
    assertTrue(refusal("- a\n- b\n").startsWith("job.yaml:1: this is no job"));
  }

  @Test
  void refusesToBeBlownUp() throws IOException {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 30; i++) {
      bomb.append("a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n");
    }
    assertTrue(refusal(bomb.toString()).startsWith("job.yaml:2: aliases such as *a0 are not used"));
    assertTrue(refusal("a: " + "[".repeat(50_000)).contains("nested too deeply"));
    assertTrue(refusal("unit: " + "9".repeat(4_000_000)).startsWith("job.yaml:1: unit: cannot be"));
  }

  @Test
  void reportsAllMistakesOfAFileInTheOrderOfTheirLines() throws IOException {
    String refusal =
        refusal(
            Files.readString(RESOURCES.resolve("apron.yaml"))
                .replace("title:", "titel:")
                .replace("at: [25, 20]}", "at: [25, -20]}")
                .replace("linen: 1, lining: 2 pairs", "linen: 0, lining: many")
                .replace("fold: any", "fold: none"));
    assertEquals(
        List.of("job.yaml:3:", "job.yaml:12:", "job.yaml:30:", "job.yaml:30:", "job.yaml:47:"),
        refusal.lines().map(l -> l.split(" ")[0]).toList(),
        refusal);
  }

  /** Beside mistakes in reading, in the shape of the piece, and in its outline. */
  @Test
  void anEdgeToNowhereIsReportedWithTheOtherMistakesOfItsPiece() throws IOException {
    String apron =
        Files.readString(RESOURCES.resolve("apron.yaml"))
            .replace("to: bib corner, allowance", "to: bib, allowance");
    String nowhere =
        "job.yaml:23: piece front, edge armhole: no point of the outline is named bib. Use one of"
            + " hem centre, hem side, underarm, bib corner, bib centre.";
    for (String mistake : List.of("edge: armhole, at: -5", "edge: armhole, ut: 5")) {
      List<String> told = refusal(apron.replace("edge: armhole, at: 5", mistake)).lines().toList();
      assertTrue(told.size() > 1, told::toString);
      assertEquals(1, told.stream().filter(nowhere::equals).count(), told::toString);
    }
    assertEquals(nowhere, refusal(apron));
  }
}
