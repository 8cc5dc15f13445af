package ellwand.nest;

import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Spending;

/** Shares an effort out between trials, and tells of markers that are better than all before. */
final class Clock {

  private final Request request;
  private final Spending spending;
  private double shareBefore;
  private double shareNow;
  private double bestMm = Double.POSITIVE_INFINITY;

  Clock(Request request) {
    this.request = request;
    this.spending = new Spending(request.effort());
  }

  /** The next part of the effort, 0 to 1 of it all; what it finds is told as part of the whole. */
  synchronized Request part(double share) {
    shareBefore += shareNow;
    shareNow = share;
    return request.with(spending.take(share)).with(this::pass);
  }

  /** What is left. */
  synchronized Request rest() {
    return part(1 - shareBefore - shareNow);
  }

  private synchronized void pass(Progress.News news) {
    if (news.bestMm() < bestMm) {
      bestMm = news.bestMm();
      double share =
          request.effort().repeats()
              ? shareBefore + shareNow * news.share()
              : Math.min(1, spending.spent());
      request.progress().hear(new Progress.News(news.what(), spending.seconds(), share, bestMm));
    }
  }
}
