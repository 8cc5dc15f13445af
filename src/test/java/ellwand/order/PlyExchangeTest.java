package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PlyExchangeTest {

  private static final String[] SIZES = {"10", "12", "14", "16"};

  private static final int[][] MIXES = {{2, 1, 0, 0}, {0, 1, 1, 1}, {1, 0, 0, 2}, {0, 1, 2, 0}};

  /** An order that these mixes cut exactly with so many plies of each of two colours. */
  private static Numbers numbers(int[][] turns, int maxPlies) {
    Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
    for (int c = 0; c < 2; c++) {
      Map<String, Integer> bySize = new LinkedHashMap<>();
      for (int s = 0; s < SIZES.length; s++) {
        int garments = 0;
        for (int k = 0; k < MIXES.length; k++) {
          garments += MIXES[k][s] * turns[k][c];
        }
        bySize.put(SIZES[s], garments);
      }
      wanted.put("colour " + c, bySize);
    }
    Order order =
        new Order(
            wanted,
            new Limits(maxPlies, 3, Double.POSITIVE_INFINITY, 40),
            Tolerance.NONE,
            new Cost(10, 5),
            Spreading.PLAIN);
    return new Numbers(order, Orders.metreEach(order));
  }

  private static PlyExchange exchange(Numbers numbers) {
    SplittableRandom random = new SplittableRandom(1);
    return new PlyExchange(
        numbers, random, new PlanningBudget(Request.of(Effort.ofSteps(1000), new Seed(1))));
  }

  @Test
  void pliesThatWereMovedFindTheirWayBack() {
    SplittableRandom random = new SplittableRandom(9);
    for (int i = 0; i < 20; i++) {
      int[][] turns = new int[MIXES.length][2];
      List<Spread> wrong = new ArrayList<>();
      for (int k = 0; k < MIXES.length; k++) {
        turns[k] = new int[] {random.nextInt(15), 5 + random.nextInt(10)};
        wrong.add(
            new Spread(
                MIXES[k],
                new int[] {
                  Math.max(0, turns[k][0] + random.nextInt(9) - 4), turns[k][1] - random.nextInt(5)
                }));
      }
      Numbers numbers = numbers(turns, 40);

      List<Spread> right = exchange(numbers).exchange(wrong);

      assertEquals(0, numbers.outside(right), "order " + i);
      assertTrue(right.stream().allMatch(spread -> spread.totalTurns() <= numbers.maxTurns));
    }
  }

  @Test
  void thePlyLimitIsKeptThoughNothingComesOutRight() {
    int[][] turns = {{10, 10}, {10, 10}, {10, 10}, {10, 10}};
    Numbers numbers = numbers(turns, 15);
    List<Spread> plan = new ArrayList<>();
    for (int[] mix : MIXES) {
      plan.add(new Spread(mix, new int[] {10, 5}));
    }
    List<Spread> same = exchange(numbers).exchange(plan);
    for (int k = 0; k < MIXES.length; k++) {
      assertTrue(same.get(k).totalTurns() <= 15);
    }
    assertEquals(numbers.outside(plan), numbers.outside(same));
  }

  @Test
  void clothIsSavedWhereTheSameGarmentsComeOutOfFewerPlies() {
    // Two plies of one garment each do what one ply of both does.
    Map<String, Map<String, Integer>> wanted = Map.of("red", Orders.sizes("10=8, 12=8"));
    Order order =
        new Order(
            wanted,
            new Limits(20, 2, Double.POSITIVE_INFINITY, 40),
            Tolerance.NONE,
            Cost.NONE,
            Spreading.PLAIN);
    Numbers numbers = new Numbers(order, Orders.metreEach(order));
    List<Spread> saved =
        exchange(numbers)
            .exchange(
                List.of(
                    new Spread(new int[] {1, 0}, new int[] {3}),
                    new Spread(new int[] {0, 1}, new int[] {3}),
                    new Spread(new int[] {1, 1}, new int[] {5})));
    assertEquals(8, saved.get(2).turns()[0]);
    assertEquals(0, numbers.outside(saved));
  }

  @Test
  void nothingIsExchangedBeyondTheEffort() {
    Map<String, Map<String, Integer>> wanted = new LinkedHashMap<>();
    int[] turns = new int[30];
    for (int c = 0; c < turns.length; c++) {
      wanted.put("colour " + c, Map.of("10", 7 + c % 5));
      turns[c] = 2;
    }
    Order order =
        new Order(
            wanted,
            new Limits(200, 4, Double.POSITIVE_INFINITY, 40),
            Tolerance.NONE,
            Cost.NONE,
            Spreading.PLAIN);
    Numbers numbers = new Numbers(order, Orders.metreEach(order));
    List<Spread> plan =
        List.of(
            new Spread(new int[] {1}, turns),
            new Spread(new int[] {2}, turns.clone()),
            new Spread(new int[] {3}, turns.clone()));
    PlanningBudget budget = new PlanningBudget(Request.of(Effort.ofSteps(1), new Seed(1)));
    List<Spread> nearer = new PlyExchange(numbers, new SplittableRandom(1), budget).exchange(plan);
    // One colour is served with the only step, all the others lack as much as before.
    long served = 0;
    for (int c = 0; c < turns.length; c++) {
      served += numbers.sets(nearer)[c][0] == numbers.sets(plan)[c][0] ? 0 : 1;
    }
    assertEquals(1, served);
  }
}
