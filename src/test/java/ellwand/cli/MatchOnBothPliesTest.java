package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A half that is off the middle of a bar cannot be cut twice at once by what matches it. */
class MatchOnBothPliesTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: mm
      style:
        name: tabard
        allowance: 0
        match:
          - {points: [tab.slope @ 13, yoke.side @ 4], bars: along}
        pieces:
          tab:
            cut: {main: 2}
            outline: [{point: a, at: [9, 22]}, {point: b, at: [1, 34]}, [20, 40]]
            edges: {slope: {from: a, to: b}}
          yoke:
            cut: {main: 2 on fold}
            outline: [{point: a, at: [71, 0]}, {point: b, at: [61, 53]}, {point: c, at: [-1, 0]}]
            edges: {centre: {from: c, to: a}, side: {from: a, to: b}}
            fold: centre
            place: {at: side @ 10, across: -8}
      cloths:
        main: {width: 421, fold: FOLD, repeat: {along: 92, across: 68}}
      """;

  @ParameterizedTest
  @ValueSource(strings = {"lengthwise fold", "double fold", "crosswise fold", "crosswise turned"})
  void isCutWhereOnePlyLies(String fold, @TempDir Path folder) throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), JOB.replace("FOLD", fold));
    Ran laid = Ran.of("lay", job, "--effort", "5steps", "--out", folder.resolve("out"));
    assertEquals(0, laid.code(), laid.err());
  }
}
