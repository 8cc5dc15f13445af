package ellwand.nest.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Seed;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a pool keeps of failed arrangements. */
class PoolTest {

  private final Dice dice = new Dice(new Seed(1));
  private final Pool pool = new Pool();

  private static Snapshot snapshot() {
    return new Snapshot(1, new int[0], new double[0], new double[0]);
  }

  private Set<Snapshot> kept() {
    Set<Snapshot> kept = Collections.newSetFromMap(new IdentityHashMap<>());
    for (int i = 0; i < 2000; i++) {
      kept.add(pool.pick(dice));
    }
    return kept;
  }

  @Test
  void keepsOneOfThoseThatAreAlike() {
    Snapshot first = snapshot();
    pool.add(first, 100);
    for (int i = 0; i < 20; i++) {
      pool.add(snapshot(), 100 - 0.04 * i);
    }
    assertEquals(Set.of(first), kept());
    pool.add(snapshot(), 50);
    assertEquals(2, kept().size());
  }

  @Test
  void whatComesOfOneTakesItsPlaceThoughItIsWorse() {
    Snapshot parent = snapshot();
    Snapshot other = snapshot();
    pool.add(parent, 1);
    Snapshot child = snapshot();
    assertSame(parent, pool.pick(dice));
    pool.replace(child, 30);
    assertEquals(30, pool.least());
    pool.add(other, 10);
    assertFalse(kept().contains(parent));
    assertTrue(kept().contains(child));
    while (pool.pick(dice) != child) {
      // Drawn by lot.
    }
    pool.replace(snapshot(), 10.01);
    assertEquals(2, kept().size());
    assertTrue(kept().contains(child));
  }

  @Test
  void keepsTheNearestToLegal() {
    for (int i = 30; i > 0; i--) {
      pool.add(snapshot(), i);
    }
    assertEquals(1, pool.least());
    assertEquals(10, kept().size());
  }
}
