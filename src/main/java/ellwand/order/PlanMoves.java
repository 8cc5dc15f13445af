package ellwand.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Moves until the budget is over: small changes of one lay, and some lays planned afresh. */
public class PlanMoves implements MoveIteratorFactory<PlanBoard, PlanMove> {

  /** One move in so many plans lays afresh, and one changes all a little. */
  private static final int AFRESH = 6;

  private static final int STEPS_AFRESH = 10;

  private static final int MOST_AFRESH = 8;

  private static final int STEPS_ALL = 30;

  private static final double HEAT_ALL = 10;

  @Override
  public long getSize(ScoreDirector<PlanBoard> director) {
    PlanBoard board = director.getWorkingSolution();
    return (long) board.lays() * (board.sizeCounts(0).size() + board.plyCounts(0).size());
  }

  @Override
  public Iterator<PlanMove> createOriginalMoveIterator(ScoreDirector<PlanBoard> director) {
    throw new UnsupportedOperationException("the moves are endless: select them at random");
  }

  @Override
  public Iterator<PlanMove> createRandomMoveIterator(
      ScoreDirector<PlanBoard> director, Random random) {
    PlanBoard board = director.getWorkingSolution();
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return !board.over();
      }

      @Override
      public PlanMove next() {
        board.countMove();
        return switch (random.nextInt(AFRESH)) {
          case 0 -> someAfresh(board, random);
          case 1 -> allChanged(board, random);
          default -> oneChanged(board, random);
        };
      }
    };
  }

  private static PlanMove oneChanged(PlanBoard board, Random random) {
    while (true) {
      int lay = random.nextInt(board.lays());
      Spread changed = Change.of(board.spread(lay), board.numbers(), random);
      if (changed != null) {
        return new PlanMove(Map.of(lay, changed));
      }
    }
  }

  /** Plans some lays again in their number or one fewer; what needs more is not tried. */
  private static PlanMove someAfresh(PlanBoard board, Random random) {
    Numbers numbers = board.numbers();
    List<Spread> kept = new ArrayList<>(board.spreads());
    kept.removeIf(Spread::empty);
    int afresh = Math.min(kept.size(), 2 + random.nextInt(MOST_AFRESH - 1));
    for (int i = 0; i < afresh; i++) {
      kept.remove(random.nextInt(kept.size()));
    }
    SplittableRandom own = new SplittableRandom(random.nextLong());
    List<Spread> plan =
        new Annealing(numbers, kept, Math.max(1, afresh - random.nextInt(2)), own)
            .run(STEPS_AFRESH, board.budget());
    return moved(board, plan, own);
  }

  /** Changes any lays for as long as that takes, then exchanges plies. */
  private static PlanMove allChanged(PlanBoard board, Random random) {
    Numbers numbers = board.numbers();
    SplittableRandom own = new SplittableRandom(random.nextLong());
    List<Spread> plan =
        Annealing.of(numbers, board.spreads(), own)
            .run(HEAT_ALL * random.nextDouble(), STEPS_ALL, board.budget());
    return moved(board, new PlyExchange(numbers, own, board.budget()).exchange(plan), own);
  }

  private static PlanMove moved(PlanBoard board, List<Spread> plan, SplittableRandom random) {
    Numbers numbers = board.numbers();
    List<Spread> mended = new Mending(numbers, new Filling(numbers, random)).mend(plan);
    Map<Integer, Spread> moved = new HashMap<>();
    for (int k = 0; k < board.lays(); k++) {
      moved.put(k, k < mended.size() ? mended.get(k) : numbers.nothing());
    }
    return new PlanMove(moved);
  }
}
