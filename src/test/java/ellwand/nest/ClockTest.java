package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When a search ends, by a clock that stands still between two lines. */
class ClockTest {

  private final List<Progress.News> heard = new ArrayList<>();
  private long nanos;

  private Clock clock(Effort effort) {
    return new Clock(
        Request.of(effort, new Seed(1)).with((Progress) heard::add), Optional.empty(), () -> nanos);
  }

  private void pass(double seconds) {
    nanos += Math.round(seconds * 1e9);
  }

  private static void found(Clock clock, double mm) {
    clock.better(
        new Progress.Shorter("main", "open", 0, 0, mm),
        search -> {
          throw new AssertionError("nobody wants the marker");
        });
  }

  @Test
  void timeCountsFromTheFirstMarkerOn() {
    Clock clock = clock(Effort.ofSeconds(10));
    assertEquals(10, clock.part(1).effort().seconds(), 1e-9);
    pass(4);
    found(clock, 900);
    pass(3);
    found(clock, 800);
    assertEquals(3, heard.get(1).seconds(), 1e-9);
    assertEquals(0.3, heard.get(1).share(), 1e-9);
    assertTrue(clock.more().isEmpty());
  }

  @Test
  void itEndsWhenAsLongAgainHasBroughtNothing() {
    Clock clock = clock(Effort.asLongAsItPays(1, 15));
    assertEquals(1, clock.part(1).effort().seconds(), 1e-9);
    pass(2);
    found(clock, 900);
    pass(0.9);
    found(clock, 800);
    pass(0.1);
    assertEquals(0.8, clock.more().orElseThrow().seconds(), 1e-9);
    pass(0.6);
    // Less than a thousandth is no gain.
    found(clock, 799.3);
    assertEquals(0.2, clock.more().orElseThrow().seconds(), 1e-9);
    // But all together it is.
    found(clock, 799.1);
    assertEquals(1.6, clock.more().orElseThrow().seconds(), 1e-9);
    pass(1.6);
    assertTrue(clock.more().isEmpty());
    clock.tellEnd("main");
    Progress.Ended ended = (Progress.Ended) heard.get(heard.size() - 1);
    assertEquals(3.2, ended.seconds(), 1e-9);
    assertEquals(1.6, ended.gainSeconds(), 1e-9);
    assertEquals(3.2, clock.spent().seconds(), 1e-9);
  }

  @Test
  void whatIsLimitedBySomethingElseEndsThere() {
    for (Effort effort : List.of(Effort.ofSeconds(3), Effort.ofSteps(30))) {
      Clock clock = clock(effort);
      found(clock, 900);
      assertTrue(clock.more().isEmpty());
      clock.tellEnd("main");
      assertFalse(heard.get(heard.size() - 1) instanceof Progress.Ended);
      assertEquals(effort, clock.spent());
    }
  }
}
