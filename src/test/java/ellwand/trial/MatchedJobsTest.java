package ellwand.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.trial.JobTrial.Ending;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Two or three pieces that match on stripes or checks, on folded cloth: where a piece lies double,
 * on the fold, opened, or with a twin that is wasted, its marks are looked for on the ply that is
 * kept, by a judge that shares nothing with the program.
 */
class MatchedJobsTest {

  private static final int JOBS = 60;

  @Test
  void whatLiesFoldedMatchesOnThePliesThatAreKept() {
    List<JobTrial> wrong = new ArrayList<>();
    int laid = 0;
    for (long number = 1; number <= JOBS; number++) {
      JobTrial trial = JobTrial.of(number, MatchedJob.of(number), 1, false);
      laid += trial.ending() == Ending.LAID ? 1 : 0;
      if (trial.wrong()) {
        wrong.add(trial);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(laid > JOBS / 3, "only " + laid + " jobs were laid");
  }
}
