package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names and notes that a terminal or a spreadsheet would obey. */
class PlainTextTest {

  private static final String ESCAPES =
      """
      ellwand: 1
      unit: cm
      notes: ["clear \\e[2J the screen", "one\\nLength to buy nothing", "turned \\u202Edlrow"]
      style:
        name: "bag \\e[31m\\u0007\\u009B5m"
        size: "large \\e[5m"
        allowance: 1
        pieces:
          side: {cut: {main: 2}, outline: [[0, 0], [20, 0], [20, 10], [0, 10]]}
      cloths:
        main: {width: 60}
      order:
        garments: 1
      """;

  @TempDir private Path folder;

  private Ran lay(Object... more) throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), ESCAPES);
    Object[] args = {"lay", job, "--effort", "50steps", "--threads", 1, "--out", out()};
    Object[] all = java.util.Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    Ran ran = Ran.of(all);
    assertEquals(0, ran.code(), ran.err());
    return ran;
  }

  private Path out() {
    return folder.resolve("out");
  }

  private static void assertPlain(String text) {
    assertTrue(text.matches("(?s)[^\\x00-\\x09\\x0B-\\x1F\\x7F-\\x9F\u202E]*"), text);
  }

  @Test
  void aTerminalIsToldNothing() throws IOException {
    Ran ran = lay();
    assertPlain(ran.out());
    assertPlain(ran.err());
    assertTrue(ran.out().startsWith("bag ?[31m??5m, size large ?[5m: 1 garment"), ran.out());
    assertTrue(ran.out().contains("\n! one Length to buy nothing\n"), ran.out());
    assertTrue(ran.out().contains("\n! turned ?dlrow\n"), ran.out());
  }

  @Test
  void figuresKeepTheNameAsItIs() throws IOException {
    Ran ran = lay("--json");
    assertTrue(ran.out().matches("(?s)[\n\\x20-\\x7E]*"), ran.out());
    assertEquals("bag \u001B[31m\u0007\u009B5m", ran.json().get("style").asText());
    assertEquals(ran.json(), Ran.JSON.readTree(Files.readString(out().resolve("figures.json"))));
  }

  @Test
  void refusalsAreAsPlain() throws IOException {
    Path job = folder.resolve("job.yaml");
    Files.writeString(job, ESCAPES.replace("cut: {main: 2}", "cut: {\"m\\e[2J\\u202E\": 2}"));
    Ran ran = Ran.of("check", job);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains("no cloth is called m?[2J?."), ran.err());
    assertPlain(ran.err());
  }

  /** Signs by which OWASP, 'CSV Injection', knows a cell that a spreadsheet takes for a formula. */
  @Test
  void aSpreadsheetFindsNoFormula() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("order.yaml"),
            """
            ellwand: 1
            order:
              colours: {red: {"=1+1": 4, "@S": 2, "\\t=3": 2, "+4, 5": 2, "-S": 2, "S-M": 2}}
              lengths: {"=1+1": 1.1 m, "@S": 1 m, "\\t=3": 1 m, "+4, 5": 1 m, "-S": 1 m, "S-M": 1 m}
              max-plies: 50
              max-garments: 20
            """);
    Ran ran = Ran.of("order", job, "--effort", "200steps", "--threads", 1, "--out", out());
    assertEquals(0, ran.code(), ran.err());
    String tickets = Files.readString(out().resolve("cut-tickets.csv"));
    for (String cell : new String[] {"'=1+1", "'@S", "'\t=3", "\"'+4, 5\"", "'-S", "S-M"}) {
      assertTrue(tickets.contains("," + cell + ","), cell + " in\n" + tickets);
    }
    assertTrue(!tickets.matches("(?s).*[,\"][=+@\t\r-].*"), tickets);
  }
}
