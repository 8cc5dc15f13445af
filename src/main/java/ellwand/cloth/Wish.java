package ellwand.cloth;

/** What a cutter may wish of a marker beyond what it must keep. */
public enum Wish {
  /** The pieces of one garment lie near each other. */
  GARMENTS_TOGETHER("garments together"),
  /** One large left-over rather than many small. */
  ONE_LEFT_OVER("one left-over"),
  /** Straight cuts across the lay that cut through no piece. */
  STRAIGHT_CUTS("straight cuts"),
  /** No small piece at the very end. */
  SMALL_OFF_END("small pieces away from the ends");

  private final String words;

  Wish(String words) {
    this.words = words;
  }

  /** As in a job file. */
  public String words() {
    return words;
  }
}
