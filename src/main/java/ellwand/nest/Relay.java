package ellwand.nest;

import ellwand.lay.Marker;
import ellwand.rule.Check;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes and checks markers for a listener, not too often. */
final class Relay {

  /** From one marker to the next as many times as long as the last one took; ours. */
  private static final long PAUSE = 20;

  /** Nobody sees more than a few a second. */
  private static final long LEAST_NANOS = 200_000_000;

  private final MarkerListener listener;
  private Optional<Supplier<Marker>> waiting = Optional.empty();
  private long next = System.nanoTime();

  Relay(MarkerListener listener) {
    this.listener = listener;
  }

  /** Takes note of a better marker, and passes it on unless the last one was only just. */
  void offer(Supplier<Marker> better) {
    waiting = Optional.of(better);
    if (System.nanoTime() - next >= 0) {
      pass();
    }
  }

  /** Passes on what waits. */
  void pass() {
    long began = System.nanoTime();
    Optional<Marker> marker = waiting.map(Supplier::get).filter(m -> Check.of(m).isEmpty());
    waiting = Optional.empty();
    long now = System.nanoTime();
    next = now + Math.max(LEAST_NANOS, PAUSE * (now - began));
    marker.ifPresent(listener::better);
  }
}
