package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class SideBySideTest {

  @Test
  void whatComesOfEachStandsInTheirOrder() {
    assertEquals(List.of(1, 4, 9), SideBySide.each(List.of(1, 2, 3), 2, n -> n * n));
  }

  /** The first fails while the second is at work; the third is never begun. */
  @Test
  void whereOneFailsTheOthersHaveEndedOnceThatIsTold() {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicBoolean ended = new AtomicBoolean();
    AtomicBoolean third = new AtomicBoolean();
    IllegalStateException told =
        assertThrows(
            IllegalStateException.class,
            () ->
                SideBySide.each(
                    List.of("fails", "works", "waits"),
                    2,
                    what -> {
                      if (what.equals("fails")) {
                        pause(begun);
                        throw new IllegalStateException("a mistake of ours");
                      }
                      third.compareAndSet(false, what.equals("waits"));
                      begun.countDown();
                      pause(new CountDownLatch(1));
                      ended.set(true);
                      return what;
                    }));
    assertEquals("a mistake of ours", told.getMessage());
    assertTrue(ended.get());
    assertFalse(third.get());
  }

  @Test
  void anErrorComesOutAsItIs() {
    assertThrows(
        OutOfMemoryError.class,
        () ->
            SideBySide.each(
                List.of(1),
                1,
                n -> {
                  throw new OutOfMemoryError("all");
                }));
  }

  /** Until it is counted down, or for long enough that a race would show. */
  private static void pause(CountDownLatch latch) {
    try {
      boolean counted = latch.await(300, TimeUnit.MILLISECONDS);
      assertTrue(counted || latch.getCount() > 0);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
