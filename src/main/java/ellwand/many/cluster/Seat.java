package ellwand.many.cluster;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Somebody who takes tasks, as the foreman sees it: its cores, and what it has begun. */
final class Seat {

  /** Where a task's result is, and when at the latest it is expected. */
  record Work(Handed errand, int cores, Instant latest) {

    /** Begun elsewhere, too. */
    boolean late() {
      return latest.equals(Instant.MAX);
    }
  }

  /** The way there and back, on machines that are busy. */
  private static final Duration ON_THE_WAY = Duration.ofSeconds(10);

  private final String name;
  private final int cores;
  private final Consumer<Post.Order> orders;
  private final Map<Long, Work> begun = new LinkedHashMap<>();

  Seat(String name, int cores, Consumer<Post.Order> orders) {
    this.name = name;
    this.cores = cores;
    this.orders = orders;
  }

  String name() {
    return name;
  }

  int cores() {
    return cores;
  }

  int free() {
    return cores - begun.values().stream().mapToInt(Work::cores).sum();
  }

  /** What is begun here, by the errand's number. */
  Map<Long, Work> begun() {
    return begun;
  }

  /** Whether it has the cores; one that asks for more than there are here takes all. */
  boolean hasRoomFor(Handed errand) {
    return free() >= Math.min(cores, errand.task().cores());
  }

  void begin(Handed errand) {
    int taken = Math.min(cores, errand.task().cores());
    begun.put(errand.number(), new Work(errand, taken, soon().plus(errand.task().most())));
    orders.accept(
        new Post.Begin(
            errand.number(),
            errand.task().kind(),
            errand.task().asked(),
            errand.task().cores(),
            errand.task().most().toMillis()));
    if (errand.hurried()) {
      hurry(errand);
    }
  }

  /** Asks for the best so far, if it is begun here, and waits no longer for it than it takes. */
  void hurry(Handed errand) {
    Work work = begun.get(errand.number());
    if (work != null) {
      Instant latest = work.late() || work.latest().isBefore(soon()) ? work.latest() : soon();
      begun.put(errand.number(), new Work(errand, work.cores(), latest));
      orders.accept(new Post.Hurry(errand.number()));
    }
  }

  /** Asks for it once more, and waits for it without an end, since it is begun elsewhere, too. */
  void late(Handed errand) {
    hurry(errand);
    begun.put(errand.number(), new Work(errand, begun.get(errand.number()).cores(), Instant.MAX));
  }

  private static Instant soon() {
    return Instant.now().plus(ON_THE_WAY);
  }

  /** Nobody waits for it here any more. What is late keeps its cores until it comes after all. */
  void withdraw(Handed errand) {
    Work work = begun.get(errand.number());
    if (work != null && !work.late()) {
      begun.remove(errand.number());
      orders.accept(new Post.Withdraw(errand.number()));
    }
  }
}
