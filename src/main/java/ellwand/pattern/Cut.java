package ellwand.pattern;

import ellwand.problem.InputException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many of a piece one garment needs from one cloth.
 *
 * @param count 1 or more; pairs count as one
 * @param grain of the piece in this cloth, where it is another than its own
 */
public record Cut(String cloth, int count, How how, Optional<Grain> grain) {

  /** On the piece's own grain. */
  public Cut(String cloth, int count, How how) {
    this(cloth, count, how, Optional.empty());
  }

  /** In which form a piece is cut. */
  public enum How {
    /** As drawn, the same hand each time. */
    WHOLE,
    /** A half piece cut with its fold edge on a fold of the cloth, or opened out. */
    FOLD,
    /** One as drawn and one mirrored. */
    PAIR
  }

  /** Far above what any garment needs of a piece. */
  private static final int MOST = 10_000;

  private static final Pattern TEXT =
      Pattern.compile("(?:(-?\\d+)\\s*)?(on fold|pairs?)?", Pattern.CASE_INSENSITIVE);

  public Cut {
    if (count < 1) {
      throw InputException.of(
          "a piece is cut once or more, not " + count + " times", "Leave the cloth out instead");
    }
  }

  /**
   * Reads {@code 2}, {@code 1 on fold}, {@code pair}, {@code 2 pairs}.
   *
   * @throws InputException saying what is accepted
   */
  public static Cut parse(String cloth, String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (text.isBlank() || !matcher.matches()) {
      throw InputException.of(
          "'" + text + "' does not say how to cut the piece",
          "Write for example 2, 1 on fold, pair or 2 pairs");
    }
    String how = matcher.group(2) == null ? "" : matcher.group(2).toLowerCase();
    try {
      int count = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
      if (count > MOST) {
        throw tooMany(text);
      }
      return new Cut(
          cloth, count, how.isEmpty() ? How.WHOLE : how.equals("on fold") ? How.FOLD : How.PAIR);
    } catch (NumberFormatException e) {
      throw tooMany(text);
    }
  }

  private static InputException tooMany(String text) {
    return InputException.of(
        "'" + text + "' is more than any garment needs", "Write how many one garment needs");
  }

  /** How many there are when all are cut: of a pair two, of what is cut on the fold one. */
  public int pieces() {
    return how == How.PAIR ? 2 * count : count;
  }

  /** The same on another grain. */
  public Cut on(Grain other) {
    return new Cut(cloth, count, how, Optional.of(other));
  }

  /** As in a job file and on a label. */
  @Override
  public String toString() {
    return switch (how) {
      case WHOLE -> Integer.toString(count);
      case FOLD -> count + " on fold";
      case PAIR -> count == 1 ? "pair" : count + " pairs";
    };
  }
}
