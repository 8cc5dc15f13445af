package ellwand.many.cluster;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.apache.pekko.actor.typed.ActorRef;
import org.apache.pekko.actor.typed.Behavior;
import org.apache.pekko.actor.typed.javadsl.AbstractBehavior;
import org.apache.pekko.actor.typed.javadsl.ActorContext;
import org.apache.pekko.actor.typed.javadsl.Behaviors;
import org.apache.pekko.actor.typed.javadsl.Receive;

/** Hears who comes and goes, what is wanted and what is done; the {@link Sharing} decides. */
final class Foreman extends AbstractBehavior<Foreman.Command> {

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

  private enum Look implements Command {
    NOW
  }

  private final String version;
  private final Consumer<String> say;
  private final Sharing sharing;
  private final Map<ActorRef<Hand.Command>, ActorRef<Link.Command>> links = new HashMap<>();

  /** Why nothing is taken from a machine any more. */
  private final Map<String, String> dismissed = new HashMap<>();

  private Foreman(
      ActorContext<Command> context, String version, Consumer<String> say, IntConsumer coresNow) {
    super(context);
    this.version = version;
    this.say = say;
    this.sharing = new Sharing(say, coresNow);
  }

  /**
   * @param version that helpers must have, too
   * @param say hears in words who comes and goes
   * @param coresNow hears how many cores there are whenever that changes
   */
  static Behavior<Command> create(String version, Consumer<String> say, IntConsumer coresNow) {
    return Behaviors.setup(
        context ->
            Behaviors.withTimers(
                timers -> {
                  timers.startTimerWithFixedDelay(Look.NOW, LOOK);
                  return new Foreman(context, version, say, coresNow);
                }));
  }

  @Override
  public Receive<Command> createReceive() {
    return newReceiveBuilder()
        .onMessage(Given.class, given -> then(() -> sharing.give(given.errand())))
        .onMessage(Hurrying.class, hurrying -> then(() -> sharing.hurry(hurrying.errand())))
        .onMessage(Withdrawn.class, withdrawn -> then(() -> sharing.forget(withdrawn.errand())))
        .onMessage(Own.class, own -> then(() -> seat(own)))
        .onMessage(Post.Offer.class, offer -> then(() -> answer(offer)))
        .onMessage(Reported.class, reported -> then(() -> hear(reported)))
        .onMessage(Refused.class, refused -> then(() -> dismiss(refused)))
        .onMessage(Lost.class, lost -> then(() -> lost(lost.hand())))
        .onMessage(Look.class, look -> then(() -> sharing.lookForLate(Instant.now())))
        .build();
  }

  private Behavior<Command> then(Runnable change) {
    change.run();
    sharing.shareOut();
    return this;
  }

  private void seat(Own own) {
    sharing.seat(Optional.empty(), new Seat("this machine", own.cores(), own.bench()::take));
  }

  /** Another version would make other markers. An offer is made until it is answered. */
  private void answer(Post.Offer offer) {
    if (!offer.version().equals(version)) {
      offer.hand().tell(new Post.OtherVersion());
    } else if (!links.containsKey(offer.hand())) {
      welcome(offer);
    }
  }

  private void welcome(Post.Offer offer) {
    ActorRef<Link.Command> link =
        getContext().spawnAnonymous(Link.create(offer, getContext().getSelf()));
    links.put(offer.hand(), link);
    getContext().watchWith(offer.hand(), new Lost(offer.hand()));
    String why = dismissed.get(machine(offer.hand()));
    if (why != null) {
      link.tell(new Link.Send(new Post.Dismissed(why)));
      return;
    }
    sharing.seat(
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
            link.tell(new Link.Send(new Post.Dismissed(refused.why())));
          }
        });
    sharing.remove(
        Optional.of(refused.from()),
        seat ->
            "What %s brought is refused, and it gets nothing more: %s."
                .formatted(seat, refused.why()));
    sharing.again(refused.again());
  }

  private void hear(Reported reported) {
    if (reported.report() instanceof Post.Leaving) {
      sharing.remove(reported.from(), seat -> seat + " helps no more.");
      reported.from().ifPresent(getContext()::stop);
    } else {
      sharing.hear(reported.from(), reported.report());
    }
  }

  private void lost(ActorRef<Hand.Command> hand) {
    ActorRef<Link.Command> link = links.remove(hand);
    sharing.lost(Optional.of(link));
    getContext().stop(link);
  }
}
