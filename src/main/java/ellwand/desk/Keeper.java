package ellwand.desk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/**
 * Keeps a folder for one desk at a time, by a lock that the system takes back however the program
 * ends. The locked file says where that desk is, so that a second start finds it.
 */
final class Keeper implements AutoCloseable {

  /** Far beyond what is written, since some systems let nobody read what is locked. */
  private static final long LOCKED = Long.MAX_VALUE - 1;

  private static final int LONGEST = 1000;

  private final Optional<FileChannel> file;

  private Keeper(Optional<FileChannel> file) {
    this.file = file;
  }

  /**
   * Takes a folder. One that nothing can be written to, or whose disk knows no locks, is taken
   * without.
   *
   * @return nothing if another desk has it
   */
  static Optional<Keeper> of(Path folder) {
    try {
      Files.createDirectories(place(folder).getParent());
      FileChannel file =
          FileChannel.open(
              place(folder),
              StandardOpenOption.CREATE,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE);
      if (locked(file)) {
        return Optional.of(new Keeper(Optional.of(file)));
      }
      file.close();
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(new Keeper(Optional.empty()));
    }
  }

  private static Path place(Path folder) {
    return folder.resolve(Workroom.HIDDEN).resolve("desk");
  }

  private static boolean locked(FileChannel file) throws IOException {
    try {
      return file.tryLock(LOCKED, 1, false) != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** Where the desk of a folder is, as it wrote down; it may have ended since. */
  static Optional<String> address(Path folder) {
    try {
      Path place = place(folder);
      return Files.exists(place) && Files.size(place) < LONGEST
          ? Optional.of(Files.readString(place).strip()).filter(text -> text.startsWith("http:"))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Writes down where the desk is; the key in that is its owner's alone to read. */
  void write(Path folder, String address) {
    if (file.isEmpty()) {
      return;
    }
    try {
      if (place(folder).getFileSystem().supportedFileAttributeViews().contains("posix")) {
        Files.setPosixFilePermissions(place(folder), PosixFilePermissions.fromString("rw-------"));
      }
      file.get().truncate(0);
      file.get().write(ByteBuffer.wrap((address + "\n").getBytes(StandardCharsets.UTF_8)), 0);
    } catch (IOException e) {
      // A second start then finds a desk that does not say where it is.
    }
  }

  @Override
  public void close() {
    try {
      if (file.isPresent()) {
        file.get().truncate(0);
        file.get().close();
      }
    } catch (IOException e) {
      // The system takes the lock back with the program.
    }
  }
}
