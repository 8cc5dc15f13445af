package ellwand.app;

import ellwand.cloth.Fold;
import ellwand.lay.Lay;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.work.Request;
import java.util.List;

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

  /** How many such searches get on at once as fast as one alone. */
  default int atOnce(Request request) {
    return 1;
  }
}
