package ellwand.nest;

import ellwand.lay.Marker;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Spending;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongSupplier;

/**
 * Shares an effort out between trials, and tells of markers that are better than all before. A time
 * counts from the first of them on.
 */
final class Clock {

  /** By so much of its length a marker is shorter before that counts as a gain; ours. */
  private static final double GAIN = 0.001;

  private final Request request;
  private final Spending spending;

  /** Of what is spent in any case, which trials have shares of. */
  private final Spending dealt;

  private final Marker.Search search;
  private final Optional<Relay> relay;
  private double shareBefore;
  private double shareNow;
  private double bestMm = Double.POSITIVE_INFINITY;

  /** The best when a gain was counted last. */
  private double gainedMm = Double.POSITIVE_INFINITY;

  /**
   * @param listener hears of the markers themselves, if anybody wants to
   */
  Clock(Request request, Optional<MarkerListener> listener) {
    this(request, listener, System::nanoTime);
  }

  /** With nanoseconds of its own. */
  Clock(Request request, Optional<MarkerListener> listener, LongSupplier nanos) {
    this.request = request;
    this.spending = new Spending(request.effort(), nanos);
    this.dealt = Spending.patient(request.effort().least(), nanos);
    this.search = search(false);
    this.relay = listener.map(Relay::new);
  }

  /** How the markers of this search are found. */
  Marker.Search search(boolean stoppedEarly) {
    return new Marker.Search(
        request.seed().value(), request.threads(), request.effort().toString(), stoppedEarly);
  }

  /** The next part of the effort, 0 to 1 of it all; what it finds is told as part of the whole. */
  synchronized Request part(double share) {
    shareBefore += shareNow;
    shareNow = share;
    return request.with(dealt.take(share));
  }

  /** Counts the steps of a part that is over. */
  synchronized void count(double steps) {
    dealt.use(steps);
  }

  /**
   * What more it pays to spend when all shares are; empty if nothing, or if the effort was to be
   * spent whole.
   */
  synchronized Optional<Effort> more() {
    return request.effort().endsWhenItNoLongerPays() ? spending.worthwhile() : Optional.empty();
  }

  /** All that was spent so far, of which what comes after the search has a share. */
  synchronized Effort spent() {
    return request.effort().endsWhenItNoLongerPays()
        ? Effort.ofSeconds(Math.max(request.effort().leastSeconds(), spending.seconds()))
        : request.effort();
  }

  /** The share that is left. */
  synchronized double left() {
    return 1 - shareBefore - shareNow;
  }

  /** What failed just now. */
  synchronized Progress.Mishap mishap(String cloth, String part, RuntimeException why) {
    double share = Math.min(1, shareBefore + shareNow);
    return new Progress.Mishap(cloth, spending.seconds(), share, part, why);
  }

  /** Tells of a marker if it is better than all before. */
  synchronized void better(Progress.Shorter news, Function<Marker.Search, Marker> maker) {
    spending.begin();
    dealt.begin();
    if (news.clothMm() < bestMm) {
      bestMm = news.clothMm();
      if (bestMm < gainedMm * (1 - GAIN)) {
        gainedMm = bestMm;
        spending.gain();
      }
      double share =
          request.effort().repeats()
              ? shareBefore + shareNow * news.share()
              : Math.min(1, spending.spent());
      request.progress().hear(news.after(spending.seconds(), share));
      relay.ifPresent(r -> r.offer(() -> maker.apply(search)));
    }
  }

  /** Tells that the search ends by now, if that is because it no longer pays. */
  synchronized void tellEnd(String cloth) {
    if (request.effort().endsWhenItNoLongerPays() && !request.stop().wanted()) {
      request
          .progress()
          .hear(
              new Progress.Ended(
                  cloth, spending.seconds(), Math.min(1, spending.spent()), spending.gained()));
    }
  }

  /** Nothing better is to come. */
  synchronized void end() {
    relay.ifPresent(Relay::pass);
  }
}
