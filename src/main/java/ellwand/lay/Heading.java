package ellwand.lay;

/** Which way along the warp a piece's top points. */
public enum Heading {
  /** Towards +x, away from the cut end. */
  UP,
  /** Towards the cut end. */
  DOWN;

  /** The heading of a piece turned by so many degrees: 0 and 90 head up, 180 and 270 down. */
  public static Heading ofTurn(double degrees, boolean flipped) {
    double turn = ((degrees % 360) + 360) % 360;
    // Turning over mirrors the angle, so that a piece laid across keeps its heading.
    double drawn = flipped ? (360 - turn) % 360 : turn;
    return drawn < 135 || drawn >= 315 ? UP : DOWN;
  }
}
