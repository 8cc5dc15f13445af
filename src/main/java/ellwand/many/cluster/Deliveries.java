package ellwand.many.cluster;

import java.util.Optional;
import java.util.function.Function;
import org.apache.pekko.actor.typed.ActorRef;
import org.apache.pekko.actor.typed.delivery.ConsumerController;
import org.apache.pekko.actor.typed.delivery.ProducerController;
import org.apache.pekko.actor.typed.javadsl.ActorContext;

/** The two ends of reliable delivery, as the children of whoever sends or receives. */
final class Deliveries {

  private Deliveries() {}

  /**
   * @param ready what the sender hears when it may send one
   */
  @SuppressWarnings("unchecked")
  static <C, M> ActorRef<ProducerController.Command<M>> send(
      ActorContext<C> context,
      Class<M> messages,
      String name,
      Function<ProducerController.RequestNext<M>, C> ready) {
    ActorRef<ProducerController.Command<M>> producer =
        context.spawnAnonymous(ProducerController.create(messages, name, Optional.empty()));
    producer.tell(
        new ProducerController.Start<>(
            context.messageAdapter(
                (Class<ProducerController.RequestNext<M>>)
                    (Class<?>) ProducerController.RequestNext.class,
                ready::apply)));
    return producer;
  }

  /**
   * @param arrived what the receiver hears of each message, to be confirmed
   */
  @SuppressWarnings("unchecked")
  static <C, M> ActorRef<ConsumerController.Command<M>> receive(
      ActorContext<C> context, Function<ConsumerController.Delivery<M>, C> arrived) {
    ActorRef<ConsumerController.Command<M>> consumer =
        context.spawnAnonymous(ConsumerController.create());
    consumer.tell(
        new ConsumerController.Start<>(
            context.messageAdapter(
                (Class<ConsumerController.Delivery<M>>)
                    (Class<?>) ConsumerController.Delivery.class,
                arrived::apply)));
    return consumer;
  }
}
