package ellwand.app;

import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.nest.repeat.Matching;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.List;

/** What no search will find, refused before one begins. */
final class Foreseen {

  private Foreseen() {}

  /**
   * @param lays of the job, each on its own cloth
   * @param unit that lengths are told in
   * @throws InputException if pieces cannot match in their repeat, or have no room on their cloth
   */
  static void refuse(Job job, List<Lay> lays, Unit unit) {
    refuse(lays.stream().flatMap(lay -> Matching.problems(lay).stream()).distinct().toList());
    refuse(
        lays.stream()
            .flatMap(lay -> NoRoom.foreseen(lay, lay.cloth().possibleFolds(), unit).stream())
            .map(problem -> problem.at(job.origin().path(), 0))
            .toList());
  }

  private static void refuse(List<Problem> problems) {
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }
}
