package ellwand.many.cluster;

import org.apache.pekko.actor.typed.ActorRef;
import org.apache.pekko.actor.typed.delivery.ConsumerController;
import org.apache.pekko.actor.typed.delivery.ProducerController;

/** All that goes from one process to another: plain records, written as CBOR. */
interface Post {

  /** To a helper. */
  sealed interface Order extends Post {}

  /**
   * The asker knows this helper; the first that it hears.
   *
   * @param link whose end is the asker's, as far as this helper goes
   */
  record Welcome(ActorRef<Link.Command> link) implements Order {}

  /**
   * A task to be begun.
   *
   * @param errand its number, by which all else speaks of it
   */
  record Begin(long errand, String kind, byte[] asked, int cores, long mostMillis)
      implements Order {}

  /** The best so far is wanted. */
  record Hurry(long errand) implements Order {}

  record Withdraw(long errand) implements Order {}

  /** What this helper brought is no answer; it gets nothing more to do. */
  record Dismissed(String why) implements Order {}

  /** From a helper. */
  sealed interface Report extends Post {}

  record Told(long errand, byte[] news) implements Report {}

  record Done(long errand, byte[] made) implements Report {}

  /** The task cannot be done, here or elsewhere. */
  record Failed(long errand, String why) implements Report {}

  /** It went wrong here (memory ran out), and may go well elsewhere. */
  record GivenUp(long errand, String why) implements Report {}

  /** The helper ends; what it has begun may be done elsewhere. */
  record Leaving() implements Report {}

  /**
   * A helper offers its cores.
   *
   * @param version of the program that it is
   * @param name of its machine, for people
   * @param orders where it takes orders
   * @param reports what brings its reports
   * @param hand whose end is the helper's
   */
  record Offer(
      String version,
      String name,
      int cores,
      ActorRef<ConsumerController.Command<Order>> orders,
      ActorRef<ProducerController.Command<Report>> reports,
      ActorRef<Hand.Command> hand)
      implements Post, Foreman.Command {}

  /** Answers an offer: whoever asks is another version. */
  record OtherVersion() implements Post, Hand.Command {}
}
