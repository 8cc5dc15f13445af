package ellwand.desk;

import ellwand.file.source.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What a file held, step by step; it is kept on disk, so that it outlives page and server. Steps
 * are numbered; the newest that counts is written down last.
 */
final class History {

  private static final int MOST = 500;
  private static final String NOW = "now";

  private final Path folder;

  /**
   * @param folder for the steps of one file alone
   */
  History(Path folder) {
    this.folder = folder;
  }

  /** Notes what the file holds now, after what it held before; what was undone is forgotten. */
  void note(String text) {
    int now = now();
    if (read(now).filter(text::equals).isPresent()) {
      return;
    }
    for (int i = now + 1; Files.exists(step(i)); i++) {
      delete(i);
    }
    write(step(now + 1), text);
    write(folder.resolve(NOW), Integer.toString(now + 1));
    delete(now + 1 - MOST);
  }

  boolean canUndo() {
    return Files.exists(step(now() - 1));
  }

  boolean canRedo() {
    return Files.exists(step(now() + 1));
  }

  /** What the file held before; empty at the first step. */
  Optional<String> undo() {
    return goTo(now() - 1);
  }

  /** What was undone last. */
  Optional<String> redo() {
    return goTo(now() + 1);
  }

  private Optional<String> goTo(int number) {
    Optional<String> text = read(number);
    text.ifPresent(t -> write(folder.resolve(NOW), Integer.toString(number)));
    return text;
  }

  private int now() {
    try {
      Path now = folder.resolve(NOW);
      return Files.exists(now) ? Integer.parseInt(Files.readString(now).strip()) : 0;
    } catch (IOException | NumberFormatException e) {
      return 0;
    }
  }

  private Path step(int number) {
    return folder.resolve(number + ".yaml");
  }

  private Optional<String> read(int number) {
    try {
      return Files.exists(step(number))
          ? Optional.of(Files.readString(step(number)))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void delete(int number) {
    try {
      Files.deleteIfExists(step(number));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(Path path, String text) {
    WholeFile.write(path, text.getBytes(StandardCharsets.UTF_8));
  }
}
