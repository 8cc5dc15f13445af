package ellwand.nest.choice;

import ellwand.work.Seed;
import java.util.List;
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

  /** Moves tried on expected cloth, which takes well under a second. */
  private static final long MOVES = 3_000;

  private LaySolver() {}

  /**
   * @param stationsDiffer whether any serving has a choice; without one no move could ever be made
   */
  public static SolverFactory<LayPlan> of(
      Seed seed, boolean stationsDiffer, List<CustomPhaseCommand<LayPlan>> placing) {
    SolverConfig config =
        new SolverConfig()
            .withEnvironmentMode(EnvironmentMode.REPRODUCIBLE)
            .withRandomType(RandomType.JDK)
            .withRandomSeed(seed.value())
            // Several solvers may run at once, and would warn that their meters clash.
            .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
            .withSolutionClass(LayPlan.class)
            .withEntityClasses(Serving.class, GarmentHeading.class, StretchLength.class)
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig().withConstraintProviderClass(LayConstraints.class));
    CustomPhaseConfig place = new CustomPhaseConfig();
    place.setCustomPhaseCommandList(List.copyOf(placing));
    return SolverFactory.create(
        stationsDiffer ? config.withPhases(choosing(), place) : config.withPhases(place));
  }

  private static LocalSearchPhaseConfig choosing() {
    return new LocalSearchPhaseConfig()
        .withMoveSelectorConfig(
            new ChangeMoveSelectorConfig()
                .withEntitySelectorConfig(new EntitySelectorConfig(Serving.class)))
        // A limit on steps would not do: where every move is for the worse a step never ends.
        .withTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit(MOVES));
  }
}
