package ellwand.cloth;

/** How the cloth lies. */
public enum Fold {
  /** One ply, right side up. */
  OPEN("open"),
  /**
   * Two plies, right sides together, the fold edge along one side and both selvedges on the other.
   */
  LENGTHWISE("lengthwise fold");

  private final String words;

  Fold(String words) {
    this.words = words;
  }

  /** As in a job file. */
  public String words() {
    return words;
  }
}
