package ellwand.order;

import ellwand.work.Seed;
import java.util.List;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.solver.SolverConfig;

/** Improves a plan by {@link PlanRules}, without ever having more lays than it starts with. */
final class PlanSearch {

  private static final int LATE_ACCEPTANCE = 50;

  private final Seed seed;
  private final PlanningBudget budget;
  private int runs;

  PlanSearch(Seed seed, PlanningBudget budget) {
    this.seed = seed;
    this.budget = budget;
  }

  /** The best plan found; lays that became empty are gone. */
  List<Spread> run(Numbers numbers, List<Spread> start, long steps) {
    PlanBoard board = new PlanBoard(numbers, start, budget, steps);
    return solvers(seed.child(runs++)).buildSolver().solve(board).spreads().stream()
        .filter(spread -> !spread.empty())
        .toList();
  }

  static SolverFactory<PlanBoard> solvers(Seed seed) {
    return SolverFactory.create(config().withRandomSeed(seed.value()));
  }

  private static SolverConfig config() {
    return new SolverConfig()
        .withSolutionClass(PlanBoard.class)
        .withEntityClasses(SizeCount.class, PlyCount.class)
        .withConstraintProviderClass(PlanRules.class)
        .withPhases(
            new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(
                    new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(PlanMoves.class))
                .withAcceptorConfig(
                    new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
  }
}
