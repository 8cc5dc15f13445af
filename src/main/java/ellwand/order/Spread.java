package ellwand.order;

/**
 * A lay while the plan is being made.
 *
 * @param mix garments in the marker, by size index
 * @param turns by colour index, how often the plies that belong together are spread
 */
record Spread(int[] mix, int[] turns) {

  int garments() {
    return sum(mix);
  }

  int totalTurns() {
    return sum(turns);
  }

  /** Whether it cuts nothing at all. */
  boolean empty() {
    return garments() == 0 || totalTurns() == 0;
  }

  static int sum(int[] values) {
    int sum = 0;
    for (int value : values) {
      sum += value;
    }
    return sum;
  }
}
