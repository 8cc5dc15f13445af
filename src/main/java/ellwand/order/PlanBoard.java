package ellwand.order;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.valuerange.CountableValueRange;
import org.optaplanner.core.api.domain.valuerange.ValueRangeFactory;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * A fixed number of lays whose mixes and plies OptaPlanner decides; judged by {@link PlanRules}.
 */
@PlanningSolution
public class PlanBoard {

  static final String GARMENTS = "garments";
  static final String TURNS = "turns";

  /** A lay of the board. */
  record DraftLay(int index, Numbers numbers) {}

  /** One size and colour of the order. */
  record ColourSize(Numbers numbers, int colour, int size) {

    long outside(int sets) {
      return numbers.outside(colour, size, sets);
    }

    long deviation(int sets) {
      return numbers.deviation(colour, size, sets);
    }
  }

  private Numbers numbers;
  private PlanningBudget budget;
  private long lastStep;
  private long moves;

  @PlanningEntityCollectionProperty private List<SizeCount> sizeCounts;

  @PlanningEntityCollectionProperty private List<PlyCount> plyCounts;

  @PlanningScore(bendableHardLevelsSize = 1, bendableSoftLevelsSize = 4)
  private BendableLongScore score;

  /** For the solver's copies. */
  public PlanBoard() {}

  PlanBoard(Numbers numbers, List<Spread> start, PlanningBudget budget, long steps) {
    this.numbers = numbers;
    this.lastStep = budget.used() + steps;
    this.budget = budget;
    this.sizeCounts = new ArrayList<>();
    this.plyCounts = new ArrayList<>();
    for (Spread spread : start) {
      DraftLay lay = new DraftLay(sizeCounts.size() / numbers.sizes.size(), numbers);
      for (int s = 0; s < numbers.sizes.size(); s++) {
        sizeCounts.add(new SizeCount(sizeCounts.size(), lay, s, spread.mix()[s]));
      }
      for (int c = 0; c < numbers.colours.size(); c++) {
        plyCounts.add(new PlyCount(plyCounts.size(), lay, c, spread.turns()[c]));
      }
    }
  }

  @ValueRangeProvider(id = GARMENTS)
  CountableValueRange<Integer> garments() {
    return ValueRangeFactory.createIntValueRange(0, numbers.maxGarments + 1);
  }

  @ValueRangeProvider(id = TURNS)
  CountableValueRange<Integer> turns() {
    return ValueRangeFactory.createIntValueRange(0, numbers.maxTurns + 1);
  }

  PlanningBudget budget() {
    return budget;
  }

  /** Whether the steps for this board, or the whole budget, are used up. */
  boolean over() {
    return budget.over() || budget.used() >= lastStep;
  }

  void countMove() {
    if (++moves % PlanningBudget.MOVES == 0) {
      budget.use();
    }
  }

  Numbers numbers() {
    return numbers;
  }

  /** The sizes of one lay, in their sequence. */
  List<SizeCount> sizeCounts(int lay) {
    int sizes = numbers.sizes.size();
    return sizeCounts.subList(lay * sizes, (lay + 1) * sizes);
  }

  /** The colours of one lay, in their sequence. */
  List<PlyCount> plyCounts(int lay) {
    int colours = numbers.colours.size();
    return plyCounts.subList(lay * colours, (lay + 1) * colours);
  }

  int lays() {
    return sizeCounts.size() / numbers.sizes.size();
  }

  BendableLongScore score() {
    return score;
  }

  /** What is decided for one lay. */
  Spread spread(int lay) {
    return new Spread(
        sizeCounts(lay).stream().mapToInt(SizeCount::garments).toArray(),
        plyCounts(lay).stream().mapToInt(PlyCount::turns).toArray());
  }

  /** What is decided for every lay. */
  List<Spread> spreads() {
    return IntStream.range(0, lays()).mapToObj(this::spread).toList();
  }
}
