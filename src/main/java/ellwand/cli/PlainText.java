package ellwand.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;

/**
 * Lets only what can be read through to a terminal: names and notes of a job may hold signs that a
 * terminal obeys, or that turn the direction of writing round.
 */
final class PlainText extends FilterWriter {

  private PlainText(Writer to) {
    super(to);
  }

  /** What is printed there comes out at each line's end. */
  static PrintWriter to(Writer writer) {
    return new PrintWriter(new PlainText(writer), true);
  }

  /** The same text with a question mark for each sign that is not to be read. */
  static String of(String text) {
    StringBuilder plain = new StringBuilder(text);
    for (int i = 0; i < plain.length(); i++) {
      plain.setCharAt(i, plain(plain.charAt(i)));
    }
    return plain.toString();
  }

  private static char plain(char c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL ->
          c == '\t' || System.lineSeparator().indexOf(c) >= 0 || c == '\n' ? c : '?';
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> '?';
      default -> turnsWriting(c) ? '?' : c;
    };
  }

  /** The explicit directional signs of the Unicode Bidirectional Algorithm (UAX #9, section 2). */
  private static boolean turnsWriting(char c) {
    return c == '\u061C'
        || c == '\u200E'
        || c == '\u200F'
        || c >= '\u202A' && c <= '\u202E'
        || c >= '\u2066' && c <= '\u2069';
  }

  @Override
  public void write(int c) throws IOException {
    super.write(plain((char) c));
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    write(new String(text, from, length), 0, length);
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    out.write(of(text.substring(from, from + length)));
  }
}
