package ellwand.work;

/** Hears how a search gets on. Called from the searching threads; must return quickly. */
@FunctionalInterface
public interface Progress {

  /** Hears nothing. */
  Progress NONE = news -> {};

  void hear(News news);

  /**
   * One event.
   *
   * @param what the cloth or the stage that is worked on
   * @param seconds wall-clock seconds since the search began
   * @param share part of the effort used up, 0 to 1
   * @param bestMm best legal marker length so far, in mm; {@link Double#NaN} before the first
   */
  record News(String what, double seconds, double share, double bestMm) {}
}
