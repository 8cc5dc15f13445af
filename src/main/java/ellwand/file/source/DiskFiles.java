package ellwand.file.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files on disk by their paths; only ordinary ones are read. */
final class DiskFiles implements Folder {

  @Override
  public boolean holds(String name) {
    return WholeFile.canBeCalled(name) && Files.exists(Path.of(name));
  }

  @Override
  public byte[] read(String name, int mostBytes) {
    if (!WholeFile.canBeCalled(name)) {
      throw Source.refused(
          name, 0, "no file can have this name here", "See that its path is right");
    }
    Path path = Path.of(name);
    if (Files.isDirectory(path)) {
      throw Source.refused(name, 0, "this is a folder, not a file", "Name a file in it");
    }
    if (Files.notExists(path)) {
      throw Source.refused(name, 0, "there is no such file", "See that its path is right");
    }
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      // A pipe may never end, or never begin.
      throw Source.refused(
          name, 0, "this is a pipe or a device, not a file", "Save it as a file, and name that");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(mostBytes + 1);
    } catch (IOException e) {
      throw Source.refused(
          name,
          0,
          "the file cannot be read (" + e.getClass().getSimpleName() + ")",
          "See that it may be read by you");
    }
    if (bytes.length > mostBytes) {
      throw Source.tooLarge(name, mostBytes);
    }
    return bytes;
  }
}
