package ellwand.app;

import ellwand.cloth.Fold;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.work.Request;
import java.util.List;
import java.util.Optional;

/** Whoever searches for the markers of a run. For use by several threads at once. */
@FunctionalInterface
public interface Hands {

  /** This process, on the calling thread and those of the request. */
  Hands OWN = Nester::nest;

  /**
   * The best markers found for a lay, one for each way in which its cloth may be folded.
   *
   * @see Nester#nest(Lay, List, Request)
   */
  List<Tried> nest(Lay lay, List<Fold> folds, Request request);

  /**
   * Searches on from a marker that was carried over from other cloth, if these hands do that.
   *
   * @return a shorter one; empty if none was found or sought
   */
  default Optional<Marker> goOn(Marker from, Request request) {
    return Optional.empty();
  }

  /** How many such searches get on at once as fast as one alone. */
  default int atOnce(Request request) {
    return 1;
  }
}
