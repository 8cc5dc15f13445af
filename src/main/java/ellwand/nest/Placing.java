package ellwand.nest;

import ellwand.cloth.LaidCloth;
import ellwand.lay.Lay;
import ellwand.nest.Found.Placed;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.Listener;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Outcome;
import ellwand.nest.kernel.Search;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Places decisions with the kernel, keeps the best that was found and tells of it. */
final class Placing {

  /** What the first layout may take: as good as nothing. */
  private static final Effort FIRST = Effort.ofSteps(1);

  private final Lay lay;
  private final LaidCloth cloth;
  private final Phases phases;
  private Effort effort;
  private final Seed seed;
  private final int threads;
  private final Stop stop;
  private final Progress progress;
  private final NoFit noFit;
  private long startNanos = System.nanoTime();
  private double shareSpent;
  private int searches;
  private final Deque<Found> betterAndBetter = new ArrayDeque<>();

  Placing(
      Lay lay,
      LaidCloth cloth,
      Phases phases,
      NoFit noFit,
      Effort effort,
      Seed seed,
      int threads,
      Stop stop,
      Progress progress) {
    this.lay = lay;
    this.cloth = cloth;
    this.phases = phases;
    this.noFit = noFit;
    this.effort = effort;
    this.seed = seed;
    this.threads = threads;
    this.stop = stop;
    this.progress = progress;
  }

  /** Begins to spend another effort, on what was found so far. */
  void allow(Effort more) {
    effort = more;
    startNanos = System.nanoTime();
    shareSpent = 0;
  }

  Found best() {
    return betterAndBetter.getFirst();
  }

  /** All that were the best for a while, the shortest first. */
  Collection<Found> betterAndBetter() {
    return List.copyOf(betterAndBetter);
  }

  boolean stopWanted() {
    return stop.wanted();
  }

  /** Whether everything has a place with these choices. */
  boolean possible(Decision decision) {
    return StretchTask.possible(lay.cloth(), phases, decision);
  }

  /**
   * The kernel's first layout of every stretch; quick and legal, so a stop does not cut it short.
   */
  Found construct(Decision decision) {
    List<Placed> stretches = new ArrayList<>();
    for (int stretch = 0; stretch < cloth.stretches().size(); stretch++) {
      StretchTask task = StretchTask.of(lay.cloth(), cloth, phases, decision, stretch, noFit);
      Optional<Layout> layout = task.search().flatMap(this::first);
      stretches.add(new Placed(task, cloth.lengths(stretch), layout));
    }
    return keep(new Found(decision, stretches));
  }

  private Optional<Layout> first(Search search) {
    Outcome outcome = search.run(Optional.empty(), FIRST, seed, 1, new Stop(), Listener.NONE);
    if (effort.repeats()) {
      shareSpent += outcome.evaluations() / (double) Search.STEP / effort.steps();
    }
    return outcome.layout();
  }

  /**
   * Searches from a found marker on.
   *
   * @param share part of the whole effort that this search may take, 0 to 1
   */
  Found search(Found start, double share) {
    Found now = start;
    int copies = start.stretches().stream().mapToInt(p -> p.task().seats().size()).sum();
    for (int stretch = 0; stretch < start.stretches().size() && !stop.wanted(); stretch++) {
      int seats = start.stretches().get(stretch).task().seats().size();
      if (seats > 0) {
        now = searchStretch(now, stretch, share * seats / copies);
      }
    }
    return now;
  }

  private Found searchStretch(Found start, int stretch, double share) {
    double until = Math.min(1, shareSpent + share);
    Placed placed = start.stretches().get(stretch);
    Optional<Layout> better =
        placed
            .task()
            .search()
            .orElseThrow()
            .run(
                placed.layout(),
                part(until),
                seed.child(searches++),
                threads,
                stop,
                (layout, evaluations) -> keep(start.with(stretch, layout)))
            .layout();
    shareSpent = until;
    return better.map(layout -> keep(start.with(stretch, layout))).orElse(start);
  }

  /** The part of the effort that is used up, 0 to 1 or a little more. */
  double spent() {
    return effort.repeats() ? shareSpent : seconds() / effort.seconds();
  }

  /** What of the effort lies between now and a share of it. */
  private Effort part(double untilShare) {
    if (effort.repeats()) {
      return Effort.ofSteps(Math.max(1, Math.round(effort.steps() * (untilShare - shareSpent))));
    }
    return Effort.ofSeconds(Math.max(0.01, effort.seconds() * untilShare - seconds()));
  }

  private double seconds() {
    return (System.nanoTime() - startNanos) / 1e9;
  }

  private synchronized Found keep(Found found) {
    if (betterAndBetter.isEmpty() || found.clothMm() < best().clothMm()) {
      betterAndBetter.addFirst(found);
      progress.hear(
          new Progress.News(lay.cloth().name(), seconds(), Math.min(1, spent()), found.clothMm()));
    }
    return found;
  }
}
