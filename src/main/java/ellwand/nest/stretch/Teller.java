package ellwand.nest.stretch;

import ellwand.lay.Marker;
import ellwand.work.Progress;
import java.util.function.Function;

/** Is told of whatever takes less cloth than all that was placed before; must return quickly. */
@FunctionalInterface
public interface Teller {

  /**
   * @param news with the share of the effort that the placing itself may use
   * @param maker makes the marker, which nobody has checked yet
   */
  void better(Progress.Shorter news, Function<Marker.Search, Marker> maker);
}
