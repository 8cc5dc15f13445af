package ellwand.many.cluster;

import ellwand.many.TaskFailed;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import org.apache.pekko.actor.typed.ActorRef;

/**
 * The queue of tasks and the seats that take them. Each task is begun in its turn where cores are
 * free, and anew where its seat is lost or late; the first result counts, whatever else may still
 * come. A seat is known by its link, this process's own by none. For one thread at a time.
 */
final class Sharing {

  /** A task that so many have not survived is not handed to another. */
  static final int MOST_LOST = 5;

  private final Consumer<String> say;
  private final IntConsumer coresNow;
  private final Deque<Handed> waiting = new ArrayDeque<>();
  private final Map<Optional<ActorRef<Link.Command>>, Seat> seats = new LinkedHashMap<>();

  /**
   * @param say hears in words what becomes of seats
   * @param coresNow hears how many cores there are whenever that changes
   */
  Sharing(Consumer<String> say, IntConsumer coresNow) {
    this.say = say;
    this.coresNow = coresNow;
  }

  /** Begins what there are cores for, those that came first before all others. */
  void shareOut() {
    while (!waiting.isEmpty()) {
      Handed next = waiting.peek();
      Optional<Seat> free =
          seats.values().stream()
              .filter(seat -> seat.hasRoomFor(next) && !seat.begun().containsKey(next.number()))
              .max(Comparator.comparingInt(Seat::free));
      if (free.isEmpty()) {
        return;
      }
      waiting.remove();
      free.get().begin(next);
    }
  }

  void give(Handed errand) {
    waiting.add(errand);
  }

  void hurry(Handed errand) {
    errand.hurrying();
    seats.values().forEach(seat -> seat.hurry(errand));
  }

  /** It is done, or nobody wants it. */
  void forget(Handed errand) {
    waiting.remove(errand);
    seats.values().forEach(seat -> seat.withdraw(errand));
  }

  void seat(Optional<ActorRef<Link.Command>> from, Seat seat) {
    seats.put(from, seat);
    countCores();
  }

  private void countCores() {
    coresNow.accept(seats.values().stream().mapToInt(Seat::cores).sum());
  }

  /** Takes what a seat says of its tasks; of one that is gone nothing. */
  void hear(Optional<ActorRef<Link.Command>> from, Post.Report report) {
    Seat seat = seats.get(from);
    if (seat == null) {
      return;
    }
    if (report instanceof Post.Told told) {
      Optional.ofNullable(seat.begun().get(told.errand()))
          .ifPresent(work -> work.errand().tell(told.news()));
    } else if (report instanceof Post.Done done) {
      ended(seat, done.errand()).ifPresent(errand -> errand.complete(done.made(), from));
    } else if (report instanceof Post.Failed failed) {
      ended(seat, failed.errand()).ifPresent(errand -> errand.fail(new TaskFailed(failed.why())));
    } else if (report instanceof Post.GivenUp given) {
      Optional.ofNullable(seat.begun().remove(given.errand()))
          .ifPresent(work -> elsewhere(work.errand(), seat.name() + " gave it up: " + given.why()));
    }
  }

  /** What is known now is not to be done a second time. */
  private Optional<Handed> ended(Seat seat, long number) {
    Optional<Handed> errand =
        Optional.ofNullable(seat.begun().remove(number)).map(Seat.Work::errand);
    errand.ifPresent(this::forget);
    return errand;
  }

  /**
   * It wants to go, or has to: no fault of its tasks.
   *
   * @param why in words, of its name
   */
  void remove(Optional<ActorRef<Link.Command>> from, UnaryOperator<String> why) {
    remove(from)
        .ifPresent(
            seat -> {
              say.accept(why.apply(seat.name()));
              List.copyOf(seat.begun().values()).forEach(work -> again(work.errand()));
            });
  }

  /** It went without a word, perhaps by what it had begun. */
  void lost(Optional<ActorRef<Link.Command>> from) {
    remove(from)
        .ifPresent(
            seat -> {
              say.accept(seat.name() + " is lost; what it had begun is done elsewhere.");
              List.copyOf(seat.begun().values())
                  .forEach(work -> elsewhere(work.errand(), seat.name() + " was lost"));
            });
  }

  private Optional<Seat> remove(Optional<ActorRef<Link.Command>> from) {
    Optional<Seat> seat = Optional.ofNullable(seats.remove(from));
    seat.ifPresent(gone -> countCores());
    return seat;
  }

  /** Who has it is gone, gave it up, or is late. */
  private void elsewhere(Handed errand, String why) {
    if (errand.lostOnceMore() < MOST_LOST) {
      again(errand);
    } else {
      forget(errand);
      errand.fail(
          new TaskFailed(
              "it was begun %d times and never brought back; the last time %s"
                  .formatted(MOST_LOST, why)));
    }
  }

  /** Its turn has come before. */
  void again(Handed errand) {
    if (!waiting.contains(errand)) {
      waiting.addFirst(errand);
    }
  }

  /** Begins elsewhere, too, what should have come by now. Who is late may still bring it. */
  void lookForLate(Instant now) {
    for (Seat seat : List.copyOf(seats.values())) {
      for (Seat.Work work : List.copyOf(seat.begun().values())) {
        if (work.latest().isBefore(now)) {
          seat.late(work.errand());
          say.accept(seat.name() + " is late; its task is begun elsewhere, too.");
          elsewhere(work.errand(), seat.name() + " was late");
        }
      }
    }
  }
}
