package ellwand.file.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class Spelling {

  private Spelling() {}

  /** The known word that differs in the fewest letters, if that is at most a third of it or two. */
  public static Optional<String> nearest(String word, Collection<String> known) {
    String plain = word.toLowerCase(Locale.ROOT);
    return known.stream()
        .min(Comparator.comparingInt(k -> distance(plain, k.toLowerCase(Locale.ROOT))))
        .filter(k -> distance(plain, k.toLowerCase(Locale.ROOT)) <= Math.max(2, k.length() / 3))
        .filter(k -> distance(plain, k.toLowerCase(Locale.ROOT)) < k.length());
  }

  /** Letters to add, drop or change to turn one word into the other (Levenshtein). */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j - 1], row[j]));
      }
    }
    return row[b.length()];
  }
}
