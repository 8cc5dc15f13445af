package ellwand.many.cluster;

import java.util.Optional;
import org.apache.pekko.actor.typed.ActorRef;
import org.apache.pekko.actor.typed.Behavior;
import org.apache.pekko.actor.typed.delivery.ConsumerController;
import org.apache.pekko.actor.typed.delivery.ProducerController;
import org.apache.pekko.actor.typed.javadsl.AbstractBehavior;
import org.apache.pekko.actor.typed.javadsl.ActorContext;
import org.apache.pekko.actor.typed.javadsl.Behaviors;
import org.apache.pekko.actor.typed.javadsl.Receive;

/** The asker's end of what leads to one helper: orders out, reports in, nothing lost or doubled. */
final class Link extends AbstractBehavior<Link.Command> {

  interface Command {}

  record Send(Post.Order order) implements Command {}

  private record Ready(ActorRef<Post.Order> sendNextTo) implements Command {}

  private record Arrived(ConsumerController.Delivery<Post.Report> delivery) implements Command {}

  private final ActorRef<Foreman.Command> foreman;
  private final Outbox<Post.Order> orders = new Outbox<>();

  private Link(ActorContext<Command> context, Post.Offer offer, ActorRef<Foreman.Command> foreman) {
    super(context);
    this.foreman = foreman;
    Deliveries.send(
            context,
            Post.Order.class,
            offer.hand().path().name() + "-orders",
            next -> new Ready(next.sendNextTo()))
        .tell(new ProducerController.RegisterConsumer<>(offer.orders()));
    Deliveries.<Command, Post.Report>receive(context, Arrived::new)
        .tell(new ConsumerController.RegisterToProducerController<>(offer.reports()));
    orders.send(new Post.Welcome(context.getSelf()));
  }

  static Behavior<Command> create(Post.Offer offer, ActorRef<Foreman.Command> foreman) {
    return Behaviors.setup(context -> new Link(context, offer, foreman));
  }

  @Override
  public Receive<Command> createReceive() {
    return newReceiveBuilder()
        .onMessage(
            Send.class,
            send -> {
              orders.send(send.order());
              return this;
            })
        .onMessage(
            Ready.class,
            ready -> {
              orders.ready(ready.sendNextTo());
              return this;
            })
        .onMessage(
            Arrived.class,
            arrived -> {
              arrived.delivery().confirmTo().tell(ConsumerController.confirmed());
              foreman.tell(
                  new Foreman.Reported(
                      Optional.of(getContext().getSelf()), arrived.delivery().message()));
              return this;
            })
        .build();
  }
}
