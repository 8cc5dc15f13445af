package ellwand.nest;

import ellwand.lay.Marker;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Spending;
import java.util.Optional;
import java.util.function.Function;

/** Shares an effort out between trials, and tells of markers that are better than all before. */
final class Clock {

  private final Request request;
  private final Spending spending;
  private final Marker.Search search;
  private final Optional<Relay> relay;
  private double shareBefore;
  private double shareNow;
  private double bestMm = Double.POSITIVE_INFINITY;

  /**
   * @param listener hears of the markers themselves, if anybody wants to
   */
  Clock(Request request, Optional<MarkerListener> listener) {
    this.request = request;
    this.spending = new Spending(request.effort());
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
    return request.with(spending.take(share));
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
    if (news.clothMm() < bestMm) {
      bestMm = news.clothMm();
      double share =
          request.effort().repeats()
              ? shareBefore + shareNow * news.share()
              : Math.min(1, spending.spent());
      request
          .progress()
          .hear(
              new Progress.Shorter(
                  news.cloth(), news.fold(), news.mix(), spending.seconds(), share, bestMm));
      relay.ifPresent(r -> r.offer(() -> maker.apply(search)));
    }
  }

  /** Nothing better is to come. */
  synchronized void end() {
    relay.ifPresent(Relay::pass);
  }
}
