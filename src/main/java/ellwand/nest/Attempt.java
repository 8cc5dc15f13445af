package ellwand.nest;

import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Wishes;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.choice.Choices;
import ellwand.nest.choice.Deepen;
import ellwand.nest.choice.ExploreChoices;
import ellwand.nest.choice.FirstPlan;
import ellwand.nest.choice.Glances;
import ellwand.nest.choice.LayPlan;
import ellwand.nest.choice.LaySolver;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.pose.NoRoomException;
import ellwand.nest.pose.Station;
import ellwand.nest.repeat.Phases;
import ellwand.nest.stretch.Found;
import ellwand.nest.stretch.Placing;
import ellwand.nest.stretch.Teller;
import ellwand.nest.swing.Turning;
import ellwand.nest.wish.Pleasing;
import ellwand.nest.wish.SectionLayer;
import ellwand.nest.wish.Sectioned;
import ellwand.nest.wish.WishSearch;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/** A lay on a cloth that lies in one way. */
final class Attempt {

  private final Lay lay;
  private final LaidCloth cloth;
  private final NoFit noFit;
  private final Request request;
  private final Placing placing;
  private final LayPlan plan;
  private final Glances glances;

  /** Made beside the search, once it is worth that. */
  private Optional<CompletableFuture<Solver<LayPlan>>> solver = Optional.empty();

  /**
   * Ready to begin; nothing is placed yet.
   *
   * @throws NoRoomException if a piece fits into no zone
   */
  Attempt(Lay lay, LaidCloth cloth, NoFit noFit, Request request, Teller teller) {
    this.lay = lay;
    this.cloth = cloth;
    this.noFit = noFit;
    this.request = request;
    Phases repeat = new Phases(lay, cloth);
    plan = FirstPlan.of(lay, cloth, repeat);
    placing = new Placing(lay, cloth, repeat, noFit, request, teller);
    glances = new Glances(plan, placing);
  }

  /** Places what is wanted and searches. */
  void search() {
    prepareSolver(request.effort());
    try {
      placing.construct(plan.decision());
    } finally {
      // Whatever becomes of the search, so much can be laid.
      Choices.rows(plan).stream().filter(placing::possible).forEach(placing::row);
      if (!found()) {
        placing.row(plan.decision());
      }
    }
    search(request.effort());
  }

  /** Tries more choices and searches on from the best that was found. */
  void goOn(Effort effort) {
    prepareSolver(effort);
    placing.allow(effort);
    search(effort);
  }

  private void search(Effort effort) {
    glances.look();
    glances.tryShortest();
    if (solverIsWanted(effort)) {
      request
          .stop()
          .unlessWanted(solver.orElseThrow())
          .ifPresent(made -> LaySolver.solve(made, plan, request.stop()));
    } else {
      placing.search(placing.best(), 1);
    }
  }

  /** Configuring it takes a second when cold, the first marker less: so both at once. */
  private void prepareSolver(Effort effort) {
    if (solver.isEmpty() && glances.more() && LaySolver.worthwhile(effort)) {
      boolean stations = plan.servings().stream().anyMatch(s -> s.stations().size() > 1);
      List<CustomPhaseCommand<LayPlan>> phases =
          List.of(new ExploreChoices(glances, placing), new Deepen(placing));
      Request spending = request.with(effort);
      solver =
          Optional.of(
              CompletableFuture.supplyAsync(
                  () -> LaySolver.of(spending, stations, phases).buildSolver()));
    }
  }

  /** Whoever counts time does not wait for it. */
  private boolean solverIsWanted(Effort effort) {
    return solver.isPresent()
        && LaySolver.worthwhile(effort)
        && (effort.repeats() || solver.get().isDone());
  }

  /** Searches on from where the copies of another marker lie on such cloth. */
  void goOnFrom(Marker marker, Effort effort) {
    placing.allow(effort);
    placing.searchFrom(marker.copies());
  }

  /**
   * Searches on from a marker, with the choices by which it lies so; nothing is found where these
   * cannot be told, as on cloth with a repeat.
   */
  void takeUp(Marker marker) {
    plan.asLaid(marker.copies()).ifPresent(decision -> placing.searchFrom(decision, marker));
  }

  /** Whether there is any marker. */
  boolean found() {
    return !placing.betterAndBetter().isEmpty();
  }

  /** The steps that its last effort took. */
  double steps() {
    return placing.steps();
  }

  /** How the cloth lies. */
  Fold fold() {
    return cloth.fold();
  }

  /** Turns pieces off their grain where they may and it saves cloth. */
  void turn(Request request) {
    if (Turning.allowed(placing.best())) {
      placing.keep(new Turning(noFit, request).turned(placing.best()));
    }
  }

  double clothMm() {
    return placing.best().clothMm();
  }

  /** Whether anything lies folded. */
  boolean folded() {
    return placing.best().decision().stations().stream().anyMatch(Station::folded);
  }

  /** The kernel's sums are not trusted: the shortest that passes the check is the answer. */
  Marker marker(Marker.Search search) {
    return shortest(search).marker(lay, cloth, search);
  }

  private Found shortest(Marker.Search search) {
    Lay endless = endless();
    return placing.betterAndBetter().stream()
        .filter(found -> Check.of(found.marker(endless, cloth, search)).isEmpty())
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "no marker found passes the check: "
                        + Check.of(placing.best().marker(endless, cloth, search))
                            .get(0)
                            .sentence(Unit.MM)));
  }

  /**
   * The marker that serves the cutter's wishes best for what they may cost; none if not even the
   * shortest fits on its remnant.
   */
  Optional<Marker> pleasing(Marker.Search search, Request request, WishSearch.Careful careful) {
    Wishes wishes = lay.cloth().wishes();
    Found shortest = shortest(search);
    double most = lay.cloth().lengthMm();
    if (shortest.clothMm() > most) {
      return Optional.empty();
    }
    Pleasing pleasing =
        new Pleasing(
            wishes.asked(),
            shortest,
            Math.min(most, wishes.longestMm(shortest.clothMm())),
            found -> found.marker(lay, cloth, search));
    placing.betterAndBetter().forEach(pleasing::offer);
    new WishSearch(
            wishes.asked(),
            new Sectioned(lay.cloth().gapMm(), pleasing),
            new SectionLayer(noFit, request))
        .run(careful);
    Marker pleases = pleasing.marker();
    // The stop may have come only now.
    Marker.Search ended =
        new Marker.Search(
            search.seed(), search.threads(), search.effort(), request.stop().wanted());
    return Optional.of(pleases.foundBy(ended));
  }

  private Lay endless() {
    return lay.on(lay.cloth().endless());
  }
}
