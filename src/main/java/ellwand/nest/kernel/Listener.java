package ellwand.nest.kernel;

/** Hears of every better legal layout, from one searching thread at a time; must return quickly. */
@FunctionalInterface
public interface Listener {

  /** Hears nothing. */
  Listener NONE = (layout, evaluations) -> {};

  /**
   * @param layout legal and shorter than all before
   * @param evaluations poses evaluated so far, by all threads together
   */
  void better(Layout layout, long evaluations);
}
