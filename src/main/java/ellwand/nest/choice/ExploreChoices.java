package ellwand.nest.choice;

import ellwand.nest.stretch.Placing;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/** Phase: looks at what the solver proposes and at what is near it, and searches the shortest. */
public final class ExploreChoices implements CustomPhaseCommand<LayPlan> {

  private final Glances glances;
  private final Placing placing;

  public ExploreChoices(Glances glances, Placing placing) {
    this.glances = glances;
    this.placing = placing;
  }

  @Override
  public void changeWorkingSolution(ScoreDirector<LayPlan> director) {
    glances.look(director.getWorkingSolution().decision());
    glances.tryShortest();
    Deepen.settle(director, placing.best());
  }
}
