package ellwand.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nobody is told at the desk to type an option where there is a form. */
class AsidesTest {

  private static final Path SOURCES = Path.of("src/main/java/ellwand");

  /** Heard by who types commands, and on paper. */
  private static final Set<String> NOT_SHOWN =
      Set.of("cli", "bench", "many", "desk", "draw/reference");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern OPTION = Pattern.compile("--[a-z]");

  @Test
  void anAsideIsLeftOut() {
    assertEquals(
        "Measure a piece, and say it if it came out wrong.",
        Asides.without(
            "Measure a piece, and say it (--drawing-unit in, or cm) if it came out wrong."));
    assertEquals(
        "See that it is true (of its size).",
        Asides.without("See that it is true (of its size) (--dpi for SVG)."));
    String json =
        Problems.json(List.of(Problem.of("it is long", "Search longer (--effort)"))).toString();
    assertTrue(json.contains("\"Search longer\""), json);
  }

  @Test
  void whatTheDeskDoesNotAskOfADrawingTheCommandLineDoes() {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0 H%1$d V%1$d H0 Z'/></svg>";
    List<String> said =
        Newcomer.drawn("bag.svg", svg.formatted(400).getBytes(UTF_8), "", "").said();
    String all = String.join(" ", said);
    assertTrue(
        all.contains("say how many there are (with the command ellwand convert: --dpi)"), all);
    assertTrue(all.contains("Where they lack one, say how much; where"), all);
    byte[] small = svg.formatted(4).getBytes(UTF_8);
    InputException refused =
        assertThrows(InputException.class, () -> Newcomer.drawn("bag.svg", small, "", ""));
    assertTrue(
        refused.getMessage().contains("(with the command ellwand convert: --drawing-unit for DXF"),
        refused.getMessage());
    assertFalse(
        Newcomer.drawn("bag.svg", svg.formatted(400).getBytes(UTF_8), "1 cm", "")
            .said()
            .toString()
            .contains("-line"));
  }

  @Test
  void everyOptionInASentenceIsAnAside() throws IOException {
    Set<String> bare = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(AsidesTest::shown).toList()) {
        for (String line : Files.readAllLines(file)) {
          Matcher literal = LITERAL.matcher(line);
          while (literal.find()) {
            if (OPTION.matcher(literal.group(1).replaceAll("\\([^)]*(\\)|$)", "")).find()) {
              bare.add(SOURCES.relativize(file) + ": " + line.strip());
            }
          }
        }
      }
    }
    assertEquals(Set.of(), bare);
  }

  private static boolean shown(Path file) {
    Path inside = SOURCES.relativize(file);
    return file.toString().endsWith(".java") && NOT_SHOWN.stream().noneMatch(inside::startsWith);
  }
}
