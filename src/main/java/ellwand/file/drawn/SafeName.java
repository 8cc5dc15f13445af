package ellwand.file.drawn;

import java.util.Set;

/** Makes of any words a name that pieces and lines may have. */
public final class SafeName {

  private static final int MOST_LETTERS = 56;

  private SafeName() {}

  /** The nearest name; "piece" if no letter is left. */
  public static String of(String words) {
    String plain =
        words
            .replaceAll("[^\\p{L}\\p{M}\\p{N} _+'()-]+", " ")
            .replaceAll("\\s+", " ")
            .replaceFirst("^[^\\p{L}\\p{N}]+", "")
            .strip();
    String shorter = plain.length() > MOST_LETTERS ? plain.substring(0, MOST_LETTERS) : plain;
    return shorter.isEmpty() ? "piece" : shorter.strip();
  }

  /** The name, or the name with a number, that is not taken yet; it is from now on. */
  public static String free(String name, Set<String> taken) {
    String free = name;
    for (int n = 2; !taken.add(free); n++) {
      free = name + " " + n;
    }
    return free;
  }
}
