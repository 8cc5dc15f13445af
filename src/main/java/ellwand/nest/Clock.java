package ellwand.nest;

import ellwand.work.Effort;
import ellwand.work.Progress;

/** Shares an effort out between trials, and tells of markers that are better than all before. */
final class Clock {

  private static final double LEAST_SECONDS = 0.01;

  private final Effort effort;
  private final double trialShare;
  private final Progress progress;
  private final long startNanos = System.nanoTime();
  private int trials;
  private boolean last;
  private double bestMm = Double.POSITIVE_INFINITY;

  /**
   * @param trialShare what of the effort each trial may take
   */
  Clock(Effort effort, double trialShare, Progress progress) {
    this.effort = effort;
    this.trialShare = trialShare;
    this.progress = progress;
  }

  /** The effort of the next trial. */
  synchronized Effort trial() {
    trials++;
    return effort.part(trialShare);
  }

  /** What is left for the best of them. */
  synchronized Effort rest() {
    last = true;
    return effort.repeats()
        ? effort.part(1 - trials * trialShare)
        : Effort.ofSeconds(Math.max(LEAST_SECONDS, effort.seconds() - seconds()));
  }

  Progress listener() {
    return this::pass;
  }

  private synchronized void pass(Progress.News news) {
    if (news.bestMm() < bestMm) {
      bestMm = news.bestMm();
      double before = (last ? trials : trials - 1) * trialShare;
      double part = last ? 1 - before : trialShare;
      double share =
          effort.repeats()
              ? before + part * news.share()
              : Math.min(1, seconds() / effort.seconds());
      progress.hear(new Progress.News(news.what(), seconds(), share, bestMm));
    }
  }

  private double seconds() {
    return (System.nanoTime() - startNanos) / 1e9;
  }
}
