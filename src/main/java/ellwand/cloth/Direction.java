package ellwand.cloth;

/** Which headings the cloth allows. */
public enum Direction {
  /** Grain lines parallel to the warp, either heading. */
  ANY_WAY("any way"),
  /** Every piece heads the same. */
  ONE_WAY("one way"),
  /** The pieces of one garment share a heading; garments may oppose. */
  ONE_WAY_PER_GARMENT("one way per garment");

  private final String words;

  Direction(String words) {
    this.words = words;
  }

  /** As in a job file. */
  public String words() {
    return words;
  }
}
