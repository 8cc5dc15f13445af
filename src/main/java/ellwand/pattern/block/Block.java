package ellwand.pattern.block;

import ellwand.pattern.Others;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A method by which a basic pattern piece is drafted from body measures. */
public sealed interface Block permits Bodice, CircleSkirt, Skirt, Sleeve, Trousers {

  /** As in a job: {@code bodice front}. */
  String words();

  /** The body measures that it takes. */
  List<String> measures();

  /** What may be easier than the body, by name, and by how much it is unless said, mm. */
  Map<String, Double> usualEaseMm();

  /** The other pieces that it fits. */
  default Set<String> needs() {
    return Set.of();
  }

  /**
   * The piece in one size.
   *
   * @param measured with every measure and every ease that it takes
   * @param others those that it fits
   * @throws ellwand.problem.InputException if it cannot be drafted of these measures
   */
  BlockLines lines(Measured measured, Others others);
}
