package ellwand.pattern.block;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Which half of the body a piece covers. */
public enum Side {
  FRONT,
  BACK;

  /** The one that words end with: {@code bodice front}. */
  public static Optional<Side> of(String words) {
    return Arrays.stream(values()).filter(s -> words.endsWith(" " + s.word())).findFirst();
  }

  /** As in a job. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** One of two values. */
  <T> T pick(T front, T back) {
    return this == FRONT ? front : back;
  }

  /** Strokes of its notches: a single one front, a double one back. */
  int strokes() {
    return pick(1, 2);
  }
}
