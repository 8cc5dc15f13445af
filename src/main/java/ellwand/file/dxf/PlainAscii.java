package ellwand.file.dxf;

import java.text.Normalizer;
import java.util.Map;
import java.util.regex.Pattern;

/** Words in 7-bit ASCII, for files and machines that know no other letters. */
public final class PlainAscii {

  /** Letters that are no plain letter with a mark, and signs that have a likeness. */
  private static final Map<Integer, String> ALIKE =
      Map.ofEntries(
          Map.entry((int) 'ß', "ss"),
          Map.entry((int) 'æ', "ae"),
          Map.entry((int) 'Æ', "AE"),
          Map.entry((int) 'œ', "oe"),
          Map.entry((int) 'Œ', "OE"),
          Map.entry((int) 'ø', "o"),
          Map.entry((int) 'Ø', "O"),
          Map.entry((int) 'ł', "l"),
          Map.entry((int) 'Ł', "L"),
          Map.entry((int) 'đ', "d"),
          Map.entry((int) 'Đ', "D"),
          Map.entry((int) 'ð', "d"),
          Map.entry((int) 'þ', "th"),
          Map.entry((int) 'ı', "i"),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '·', "-"),
          Map.entry((int) '×', "x"),
          Map.entry((int) '‘', "'"),
          Map.entry((int) '’', "'"),
          Map.entry((int) '“', "\""),
          Map.entry((int) '”', "\""),
          Map.entry((int) '…', "..."));

  /** Between a number and a fraction of one sign, which would else read as one number. */
  private static final Pattern FRACTION = Pattern.compile("(?<=\\d)(?=[¼½¾⅓⅔⅛⅜⅝⅞])");

  private PlainAscii() {}

  /**
   * The words on one line, letters without their marks, a question mark for a letter that has no
   * like. Words that are plain ASCII already come back as they are.
   */
  public static String of(String words) {
    StringBuilder plain = new StringBuilder();
    // Some letters (½, ﬁ) come apart into several, of which a few need a likeness themselves.
    Normalizer.normalize(FRACTION.matcher(words).replaceAll(" "), Normalizer.Form.NFKD)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .forEach(c -> plain.append(plain(c)));
    return plain.toString();
  }

  private static String plain(int c) {
    if (c >= 0x20 && c < 0x7F) {
      return Character.toString(c);
    }
    return Character.isWhitespace(c) ? " " : c == 0x2044 ? "/" : ALIKE.getOrDefault(c, "?");
  }
}
