package ellwand.cutting;

/**
 * Something about a piece that its maker may not have meant.
 *
 * @param part which edge or line of it: {@code edge neckline}
 * @param sentence without full stop
 */
public record Caution(String piece, String part, String sentence) {

  /** {@code front, edge neckline: it meets the fold at 80 degrees ...} */
  @Override
  public String toString() {
    return piece + ", " + part + ": " + sentence;
  }
}
