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
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.apache.pekko.actor.CoordinatedShutdown;
import org.apache.pekko.actor.typed.ActorSystem;

/** This machine as a helper: joins whoever asks at a place, and again when that one is gone. */
public final class Helper {

  private static final Duration POLL = Duration.ofMillis(100);
  private static final Duration KNOCK_AGAIN = Duration.ofSeconds(1);

  /** A joining that takes longer, on whatever machine, has something in its way. */
  private static final Duration JOINING = Duration.ofSeconds(60);

  private final Craft craft;
  private final int cores;
  private final Supplier<Place> asker;
  private final Optional<Place> own;
  private final Optional<Path> keys;
  private final Consumer<String> say;
  private final String version;

  /**
   * @param cores that are offered, 1 or more
   * @param asker where to join, looked up whenever nobody is being helped
   * @param own this machine's place as the others reach it; empty for what leads to the asker, at
   *     any free port
   * @param say hears in words what happens
   */
  public Helper(
      Craft craft,
      int cores,
      Supplier<Place> asker,
      Optional<Place> own,
      Optional<Path> keys,
      Consumer<String> say) {
    this(craft, cores, asker, own, keys, say, Build.here());
  }

  /** The same as another version of the program. */
  Helper(
      Craft craft,
      int cores,
      Supplier<Place> asker,
      Optional<Place> own,
      Optional<Path> keys,
      Consumer<String> say,
      String version) {
    this.craft = craft;
    this.cores = cores;
    this.asker = asker;
    this.own = own;
    this.keys = keys;
    this.say = say;
    this.version = version;
  }

  /**
   * Helps until a stop is wanted.
   *
   * @throws InputException if its keys cannot be read, or the asker refuses this helper
   */
  public void run(Stop stop) throws InterruptedException {
    keys.ifPresent(KeyFile::context);
    boolean said = false;
    while (!stop.wanted()) {
      Place at = asker.get();
      Door door = new Door(own.orElseGet(() -> Place.facing(at)), keys);
      Knock knock = Knock.at(at, keys);
      if (knock == Knock.OPEN) {
        help(at, door, stop);
        said = false;
      } else if (knock == Knock.SHUT) {
        throw InputException.of(
            keys.isPresent()
                ? "%s does not take this key, or shows none of the same authority".formatted(at)
                : "%s asks for a key".formatted(at),
            "Both sides need keys made in one folder with 'helper --make-keys', and --keys");
      } else if (!said) {
        say.accept("Nobody asks at %s yet. Waiting.".formatted(at));
        said = true;
      }
      pause(stop, KNOCK_AGAIN);
    }
  }

  private void help(Place at, Door door, Stop stop) throws InterruptedException {
    CountDownLatch welcome = new CountDownLatch(1);
    CompletableFuture<String> dismissed = new CompletableFuture<>();
    ActorSystem<Hand.Command> system =
        Engine.start(
            Hand.create(name(), cores, craft, welcome::countDown, dismissed::complete),
            door,
            version);
    try {
      Engine.join(system, at);
      if (joined(system, welcome, stop)) {
        say.accept("Helping %s with %d %s.".formatted(at, cores, cores == 1 ? "core" : "cores"));
        while (!stop.wanted() && !ended(system)) {
          Thread.sleep(POLL.toMillis());
        }
        if (!stop.wanted() && !dismissed.isDone()) {
          say.accept("%s is gone.".formatted(at));
        }
      }
      if (dismissed.isDone()) {
        throw InputException.of(
            "%s takes nothing more from this machine: %s".formatted(at, dismissed.join()),
            "See that the memory and the disk of this machine are sound");
      }
      refused(system, at);
    } finally {
      system.tell(Hand.Leave.NOW);
      Engine.end(system);
    }
  }

  /** Waits for the asker's welcome; if it does not answer at all, it may have ended meanwhile. */
  private boolean joined(ActorSystem<?> system, CountDownLatch welcome, Stop stop)
      throws InterruptedException {
    Instant late = Instant.now().plus(JOINING);
    while (!stop.wanted() && !ended(system)) {
      if (welcome.await(POLL.toMillis(), TimeUnit.MILLISECONDS)) {
        return true;
      }
      if (Instant.now().isAfter(late) && !Engine.answered(system)) {
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

  private void refused(ActorSystem<?> system, Place at) {
    CoordinatedShutdown.get(system)
        .getShutdownReason()
        .filter(
            CoordinatedShutdown.incompatibleConfigurationDetectedReason().getClass()::isInstance)
        .ifPresent(
            reason -> {
              throw InputException.of(
                  "%s runs another version or build of Ellwand than this machine, which has %s"
                      .formatted(at, version),
                  "Bring both to the same, from one ellwand.jar or package");
            });
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
