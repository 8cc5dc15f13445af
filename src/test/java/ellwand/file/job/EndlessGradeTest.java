package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.file.source.Folder;
import ellwand.problem.InputException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip in a grade never draws a piece so large that the memory runs out. */
class EndlessGradeTest {

  private static final String JOB =
      """
      ellwand: 1
      unit: cm
      sizes:
        names: [S, M]
        body:
          S: {chest: 80}
          M: {chest: 84}
        grade:
          yoke: {tip: SHIFT}
      style:
        name: tabard
        size: S
        allowance: 1
        pieces:
          yoke:
            cut: {main: 1}
            outline:
              - [0, 0]
              - [40, 0]
              - {point: tip, at: [40, 20], curve: [[50, 5], [50, 15]]}
              - [0, 20]
      cloths:
        main: {width: 140}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 4 cm more chest: 2,501 times that are 100.04 m.
        "{x: 2501 chest}|it moves the point by more than 100 m. See that the number and its unit"
            + " are right.",
        "{x: 9223372036854775808 chest}|it moves the point by more than 100 m. See that the number"
            + " and its unit are right.",
        "{x: 1/0 chest}|'1/0 chest' divides by 0. Write for example 1/4 chest.",
        "'[60 m, 90 m]'|it moves the point by more than 100 m. See that the number and its unit are"
            + " right.",
      })
  void isRefusedWithItsLine(String shift, String message) {
    assertEquals("job.yaml:9: piece yoke: " + message, refusal(shift));
  }

  /** Within 100 m of where it was, but not of the origin. */
  @Test
  void isRefusedWhereItEndsTooFarAway() {
    assertEquals(
        "job.yaml:9: piece yoke, edge point 1 to point 2: in size M, a point of it lies more than 100 m from"
            + " the origin. See how its points move between sizes.",
        refusal("[99.9 m, 0]").lines().findFirst().orElseThrow());
  }

  private static String refusal(String shift) {
    Folder folder =
        Folder.EMPTY.with("job.yaml", JOB.replace("SHIFT", shift).getBytes(StandardCharsets.UTF_8));
    return assertThrows(InputException.class, () -> JobReader.read("job.yaml", folder))
        .getMessage();
  }
}
