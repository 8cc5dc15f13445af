package ellwand.nest;

import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.geometry.NoFitUnion;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.kernel.KnownNoFits;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.pose.NoRoomException;
import ellwand.nest.tidy.Tidying;
import ellwand.rule.Check;
import ellwand.work.Request;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes markers. Calls share nothing, so several threads may make some at the same time; each call
 * searches on the threads of its request and has ended them when it returns.
 */
public final class Nester {

  private Nester() {}

  /**
   * The best marker found for a lay on a cloth folded so.
   *
   * <p>Wishes are not served. On a remnant it may turn out longer than that is: then no more was
   * found to fit.
   *
   * @throws NoRoomException if a piece fits into no zone
   * @see #nest(Lay, List, Request)
   */
  public static Marker nest(Lay lay, Fold fold, Request request) {
    Tried tried = nest(lay, List.of(fold), request).get(0);
    return tried.marker().orElseThrow(() -> tried.noRoom().orElseThrow());
  }

  /**
   * The best markers found for a lay, one for each way in which its cloth may be folded; in each of
   * them something lies folded, unless nothing can be cut from both plies at once. Every way gets a
   * short trial, the best of them a second one, and the best of those the rest of the effort. Where
   * the cutter has wishes, what serves them is sought after that, with less than half as much
   * effort again, so that the shortest marker is the one that there would be without them.
   *
   * <p>Open cloth never takes more than folded: where it would, the folded marker is laid flat.
   *
   * <p>The same lay, seed, thread count and step-limited effort give the same markers. When a stop
   * is wanted the best so far are returned, one construction at least if anything fits.
   *
   * @param folds those that the cloth can be laid in
   * @param request whose progress hears of every marker that takes less cloth than all before
   * @return one for each fold, in their order
   */
  public static List<Tried> nest(Lay lay, List<Fold> folds, Request request) {
    return nest(lay, folds, request, Optional.empty());
  }

  /**
   * The same, with somebody who hears the markers themselves. Those that serve the cutter's wishes
   * are only in the result, since they take more cloth.
   *
   * @see #nest(Lay, List, Request)
   */
  public static List<Tried> nest(
      Lay lay, List<Fold> folds, Request request, MarkerListener listener) {
    return nest(lay, folds, request, Optional.of(listener));
  }

  /**
   * Searches on from a marker of a lay, on cloth that lies as it does there.
   *
   * <p>The same marker, seed, thread count and step-limited effort find the same.
   *
   * @return a shorter one that passes the check; empty if none was found
   */
  public static Optional<Marker> goOn(Marker from, Request request) {
    Lay lay = from.lay();
    Clock clock = new Clock(request, Optional.empty());
    Optional<LaidCloth> laid =
        LaidCloth.like(lay.cloth(), from.fold(), from.zones())
            .flatMap(like -> like.within(lay.cloth()));
    if (laid.isEmpty()) {
      return Optional.empty();
    }
    NoFit noFit = new KnownNoFits(NoFitUnion::rings);
    Attempt attempt = new Attempt(lay, laid.get(), noFit, clock.part(1), clock::better);
    attempt.takeUp(from);
    return Optional.of(attempt)
        .filter(a -> a.found() && a.clothMm() < from.clothLengthMm() - Carried.SAME_MM)
        .map(a -> a.marker(clock.search(request.stop().wanted())));
  }

  private static List<Tried> nest(
      Lay lay, List<Fold> folds, Request request, Optional<MarkerListener> listener) {
    return new WaysTried(lay, folds, request, listener, NoFitUnion::rings).tried();
  }

  /**
   * Goes on from a marker as it lies, which may break rules: its copies are drawn as its lay has
   * them, what overlaps is parted, and it is shortened. Nothing is turned; what is pinned stays.
   *
   * @param pinned copies, by their places in the marker
   * @return with its copies in the same order, and no longer than the start if that is legal; empty
   *     if no legal marker was found
   */
  public static Optional<Marker> tidy(
      Marker start, Set<Integer> pinned, Request request, MarkerListener listener) {
    Relay relay = new Relay(listener);
    Optional<Marker> tidied =
        new Tidying(start, pinned, new KnownNoFits(NoFitUnion::rings), request)
            .tidied(relay::offer)
            .filter(marker -> Check.of(marker).isEmpty());
    relay.pass();
    boolean longer =
        tidied.filter(m -> m.clothLengthMm() < start.clothLengthMm()).isEmpty()
            && Check.of(start).isEmpty();
    return longer ? Optional.of(start) : tidied;
  }
}
