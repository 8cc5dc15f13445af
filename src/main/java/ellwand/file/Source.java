package ellwand.file;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A text file as read.
 *
 * @param path as the user gave it
 * @param bytes all of it
 * @param text the same without a byte order mark
 */
record Source(Path path, byte[] bytes, String text) {

  /**
   * Reads a file of UTF-8 text, at most so many bytes.
   *
   * @throws InputException if it is not there, a folder, empty, too large or no text
   */
  static Source read(Path path, int maxBytes) {
    if (Files.isDirectory(path)) {
      throw refused(path, 0, "this is a folder, not a file", "Name a file in it");
    }
    if (Files.notExists(path)) {
      throw refused(path, 0, "there is no such file", "See that its path is right");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(maxBytes + 1);
    } catch (IOException e) {
      throw refused(
          path,
          0,
          "the file cannot be read (" + e.getClass().getSimpleName() + ")",
          "See that it may be read by you");
    }
    if (bytes.length > maxBytes) {
      throw refused(
          path, 0, "the file is larger than " + maxBytes / 1_000_000 + " MB", "Name a smaller one");
    }
    String text = decoded(path, bytes);
    if (text.isBlank()) {
      throw refused(path, 0, "the file is empty", "See that the right file is named");
    }
    return new Source(path, bytes, text);
  }

  private static String decoded(Path path, byte[] bytes) {
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
          path,
          1 + (int) text.chars().filter(c -> c == '\n').count(),
          "this is not text in UTF-8",
          "Save the file as plain text with the encoding UTF-8");
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static InputException refused(Path path, int line, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(path.toString(), line));
  }
}
