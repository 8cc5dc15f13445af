package ellwand.nest;

import ellwand.work.Effort;
import ellwand.work.Progress;

/** Shares an effort out between trials, and tells of markers that are better than all before. */
final class Clock {

  private static final double LEAST_SECONDS = 0.01;

  private final Effort effort;
  private final Progress progress;
  private final long startNanos = System.nanoTime();
  private double shareBefore;
  private double shareNow;
  private double bestMm = Double.POSITIVE_INFINITY;

  Clock(Effort effort, Progress progress) {
    this.effort = effort;
    this.progress = progress;
  }

  /** The next part of the effort, 0 to 1 of it all. */
  synchronized Effort part(double share) {
    shareBefore += shareNow;
    shareNow = share;
    return effort.part(share);
  }

  /** What is left. */
  synchronized Effort rest() {
    Effort left = part(1 - shareBefore - shareNow);
    return effort.repeats()
        ? left
        : Effort.ofSeconds(Math.max(LEAST_SECONDS, effort.seconds() - seconds()));
  }

  Progress listener() {
    return this::pass;
  }

  private synchronized void pass(Progress.News news) {
    if (news.bestMm() < bestMm) {
      bestMm = news.bestMm();
      double share =
          effort.repeats()
              ? shareBefore + shareNow * news.share()
              : Math.min(1, seconds() / effort.seconds());
      progress.hear(new Progress.News(news.what(), seconds(), share, bestMm));
    }
  }

  private double seconds() {
    return (System.nanoTime() - startNanos) / 1e9;
  }
}
