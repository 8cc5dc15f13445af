package ellwand.many.cluster;

import ellwand.many.TaskFailed;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.apache.pekko.actor.Address;
import org.apache.pekko.actor.typed.ActorRef;
import org.apache.pekko.actor.typed.Behavior;
import org.apache.pekko.actor.typed.javadsl.AbstractBehavior;
import org.apache.pekko.actor.typed.javadsl.ActorContext;
import org.apache.pekko.actor.typed.javadsl.Behaviors;
import org.apache.pekko.actor.typed.javadsl.Receive;
import org.apache.pekko.actor.typed.receptionist.Receptionist;
import org.apache.pekko.actor.typed.receptionist.ServiceKey;
import org.apache.pekko.cluster.ClusterEvent;
import org.apache.pekko.cluster.typed.Cluster;
import org.apache.pekko.cluster.typed.Down;
import org.apache.pekko.cluster.typed.Subscribe;

/**
 * Shares tasks out to whoever has free cores, and those of a lost helper anew. Each is begun in its
 * turn; the first result counts, whatever else may still come.
 */
final class Foreman extends AbstractBehavior<Foreman.Command> {

  /** By this helpers find it. */
  static final ServiceKey<Command> KEY = ServiceKey.create(Command.class, "foreman");

  /** A task that so many have not survived is not handed to another. */
  static final int MOST_LOST = 5;

  /** Who counts as unreachable for so long is gone; see cluster.conf. */
  private static final Duration SILENT = Duration.ofSeconds(5);

  private static final Duration LOOK = Duration.ofSeconds(1);

  interface Command {}

  record Given(Handed errand) implements Command {}

  record Hurrying(Handed errand) implements Command {}

  record Withdrawn(Handed errand) implements Command {}

  /** The cores of this process take part. */
  record Own(Bench bench, int cores) implements Command {}

  /**
   * What a seat reports.
   *
   * @param from its link, or nothing for this process's own cores
   */
  record Reported(Optional<ActorRef<Link.Command>> from, Post.Report report) implements Command {}

  /**
   * What a helper brought is no answer.
   *
   * @param again the same, handed in anew
   */
  record Refused(ActorRef<Link.Command> from, String why, Handed again) implements Command {}

  private record Lost(ActorRef<Hand.Command> hand) implements Command {}

  private record Beats(ClusterEvent.ReachabilityEvent event) implements Command {}

  private enum Look implements Command {
    NOW
  }

  private final Consumer<String> say;
  private final IntConsumer coresNow;
  private final Deque<Handed> waiting = new ArrayDeque<>();
  private final Map<Address, Instant> silent = new HashMap<>();
  private final Map<ActorRef<Hand.Command>, ActorRef<Link.Command>> links = new HashMap<>();

  /** Why nothing is taken from a machine any more. */
  private final Map<String, String> dismissed = new HashMap<>();

  private final Map<Optional<ActorRef<Link.Command>>, Seat> seats = new LinkedHashMap<>();

  private Foreman(ActorContext<Command> context, Consumer<String> say, IntConsumer coresNow) {
    super(context);
    this.say = say;
    this.coresNow = coresNow;
    context.getSystem().receptionist().tell(Receptionist.register(KEY, context.getSelf()));
    Cluster.get(context.getSystem())
        .subscriptions()
        .tell(
            Subscribe.create(
                context.messageAdapter(ClusterEvent.ReachabilityEvent.class, Beats::new),
                ClusterEvent.ReachabilityEvent.class));
  }

  /**
   * @param say hears in words who comes and goes
   * @param coresNow hears how many cores there are whenever that changes
   */
  static Behavior<Command> create(Consumer<String> say, IntConsumer coresNow) {
    return Behaviors.setup(
        context ->
            Behaviors.withTimers(
                timers -> {
                  timers.startTimerWithFixedDelay(Look.NOW, LOOK);
                  return new Foreman(context, say, coresNow);
                }));
  }

  @Override
  public Receive<Command> createReceive() {
    return newReceiveBuilder()
        .onMessage(Given.class, given -> then(() -> waiting.add(given.errand())))
        .onMessage(Hurrying.class, hurrying -> then(() -> hurry(hurrying.errand())))
        .onMessage(Withdrawn.class, withdrawn -> then(() -> forget(withdrawn.errand())))
        .onMessage(Own.class, own -> then(() -> seat(own)))
        .onMessage(Post.Offer.class, offer -> then(() -> welcome(offer)))
        .onMessage(Reported.class, reported -> then(() -> hear(reported)))
        .onMessage(Refused.class, refused -> then(() -> dismiss(refused)))
        .onMessage(Lost.class, lost -> then(() -> lost(lost.hand())))
        .onMessage(Beats.class, beats -> then(() -> hear(beats.event())))
        .onMessage(Look.class, look -> then(this::lookForLate))
        .build();
  }

  private Behavior<Command> then(Runnable change) {
    change.run();
    shareOut();
    return this;
  }

  private void shareOut() {
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

  private void hurry(Handed errand) {
    errand.hurrying();
    seats.values().forEach(seat -> seat.hurry(errand));
  }

  /** It is done, or nobody wants it. */
  private void forget(Handed errand) {
    waiting.remove(errand);
    seats.values().forEach(seat -> seat.withdraw(errand));
  }

  private void seat(Own own) {
    add(Optional.empty(), new Seat("this machine", own.cores(), own.bench()::take));
  }

  private void welcome(Post.Offer offer) {
    if (links.containsKey(offer.hand())) {
      return;
    }
    ActorRef<Link.Command> link =
        getContext().spawnAnonymous(Link.create(offer, getContext().getSelf()));
    links.put(offer.hand(), link);
    getContext().watchWith(offer.hand(), new Lost(offer.hand()));
    String why = dismissed.get(machine(offer.hand()));
    if (why != null) {
      link.tell(new Link.Send(new Post.Dismissed(why)));
      return;
    }
    add(
        Optional.of(link),
        new Seat(offer.name(), offer.cores(), order -> link.tell(new Link.Send(order))));
    say.accept(
        "%s helps with %d %s."
            .formatted(offer.name(), offer.cores(), offer.cores() == 1 ? "core" : "cores"));
  }

  private static String machine(ActorRef<Hand.Command> hand) {
    return hand.path().address().getHost().orElse("");
  }

  /** Whatever comes from that machine may be as wrong; what it has begun is done elsewhere. */
  private void dismiss(Refused refused) {
    links.forEach(
        (hand, link) -> {
          if (link.equals(refused.from())) {
            dismissed.put(machine(hand), refused.why());
          }
        });
    Seat seat = seats.get(Optional.of(refused.from()));
    if (seat != null) {
      List<Seat.Work> left = List.copyOf(seat.begun().values());
      refused.from().tell(new Link.Send(new Post.Dismissed(refused.why())));
      remove(
          Optional.of(refused.from()),
          "What %s brought is refused, and it gets nothing more: %s."
              .formatted(seat.name(), refused.why()));
      left.forEach(work -> again(work.errand()));
    }
    again(refused.again());
  }

  private void add(Optional<ActorRef<Link.Command>> from, Seat seat) {
    seats.put(from, seat);
    countCores();
  }

  private void countCores() {
    coresNow.accept(seats.values().stream().mapToInt(Seat::cores).sum());
  }

  private void hear(Reported reported) {
    Seat seat = seats.get(reported.from());
    if (seat == null) {
      return;
    }
    Post.Report report = reported.report();
    if (report instanceof Post.Told told) {
      Optional.ofNullable(seat.begun().get(told.errand()))
          .ifPresent(work -> work.errand().tell(told.news()));
    } else if (report instanceof Post.Done done) {
      ended(seat, done.errand()).ifPresent(errand -> errand.complete(done.made(), reported.from()));
    } else if (report instanceof Post.Failed failed) {
      ended(seat, failed.errand()).ifPresent(errand -> errand.fail(new TaskFailed(failed.why())));
    } else if (report instanceof Post.GivenUp given) {
      Optional.ofNullable(seat.begun().remove(given.errand()))
          .ifPresent(work -> elsewhere(work.errand(), seat.name() + " gave it up: " + given.why()));
    } else if (report instanceof Post.Leaving) {
      List<Seat.Work> left = List.copyOf(seat.begun().values());
      remove(reported.from(), seat.name() + " helps no more.");
      left.forEach(work -> again(work.errand()));
    }
  }

  /** What is known now is not to be done a second time. */
  private Optional<Handed> ended(Seat seat, long number) {
    Optional<Handed> errand =
        Optional.ofNullable(seat.begun().remove(number)).map(Seat.Work::errand);
    errand.ifPresent(this::forget);
    return errand;
  }

  private void lost(ActorRef<Hand.Command> hand) {
    ActorRef<Link.Command> link = links.remove(hand);
    Seat seat = seats.get(Optional.of(link));
    if (seat != null) {
      List<Seat.Work> left = List.copyOf(seat.begun().values());
      remove(Optional.of(link), seat.name() + " is lost; what it had begun is done elsewhere.");
      left.forEach(work -> elsewhere(work.errand(), seat.name() + " was lost"));
    }
    getContext().stop(link);
  }

  private void remove(Optional<ActorRef<Link.Command>> from, String why) {
    seats.remove(from);
    countCores();
    say.accept(why);
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
  private void again(Handed errand) {
    if (!waiting.contains(errand)) {
      waiting.addFirst(errand);
    }
  }

  private void hear(ClusterEvent.ReachabilityEvent event) {
    if (event instanceof ClusterEvent.UnreachableMember) {
      silent.putIfAbsent(event.member().address(), Instant.now());
    } else {
      silent.remove(event.member().address());
    }
  }

  /** Who is silent for too long is put out. Who is late may still bring its task. */
  private void lookForLate() {
    Instant now = Instant.now();
    silent
        .entrySet()
        .removeIf(
            member -> {
              boolean gone = member.getValue().plus(SILENT).isBefore(now);
              if (gone) {
                Cluster.get(getContext().getSystem()).manager().tell(new Down(member.getKey()));
              }
              return gone;
            });
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
