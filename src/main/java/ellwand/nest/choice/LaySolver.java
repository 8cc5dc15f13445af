package ellwand.nest.choice;

import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Stop;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.entity.EntitySelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.monitoring.MonitoringConfig;
import org.optaplanner.core.config.solver.random.RandomType;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/** Configures the planning solver: choices by expected cloth first, then phases that place. */
public final class LaySolver {

  /** Moves tried on expected cloth, which takes well under a second for a hundred pieces. */
  private static final long MOVES = 3_000;

  /** Share of a time that they may take, and the least, s. */
  private static final double CHOOSING = 0.1;

  private static final double LEAST_CHOOSING = 0.2;

  /** From here on the second that it takes to begin when cold is well spent; ours. */
  private static final double LEAST_SECONDS = 5;

  private static final long LEAST_STEPS = 5_000;

  private LaySolver() {}

  /** Whether an effort is large enough to choose with a solver. */
  public static boolean worthwhile(Effort effort) {
    return effort.repeats() ? effort.steps() >= LEAST_STEPS : effort.seconds() >= LEAST_SECONDS;
  }

  /** Solves; between two moves or phases it ends when a stop is wanted. */
  public static void solve(Solver<LayPlan> solver, LayPlan plan, Stop stop) {
    CompletableFuture<Void> solved = new CompletableFuture<>();
    Thread watch =
        new Thread(
            () -> {
              if (stop.unlessWanted(solved.thenApply(done -> true)).isEmpty()) {
                solver.terminateEarly();
              }
            },
            "stop-watch");
    watch.setDaemon(true);
    watch.start();
    try {
      solver.solve(plan);
    } finally {
      solved.complete(null);
    }
  }

  /**
   * @param stationsDiffer whether any serving has a choice; without one no move could ever be made
   */
  public static SolverFactory<LayPlan> of(
      Request request, boolean stationsDiffer, List<CustomPhaseCommand<LayPlan>> placing) {
    SolverConfig config =
        new SolverConfig()
            .withEnvironmentMode(EnvironmentMode.REPRODUCIBLE)
            .withRandomType(RandomType.JDK)
            .withRandomSeed(request.seed().value())
            // Several solvers may run at once, and would warn that their meters clash.
            .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
            .withSolutionClass(LayPlan.class)
            .withEntityClasses(Serving.class, GarmentHeading.class, StretchLength.class)
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig().withConstraintProviderClass(LayConstraints.class));
    CustomPhaseConfig place = new CustomPhaseConfig();
    place.setCustomPhaseCommandList(List.copyOf(placing));
    return SolverFactory.create(
        stationsDiffer
            ? config.withPhases(choosing(request.effort()), place)
            : config.withPhases(place));
  }

  private static LocalSearchPhaseConfig choosing(Effort effort) {
    // A limit on steps would not do: where every move is for the worse a step never ends.
    TerminationConfig enough = new TerminationConfig().withScoreCalculationCountLimit(MOVES);
    if (!effort.repeats()) {
      double seconds = Math.max(LEAST_CHOOSING, CHOOSING * effort.seconds());
      enough.withMillisecondsSpentLimit(Math.round(1000 * seconds));
    }
    return new LocalSearchPhaseConfig()
        .withMoveSelectorConfig(
            new ChangeMoveSelectorConfig()
                .withEntitySelectorConfig(new EntitySelectorConfig(Serving.class)))
        .withTerminationConfig(enough);
  }
}
