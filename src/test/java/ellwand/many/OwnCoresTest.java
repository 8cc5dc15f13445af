package ellwand.many;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.work.Stop;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Tasks done by this process. */
@Timeout(60)
class OwnCoresTest {

  private static Task task(String asked, int cores) {
    return new Task("test", asked.getBytes(UTF_8), cores, Duration.ofMinutes(1));
  }

  @Test
  void bringsBackWhatIsMadeOfTheBytesAndTellsOnTheWay() {
    List<String> told = Collections.synchronizedList(new ArrayList<>());
    Craft twice =
        (task, stop, news) -> {
          news.accept("half".getBytes(UTF_8));
          String text = new String(task.asked(), UTF_8);
          return (text + text).getBytes(UTF_8);
        };
    try (Workshop own = new OwnCores(twice, 2)) {
      Errand errand = own.give(task("ab", 1), news -> told.add(new String(news, UTF_8)));
      assertArrayEquals("abab".getBytes(UTF_8), errand.done().join());
    }
    assertEquals(List.of("half"), told);
  }

  @Test
  void worksOnNoMoreCoresThanThereAre() {
    AtomicInteger now = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    Craft counted =
        (task, stop, news) -> {
          most.accumulateAndGet(now.addAndGet(task.cores()), Math::max);
          pause(5);
          now.addAndGet(-task.cores());
          return new byte[0];
        };
    try (Workshop own = new OwnCores(counted, 3)) {
      List<Errand> all =
          IntStream.range(0, 30).mapToObj(i -> own.give(task("", 1 + i % 2), n -> {})).toList();
      all.forEach(errand -> errand.done().join());
    }
    assertTrue(most.get() >= 2 && most.get() <= 3, "cores at once: " + most);
  }

  @Test
  void aTaskThatAsksForMoreCoresThanThereAreIsDoneAllTheSame() {
    try (Workshop own = new OwnCores((task, stop, news) -> task.asked(), 1)) {
      assertEquals(0, own.give(task("", 8), n -> {}).done().join().length);
    }
  }

  @Test
  void tellsWhyATaskCannotBeDoneAndDoesTheNext() {
    Craft odd =
        (task, stop, news) -> {
          if (task.asked().length == 0) {
            throw new IllegalStateException("there is nothing in it");
          }
          return task.asked();
        };
    try (Workshop own = new OwnCores(odd, 1)) {
      Errand bad = own.give(task("", 1), n -> {});
      Errand good = own.give(task("a", 1), n -> {});
      Throwable why = assertThrows(CompletionException.class, () -> bad.done().join()).getCause();
      assertInstanceOf(TaskFailed.class, why);
      assertTrue(why.getMessage().contains("there is nothing in it"));
      assertEquals(1, good.done().join().length);
    }
  }

  @Test
  void hurriedItEndsWithWhatItHas() {
    try (Workshop own = new OwnCores(OwnCoresTest::untilStopped, 1)) {
      Errand first = own.give(task("a", 1), n -> {});
      Errand second = own.give(task("b", 1), n -> {});
      second.hurry();
      first.hurry();
      assertEquals("a", new String(first.done().join(), UTF_8));
      assertEquals("b", new String(second.done().join(), UTF_8));
    }
  }

  @Test
  void withdrawnItIsNotBegunOrItsCoreIsFreeSoon() throws InterruptedException {
    AtomicInteger begun = new AtomicInteger();
    CountDownLatch first = new CountDownLatch(1);
    Craft counted =
        (task, stop, news) -> {
          begun.incrementAndGet();
          first.countDown();
          return task.asked().length == 0 ? task.asked() : untilStopped(task, stop, news);
        };
    try (Workshop own = new OwnCores(counted, 1)) {
      Errand running = own.give(task("a", 1), n -> {});
      Errand waiting = own.give(task("b", 1), n -> {});
      first.await();
      waiting.withdraw();
      running.withdraw();
      assertTrue(running.done().isCancelled() && waiting.done().isCancelled());
      own.give(task("", 1), n -> {}).done().join();
    }
    assertEquals(2, begun.get());
  }

  @RepeatedTest(50)
  void closedItWithdrawsAllEvenWhatEndsTheMomentItIsStopped() {
    Craft alert =
        (task, stop, news) -> {
          while (!stop.wanted()) {
            Thread.onSpinWait();
          }
          return task.asked();
        };
    Workshop own = new OwnCores(alert, 3);
    List<Errand> all =
        IntStream.range(0, 3).mapToObj(i -> own.give(task("a", 1), n -> {})).toList();
    assertFalse(all.get(0).done().isDone());
    own.close();
    assertTrue(all.stream().allMatch(errand -> errand.done().isCancelled()));
  }

  private static byte[] untilStopped(Task task, Stop stop, Consumer<byte[]> news) {
    while (!stop.wanted()) {
      pause(1);
    }
    return task.asked();
  }

  private static void pause(int millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
