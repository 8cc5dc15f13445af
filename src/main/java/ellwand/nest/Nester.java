package ellwand.nest;

import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.pose.NoRoomException;
import ellwand.work.Request;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Makes markers. Calls share nothing, so several threads may make some at the same time; each call
 * searches on the threads of its request and has ended them when it returns.
 */
public final class Nester {

  /** What all first trials together may take of the effort, where the cloth may lie variously. */
  private static final double TRIALS = 0.3;

  /** Folds that get a second trial, and what each may take. */
  private static final int FINALISTS = 3;

  private static final double SECOND_TRIAL = 0.08;

  /** What turning pieces off grain may take beyond the effort, as a share of it. */
  private static final double TURNING = 0.4;

  /** What wishes may take beyond the effort for the shortest, as a share of it. */
  private static final double PLEASING = 0.4;

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

  private static List<Tried> nest(
      Lay lay, List<Fold> folds, Request request, Optional<MarkerListener> listener) {
    Map<Fold, List<LaidCloth>> ways = new LinkedHashMap<>();
    folds.forEach(fold -> ways.put(fold, Borders.of(lay, fold)));
    int number = ways.values().stream().mapToInt(List::size).sum();
    Clock clock = new Clock(request, listener);
    Stop stop = request.stop();
    NoFit noFit = new KnownNoFits();
    Map<Fold, Attempt> best = new LinkedHashMap<>();
    Map<Fold, NoRoomException> noRoom = new LinkedHashMap<>();
    for (Fold fold : folds) {
      if (ways.get(fold).isEmpty()) {
        noRoom.put(fold, NoRoomException.ofFold(lay, fold));
      }
      for (LaidCloth way : ways.get(fold)) {
        if (stop.wanted() && !best.isEmpty()) {
          break;
        }
        try {
          Attempt attempt =
              new Attempt(
                  lay, way, noFit, clock.part(number < 2 ? 1 : TRIALS / number), clock::better);
          best.merge(fold, attempt, Nester::better);
        } catch (NoRoomException e) {
          noRoom.merge(fold, e, (a, b) -> a.widestMm() >= b.widestMm() ? a : b);
        }
      }
    }
    if (number > 1) {
      List<Attempt> finalists = shortest(best.values()).limit(FINALISTS).toList();
      if (finalists.size() > 1) {
        goOn(finalists, clock, stop);
      }
      if (!stop.wanted()) {
        shortest(best.values()).findFirst().ifPresent(a -> a.goOn(clock.rest().effort()));
      }
    }
    for (Attempt attempt : best.values()) {
      attempt.turn(request.part(TURNING / best.size()));
    }
    clock.end();
    Marker.Search search = clock.search(stop.wanted());
    Optional<Attempt> pleased =
        lay.cloth().wishes().any() ? shortest(best.values()).findFirst() : Optional.empty();
    List<Tried> tried = new ArrayList<>();
    for (Fold fold : folds) {
      Optional<Attempt> attempt = Optional.ofNullable(best.get(fold));
      Optional<Marker> marker = attempt.map(a -> a.marker(search));
      tried.add(
          new Tried(
              fold,
              marker,
              attempt
                  .filter(a -> pleased.filter(p -> p == a).isPresent())
                  .flatMap(a -> a.pleasing(search, request.part(PLEASING))),
              marker.isPresent() ? Optional.empty() : Optional.ofNullable(noRoom.get(fold))));
    }
    return tried.stream().map(t -> t.fold() == Fold.OPEN ? flat(t, tried) : t).toList();
  }

  /** What can lie folded can be opened flat. */
  private static Tried flat(Tried open, List<Tried> all) {
    double most = open.marker().map(Marker::clothLengthMm).orElse(Double.POSITIVE_INFINITY);
    return all.stream()
        .flatMap(t -> t.marker().stream())
        .filter(m -> m.clothLengthMm() < most - Carried.SAME_MM)
        .sorted(Comparator.comparingDouble(Marker::clothLengthMm))
        .flatMap(m -> Carried.opened(m).stream())
        .filter(m -> m.clothLengthMm() < most)
        .findFirst()
        .map(open::with)
        .orElse(open);
  }

  /** Of two ways to make one fold; where nothing can lie folded the fold is not made at all. */
  private static Attempt better(Attempt a, Attempt b) {
    if (a.folded() != b.folded()) {
      return a.folded() ? a : b;
    }
    return b.clothMm() < a.clothMm() ? b : a;
  }

  private static Stream<Attempt> shortest(Collection<Attempt> attempts) {
    return attempts.stream().sorted(Comparator.comparingDouble(Attempt::clothMm));
  }

  private static void goOn(List<Attempt> attempts, Clock clock, Stop stop) {
    for (Attempt attempt : attempts) {
      if (!stop.wanted()) {
        attempt.goOn(clock.part(SECOND_TRIAL).effort());
      }
    }
  }
}
