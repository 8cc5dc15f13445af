package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Effort;
import ellwand.work.Seed;
import org.junit.jupiter.api.Test;

class AllotmentTest {

  private long nanos;

  private Allotment of(Effort effort) {
    return new Allotment(new SearchOptions(effort, new Seed(1), 1), () -> nanos);
  }

  private void pass(double seconds) {
    nanos += (long) (seconds * 1e9);
  }

  @Test
  void whatOneSearchOverrunsTheNextOnesLack() {
    Allotment effort = of(Effort.ofSeconds(20));
    assertEquals(10, effort.take(0.5).effort().seconds(), 1e-9);
    pass(14);
    // 6 s are left of what should have been 10.
    assertEquals(3, effort.take(0.25).effort().seconds(), 1e-9);
    pass(3);
    assertFalse(effort.over());
    assertEquals(3, effort.take(0.25).effort().seconds(), 1e-9);
    pass(3);
    assertTrue(effort.over());
    assertTrue(effort.take(0.25).effort().seconds() < 0.1);
  }

  @Test
  void timeThatIsNotUsedIsDealtOutAgain() {
    Allotment effort = of(Effort.ofSeconds(20));
    effort.take(0.5);
    pass(2);
    assertEquals(18, effort.take(0.5).effort().seconds(), 1e-9);
  }

  @Test
  void stepsAreSharedWhateverTheClockSays() {
    Allotment effort = of(Effort.ofSteps(1000));
    pass(1e6);
    assertEquals(Effort.ofSteps(300), effort.take(0.3).effort());
    assertEquals(0.7, effort.left(), 1e-9);
    assertFalse(effort.over());
  }
}
