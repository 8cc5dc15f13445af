package ellwand.file.interchange;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The pairs of a DXF file, one after another: a group code and its value. */
final class DxfPairs {

  private final String file;
  private final byte[] bytes;
  private int at;
  private int line;
  private int code;
  private String value = "";

  DxfPairs(String file, byte[] bytes) {
    this.file = file;
    this.bytes = bytes;
  }

  /** Whether a file begins as a DXF file does: with comments, then a section. */
  static boolean looksLike(byte[] bytes) {
    String head =
        new String(bytes, 0, Math.min(bytes.length, 2000), StandardCharsets.ISO_8859_1)
            .toUpperCase(Locale.ROOT);
    return head.startsWith("AUTOCAD BINARY DXF")
        || head.matches("(?s)(\\s*999\\s*\\R[^\\r\\n]*\\R)*\\s*0\\s*\\R\\s*SECTION\\b.*");
  }

  /**
   * Goes on to the next pair; comments are passed over.
   *
   * @throws InputException if the file ends before it says so, or this is no pair
   */
  void next() {
    do {
      String number = readLine();
      value = readLine();
      try {
        code = Integer.parseInt(number.strip());
      } catch (NumberFormatException e) {
        throw refused(
            line - 1, "a group code is expected where '%s' stands".formatted(shown(number)));
      }
    } while (code == 999);
  }

  private String readLine() {
    if (at >= bytes.length) {
      throw refused(line, "the file ends in the middle");
    }
    int from = at;
    while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
      at++;
    }
    String text = new String(bytes, from, at - from, StandardCharsets.ISO_8859_1);
    if (at < bytes.length && bytes[at] == '\r') {
      at++;
    }
    if (at < bytes.length && bytes[at] == '\n') {
      at++;
    }
    line++;
    return text;
  }

  int code() {
    return code;
  }

  String value() {
    return value.strip();
  }

  /** The line on which the value stands. */
  int line() {
    return line;
  }

  boolean is(int expected, String word) {
    return code == expected && value().equalsIgnoreCase(word);
  }

  /** The value as a number. */
  double number() {
    try {
      double number = Double.parseDouble(value());
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Told below.
    }
    throw refused(line, "a number is expected where '%s' stands".formatted(shown(value)));
  }

  private static String shown(String text) {
    String plain = text.strip();
    return plain.length() > 20 ? plain.substring(0, 20) + "..." : plain;
  }

  InputException refused(int where, String what) {
    return new InputException(
        Problem.of(what, "Save the file again as DXF in text form, and see that it is whole")
            .at(file, where));
  }
}
