package ellwand.many.cluster;

import ellwand.many.Craft;
import ellwand.problem.InputException;
import ellwand.work.Stop;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.apache.pekko.actor.typed.ActorSystem;

/** This machine as a helper: joins whoever asks at a place, and again when that one is gone. */
public final class Helper {

  private static final Duration POLL = Duration.ofMillis(100);
  private static final Duration KNOCK_AGAIN = Duration.ofSeconds(1);

  /** An answer that takes longer, on whatever machine, has something in its way. */
  private static final Duration ANSWERING = Duration.ofSeconds(60);

  /** For the asker to hear that this helper goes. */
  private static final Duration LEAVING = Duration.ofSeconds(3);

  /** Longer than the asker waits, so that who is cut off for a moment is still there after it. */
  static final Duration SILENT = Duration.ofSeconds(15);

  private final Craft craft;
  private final int cores;
  private final Supplier<Optional<Place>> asker;
  private final Optional<Place> own;
  private final Optional<Path> keys;
  private final Consumer<String> say;
  private final String version;
  private final Duration silent;

  /**
   * @param cores that are offered, 1 or more
   * @param asker where to join, looked up whenever nobody is being helped; nothing while nobody
   *     knows
   * @param own this machine's place as the others reach it; empty for what leads to the asker, at
   *     any free port
   * @param say hears in words what happens
   */
  public Helper(
      Craft craft,
      int cores,
      Supplier<Optional<Place>> asker,
      Optional<Place> own,
      Optional<Path> keys,
      Consumer<String> say) {
    this(craft, cores, asker, own, keys, say, Build.here(), SILENT);
  }

  /** The same as another version of the program, or with less patience for a silent asker. */
  Helper(
      Craft craft,
      int cores,
      Supplier<Optional<Place>> asker,
      Optional<Place> own,
      Optional<Path> keys,
      Consumer<String> say,
      String version,
      Duration silent) {
    this.craft = craft;
    this.cores = cores;
    this.asker = asker;
    this.own = own;
    this.keys = keys;
    this.say = say;
    this.version = version;
    this.silent = silent;
  }

  /**
   * Helps until a stop is wanted.
   *
   * @throws InputException if its keys cannot be read, or the asker refuses this helper
   */
  public void run(Stop stop) throws InterruptedException {
    keys.ifPresent(KeyFile::context);
    String told = "";
    while (!stop.wanted()) {
      Optional<Place> at = asker.get();
      if (at.isPresent() && opens(at.get())) {
        help(at.get(), stop);
        told = "";
      } else {
        String why =
            at.map("Nobody asks at %s yet. Waiting."::formatted)
                .orElse("No machine is known by that name yet. Waiting.");
        if (!why.equals(told)) {
          say.accept(why);
        }
        told = why;
      }
      pause(stop, KNOCK_AGAIN);
    }
  }

  private boolean opens(Place at) throws InterruptedException {
    Knock knock = Knock.at(at, keys);
    InputException.unless(
        knock != Knock.SHUT,
        keys.isPresent()
            ? "%s does not take this key, or shows none of the same authority".formatted(at)
            : "%s asks for a key".formatted(at),
        "Both sides need keys made in one folder with 'helper --make-keys', and --keys");
    return knock == Knock.OPEN;
  }

  private void help(Place at, Stop stop) throws InterruptedException {
    Door door = new Door(own.orElseGet(() -> Place.facing(at)), keys);
    Answered answered = new Answered(at);
    ActorSystem<Hand.Command> system =
        Engine.start(Hand.create(version, name(), cores, at, craft, answered), door, silent);
    try {
      if (welcomed(system, answered, stop)) {
        say.accept("Helping %s with %d %s.".formatted(at, cores, cores == 1 ? "core" : "cores"));
        while (!stop.wanted() && !ended(system)) {
          Thread.sleep(POLL.toMillis());
        }
        if (!stop.wanted() && answered.refusal == null) {
          say.accept("%s is gone.".formatted(at));
        }
      }
      if (answered.refusal != null) {
        throw answered.refusal;
      }
    } finally {
      system.tell(Hand.Leave.NOW);
      Engine.waitForEnd(system, LEAVING);
      Engine.end(system);
    }
  }

  /** What the asker at a place answered. */
  private final class Answered implements Hand.Answer {

    private final Place at;
    private final CountDownLatch welcome = new CountDownLatch(1);
    private volatile InputException refusal;

    Answered(Place at) {
      this.at = at;
    }

    @Override
    public void welcome() {
      welcome.countDown();
    }

    @Override
    public void dismissed(String why) {
      refusal =
          InputException.of(
              "%s takes nothing more from this machine: %s".formatted(at, why),
              "See that the memory and the disk of this machine are sound");
    }

    @Override
    public void otherVersion() {
      refusal =
          InputException.of(
              "%s runs another version or build of Ellwand than this machine, which has %s"
                  .formatted(at, version),
              "Bring both to the same, from one ellwand.jar or package");
    }
  }

  private boolean welcomed(ActorSystem<?> system, Answered answered, Stop stop)
      throws InterruptedException {
    Instant late = Instant.now().plus(ANSWERING);
    while (!stop.wanted() && !ended(system)) {
      if (answered.welcome.await(POLL.toMillis(), TimeUnit.MILLISECONDS)) {
        return true;
      }
      if (Instant.now().isAfter(late)) {
        say.accept(
            ("No answer so far. Whoever asks must reach this machine at %s: see to firewalls, or"
                    + " say with --at how it does.")
                .formatted(Engine.place(system)));
        return false;
      }
    }
    return false;
  }

  private static boolean ended(ActorSystem<?> system) {
    return system.getWhenTerminated().toCompletableFuture().isDone();
  }

  private static void pause(Stop stop, Duration most) throws InterruptedException {
    Instant end = Instant.now().plus(most);
    while (!stop.wanted() && Instant.now().isBefore(end)) {
      Thread.sleep(POLL.toMillis());
    }
  }

  private static String name() {
    try {
      return InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException e) {
      return "a helper without a name";
    }
  }
}
