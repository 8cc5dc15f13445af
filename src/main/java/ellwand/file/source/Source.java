package ellwand.file.source;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * A text file as read.
 *
 * @param name as the user gave it
 * @param bytes all of it
 * @param text the same without a byte order mark
 */
public record Source(String name, byte[] bytes, String text) {

  /**
   * Reads a file of UTF-8 text, at most so many bytes.
   *
   * @throws InputException if it is not there, a folder, empty, too large or no text
   */
  public static Source read(String name, Folder from, int mostBytes) {
    byte[] bytes = from.read(name, mostBytes);
    String text = decoded(name, bytes);
    if (text.isBlank()) {
      throw refused(name, 0, "the file is empty", "See that the right file is named");
    }
    return new Source(name, bytes, text);
  }

  private static String decoded(String name, byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(in, out, true);
    out.flip();
    String text = out.toString();
    if (result.isError()) {
      throw refused(
          name,
          1 + (int) text.chars().filter(c -> c == '\n').count(),
          "this is not text in UTF-8",
          "Save the file as plain text with the encoding UTF-8");
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  static InputException tooLarge(String name, int mostBytes) {
    return refused(
        name, 0, "the file is larger than " + mostBytes / 1_000_000 + " MB", "Name a smaller one");
  }

  static InputException refused(String name, int line, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(name, line));
  }
}
