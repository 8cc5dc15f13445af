package ellwand.desk;

import ellwand.file.source.Folder;
import ellwand.problem.InputException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A folder that notes what was read from it, so that it can tell whether that is still so. */
final class NotedFolder implements Folder {

  private static final int MOST_BYTES = 50_000_000;

  private final Folder from;

  /** By name; nothing where it could not be read. */
  private final Map<String, Optional<byte[]>> read = new LinkedHashMap<>();

  NotedFolder(Folder from) {
    this.from = from;
  }

  @Override
  public byte[] read(String name, int mostBytes) {
    try {
      byte[] bytes = from.read(name, mostBytes);
      read.put(name, Optional.of(bytes));
      return bytes;
    } catch (InputException e) {
      read.put(name, Optional.empty());
      throw e;
    }
  }

  @Override
  public boolean holds(String name) {
    return from.holds(name);
  }

  boolean has(Path file) {
    return read.containsKey(file.toString());
  }

  /** Whether everything that was read would be read so again. */
  boolean same() {
    return read.entrySet().stream().allMatch(e -> same(e.getKey(), e.getValue()));
  }

  private boolean same(String name, Optional<byte[]> before) {
    try {
      byte[] now = from.read(name, MOST_BYTES);
      return before.filter(b -> Arrays.equals(b, now)).isPresent();
    } catch (InputException e) {
      return before.isEmpty();
    }
  }
}
