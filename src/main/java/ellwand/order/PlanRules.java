package ellwand.order;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.sum;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;
import static org.optaplanner.core.api.score.stream.Joiners.equal;

import java.util.List;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.optaplanner.core.api.score.stream.tri.TriConstraintStream;

/**
 * The rules of a cut-order plan. One hard level; four soft ones in the sequence of {@link Value}.
 *
 * <p>Here the cloth that is cut is what costs: bought in the shop's steps, most moves would make no
 * difference, and none would lead to the next step. {@link OrderPlanner} keeps what is paid least.
 */
public class PlanRules implements ConstraintProvider {

  static final BendableLongScore HARD = BendableLongScore.ofHard(1, 4, 0, 1);
  static final BendableLongScore COST = BendableLongScore.ofSoft(1, 4, 0, 1);
  static final BendableLongScore CLOTH = BendableLongScore.ofSoft(1, 4, 1, 1);
  static final BendableLongScore LAYS = BendableLongScore.ofSoft(1, 4, 2, 1);
  static final BendableLongScore DEVIATION = BendableLongScore.ofSoft(1, 4, 3, 1);

  @Override
  public Constraint[] defineConstraints(ConstraintFactory factory) {
    return new Constraint[] {
      cutWithinTolerance(factory),
      garmentsInAMarker(factory),
      pliesInALay(factory),
      markerFitsTable(factory),
      leastCost(factory),
      leastCloth(factory),
      fewestLays(factory),
      closeToTheOrder(factory)
    };
  }

  Constraint cutWithinTolerance(ConstraintFactory factory) {
    return setsCut(factory)
        .filter((wanted, sets) -> wanted.outside(sets) > 0)
        .penalizeLong(HARD, PlanBoard.ColourSize::outside)
        .asConstraint("cut within tolerance");
  }

  Constraint garmentsInAMarker(ConstraintFactory factory) {
    return factory
        .forEach(SizeCount.class)
        .groupBy(SizeCount::lay, sum(SizeCount::garments))
        .filter((lay, garments) -> garments > lay.numbers().maxGarments)
        .penalizeLong(HARD, (lay, garments) -> garments - lay.numbers().maxGarments)
        .asConstraint("garments a marker may hold");
  }

  Constraint pliesInALay(ConstraintFactory factory) {
    return factory
        .forEach(PlyCount.class)
        .groupBy(PlyCount::lay, sum(PlyCount::turns))
        .filter((lay, turns) -> turns > lay.numbers().maxTurns)
        .penalizeLong(HARD, (lay, turns) -> turns - lay.numbers().maxTurns)
        .asConstraint("plies a lay may have");
  }

  Constraint markerFitsTable(ConstraintFactory factory) {
    return used(factory)
        .filter((lay, turns, marker) -> marker.tooLong() > 0)
        .penalizeLong(HARD, (lay, turns, marker) -> marker.tooLong())
        .asConstraint("marker fits the table");
  }

  Constraint leastCost(ConstraintFactory factory) {
    return used(factory)
        .penalizeLong(COST, (lay, turns, marker) -> marker.cost(turns))
        .asConstraint("least cost");
  }

  Constraint leastCloth(ConstraintFactory factory) {
    return used(factory)
        .penalizeLong(CLOTH, (lay, turns, marker) -> marker.cloth(turns))
        .asConstraint("least cloth");
  }

  Constraint fewestLays(ConstraintFactory factory) {
    return used(factory).penalizeLong(LAYS, (lay, turns, marker) -> 1).asConstraint("fewest lays");
  }

  Constraint closeToTheOrder(ConstraintFactory factory) {
    return setsCut(factory)
        .filter((wanted, sets) -> wanted.deviation(sets) > 0)
        .penalizeLong(DEVIATION, PlanBoard.ColourSize::deviation)
        .asConstraint("close to the order");
  }

  /** Every size and colour with the sets that the lays cut of it. */
  private static BiConstraintStream<PlanBoard.ColourSize, Integer> setsCut(
      ConstraintFactory factory) {
    return factory
        .forEach(PlyCount.class)
        .join(SizeCount.class, equal(PlyCount::lay, SizeCount::lay))
        .groupBy(
            (plies, size) ->
                new PlanBoard.ColourSize(plies.lay().numbers(), plies.colour(), size.size()),
            sum((plies, size) -> plies.turns() * size.garments()));
  }

  /** The lays that cut something: lay, turns of all colours, marker. */
  private static TriConstraintStream<PlanBoard.DraftLay, Integer, DraftMarker> used(
      ConstraintFactory factory) {
    return factory
        .forEach(PlyCount.class)
        .groupBy(PlyCount::lay, sum(PlyCount::turns))
        .join(
            factory.forEach(SizeCount.class).groupBy(SizeCount::lay, toList()).map(DraftMarker::of),
            equal((lay, turns) -> lay, DraftMarker::lay))
        .filter((lay, turns, marker) -> turns > 0 && !marker.empty());
  }

  /** The marker of one lay. */
  record DraftMarker(PlanBoard.DraftLay lay, List<Integer> mix) {

    boolean empty() {
      return mix.stream().allMatch(garments -> garments == 0);
    }

    static DraftMarker of(PlanBoard.DraftLay lay, List<SizeCount> counts) {
      Integer[] mix = new Integer[counts.size()];
      counts.forEach(count -> mix[count.size()] = count.garments());
      return new DraftMarker(lay, List.of(mix));
    }

    private int[] garments() {
      return mix.stream().mapToInt(Integer::intValue).toArray();
    }

    long tooLong() {
      return lay.numbers().tooLong(garments());
    }

    long cost(int turns) {
      return lay.numbers().cost(cloth(turns), 1);
    }

    long cloth(int turns) {
      return turns * lay.numbers().turnCloth(garments());
    }
  }
}
