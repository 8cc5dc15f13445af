package ellwand.file.source;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Writes files so that nobody ever finds half of one. */
public final class WholeFile {

  /** Beside the file: its name and the number of the process that writes it. */
  private static final String PART = ".%s.%d";

  private WholeFile() {}

  /** Whether the file system can hold a name, in the encoding that the locale sets. */
  public static boolean canBeCalled(String name) {
    try {
      Path.of(name);
      return true;
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /**
   * Sees before long work whether a file can be written; what is made for that is gone again.
   *
   * @throws InputException if it cannot
   */
  public static void refuseUnwritable(Path path) {
    Path whole = path.toAbsolutePath();
    try {
      if (Files.isDirectory(whole)) {
        throw new FileAlreadyExistsException(path.toString());
      }
      tryMaking(part(whole));
    } catch (IOException e) {
      throw refused(path, reason(e));
    }
  }

  /**
   * Makes a folder that is not there, with those that lead to it, and takes them away again: a
   * system does not tell what it will refuse.
   */
  static void tryMaking(Path inner) throws IOException {
    List<Path> made = new ArrayList<>();
    Path there = inner;
    while (there != null && Files.notExists(there, LinkOption.NOFOLLOW_LINKS)) {
      made.add(there);
      there = there.getParent();
    }
    if (there == null || !Files.isDirectory(there)) {
      throw new NotDirectoryException(String.valueOf(there));
    }
    try {
      Files.createDirectories(inner);
    } finally {
      takeAway(made);
    }
  }

  private static void takeAway(List<Path> innermostFirst) throws IOException {
    try {
      for (Path path : innermostFirst) {
        Files.deleteIfExists(path);
      }
    } catch (DirectoryNotEmptyException e) {
      // Somebody else puts something there meanwhile.
    }
  }

  /**
   * Writes or replaces a file; its folder is made if need be.
   *
   * @throws InputException if it cannot be written; a file that was there before is then untouched
   */
  public static void write(Path path, byte[] bytes) {
    Path whole = path.toAbsolutePath();
    Path part = part(whole);
    try {
      Files.createDirectories(whole.getParent());
      tidy(whole);
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

  private static Path part(Path whole) {
    return whole.resolveSibling(PART.formatted(whole.getFileName(), ProcessHandle.current().pid()));
  }

  /** Removes what a program left that was ended while it wrote the same file. */
  private static void tidy(Path whole) throws IOException {
    String before = "." + whole.getFileName() + ".";
    try (Stream<Path> all = Files.list(whole.getParent())) {
      for (Path part : all.filter(p -> p.getFileName().toString().startsWith(before)).toList()) {
        if (isEnded(part.getFileName().toString().substring(before.length()))) {
          Files.deleteIfExists(part);
        }
      }
    }
  }

  /** Whether a text is the number of a process that is no more. */
  static boolean isEnded(String pid) {
    return pid.matches("\\d{1,18}") && ProcessHandle.of(Long.parseLong(pid)).isEmpty();
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
    if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
      return "a file or folder of the same name is in the way";
    }
    if (e instanceof NoSuchFileException) {
      return "nothing can be made in this folder";
    }
    return e.getMessage();
  }
}
