package ellwand.many;

import ellwand.work.Progress;

/** Tells of several searches for one marker as if they were one: only what is shorter than all. */
final class Race {

  private final Progress heard;
  private double bestMm = Double.POSITIVE_INFINITY;

  Race(Progress heard) {
    this.heard = heard;
  }

  /**
   * What hears the searches of one part.
   *
   * @param before share of the whole that was spent before it, 0 to 1
   * @param share of the whole that it takes
   */
  Progress part(double before, double share) {
    return news -> tell(news, before, share);
  }

  private synchronized void tell(Progress.News news, double before, double share) {
    if (news instanceof Progress.Mishap) {
      heard.hear(news);
    } else if (news instanceof Progress.Shorter marker && marker.clothMm() < bestMm) {
      bestMm = marker.clothMm();
      heard.hear(marker.after(marker.seconds(), before + share * marker.share()));
    }
  }
}
