package ellwand.nest.repeat;

import ellwand.lay.Lay;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** Says without laying anything whether pieces can match as they are asked to. */
public final class Matching {

  private Matching() {}

  /** What cannot match in the repeat of the lay's cloth, the first of each size. */
  public static List<Problem> problems(Lay lay) {
    List<Problem> problems = new ArrayList<>();
    if (lay.cloth().repeat().isPresent()) {
      for (String size : lay.wanted().stream().map(w -> w.size()).distinct().toList()) {
        try {
          MarkPlaces.of(lay, lay.cloth().repeat().get(), size);
        } catch (InputException e) {
          problems.addAll(e.problems());
        }
      }
    }
    return problems;
  }
}
