package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Optional;

/**
 * One step of altering a piece.
 *
 * @param written where it is asked for, if that was in a file
 */
public record Step(Alteration alteration, Optional<Written> written) {

  /** One that stands in no file. */
  public Step(Alteration alteration) {
    this(alteration, Optional.empty());
  }

  /**
   * The piece after this step, its outline tried.
   *
   * @throws InputException if it cannot be done, told where it is written
   */
  Workpiece on(Workpiece piece, Others others) {
    try {
      Workpiece altered = alteration.on(piece, others);
      boolean changed = altered.edges() != piece.edges();
      if (changed && !altered.parts().isEmpty()) {
        throw InputException.of(
            "it was cut apart before this, and its parts would stay as they are",
            "Do this step before it is cut apart, or in the pieces that start from its parts");
      }
      // A mark leaves the outline as it was.
      if (changed || altered.parts().size() > piece.parts().size()) {
        tried(altered);
      }
      return altered;
    } catch (InputException e) {
      throw new InputException(e.problems().stream().map(p -> located(p, piece.name())).toList());
    }
  }

  /** What is wrong with the new outline is no mistake of the one that was drawn. */
  private static void tried(Workpiece altered) {
    try {
      altered.check();
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream().map(p -> p.edge().isPresent() ? p : ofOutline(p)).toList());
    }
  }

  private static Problem ofOutline(Problem problem) {
    return new Problem(
        problem.file(),
        problem.line(),
        problem.piece(),
        problem.edge(),
        "once this is done, " + problem.what(),
        "See that its marks and measures are right");
  }

  private Problem located(Problem problem, String piece) {
    Problem named = problem.piece().isPresent() ? problem : problem.piece(piece);
    return named.file().isPresent()
        ? named
        : written.map(w -> named.at(w.file(), w.line())).orElse(named);
  }
}
