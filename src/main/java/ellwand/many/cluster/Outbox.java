package ellwand.many.cluster;

import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pekko.actor.typed.ActorRef;

/** What is to be sent by one reliable delivery: goes in order, as fast as the other side takes. */
final class Outbox<M> {

  private final Deque<M> waiting = new ArrayDeque<>();
  private ActorRef<M> next;

  void send(M message) {
    waiting.add(message);
    flush();
  }

  /** The delivery takes one more. */
  void ready(ActorRef<M> sendNextTo) {
    next = sendNextTo;
    flush();
  }

  private void flush() {
    if (next != null && !waiting.isEmpty()) {
      ActorRef<M> to = next;
      next = null;
      to.tell(waiting.remove());
    }
  }
}
