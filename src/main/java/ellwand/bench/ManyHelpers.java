package ellwand.bench;

import com.sun.management.OperatingSystemMXBean;
import ellwand.app.Hands;
import ellwand.app.LayRun;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.many.Craft;
import ellwand.many.Errand;
import ellwand.many.JobFiles;
import ellwand.many.MarkerCraft;
import ellwand.many.Task;
import ellwand.many.cluster.Door;
import ellwand.many.cluster.HelpedWorkshop;
import ellwand.many.cluster.Helper;
import ellwand.many.cluster.KeyMaker;
import ellwand.many.cluster.Place;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measures what helpers bring and what they cost; see benchmarks/README.md. */
@Command(
    name = "many",
    description = "Measures what helpers bring and what they cost.",
    subcommands = SeedRaces.class,
    mixinStandardHelpOptions = true)
public final class ManyHelpers {

  private static final PrintStream OUT = System.out;
  private static final double NANOS = 1e9;
  private static final Duration LONG = Duration.ofHours(1);
  private static final long BETWEEN_MILLIS = 300;
  private static final long LOOK_MILLIS = 500;

  /** Takes as long as it is asked to, and no processor time. */
  private static final Craft WAITING =
      (task, stop, news) -> {
        long end = System.nanoTime() + 1_000_000 * ByteBuffer.wrap(task.asked()).getLong();
        while (System.nanoTime() < end && !stop.wanted()) {
          pause(Math.min(LOOK_MILLIS, 1 + (end - System.nanoTime()) / 1_000_000));
        }
        return new byte[1];
      };

  public static void main(String[] args) {
    System.exit(new CommandLine(new ManyHelpers()).execute(args));
  }

  @Command(
      name = "helpers",
      mixinStandardHelpOptions = true,
      description = "Simulated helpers of one core each, tasks that wait: how well they are kept.")
  void helpers(
      @Option(names = "--helpers", defaultValue = "100") int helpers,
      @Option(names = "--processes", defaultValue = "4", description = "that hold them") int held,
      @Option(names = "--seconds", defaultValue = "2", description = "a task takes") double seconds,
      @Option(names = "--tasks", defaultValue = "1000") int tasks,
      @Option(names = "--keys", description = "as on a network") boolean secured)
      throws IOException, InterruptedException {
    Optional<Path> keys = secured ? Optional.of(makeKeys()) : Optional.empty();
    List<Process> processes = new ArrayList<>();
    try (HelpedWorkshop workshop = open(WAITING, keys)) {
      long begun = System.nanoTime();
      for (int i = 0; i < held; i++) {
        processes.add(serve(workshop.place(), helpers / held, false, keys));
      }
      // This process's own core waits aside.
      workshop.give(waits(LONG), news -> {});
      while (workshop.cores() <= helpers / held * held) {
        pause(100);
      }
      OUT.printf(
          "%d helpers in %d processes joined in %.1f s, asker %.1f s of processor since it began%n",
          workshop.cores() - 1, held, since(begun), cpuNanos() / NANOS);
      Duration length = Duration.ofMillis((long) (1000 * seconds));
      long cpu = cpuNanos();
      long start = System.nanoTime();
      List<Errand> errands = new ArrayList<>();
      for (int i = 0; i < tasks; i++) {
        errands.add(workshop.give(waits(length), news -> {}));
      }
      errands.forEach(errand -> errand.done().join());
      double wall = since(start);
      OUT.printf(
          "%d tasks of %.2f s at %d helpers: %.1f s, efficiency %.3f, asker %.1f %% of a core%n",
          tasks,
          seconds,
          helpers,
          wall,
          Math.ceil((double) tasks / helpers) * seconds / wall,
          100 * (cpuNanos() - cpu) / NANOS / wall);
    } finally {
      processes.forEach(Process::destroyForcibly);
    }
  }

  @Command(
      name = "queue",
      mixinStandardHelpOptions = true,
      description = "Many tasks of one job in the queue: what memory they take.")
  void queue(
      @Option(names = "--tasks", defaultValue = "10000") int tasks,
      @Option(names = "--kilobytes", defaultValue = "20", description = "a task's") int kilobytes) {
    try (HelpedWorkshop workshop = open(WAITING, Optional.empty())) {
      workshop.give(waits(LONG), news -> {});
      long before = usedBytes();
      List<Errand> errands = new ArrayList<>();
      for (int i = 0; i < tasks; i++) {
        errands.add(workshop.give(new Task("waits", new byte[1024 * kilobytes], 1, LONG), n -> {}));
      }
      pause(2000);
      OUT.printf(
          "%d tasks of %d kB in the queue: %d MB more, %d MB in all%n",
          errands.size(), kilobytes, usedBytes() - before >> 20, usedBytes() >> 20);
    }
  }

  @Command(
      name = "markers",
      mixinStandardHelpOptions = true,
      description = "The same searches by one member with one core, and by two.")
  void markers(
      @Parameters(paramLabel = "JOB.yaml") Path path,
      @Option(names = "--markers", defaultValue = "12") int markers,
      @Option(names = "--steps", defaultValue = "3000", description = "of each") long steps)
      throws IOException {
    Spent alone;
    try (HelpedWorkshop workshop = open(new MarkerCraft(), Optional.empty())) {
      search(workshop, path, 2, steps);
      alone = spent(workshop, path, markers, steps, ProcessHandle.current());
    }
    OUT.printf(
        "%d markers of %d steps, one member: %.1f s, %.1f s of processor%n",
        markers, steps, alone.seconds(), alone.here());
    try (HelpedWorkshop workshop = open(new MarkerCraft(), Optional.empty())) {
      Process helper = serve(workshop.place(), 1, true, Optional.empty());
      try {
        while (workshop.cores() < 2) {
          pause(100);
        }
        search(workshop, path, 4, steps);
        Spent both = spent(workshop, path, markers, steps, helper.toHandle());
        OUT.printf(
            "the same, two members: %.1f s, %.2f times as fast; %.1f s of processor here and %.1f"
                + " s at the helper, by which on free cores it is %.2f times%n",
            both.seconds(),
            alone.seconds() / both.seconds(),
            both.here(),
            both.there(),
            alone.here() / Math.max(both.here(), both.there()));
      } finally {
        helper.destroyForcibly();
      }
    }
  }

  /** Seconds of the clock, and of the processor in this process and in another. */
  private record Spent(double seconds, double here, double there) {}

  private static Spent spent(
      HelpedWorkshop workshop, Path path, int markers, long steps, ProcessHandle other) {
    long here = cpuNanos();
    double there = cpuSeconds(other);
    double seconds = search(workshop, path, markers, steps);
    return new Spent(seconds, (cpuNanos() - here) / NANOS, cpuSeconds(other) - there);
  }

  private static double cpuSeconds(ProcessHandle process) {
    return process.info().totalCpuDuration().orElse(Duration.ZERO).toMillis() / 1000.0;
  }

  @Command(name = "serve", hidden = true)
  void serve(
      @Parameters(index = "0") String asker,
      @Parameters(index = "1") int helpers,
      @Parameters(index = "2") boolean searching,
      @Parameters(index = "3", arity = "0..1") Path keys)
      throws InterruptedException {
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < helpers; i++) {
      Helper helper =
          new Helper(
              searching ? new MarkerCraft() : WAITING,
              1,
              () -> Place.known(asker, 0),
              Optional.empty(),
              Optional.ofNullable(keys),
              text -> {});
      threads.add(new Thread(() -> help(helper)));
      threads.get(i).start();
      // Machines do not begin all at once, either.
      pause(BETWEEN_MILLIS);
    }
    for (Thread thread : threads) {
      thread.join();
    }
  }

  private static void help(Helper helper) {
    try {
      helper.run(new Stop());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Seconds that it takes to lay a job so many times, each with a seed of its own. */
  private static double search(HelpedWorkshop workshop, Path path, int markers, long steps) {
    JobFiles.Read<Job> read = JobFiles.job(path.toString(), Folder.DISK);
    Hands hands = read.hands(workshop, 1);
    ExecutorService askers = Executors.newFixedThreadPool(markers);
    long start = System.nanoTime();
    List<CompletableFuture<Void>> made = new ArrayList<>();
    for (int i = 0; i < markers; i++) {
      Request request =
          new Request(Effort.ofSteps(steps), new Seed(i + 1), 1, new Stop(), Progress.NONE);
      made.add(
          CompletableFuture.runAsync(
              () -> LayRun.make(read.what(), Unit.CM, request, hands), askers));
    }
    made.forEach(CompletableFuture::join);
    askers.shutdown();
    return since(start);
  }

  private static HelpedWorkshop open(Craft craft, Optional<Path> keys) {
    return HelpedWorkshop.open(craft, 1, new Door(Place.here(0), keys), text -> {});
  }

  /** One for all: what is measured is what they cost. */
  private static Path makeKeys() throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("keys");
    return new KeyMaker(folder).make(List.of("all")).get(0);
  }

  /** Helpers as another process; with the first compiler only, unless they search. */
  private static Process serve(Place asker, int helpers, boolean searching, Optional<Path> keys)
      throws IOException {
    List<String> line = new ArrayList<>();
    line.add(ProcessHandle.current().info().command().orElse("java"));
    line.add("-Xmx1g");
    if (!searching) {
      line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    }
    line.addAll(List.of("-cp", System.getProperty("java.class.path")));
    line.addAll(List.of(ManyHelpers.class.getName(), "serve", asker.toString()));
    line.addAll(List.of(String.valueOf(helpers), String.valueOf(searching)));
    keys.map(Path::toString).ifPresent(line::add);
    return new ProcessBuilder(line).inheritIO().start();
  }

  private static Task waits(Duration time) {
    byte[] asked = ByteBuffer.allocate(Long.BYTES).putLong(time.toMillis()).array();
    return new Task("waits", asked, 1, LONG.plus(time));
  }

  private static double since(long start) {
    return (System.nanoTime() - start) / NANOS;
  }

  private static long cpuNanos() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static long usedBytes() {
    System.gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }

  private static void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
