package ellwand.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SpendingTest {

  private long nanos;

  private Spending of(Effort effort) {
    return new Spending(effort, () -> nanos);
  }

  private void pass(double seconds) {
    nanos += (long) (seconds * 1e9);
  }

  @Test
  void whatOneSearchOverrunsTheNextOnesLack() {
    Spending effort = of(Effort.ofSeconds(20));
    assertEquals(10, effort.take(0.5).seconds(), 1e-9);
    pass(14);
    // 6 s are left of what should have been 10.
    assertEquals(3, effort.take(0.25).seconds(), 1e-9);
    pass(3);
    assertFalse(effort.over());
    assertEquals(3, effort.take(0.25).seconds(), 1e-9);
    pass(3);
    assertTrue(effort.over());
    assertTrue(effort.take(0.25).seconds() < 0.1);
  }

  @Test
  void timeThatIsNotUsedIsDealtOutAgain() {
    Spending effort = of(Effort.ofSeconds(20));
    effort.take(0.5);
    pass(2);
    assertEquals(18, effort.take(0.5).seconds(), 1e-9);
  }

  @Test
  void stepsAreSharedWhateverTheClockSays() {
    Spending effort = of(Effort.ofSteps(1000));
    pass(1e6);
    assertEquals(Effort.ofSteps(300), effort.take(0.3));
    assertEquals(0.7, effort.left(), 1e-9);
    assertFalse(effort.over());
  }

  @Test
  void stepsAreUsedUpByCountingThem() {
    Spending effort = of(Effort.ofSteps(200));
    effort.use(49.5);
    effort.use(0.5);
    assertEquals(0.25, effort.spent(), 1e-12);
    assertEquals(Effort.ofSteps(50), effort.until(0.5));
    assertTrue(effort.atLeast(Effort.ofSteps(50)));
    assertFalse(effort.atLeast(Effort.ofSteps(51)));
    effort.reach(200);
    assertTrue(effort.over());
    assertEquals(Effort.ofSteps(1), effort.rest());
  }

  @Test
  void timeIsUsedUpByTheClockAlone() {
    Spending effort = of(Effort.ofSeconds(8));
    effort.use(1e9);
    assertEquals(0, effort.spent(), 1e-12);
    pass(2);
    assertEquals(0.25, effort.spent(), 1e-12);
    assertEquals(2, effort.until(0.5).seconds(), 1e-9);
    assertEquals(6, effort.rest().seconds(), 1e-9);
    assertTrue(effort.atLeast(Effort.ofSeconds(2)));
    pass(7);
    assertTrue(effort.over());
    assertTrue(effort.rest().seconds() < 0.1);
  }

  @Test
  void whatPreparesASearchTakesNothingFromIt() {
    Spending effort = of(Effort.ofSeconds(8));
    pass(5);
    effort.begin();
    pass(2);
    effort.begin();
    assertEquals(2, effort.seconds(), 1e-9);
    assertEquals(0.25, effort.spent(), 1e-12);
  }

  @Test
  void asLongAgainAsToTheLastGainIsWorthwhile() {
    Spending effort = of(Effort.asLongAsItPays(1, 15));
    effort.gain();
    assertEquals(1, effort.worthwhile().orElseThrow().seconds(), 1e-9);
    pass(0.8);
    effort.gain();
    assertEquals(0.8, effort.worthwhile().orElseThrow().seconds(), 1e-9);
    pass(0.8);
    assertTrue(effort.worthwhile().isEmpty());
    // A round may last longer than it should, and gain only then.
    pass(3);
    effort.gain();
    assertEquals(4.6, effort.worthwhile().orElseThrow().seconds(), 1e-9);
    pass(4.6);
    assertTrue(effort.worthwhile().isEmpty());
    assertEquals(4.6, effort.gained(), 1e-9);
  }

  @Test
  void nothingIsWorthwhileBeyondTheMost() {
    Spending effort = of(Effort.asLongAsItPays(1, 15));
    pass(14);
    effort.gain();
    assertEquals(1, effort.worthwhile().orElseThrow().seconds(), 1e-9);
    pass(1);
    effort.gain();
    assertTrue(effort.worthwhile().isEmpty());
  }

  @Test
  void aWholeEffortIsWorthwhileToItsEnd() {
    Spending effort = of(Effort.ofSeconds(20));
    pass(5);
    assertEquals(15, effort.worthwhile().orElseThrow().seconds(), 1e-9);
    assertTrue(of(Effort.ofSteps(20)).worthwhile().isEmpty());
  }

  @Test
  void sharesEndWhenTheyNoLongerPayToo() {
    Spending effort = of(Effort.asLongAsItPays(1, 15));
    Effort half = effort.take(0.5);
    assertEquals(0.5, half.leastSeconds(), 1e-9);
    assertEquals(7.5, half.seconds(), 1e-9);
    pass(3);
    Effort rest = effort.take(0.5);
    assertEquals(12, rest.seconds(), 1e-9);
    assertEquals(0.8, rest.leastSeconds(), 1e-9);
  }

  @Test
  void aPatientSecondHoldsAThousandStepsOnASlowMachineToo() {
    Spending effort = Spending.patient(Effort.ofSeconds(2), () -> nanos);
    pass(3);
    assertEquals(0, effort.seconds(), 1e-9);
    effort.use(500);
    assertEquals(0.25, effort.spent(), 1e-9);
    assertEquals(1.5, effort.rest().seconds(), 1e-9);
    // No more than 5 s behind the clock.
    pass(3);
    assertEquals(1, effort.seconds(), 1e-9);
    pass(1);
    assertTrue(effort.over());
  }

  @Test
  void onAQuickMachineThePatientKeepsToTheClock() {
    Spending effort = Spending.patient(Effort.ofSeconds(2), () -> nanos);
    effort.reach(100_000);
    pass(1.5);
    assertEquals(1.5, effort.seconds(), 1e-9);
    pass(0.5);
    assertTrue(effort.over());
  }

  /** A patient one of 8 s waits for 8,000 steps at the least. */
  @Test
  void thePaceTellsTheStepsOfATime() {
    assertEquals(700, of(Effort.ofSteps(700)).stepsInAll());
    Spending effort = of(Effort.ofSeconds(8));
    assertEquals(0, effort.stepsInAll());
    pass(2);
    effort.use(3000);
    assertEquals(12_000, effort.stepsInAll(), 1e-6);
    Spending patient = Spending.patient(Effort.ofSeconds(8), () -> nanos);
    assertEquals(8000, patient.stepsInAll(), 1e-6);
    pass(2);
    patient.use(100);
    assertEquals(8000, patient.stepsInAll(), 1e-6);
    patient.use(5900);
    assertEquals(24_000, patient.stepsInAll(), 1e-6);
  }
}
