package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is typed wrongly is refused with the whole sentence, and nothing is written. */
class BadOptionsTest {

  private static final String BIB = "src/test/resources/ellwand/cli/bib.yaml";
  private static final String MARKER = "sample-markers/weir-jacket/marker/main.marker.json";
  private static final String WAISTCOAT = "sample-markers/tarn-waistcoat/job.yaml";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "lay BIB --effort soon|Invalid value for option '--effort': 'soon' is neither a time nor a"
            + " number of steps. Write for example 30s, 2min or 5000steps.",
        "lay BIB --effort 0s|Invalid value for option '--effort': '0s' leaves no time to search."
            + " Write for example 30s, 2min or 5000steps.",
        "lay BIB --effort 0.4steps|Invalid value for option '--effort': '0.4steps' leaves no time"
            + " to search. Write for example 30s, 2min or 5000steps.",
        "lay BIB --threads 0|--threads takes a number from 1 up",
        "lay BIB --threads two|Invalid value for option '--threads': 'two' is not such a number."
            + " Write for example 4.",
        "lay BIB --seed 1.5|Invalid value for option '--seed': '1.5' is not such a number. Write"
            + " for example 4.",
        "lay BIB --units ell|Invalid value for option '--units': 'ell' is not a unit of length. Use"
            + " mm, cm, m, in, yd.",
        "lay none.yaml|none.yaml: there is no such file. See that its path is right.",
        "lay MARKER|MARKER:1: this is a marker, not a job. Name the job that it was made from;"
            + " check and print take markers.",
        "order MARKER|MARKER:1: this is a marker, not a job. Name the job that it was made from;"
            + " check and print take markers.",
        "compare BIB --widths wide|--widths: 'wide' cannot be read as a length. Write for example"
            + " 2 cm, 12 mm, 5/8 in, 1 1/2 yd.",
        "compare BIB --widths 0|--widths: the width of cloth main is 0 or less. Give it more than"
            + " 0.",
        "compare BIB --widths 115cm,3ell|--widths: 'ell' is not a unit of length. Use mm, cm, m,"
            + " in, yd.",
        "compare BIB --widths 1cm|--widths: nothing is left of cloth main between its selvedges."
            + " See that width: and selvedge: are right.",
        "compare BIB --cloth mian|BIB: the job has no cloth mian. Use one of main, lining.",
        "fit WAISTCOAT --on offcut|WAISTCOAT: no remnant is called offcut, and it is no width and"
            + " length. Use tweed offcut, end of bolt, a size such as '150cm x 1.2m'.",
        "fit WAISTCOAT --on 1mx2ells|WAISTCOAT: no remnant is called 1mx2ells, and it is no width"
            + " and length. Use tweed offcut, end of bolt, a size such as '150cm x 1.2m'.",
        "fit WAISTCOAT --on 0cmx2m|remnant 0cmx2m has no length or no width. Give both, more than"
            + " 0.",
        "fit WAISTCOAT --on 1cmx2m|nothing is left of cloth tweed between its selvedges. See that"
            + " width: and selvedge: are right.",
        "fit WAISTCOAT --on 1mx2m --cloth silk|WAISTCOAT: the job has no cloth silk. Use one of"
            + " tweed.",
        "check none.marker.json|none.marker.json: there is no such file. See that its path is"
            + " right.",
      })
  void isRefused(String typed, String told) {
    Path out = folder.resolve("out");
    String command = typed + (typed.startsWith("check") ? "" : " --out " + out);
    Ran ran = Ran.of((Object[]) named(command).split(" "));
    assertEquals(2, ran.code(), ran.err());
    assertEquals(named(told), ran.err().lines().findFirst().orElse(""));
    assertEquals("", ran.out());
    assertFalse(Files.exists(out));
  }

  private static String named(String text) {
    return text.replace("BIB", BIB).replace("WAISTCOAT", WAISTCOAT).replace("MARKER", MARKER);
  }
}
