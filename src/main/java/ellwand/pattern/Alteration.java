package ellwand.pattern;

import ellwand.units.Unit;
import java.util.Optional;
import java.util.Set;

/** One thing that is done to a piece with pencil, scissors and tape, in every size. */
public interface Alteration {

  /**
   * The piece afterwards. It need not look whether the new outline crosses itself: whoever does the
   * steps tries it after each.
   *
   * @param others the other pieces as they come out, of those that {@link #needs} names
   * @throws ellwand.problem.InputException if it cannot be done, with the edge if one is concerned
   */
  Workpiece on(Workpiece piece, Others others);

  /** Names of other pieces of the style that it measures or takes. */
  default Set<String> needs() {
    return Set.of();
  }

  /** The name of the mark that it makes, if it does. */
  default Optional<String> mark() {
    return Optional.empty();
  }

  /** What was done, as it is said beside a drawing: {@code 2 cm along armhole}. */
  String words(Unit unit);

  /**
   * The same, and what came of it where that is worth telling.
   *
   * @param after the piece after this step
   */
  default String words(Workpiece after, Unit unit) {
    return words(unit);
  }
}
