package ellwand.file.photo;

import ellwand.problem.InputException;
import java.util.Optional;

/**
 * What a traced outline cannot say of itself; edges by their names.
 *
 * @param onFold the edge that lies on the fold when the piece is cut
 * @param half the edge at which the piece, half of the whole, is mirrored
 * @param grain the edge that runs along the grain, or {@link #UP}; where nothing is said, the arrow
 *     that is drawn on the piece, or the fold
 */
public record HowCut(Optional<String> onFold, Optional<String> half, Optional<String> grain) {

  /** The grain runs up the picture, whatever is drawn on the piece. */
  public static final String UP = "up";

  public static final HowCut AS_TRACED =
      new HowCut(Optional.empty(), Optional.empty(), Optional.empty());

  public HowCut {
    InputException.unless(
        onFold.isEmpty() || half.isEmpty(),
        "a half piece is either cut on the fold or drawn whole",
        "Name its edge for one of the two (--on-fold, --half)");
  }
}
