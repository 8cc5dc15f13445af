package ellwand.nest;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.max;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.sumLong;

import ellwand.cloth.Band;
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
   * One that has not costs what its fullest band is expected to take, its longest piece at least.
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
            (length, serving) -> serving.station().band(),
            sumLong((length, serving) -> micrometres(serving.station().fillMm())),
            max(
                (StretchLength length, Serving serving) ->
                    micrometres(serving.station().longestClothMm())))
        .groupBy(
            (stretch, band, fill, longest) -> stretch,
            max((Integer stretch, Band band, Long fill, Long longest) -> Math.max(fill, longest)))
        .penalizeLong(SimpleLongScore.ONE, (stretch, length) -> length)
        .asConstraint("cloth expected");
  }

  private static long micrometres(double mm) {
    return Math.round(mm * 1000);
  }
}
