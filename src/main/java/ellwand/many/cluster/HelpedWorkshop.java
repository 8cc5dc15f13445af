package ellwand.many.cluster;

import ellwand.many.Craft;
import ellwand.many.Errand;
import ellwand.many.Task;
import ellwand.many.Workshop;
import ellwand.problem.InputException;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.apache.pekko.actor.typed.ActorSystem;

/** A workshop that others help: this process's cores and those of whoever joins. */
public final class HelpedWorkshop implements Workshop {

  /** Whoever is cut off for ten seconds is not lost. */
  static final Duration SILENT = Duration.ofSeconds(12);

  private final Craft craft;
  private final int ownCores;
  private final Door door;
  private final Consumer<String> say;
  private final String version;
  private final Duration silent;
  private final AtomicInteger cores;
  private final AtomicLong handed = new AtomicLong();

  /** What is not done, by its number: in the order in which it was handed in. */
  private final Map<Long, Handed> open = new ConcurrentSkipListMap<>();

  /** In their order, and not on Pekko's threads, which nobody may hold up. */
  private final ExecutorService answers =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "answers");
            thread.setDaemon(true);
            return thread;
          });

  private ActorSystem<Foreman.Command> system;
  private Bench own;
  private boolean closed;

  private HelpedWorkshop(
      Craft craft, int ownCores, Door door, Consumer<String> say, String version, Duration silent) {
    this.craft = craft;
    this.ownCores = ownCores;
    this.say = say;
    this.version = version;
    this.silent = silent;
    this.cores = new AtomicInteger(ownCores);
    this.door = start(door);
  }

  /** Opens a door; its place with the port that it has then. */
  private Door start(Door wanted) {
    ActorSystem<Foreman.Command> started =
        Engine.start(Foreman.create(version, this::say, cores::set), wanted, silent);
    Place place = Engine.place(started);
    system = started;
    own =
        new Bench(
            craft,
            ownCores,
            report -> started.tell(new Foreman.Reported(Optional.empty(), report)));
    started.tell(new Foreman.Own(own, ownCores));
    started.getWhenTerminated().thenRunAsync(this::startAgain, answers);
    return new Door(place, wanted.keys());
  }

  /** Pekko ends where something goes very wrong; here are the tasks, so it opens anew. */
  private synchronized void startAgain() {
    if (!closed) {
      say.accept("The helpers are lost; the door opens again.");
      own.close();
      try {
        start(door);
      } catch (InputException e) {
        say.accept("Nobody can help any more, this machine goes on alone: " + e.getMessage());
        start(new Door(Place.here(0), door.keys()));
      }
      open.values().forEach(errand -> system.tell(new Foreman.Given(errand)));
    }
  }

  /**
   * Opens the door; helpers may come from then on.
   *
   * @param ownCores of this process that take part, 1 or more
   * @param say hears in words who comes and goes, from any thread
   * @throws InputException if the door's place cannot be had, or its keys cannot be read
   */
  public static HelpedWorkshop open(Craft craft, int ownCores, Door door, Consumer<String> say) {
    return open(craft, ownCores, door, say, Build.here(), SILENT);
  }

  /** The same as another version of the program, or with less patience for who is silent. */
  static HelpedWorkshop open(
      Craft craft, int ownCores, Door door, Consumer<String> say, String version, Duration silent) {
    SecondJar.required();
    door.keys().ifPresent(KeyFile::context);
    return new HelpedWorkshop(craft, ownCores, door, say, version, silent);
  }

  /** Where helpers join. */
  public Place place() {
    return door.at();
  }

  @Override
  public int cores() {
    return cores.get();
  }

  @Override
  public synchronized Errand give(Task task, Consumer<byte[]> news) {
    Handed errand = handed(task, news);
    system.tell(new Foreman.Given(errand));
    return errand;
  }

  private synchronized Errand anew(Handed refused, String why) {
    Handed errand = handed(refused.task(), refused.news());
    system.tell(new Foreman.Refused(refused.broughtBy().orElseThrow(), why, errand));
    return errand;
  }

  private Handed handed(Task task, Consumer<byte[]> news) {
    Handed errand =
        new Handed(handed.incrementAndGet(), task, news, answers, this::tell, this::anew);
    open.put(errand.number(), errand);
    errand.done().whenComplete((made, why) -> open.remove(errand.number()));
    return errand;
  }

  private synchronized void tell(Foreman.Command command) {
    system.tell(command);
  }

  /** That helpers go at the end is no news. */
  private synchronized void say(String text) {
    if (!closed) {
      say.accept(text);
    }
  }

  @Override
  public void close() {
    synchronized (this) {
      closed = true;
    }
    open.values().forEach(Handed::withdraw);
    own.close();
    Engine.end(system);
    answers.shutdown();
  }
}
