package ellwand.many;

import ellwand.app.Answer;
import ellwand.file.source.RunFolder;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.work.Progress;
import ellwand.work.Stop;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * Many jobs, each into a folder of its own. A batch that was ended goes on where it was: what is
 * done and asked for in the same words again is kept, what was begun is made anew, and what failed
 * is tried again.
 */
public final class Batch {

  private static final String LOCK = ".ellwand-batch";

  /** So often it is looked whether there are more cores, or a stop is wanted. */
  private static final long LOOK_MILLIS = 200;

  /** Hears how a batch gets on, from one thread at a time. */
  public interface Listener extends Progress {

    /**
     * All jobs are read; nothing was made yet.
     *
     * @param kept how many are done already
     */
    void read(int kept, List<BatchEntry> refused, int left);

    void begun(BatchJob job);

    /**
     * A job has ended.
     *
     * @param left how many have not
     * @param secondsLeft what these may take, if they take as long as those before
     */
    void ended(BatchEntry entry, int left, double secondsLeft);
  }

  private final List<BatchJob> jobs;
  private final Path out;
  private final Workshop workshop;
  private final Stop stop;
  private final Listener listener;
  private final Map<String, BatchEntry> entries = new LinkedHashMap<>();
  private final BlockingQueue<BatchEntry> ended = new LinkedBlockingQueue<>();

  /**
   * @param jobs each of another name
   * @param out folder for all results and the index
   */
  public Batch(List<BatchJob> jobs, Path out, Workshop workshop, Stop stop, Listener listener) {
    this.jobs = jobs;
    this.out = out;
    this.workshop = workshop;
    this.stop = stop;
    this.listener = listener;
  }

  /**
   * Makes what is not made yet. After every job the index is written anew.
   *
   * @throws InputException if the folder cannot be written, or another batch writes there
   */
  public BatchIndex run() {
    RunFolder.at(out).writable();
    try {
      Files.createDirectories(out);
      try (FileChannel lock =
          FileChannel.open(
              out.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
        if (lock.tryLock() == null) {
          throw taken();
        }
        return locked();
      } catch (OverlappingFileLockException e) {
        throw taken();
      }
    } catch (IOException e) {
      throw new InputException(
          Problem.of("it cannot be written: " + e.getMessage(), "Choose another folder")
              .at(out.toString(), 0));
    }
  }

  private InputException taken() {
    return new InputException(
        Problem.of("another batch is writing here", "Wait until it ends, or choose another folder")
            .at(out.toString(), 0));
  }

  private BatchIndex locked() {
    Deque<BatchJob> waiting = read();
    index().write(out);
    ExecutorService workers = Executors.newCachedThreadPool();
    try {
      make(waiting, workers);
    } finally {
      workers.shutdown();
    }
    return index();
  }

  private BatchIndex index() {
    return new BatchIndex(List.copyOf(entries.values()));
  }

  /** Those that are to be made. */
  private Deque<BatchJob> read() {
    Map<String, BatchEntry> before = BatchIndex.read(out);
    Deque<BatchJob> waiting = new ArrayDeque<>();
    List<BatchEntry> refused = new ArrayList<>();
    for (BatchJob job : jobs) {
      entries.put(job.name(), BatchEntry.left(job));
      try {
        String key = job.reader().get().key();
        BatchEntry old = before.get(job.name());
        if (old != null && kept(old, key)) {
          entries.put(job.name(), old);
        } else {
          RunFolder.at(out.resolve(job.name())).writable();
          waiting.add(job);
        }
      } catch (InputException e) {
        BatchEntry entry = refused(job, "", e);
        entries.put(job.name(), entry);
        refused.add(entry);
      }
    }
    listener.read(jobs.size() - refused.size() - waiting.size(), refused, waiting.size());
    return waiting;
  }

  private boolean kept(BatchEntry old, String key) {
    return old.made()
        && old.key().equals(key)
        && (old.files().isEmpty()
            || RunFolder.at(out.resolve(old.name())).whole().equals(Optional.of(old.files())));
  }

  private void make(Deque<BatchJob> waiting, ExecutorService workers) {
    Map<String, BatchJob> begun = new LinkedHashMap<>();
    long start = System.nanoTime();
    int made = 0;
    while (!begun.isEmpty() || !waiting.isEmpty() && !stop.wanted()) {
      while (!waiting.isEmpty() && !stop.wanted() && room(begun, waiting.peek())) {
        BatchJob next = waiting.remove();
        begun.put(next.name(), next);
        listener.begun(next);
        workers.execute(() -> ended.add(made(next)));
      }
      BatchEntry entry = next();
      if (entry != null) {
        begun.remove(entry.name());
        entries.put(entry.name(), entry);
        index().write(out);
        made++;
        int left = waiting.size() + begun.size();
        listener.ended(entry, left, (System.nanoTime() - start) / 1e9 / made * left);
      }
    }
  }

  private BatchEntry next() {
    try {
      return ended.poll(LOOK_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      stop.request();
      Thread.currentThread().interrupt();
      return null;
    }
  }

  /** Whether there are cores for one more, which there always are for the only one. */
  private boolean room(Map<String, BatchJob> begun, BatchJob next) {
    int busy = begun.values().stream().mapToInt(BatchJob::cores).sum();
    return begun.isEmpty() || busy + next.cores() <= workshop.cores();
  }

  private BatchEntry made(BatchJob job) {
    long start = System.nanoTime();
    String key = "";
    try {
      BatchJob.Ready ready = job.reader().get();
      key = ready.key();
      Answer answer = ready.maker().make(workshop, stop, heard());
      if (stop.wanted()) {
        // It may have ended before its time, so it is not done.
        return BatchEntry.left(job);
      }
      Map<String, byte[]> files = new LinkedHashMap<>();
      answer.outputs().forEach(output -> files.put(output.name(), output.bytes()));
      if (!files.isEmpty()) {
        RunFolder.at(out.resolve(job.name())).write(files);
      }
      return new BatchEntry(
          job.name(),
          job.words(),
          answer.achieved() ? BatchEntry.State.DONE : BatchEntry.State.NO,
          key,
          answer.headline(),
          (System.nanoTime() - start) / 1e9,
          List.copyOf(files.keySet()));
    } catch (InputException e) {
      return refused(job, key, e);
    } catch (RuntimeException e) {
      heard().hear(new Progress.Mishap(job.name(), (System.nanoTime() - start) / 1e9, 1, "all", e));
      return broken(job, key, e);
    } catch (OutOfMemoryError e) {
      return broken(job, key, e);
    }
  }

  private static BatchEntry broken(BatchJob job, String key, Throwable why) {
    return new BatchEntry(
        job.name(), job.words(), BatchEntry.State.BROKEN, key, why.toString(), 0, List.of());
  }

  private Progress heard() {
    return news -> {
      synchronized (listener) {
        listener.hear(news);
      }
    };
  }

  private static BatchEntry refused(BatchJob job, String key, InputException e) {
    return new BatchEntry(
        job.name(),
        job.words(),
        BatchEntry.State.REFUSED,
        key,
        e.problems().stream().map(Problem::toString).collect(Collectors.joining("\n")),
        0,
        List.of());
  }
}
