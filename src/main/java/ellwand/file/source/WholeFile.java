package ellwand.file.source;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes files so that nobody ever finds half of one. */
public final class WholeFile {

  private WholeFile() {}

  /**
   * Writes or replaces a file; its folder is made if need be.
   *
   * @throws InputException if it cannot be written; a file that was there before is then untouched
   */
  public static void write(Path path, byte[] bytes) {
    Path whole = path.toAbsolutePath();
    Path part =
        whole.resolveSibling("." + whole.getFileName() + "." + ProcessHandle.current().pid());
    try {
      Files.createDirectories(whole.getParent());
      try {
        Files.write(
            part,
            bytes,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE);
        Files.move(
            part, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      throw refused(path, reason(e));
    }
  }

  static InputException refused(Path path, String why) {
    return new InputException(
        Problem.of(
                "it cannot be written: " + why,
                "Choose another folder, or see that there is room and you may write there")
            .at(path.toString(), 0));
  }

  static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "writing in this folder is not allowed";
    }
    if (e instanceof FileAlreadyExistsException
        || e instanceof NotDirectoryException
        || e instanceof NoSuchFileException) {
      return "a file or folder of the same name is in the way";
    }
    return e.getMessage();
  }
}
