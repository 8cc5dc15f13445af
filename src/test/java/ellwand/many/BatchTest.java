package ellwand.many;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.Answer;
import ellwand.app.Output;
import ellwand.problem.InputException;
import ellwand.work.Stop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Jobs that are no markers, so that it shows how a batch goes on. */
@Timeout(60)
class BatchTest {

  @TempDir private Path folder;

  private final AtomicInteger made = new AtomicInteger();

  /** Nothing but a file of a word. */
  private record Word(String text) implements Answer {
    @Override
    public boolean achieved() {
      return true;
    }

    @Override
    public byte[] json() {
      return text.getBytes(UTF_8);
    }

    @Override
    public List<Output> outputs() {
      return List.of(new Output("word.txt", this::json));
    }
  }

  private BatchJob job(String name, String word) {
    BatchJob.Maker maker =
        (workshop, stop, progress) -> {
          made.incrementAndGet();
          if (word.isEmpty()) {
            throw new IllegalStateException("nothing to say");
          }
          return new Word(word);
        };
    return new BatchJob(name, "say " + word, 1, () -> new BatchJob.Ready(word, maker));
  }

  private BatchIndex run(Stop stop, List<String> told, List<BatchJob> jobs) {
    try (Workshop workshop = new OwnCores((task, s, news) -> task.asked(), 2)) {
      return new Batch(jobs, folder.resolve("out"), workshop, stop, new Noted(told)).run();
    }
  }

  private record Noted(List<String> told) implements Batch.Listener {
    @Override
    public void read(int kept, List<BatchEntry> refused, int left) {
      told.add("kept " + kept + ", refused " + refused.size() + ", left " + left);
    }

    @Override
    public void begun(BatchJob job) {}

    @Override
    public void ended(BatchEntry entry, int left, double secondsLeft) {
      told.add(entry.state().word() + ", left " + left);
    }

    @Override
    public void hear(News news) {
      told.add(news.cloth() + " failed");
    }
  }

  private static List<String> states(BatchIndex index) {
    return index.entries().stream().map(entry -> entry.state().word()).toList();
  }

  @Test
  void aJobThatBreaksIsToldOnceAndTriedAgainOnlyNextTime() {
    List<String> told = new ArrayList<>();
    List<BatchJob> jobs = List.of(job("a", ""), job("b", "yes"));
    assertEquals(List.of("broken", "done"), states(run(new Stop(), told, jobs)));
    assertEquals(2, made.get());
    assertEquals(1, told.stream().filter("a failed"::equals).count());
    run(new Stop(), told, jobs);
    assertEquals(3, made.get());
    assertTrue(told.contains("kept 1, refused 0, left 1"), told.toString());
  }

  /** What was under way when a stop came may have ended early, so it does not count. */
  @Test
  void stoppedItLeavesWhatWasUnderWay() {
    Stop stop = new Stop();
    BatchJob.Maker stopping =
        (workshop, wanted, progress) -> {
          stop.request();
          return new Word("early");
        };
    BatchJob first = new BatchJob("a", "say", 2, () -> new BatchJob.Ready("k", stopping));
    BatchIndex index = run(stop, new ArrayList<>(), List.of(first, job("b", "yes")));
    assertEquals(List.of("left", "left"), states(index));
    assertEquals(0, made.get());
    assertFalse(Files.exists(folder.resolve("out/a")));
    assertEquals(
        List.of("left", "left"),
        BatchIndex.read(folder.resolve("out")).values().stream()
            .map(entry -> entry.state().word())
            .toList());
  }

  @Test
  void asManyAreMadeAtOnceAsThereAreCores() {
    CountDownLatch both = new CountDownLatch(2);
    BatchJob.Maker together =
        (workshop, stop, progress) -> {
          both.countDown();
          try {
            both.await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
          return new Word("met");
        };
    List<BatchJob> jobs =
        List.of(
            new BatchJob("a", "meet", 1, () -> new BatchJob.Ready("k", together)),
            new BatchJob("b", "meet", 1, () -> new BatchJob.Ready("k", together)));
    assertEquals(List.of("done", "done"), states(run(new Stop(), new ArrayList<>(), jobs)));
  }

  @Test
  void twoBatchesDoNotWriteIntoOneFolder() {
    BatchJob.Maker another =
        (workshop, stop, progress) -> {
          InputException told =
              assertThrows(
                  InputException.class,
                  () -> run(new Stop(), new ArrayList<>(), List.of(job("b", "yes"))));
          return new Word(told.getMessage());
        };
    run(
        new Stop(),
        new ArrayList<>(),
        List.of(new BatchJob("a", "ask", 1, () -> new BatchJob.Ready("k", another))));
    assertEquals(0, made.get());
    assertTrue(
        BatchIndex.read(folder.resolve("out")).get("a").made()
            && BatchIndex.read(folder.resolve("out")).size() == 1);
  }
}
