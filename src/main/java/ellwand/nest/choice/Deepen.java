package ellwand.nest.choice;

import ellwand.nest.stretch.Found;
import ellwand.nest.stretch.Placing;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/** Phase: all the effort that is left goes into the best choices found. */
public final class Deepen implements CustomPhaseCommand<LayPlan> {

  private final Placing placing;

  public Deepen(Placing placing) {
    this.placing = placing;
  }

  @Override
  public void changeWorkingSolution(ScoreDirector<LayPlan> director) {
    settle(director, placing.search(placing.best(), 1));
  }

  /** Makes the working solution say what was found, so that its score is the true length. */
  static void settle(ScoreDirector<LayPlan> director, Found found) {
    LayPlan plan = director.getWorkingSolution();
    for (int i = 0; i < plan.servings().size(); i++) {
      Serving serving = plan.servings().get(i);
      director.beforeVariableChanged(serving, "station");
      serving.serveAt(found.decision().stations().get(i));
      director.afterVariableChanged(serving, "station");
    }
    for (GarmentHeading garment : plan.headings()) {
      director.beforeVariableChanged(garment, "heading");
      garment.head(found.decision().headings().get(garment.garment()));
      director.afterVariableChanged(garment, "heading");
    }
    for (StretchLength length : plan.lengths()) {
      director.beforeVariableChanged(length, "micrometres");
      length.measure(found.clothMm(length.stretch()));
      director.afterVariableChanged(length, "micrometres");
    }
    director.triggerVariableListeners();
  }
}
