package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
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
    CompletableFuture<Thread> fails = new CompletableFuture<>();
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
                        await(begun);
                        fails.complete(Thread.currentThread());
                        throw new IllegalStateException("a mistake of ours");
                      }
                      third.compareAndSet(false, what.equals("waits"));
                      begun.countDown();
                      untilIdle(fails.join());
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

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Until it has nothing left to do, and then for long enough that a race would show. */
  private static void untilIdle(Thread worker) {
    try {
      while (worker.isAlive() && worker.getState() != Thread.State.WAITING) {
        Thread.sleep(10);
      }
      Thread.sleep(200);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
