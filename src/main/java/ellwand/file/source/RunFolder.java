package ellwand.file.source;

import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A folder that holds the files of one run, never some of one and some of another, whenever the
 * program is ended. What others put there stays.
 *
 * <p>All files are written into a folder inside first, which then gets another name at once: from
 * here on the run counts. The files of the run before, which the index lists with their digests,
 * go; then the new ones are moved to their places, the new index last. A program ended meanwhile
 * leaves the rest in the inner folder, and the next run puts it in its place first.
 */
public final class RunFolder {

  /** Lists the files of the run as {@code sha256sum} does. */
  private static final String INDEX = ".ellwand";

  private static final String WHOLE = INDEX + "-whole";
  private static final String PART = INDEX + "-part-";

  private final Path folder;

  private RunFolder(Path folder) {
    this.folder = folder;
  }

  public static RunFolder at(Path folder) {
    return new RunFolder(folder);
  }

  /**
   * The same, once it is seen that a run can be put there; what is made for that is gone again.
   *
   * @throws InputException if a file is in its way or writing there is not allowed
   */
  public RunFolder writable() {
    try {
      WholeFile.tryMaking(part().toAbsolutePath());
    } catch (IOException e) {
      throw WholeFile.refused(folder, WholeFile.reason(e));
    }
    return this;
  }

  private Path part() {
    return folder.resolve(PART + ProcessHandle.current().pid());
  }

  /**
   * Puts the files of a run in place of those of the run before.
   *
   * @param files by name
   * @return where they lie, in the same sequence
   * @throws InputException if they cannot be written; those of the run before are then untouched
   */
  public List<Path> write(Map<String, byte[]> files) {
    refuseClashes(files);
    try {
      Files.createDirectories(folder);
      tidy();
      Path part = part();
      try {
        Files.createDirectory(part);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
          Files.write(part.resolve(file.getKey()), file.getValue());
        }
        Files.writeString(part.resolve(INDEX), index(files));
        Files.move(part, folder.resolve(WHOLE), StandardCopyOption.ATOMIC_MOVE);
      } finally {
        delete(part);
      }
      settle();
    } catch (IOException e) {
      throw WholeFile.refused(folder, WholeFile.reason(e));
    }
    return files.keySet().stream().map(folder::resolve).toList();
  }

  /** The files of the last run; empty unless all of them are there as they were written. */
  public Optional<List<String>> whole() {
    Path index = folder.resolve(INDEX);
    if (!Files.isRegularFile(index) || Files.exists(folder.resolve(WHOLE))) {
      return Optional.empty();
    }
    try {
      List<String> names = new ArrayList<>();
      for (String line : Files.readAllLines(index)) {
        String[] entry = line.split(" {2}", 2);
        if (entry.length < 2 || !isFileName(entry[1])) {
          return Optional.empty();
        }
        byte[] file = Files.readAllBytes(folder.resolve(entry[1]));
        if (!digest(file).equals(entry[0])) {
          return Optional.empty();
        }
        names.add(entry[1]);
      }
      return Optional.of(names);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private void refuseClashes(Map<String, byte[]> files) {
    Map<String, String> byLower = new TreeMap<>();
    for (String name : files.keySet()) {
      String other = byLower.put(name.toLowerCase(Locale.ROOT), name);
      if (other != null) {
        throw WholeFile.refused(
            folder, other + " and " + name + " are one file where capitals make no difference");
      }
      if (Files.isDirectory(folder.resolve(name))) {
        throw WholeFile.refused(
            folder.resolve(name), "a file or folder of the same name is in the way");
      }
    }
  }

  /** Puts in its place what an ended run left whole, and removes what one left in part. */
  private void tidy() throws IOException {
    settle();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path path : all.filter(RunFolder::abandoned).toList()) {
        delete(path);
      }
    }
  }

  private static boolean abandoned(Path path) {
    String name = path.getFileName().toString();
    return name.startsWith(PART) && WholeFile.isEnded(name.substring(PART.length()));
  }

  private void settle() throws IOException {
    Path whole = folder.resolve(WHOLE);
    if (!Files.isDirectory(whole, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    List<Path> fresh;
    try (Stream<Path> all = Files.list(whole)) {
      fresh = all.filter(p -> !p.getFileName().toString().equals(INDEX)).toList();
    }
    removeOld(fresh);
    for (Path file : fresh) {
      move(file);
    }
    Path index = whole.resolve(INDEX);
    if (Files.exists(index)) {
      move(index);
    }
    Files.delete(whole);
  }

  /** Files of the run before that nobody has changed, and what the new ones take the place of. */
  private void removeOld(List<Path> fresh) throws IOException {
    Path index = folder.resolve(INDEX);
    if (Files.isRegularFile(index)) {
      for (String line : Files.readAllLines(index)) {
        String[] entry = line.split(" {2}", 2);
        if (entry.length == 2 && isFileName(entry[1])) {
          Path old = folder.resolve(entry[1]);
          if (Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS)
              && digest(Files.readAllBytes(old)).equals(entry[0])) {
            Files.delete(old);
          }
        }
      }
      // After this a run that is taken up again knows that the old files are gone.
      Files.delete(index);
    }
    for (Path file : fresh) {
      Files.deleteIfExists(folder.resolve(file.getFileName()));
    }
  }

  /** An index that somebody altered must not reach out of the folder. */
  private boolean isFileName(String name) {
    return !name.isBlank() && !name.contains("/") && !name.contains("\\") && !name.contains("\0");
  }

  private void move(Path file) throws IOException {
    Files.move(
        file,
        folder.resolve(file.getFileName()),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  private static void delete(Path inner) throws IOException {
    if (Files.isDirectory(inner, LinkOption.NOFOLLOW_LINKS)) {
      try (Stream<Path> files = Files.list(inner)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(inner);
    }
  }

  private static String index(Map<String, byte[]> files) {
    StringBuilder lines = new StringBuilder();
    new LinkedHashMap<>(files)
        .forEach((name, bytes) -> lines.append(digest(bytes) + "  " + name + "\n"));
    return lines.toString();
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
