package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever stands in a job, it is read or refused with a reason, and nothing else happens. */
class AnyJobTest {

  private static final Path SAMPLE = Path.of("sample-markers/weir-jacket/job.yaml");

  /** What slips of the pen put in place of a word. */
  @Provide
  Arbitrary<String> slips() {
    return Arbitraries.of(
        "",
        " ",
        "\n",
        "0",
        "-1",
        "1e9",
        "x",
        "[]",
        "{}",
        "[1, 2]",
        "{a: b}",
        "null",
        "~",
        ":",
        "#",
        "'",
        "\"",
        "&a",
        "*a",
        "!x",
        "? ",
        "- ",
        "\t",
        "true",
        ".inf",
        "9999999999999999999999",
        "1/0",
        "\u0000",
        "\ud83e\uddf5",
        "on fold",
        "pair");
  }

  @Property(tries = 300)
  void isReadOrRefused(
      @ForAll @IntRange(min = 0, max = 100_000) int where,
      @ForAll @IntRange(min = 1, max = 3) int words,
      @ForAll @From("slips") String slip)
      throws IOException {
    List<String> tokens = List.of(Files.readString(SAMPLE).split("(?<=[\\s,:{}\\[\\]])"));
    int from = where % tokens.size();
    int to = Math.min(tokens.size(), from + words);
    String text =
        String.join("", tokens.subList(0, from))
            + slip
            + String.join("", tokens.subList(to, tokens.size()));
    Path path = Files.createTempFile("job", ".yaml");
    try {
      JobReader.read(Files.writeString(path, text));
    } catch (InputException e) {
      for (Problem problem : e.problems()) {
        assertTrue(problem.line() > 0 && problem.file().isPresent(), problem::toString);
      }
    } finally {
      Files.delete(path);
    }
  }
}
