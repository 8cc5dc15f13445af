package ellwand.nest;

import ellwand.lay.Marker;

/**
 * Hears better markers while they are searched for. Each takes less cloth than the one before, and
 * is legal: it has passed {@link ellwand.rule.Check} on its own cloth. Called from a searching
 * thread, by one at a time.
 *
 * <p>Making and checking takes from the search, so at most about a twentieth of the time goes to
 * it: markers that come too soon after another are left out, except the last of all. What is found
 * does not depend on who listens.
 */
@FunctionalInterface
public interface MarkerListener {

  void better(Marker marker);
}
