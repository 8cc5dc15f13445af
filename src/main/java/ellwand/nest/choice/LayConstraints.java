package ellwand.nest.choice;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;

import ellwand.nest.pose.Station;
import org.optaplanner.core.api.score.buildin.simplelong.SimpleLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.Joiners;

/** What makes one set of choices better than another: cloth, in micrometres of length. */
public class LayConstraints implements ConstraintProvider {

  @Override
  public Constraint[] defineConstraints(ConstraintFactory factory) {
    return new Constraint[] {clothLaid(factory), clothExpected(factory)};
  }

  /** A stretch that has been placed costs its length. */
  private Constraint clothLaid(ConstraintFactory factory) {
    return factory
        .forEach(StretchLength.class)
        .penalizeLong(SimpleLongScore.ONE, StretchLength::micrometres)
        .asConstraint("cloth laid");
  }

  /**
   * One that has not costs what its fullest bands are expected to take, its longest piece at least.
   */
  private Constraint clothExpected(ConstraintFactory factory) {
    return factory
        .forEachIncludingNullVars(StretchLength.class)
        .filter(length -> length.micrometres() == null)
        .join(
            Serving.class,
            Joiners.equal(StretchLength::stretch, serving -> serving.station().stretch()))
        .groupBy(
            (length, serving) -> length.stretch(),
            toList((StretchLength length, Serving serving) -> serving.station()))
        .penalizeLong(
            SimpleLongScore.ONE,
            (stretch, stations) -> Math.round(1000 * Station.expectedMm(stations)))
        .asConstraint("cloth expected");
  }
}
