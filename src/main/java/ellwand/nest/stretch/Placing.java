package ellwand.nest.stretch;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.LaidCloth;
import ellwand.lay.Copy;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Outcome;
import ellwand.nest.kernel.StripSearch;
import ellwand.nest.repeat.Phases;
import ellwand.nest.stretch.Found.LaidStretch;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Spending;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Places decisions with the kernel, keeps the best that was found and tells of it. An effort in
 * time counts from the first marker on.
 */
public final class Placing {

  /** What the first layout may take: as good as nothing. */
  private static final Effort FIRST = Effort.ofSteps(1);

  /** Share of the effort's time after which it makes haste. */
  private static final double OPENED = 0.5;

  /** The very first has so much time whatever the effort: less is of no use. */
  private static final Effort LEAST = Effort.ofSeconds(3);

  /** How often the place at which the cloth is folded across is moved on. */
  private static final int GUESSES = 6;

  private final Lay lay;
  private final LaidCloth cloth;
  private final Phases phases;
  private final Request request;
  private final Teller teller;
  private final NoFit noFit;
  private final GrownShapes grown;
  private Spending spending;
  private int searches;
  private final Deque<Found> betterAndBetter = new ArrayDeque<>();

  public Placing(
      Lay lay, LaidCloth cloth, Phases phases, NoFit noFit, Request request, Teller teller) {
    this.lay = lay;
    this.cloth = cloth;
    this.phases = phases;
    this.noFit = noFit;
    this.grown = new GrownShapes(lay.cloth().gapMm());
    this.request = request;
    this.teller = teller;
    this.spending = Spending.patient(request.effort());
  }

  /** Begins to spend another effort, on what was found so far. */
  public void allow(Effort more) {
    spending = Spending.patient(more);
    spending.begin();
  }

  public Found best() {
    return betterAndBetter.getFirst();
  }

  /** All that were the best for a while, the shortest first. */
  public Collection<Found> betterAndBetter() {
    return List.copyOf(betterAndBetter);
  }

  public boolean stopWanted() {
    return request.stop().wanted();
  }

  /** Whether everything has a place with these choices. */
  public boolean possible(Decision decision) {
    return StretchTask.possible(lay.cloth(), phases, decision);
  }

  /**
   * The kernel's first layout of every stretch; empty if a stop is wanted before it is there. Where
   * time limits it makes haste when that draws to its end.
   */
  public Optional<Found> construct(Decision decision) {
    Found found = placed(decision, task -> task.search().flatMap(this::first));
    boolean whole =
        found.stretches().stream()
            .allMatch(placed -> placed.task().seats().isEmpty() || placed.layout().isPresent());
    return whole ? Optional.of(keep(found)) : Optional.empty();
  }

  /** The copies one behind the other, which takes no search. */
  public void row(Decision decision) {
    keep(placed(decision, SingleFile::of));
  }

  private Found placed(Decision decision, Function<StretchTask, Optional<Layout>> layer) {
    List<LaidStretch> stretches = new ArrayList<>();
    double fromX = 0;
    double acrossMm = 0;
    for (int stretch = 0; stretch < cloth.stretches().size(); stretch++) {
      int lengths = cloth.lengths(stretch);
      LaidStretch placed =
          lengths > 1 && !lay.cloth().flaws().isEmpty()
              ? doubled(decision, stretch, layer)
              : placed(task(lay.cloth(), decision, stretch, fromX, acrossMm), lengths, layer);
      stretches.add(placed);
      fromX += placed.reservedMm();
      acrossMm = lengths > 1 ? fromX : acrossMm;
    }
    return new Found(decision, stretches);
  }

  private static LaidStretch placed(
      StretchTask task, int lengths, Function<StretchTask, Optional<Layout>> layer) {
    Optional<Layout> layout = layer.apply(task);
    double length = layout.map(Layout::length).orElse(0.0);
    return new LaidStretch(task, lengths, task.cloth().wholeRepeatsMm(length), layout);
  }

  private StretchTask task(
      Cloth on, Decision decision, int stretch, double fromX, double acrossMm) {
    return StretchTask.of(on, cloth, phases, decision, stretch, fromX, acrossMm, grown, noFit);
  }

  /**
   * Where cloth with flaws lies double end over end, its flaws shift with the place at which it is
   * folded or cut: so that place is guessed, and moved on until all that is to lie double does.
   */
  private LaidStretch doubled(
      Decision decision, int stretch, Function<StretchTask, Optional<Layout>> layer) {
    int lengths = cloth.lengths(stretch);
    LaidStretch whole = placed(task(lay.cloth().whole(), decision, stretch, 0, 0), lengths, layer);
    if (whole.layout().isEmpty()) {
      return whole;
    }
    double acrossMm = acrossFrom(whole.lengthMm());
    for (int guess = 0; guess < GUESSES; guess++) {
      StretchTask task = task(lay.cloth(), decision, stretch, 0, acrossMm);
      Optional<Layout> layout = layer.apply(task);
      if (layout.isEmpty() || layout.get().length() <= acrossMm) {
        return new LaidStretch(task, lengths, acrossMm, layout);
      }
      acrossMm = acrossFrom(layout.get().length());
    }
    // So far on no flaw lies among what would lie there without any.
    acrossMm = acrossFrom(whole.lengthMm() + farthestFlawMm());
    StretchTask task = task(lay.cloth(), decision, stretch, 0, acrossMm);
    return new LaidStretch(task, lengths, acrossMm, whole.layout());
  }

  private double acrossFrom(double mm) {
    return lay.cloth().acrossFromMm(cloth.fold(), mm);
  }

  private double farthestFlawMm() {
    return lay.cloth().flaws().stream().mapToDouble(f -> f.outline().box().maxX()).max().orElse(0);
  }

  private Optional<Layout> first(StripSearch search) {
    Effort effort = FIRST.within(opening());
    Outcome outcome = search.roughly(Request.of(effort, request.seed()).with(request.stop()));
    spending.use(steps(outcome));
    return outcome.layout();
  }

  private static double steps(Outcome outcome) {
    return outcome.evaluations() / (double) StripSearch.STEP;
  }

  /** The time for a first layout, if time is what limits. */
  private Effort opening() {
    Effort until = spending.until(OPENED);
    return betterAndBetter.isEmpty() && until.seconds() < LEAST.seconds() ? LEAST : until;
  }

  /**
   * Searches on from where copies lie, as far as the best choices so far let them lie so; they need
   * not be legal. Only on cloth of one stretch.
   */
  public void searchFrom(List<Copy> copies) {
    Traced.of(best().stretches().get(0).task(), copies)
        .ifPresent(layout -> search(best().with(0, layout), 1));
  }

  /** Searches on from where the copies of a marker lie, with choices that let them lie so. */
  public void searchFrom(Decision decision, Marker marker) {
    Found start = placed(decision, task -> Traced.of(task, on(task, marker)));
    if (start.stretches().stream()
        .allMatch(placed -> placed.layout().isPresent() || placed.task().seats().isEmpty())) {
      search(start, 1);
    }
  }

  /** What of a marker lies on a stretch, as seen from where that begins. */
  private static List<Copy> on(StretchTask task, Marker marker) {
    Set<String> bands =
        task.seats().stream()
            .flatMap(seat -> seat.bands().stream())
            .map(Band::id)
            .collect(Collectors.toSet());
    double fromX =
        marker.zones().stream()
            .filter(zone -> bands.contains(zone.id()))
            .mapToDouble(zone -> zone.box().minX())
            .min()
            .orElse(0);
    return marker.copies().stream()
        .filter(copy -> bands.contains(copy.zone()))
        .map(copy -> copy.shifted(-fromX, 0))
        .toList();
  }

  /**
   * Searches from a found marker on.
   *
   * @param share part of the whole effort that this search may take, 0 to 1
   */
  public Found search(Found start, double share) {
    Found now = start;
    int copies = start.stretches().stream().mapToInt(p -> p.task().seats().size()).sum();
    double until = spending.spent();
    for (int stretch = 0; stretch < start.stretches().size() && !stopWanted(); stretch++) {
      int seats = start.stretches().get(stretch).task().seats().size();
      if (seats > 0) {
        double part = share * seats / copies;
        boolean doubled = cloth.lengths(stretch) > 1 && !lay.cloth().flaws().isEmpty();
        until = Math.min(1, until + (doubled ? part / 2 : part));
        now = searchStretch(now, stretch, until, Double.POSITIVE_INFINITY).orElse(now);
        if (!lay.cloth().flaws().isEmpty()) {
          double most = now.stretches().get(stretch).lengthMm();
          now = drawnUp(now, stretch);
          if (doubled) {
            until = Math.min(1, until + part / 2);
            now = searchStretch(now, stretch, until, most).orElse(now);
          }
        }
      }
    }
    return now;
  }

  /**
   * The same with no room left behind a stretch but what its bars need. What lies behind it keeps
   * its place on the cloth; what lies double on cloth that so is folded nearer may come to lie on
   * flaws.
   */
  private Found drawnUp(Found found, int stretch) {
    LaidStretch placed = found.stretches().get(stretch);
    double taken =
        placed.lengths() > 1
            ? acrossFrom(placed.lengthMm())
            : lay.cloth().wholeRepeatsMm(placed.lengthMm());
    double spare = placed.reservedMm() - taken;
    if (!(spare > 0) || !placed.task().measured()) {
      return found;
    }
    double acrossMm = 0;
    double fromX = 0;
    Found drawn = found;
    for (int i = 0; i < found.stretches().size(); i++) {
      LaidStretch old = found.stretches().get(i);
      int lengths = old.lengths();
      double reserved = i == stretch ? taken : old.reservedMm();
      acrossMm = lengths > 1 ? reserved : acrossMm;
      if (old.layout().isPresent() && i >= stretch) {
        double shift = i > stretch ? placed.lengths() * spare : 0;
        Layout layout = old.layout().get().shifted(shift);
        StretchTask task = task(lay.cloth(), found.decision(), i, fromX, acrossMm);
        drawn =
            drawn.with(i, new LaidStretch(task, lengths, reserved + shift, Optional.of(layout)));
      }
      fromX += reserved;
    }
    return drawn;
  }

  /**
   * The best that was found for a stretch; empty if nothing was.
   *
   * @param until share of the whole effort that may be used up then, 0 to 1
   * @param limitMm how long the stretch may get
   */
  private Optional<Found> searchStretch(Found start, int stretch, double until, double limitMm) {
    Request part = request.with(spending.until(until)).with(request.seed().child(searches++));
    LaidStretch placed = start.stretches().get(stretch);
    Found before = betterAndBetter.peekFirst();
    Outcome outcome =
        placed
            .task()
            .search()
            .orElseThrow()
            .run(
                placed.layout(),
                part,
                (layout, evaluations) -> {
                  if (layout.length() <= limitMm) {
                    keep(start.with(stretch, layout));
                  }
                });
    if (spending.effort().repeats()) {
      spending.reach(until * spending.effort().steps());
    } else {
      spending.use(steps(outcome) / request.threads());
    }
    return outcome
        .layout()
        .filter(layout -> layout.length() <= limitMm)
        .map(layout -> settled(start.with(stretch, layout), before));
  }

  /**
   * Keeps what came of a search. Of layouts of one length that several threads told of it is the
   * one that stays, whichever came first, so that steps repeat.
   *
   * @param before the best when the search began; null if there was none
   */
  private synchronized Found settled(Found found, Found before) {
    Found told = betterAndBetter.peekFirst();
    if (told == null || told == before || told.clothMm() != found.clothMm()) {
      return keep(found);
    }
    betterAndBetter.removeFirst();
    betterAndBetter.addFirst(found);
    return found;
  }

  /** The steps that this effort took so far, on each thread. */
  public double steps() {
    return spending.used();
  }

  /** The steps that the whole effort comes to, by those that it took so far. */
  public double stepsInAll() {
    return spending.stepsInAll();
  }

  /** The part of the effort that is used up, 0 to 1 or a little more. */
  public double spent() {
    return spending.spent();
  }

  /** Keeps a marker if it takes less cloth than all before. */
  public synchronized Found keep(Found found) {
    spending.begin();
    if (betterAndBetter.isEmpty() || found.clothMm() < best().clothMm()) {
      betterAndBetter.addFirst(found);
      teller.better(
          new Progress.Shorter(
              lay.cloth().name(),
              cloth.fold().words(),
              spending.seconds(),
              Math.min(1, spent()),
              found.clothMm()),
          search -> found.marker(lay, cloth, search));
    }
    return found;
  }
}
