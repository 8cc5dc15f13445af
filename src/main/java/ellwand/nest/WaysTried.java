package ellwand.nest;

import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.kernel.KnownNoFits;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.pose.NoRoomException;
import ellwand.problem.InputException;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A lay tried in every way in which its cloth may lie. A part that fails by a mistake of ours is
 * left out: it takes away nothing of what was found besides.
 */
final class WaysTried {

  /** What all first trials together may take of the effort, where the cloth may lie variously. */
  private static final double TRIALS = 0.3;

  /** Folds that get a second trial, and what each may take. */
  private static final int FINALISTS = 3;

  private static final double SECOND_TRIAL = 0.08;

  /** What turning pieces off grain may take beyond the effort, as a share of it. */
  private static final double TURNING = 0.4;

  /** What open cloth may take beyond the effort from what lies folded, as a share of it. */
  private static final double FLAT = 0.05;

  /** What wishes may take beyond the effort for the shortest, as a share of it. */
  private static final double PLEASING = 0.4;

  private final Lay lay;
  private final List<Fold> folds;
  private final Request request;
  private final Stop stop;
  private final NoFit noFit;
  private final Clock clock;
  private final Map<Fold, Attempt> best = new LinkedHashMap<>();
  private final Map<Fold, NoRoomException> noRoom = new LinkedHashMap<>();
  private boolean fromFolded;
  private final List<Progress.Mishap> mishaps = new ArrayList<>();

  WaysTried(
      Lay lay, List<Fold> folds, Request request, Optional<MarkerListener> listener, NoFit noFit) {
    this.lay = lay;
    this.folds = folds;
    this.request = request;
    this.stop = request.stop();
    this.noFit = new KnownNoFits(noFit);
    this.clock = new Clock(request, listener);
  }

  /** One for each fold, in their order. */
  List<Tried> tried() {
    Map<Fold, List<LaidCloth>> ways = new LinkedHashMap<>();
    folds.forEach(fold -> ways.put(fold, Borders.of(lay, fold)));
    int number = ways.values().stream().mapToInt(List::size).sum();
    ways.forEach((fold, some) -> firstTrials(fold, some, number < 2 ? 1 : TRIALS / number));
    if (number > 1) {
      List<Attempt> finalists = finalists();
      finalists.forEach(attempt -> goOn(attempt, () -> clock.part(SECOND_TRIAL).effort()));
      shortest(best.values())
          .findFirst()
          .ifPresent(attempt -> goOn(attempt, () -> clock.part(clock.left()).effort()));
    }
    goOnWhileItPays();
    Optional.ofNullable(best.get(Fold.OPEN)).ifPresent(this::goOnFlat);
    best.forEach(
        (fold, attempt) ->
            part(
                "turning off the grain, " + fold.words(),
                () -> attempt.turn(request.with(clock.spent().part(TURNING / best.size())))));
    clock.end();
    List<Tried> tried = results();
    if (tried.stream().noneMatch(t -> t.marker().isPresent()) && !mishaps.isEmpty()) {
      throw mishaps.get(0).why();
    }
    mishaps.forEach(request.progress()::hear);
    return tried;
  }

  private void firstTrials(Fold fold, List<LaidCloth> ways, double share) {
    if (ways.isEmpty()) {
      noRoom.put(fold, NoRoomException.ofFold(lay, fold));
    }
    for (LaidCloth way : ways) {
      if (stop.wanted() && !best.isEmpty()) {
        return;
      }
      try {
        part(fold.words(), () -> trial(fold, way, share));
      } catch (NoRoomException e) {
        noRoom.merge(fold, e, (a, b) -> a.widestMm() >= b.widestMm() ? a : b);
      }
    }
  }

  private void trial(Fold fold, LaidCloth way, double share) {
    Attempt attempt = new Attempt(lay, way, noFit, clock.part(share), clock::better);
    try {
      attempt.search();
    } finally {
      clock.count(attempt.steps());
      if (attempt.found()) {
        best.merge(fold, attempt, WaysTried::better);
      }
    }
  }

  /** The folds that are worth another trial, where there are several. */
  private List<Attempt> finalists() {
    List<Attempt> finalists = shortest(best.values()).limit(FINALISTS).toList();
    return finalists.size() > 1 ? finalists : List.of();
  }

  private void goOn(Attempt attempt, Supplier<Effort> effort) {
    if (!stop.wanted()) {
      part(
          attempt.fold().words(),
          () -> {
            attempt.goOn(effort.get());
            clock.count(attempt.steps());
          });
    }
  }

  private void goOnWhileItPays() {
    for (Optional<Effort> more = clock.more();
        more.isPresent() && !best.isEmpty() && !stop.wanted();
        more = clock.more()) {
      Effort round = more.get();
      List<Attempt> finalists = finalists();
      finalists.forEach(attempt -> goOn(attempt, () -> round.part(SECOND_TRIAL)));
      double left = 1 - SECOND_TRIAL * finalists.size();
      shortest(best.values()).findFirst().ifPresent(best -> goOn(best, () -> round.part(left)));
    }
    if (!best.isEmpty()) {
      clock.tellEnd(lay.cloth().name());
    }
  }

  /** What lies folded in less cloth is a start for the open one, maybe with pieces too near. */
  private void goOnFlat(Attempt open) {
    if (lay.cloth().repeat().isEmpty() && !stop.wanted()) {
      shortest(best.values())
          .findFirst()
          .filter(folded -> folded.clothMm() < open.clothMm() - Carried.SAME_MM)
          .ifPresent(
              folded -> {
                fromFolded = true;
                part(
                    "opening what lies folded",
                    () ->
                        Carried.unfolded(folded.marker(clock.search(false)))
                            .ifPresent(flat -> open.goOnFrom(flat, clock.spent().part(FLAT))));
              });
    }
  }

  private List<Tried> results() {
    Marker.Search search = clock.search(stop.wanted());
    Map<Fold, Marker> markers = new LinkedHashMap<>();
    best.forEach(
        (fold, attempt) -> part(fold.words(), () -> markers.put(fold, attempt.marker(search))));
    Map<Fold, Marker> pleasing = new LinkedHashMap<>();
    if (lay.cloth().wishes().any()) {
      // What they cost is told beside that one.
      Tried.shortest(tried(markers, pleasing))
          .map(Marker::fold)
          .ifPresent(
              fold ->
                  part(
                      "what the cutter wishes",
                      () ->
                          best.get(fold)
                              .pleasing(
                                  search, request.with(clock.spent().part(PLEASING)), this::part)
                              .ifPresent(marker -> pleasing.put(fold, marker))));
    }
    List<Tried> tried = tried(markers, pleasing);
    List<Tried> opened = new ArrayList<>();
    part("opening what lies folded", () -> opened.addAll(Carried.flat(tried)));
    return opened.isEmpty() ? tried : opened;
  }

  private List<Tried> tried(Map<Fold, Marker> markers, Map<Fold, Marker> pleasing) {
    List<Tried> tried = new ArrayList<>();
    for (Fold fold : folds) {
      Optional<Marker> marker = Optional.ofNullable(markers.get(fold));
      tried.add(
          new Tried(
              fold,
              marker,
              Optional.ofNullable(pleasing.get(fold)),
              marker.isPresent() ? Optional.empty() : Optional.ofNullable(noRoom.get(fold)),
              fold == Fold.OPEN && fromFolded));
    }
    return tried;
  }

  /** Does a part of the search; what it fails by is told at the end. */
  private void part(String name, Runnable work) {
    try {
      work.run();
    } catch (InputException | NoRoomException e) {
      throw e;
    } catch (RuntimeException e) {
      mishaps.add(clock.mishap(lay.cloth().name(), name, e));
    }
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
}
