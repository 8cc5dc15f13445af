package ellwand.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.trial.JobTrial.Ending;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Jobs made at random end in legal markers or are refused with a reason, and nothing else happens.
 * {@code benchmarks/trial} tries many more.
 */
class RandomJobsTest {

  private static final int JOBS = 150;

  @Test
  void eachIsLaidRightOrRefusedWithAReason() {
    List<JobTrial> wrong = new ArrayList<>();
    int laid = 0;
    for (long number = 1; number <= JOBS; number++) {
      JobTrial trial = JobTrial.of(number, 1, number % 25 == 0);
      laid += trial.ending() == Ending.LAID ? 1 : 0;
      if (trial.wrong()) {
        wrong.add(trial);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(laid > JOBS / 2, "only " + laid + " jobs were laid");
  }
}
