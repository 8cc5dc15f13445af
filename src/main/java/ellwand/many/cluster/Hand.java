package ellwand.many.cluster;

import ellwand.many.Craft;
import java.time.Duration;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.pekko.actor.typed.ActorRef;
import org.apache.pekko.actor.typed.Behavior;
import org.apache.pekko.actor.typed.PostStop;
import org.apache.pekko.actor.typed.delivery.ConsumerController;
import org.apache.pekko.actor.typed.delivery.ProducerController;
import org.apache.pekko.actor.typed.javadsl.AbstractBehavior;
import org.apache.pekko.actor.typed.javadsl.ActorContext;
import org.apache.pekko.actor.typed.javadsl.Behaviors;
import org.apache.pekko.actor.typed.javadsl.Receive;
import org.apache.pekko.actor.typed.javadsl.TimerScheduler;
import org.apache.pekko.actor.typed.receptionist.Receptionist;
import org.apache.pekko.cluster.ClusterEvent;
import org.apache.pekko.cluster.typed.Cluster;
import org.apache.pekko.cluster.typed.Subscribe;

/** A helper: offers its cores to the foreman, and ends when that one is gone. */
final class Hand extends AbstractBehavior<Hand.Command> {

  private static final Duration ASK_AGAIN = Duration.ofSeconds(3);

  /** The asker counts as unreachable for so long before it is given up; see cluster.conf. */
  private static final Duration SILENT = Duration.ofSeconds(10);

  interface Command {}

  /** What is begun is given back. */
  enum Leave implements Command {
    NOW
  }

  private record Found(Set<ActorRef<Foreman.Command>> foremen) implements Command {}

  private record Ready(ActorRef<Post.Report> sendNextTo) implements Command {}

  private record Arrived(ConsumerController.Delivery<Post.Order> delivery) implements Command {}

  private record Reporting(Post.Report report) implements Command {}

  private enum Offering implements Command {
    AGAIN
  }

  private record Beats(ClusterEvent.ReachabilityEvent event) implements Command {}

  private enum Gone implements Command {
    FOREMAN
  }

  private final TimerScheduler<Command> timers;
  private final Runnable welcomed;
  private final Consumer<String> dismissed;
  private final String name;
  private final int cores;
  private final Bench bench;
  private final Outbox<Post.Report> reports = new Outbox<>();
  private final ActorRef<ProducerController.Command<Post.Report>> sends;
  private final ActorRef<ConsumerController.Command<Post.Order>> takes;
  private ActorRef<Foreman.Command> foreman;
  private boolean known;

  private Hand(
      ActorContext<Command> context,
      TimerScheduler<Command> timers,
      String name,
      int cores,
      Craft craft,
      Runnable welcomed,
      Consumer<String> dismissed) {
    super(context);
    this.timers = timers;
    this.welcomed = welcomed;
    this.dismissed = dismissed;
    this.name = name;
    this.cores = cores;
    this.bench = new Bench(craft, cores, report -> context.getSelf().tell(new Reporting(report)));
    this.sends =
        Deliveries.send(
            context, Post.Report.class, name + "-reports", next -> new Ready(next.sendNextTo()));
    this.takes = Deliveries.receive(context, Arrived::new);
    context
        .getSystem()
        .receptionist()
        .tell(
            Receptionist.subscribe(
                Foreman.KEY,
                context.messageAdapter(
                    Receptionist.Listing.class,
                    listing -> new Found(listing.getServiceInstances(Foreman.KEY)))));
    Cluster.get(context.getSystem())
        .subscriptions()
        .tell(
            Subscribe.create(
                context.messageAdapter(ClusterEvent.ReachabilityEvent.class, Beats::new),
                ClusterEvent.ReachabilityEvent.class));
  }

  /**
   * @param name of this machine, for people
   * @param welcomed run when the asker knows this helper
   * @param dismissed hears why the asker wants nothing more of this helper, which then ends
   */
  static Behavior<Command> create(
      String name, int cores, Craft craft, Runnable welcomed, Consumer<String> dismissed) {
    return Behaviors.setup(
        context ->
            Behaviors.withTimers(
                timers -> {
                  timers.startTimerWithFixedDelay(Offering.AGAIN, ASK_AGAIN);
                  return new Hand(context, timers, name, cores, craft, welcomed, dismissed);
                }));
  }

  @Override
  public Receive<Command> createReceive() {
    return newReceiveBuilder()
        .onMessage(Found.class, this::found)
        .onMessage(Offering.class, again -> then(this::offer))
        .onMessage(Ready.class, ready -> then(() -> reports.ready(ready.sendNextTo())))
        .onMessage(Reporting.class, reporting -> then(() -> reports.send(reporting.report())))
        .onMessage(Arrived.class, arrived -> take(arrived.delivery()))
        .onMessage(Beats.class, beats -> then(() -> hear(beats.event())))
        .onMessage(Leave.class, leave -> then(this::leave))
        .onMessage(Gone.class, gone -> Behaviors.stopped())
        .onSignal(
            PostStop.class,
            stop -> {
              bench.close();
              return this;
            })
        .build();
  }

  private Behavior<Command> then(Runnable change) {
    change.run();
    return this;
  }

  private Behavior<Command> found(Found found) {
    if (foreman == null && !found.foremen().isEmpty()) {
      foreman = found.foremen().iterator().next();
      getContext().watchWith(foreman, Gone.FOREMAN);
      offer();
    }
    return this;
  }

  private void offer() {
    if (foreman != null && !known) {
      foreman.tell(new Post.Offer(name, cores, takes, sends, getContext().getSelf()));
    }
  }

  private Behavior<Command> take(ConsumerController.Delivery<Post.Order> delivery) {
    delivery.confirmTo().tell(ConsumerController.confirmed());
    if (delivery.message() instanceof Post.Dismissed order) {
      dismissed.accept(order.why());
      return Behaviors.stopped();
    }
    if (delivery.message() instanceof Post.Welcome) {
      known = true;
      welcomed.run();
    } else {
      bench.take(delivery.message());
    }
    return this;
  }

  private void hear(ClusterEvent.ReachabilityEvent event) {
    if (foreman == null || !event.member().address().equals(foreman.path().address())) {
      return;
    }
    if (event instanceof ClusterEvent.UnreachableMember) {
      timers.startSingleTimer(Gone.FOREMAN, SILENT);
    } else {
      timers.cancel(Gone.FOREMAN);
    }
  }

  private void leave() {
    bench.close();
    reports.send(new Post.Leaving());
  }
}
