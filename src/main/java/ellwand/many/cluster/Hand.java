package ellwand.many.cluster;

import ellwand.many.Craft;
import java.time.Duration;
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

/** A helper: offers its cores to the foreman, and ends when that one is gone. */
final class Hand extends AbstractBehavior<Hand.Command> {

  private static final Duration OFFER_AGAIN = Duration.ofSeconds(1);

  /** Hears, from any thread, what becomes of the offer. */
  interface Answer {

    void welcome();

    void dismissed(String why);

    void otherVersion();
  }

  interface Command {}

  /** What is begun is given back. */
  enum Leave implements Command {
    NOW
  }

  private record Ready(ActorRef<Post.Report> sendNextTo) implements Command {}

  private record Arrived(ConsumerController.Delivery<Post.Order> delivery) implements Command {}

  private record Reporting(Post.Report report) implements Command {}

  private enum Offering implements Command {
    AGAIN
  }

  private enum Gone implements Command {
    LINK
  }

  private final TimerScheduler<Command> timers;
  private final ActorRef<Post.Offer> foreman;
  private final Post.Offer offer;
  private final Answer answer;
  private final Bench bench;
  private final Outbox<Post.Report> reports = new Outbox<>();
  private boolean welcome;

  private Hand(
      ActorContext<Command> context,
      TimerScheduler<Command> timers,
      String version,
      String name,
      int cores,
      Place asker,
      Craft craft,
      Answer answer) {
    super(context);
    this.timers = timers;
    this.answer = answer;
    this.bench = new Bench(craft, cores, report -> context.getSelf().tell(new Reporting(report)));
    ActorRef<ProducerController.Command<Post.Report>> sends =
        Deliveries.send(
            context, Post.Report.class, name + "-reports", next -> new Ready(next.sendNextTo()));
    ActorRef<ConsumerController.Command<Post.Order>> takes =
        Deliveries.receive(context, Arrived::new);
    this.foreman = Engine.root(context.getSystem(), asker);
    this.offer = new Post.Offer(version, name, cores, takes, sends, context.getSelf());
    timers.startTimerWithFixedDelay(Offering.AGAIN, Duration.ZERO, OFFER_AGAIN);
  }

  /**
   * @param version that the asker must have, too
   * @param name of this machine, for people
   * @param asker where the foreman is
   */
  static Behavior<Command> create(
      String version, String name, int cores, Place asker, Craft craft, Answer answer) {
    return Behaviors.setup(
        context ->
            Behaviors.withTimers(
                timers -> new Hand(context, timers, version, name, cores, asker, craft, answer)));
  }

  @Override
  public Receive<Command> createReceive() {
    return newReceiveBuilder()
        .onMessage(Offering.class, again -> then(() -> foreman.tell(offer)))
        .onMessage(Post.OtherVersion.class, refused -> refused())
        .onMessage(Ready.class, ready -> then(() -> reports.ready(ready.sendNextTo())))
        .onMessage(Reporting.class, reporting -> then(() -> reports.send(reporting.report())))
        .onMessage(Arrived.class, arrived -> take(arrived.delivery()))
        .onMessage(Leave.class, leave -> leave())
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

  private Behavior<Command> refused() {
    answer.otherVersion();
    return Behaviors.stopped();
  }

  private Behavior<Command> take(ConsumerController.Delivery<Post.Order> delivery) {
    delivery.confirmTo().tell(ConsumerController.confirmed());
    if (delivery.message() instanceof Post.Dismissed order) {
      answer.dismissed(order.why());
      return Behaviors.stopped();
    }
    if (delivery.message() instanceof Post.Welcome order) {
      timers.cancel(Offering.AGAIN);
      getContext().watchWith(order.link(), Gone.LINK);
      welcome = true;
      answer.welcome();
    } else {
      bench.take(delivery.message());
    }
    return this;
  }

  /** The asker is told, and cuts the link when it has heard. */
  private Behavior<Command> leave() {
    if (!welcome) {
      return Behaviors.stopped();
    }
    bench.close();
    reports.send(new Post.Leaving());
    return this;
  }
}
