package ellwand.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Finds and reads instances. */
final class InstanceFile {

  private InstanceFile() {}

  /** A file itself, or the instances in a directory in the order of their names. */
  static List<Path> in(Path path) throws IOException {
    if (!Files.isDirectory(path)) {
      return List.of(path);
    }
    try (Stream<Path> files = Files.list(path)) {
      return files.filter(InstanceFile::isXml).sorted().toList();
    }
  }

  /**
   * @throws IOException if the file can't be read or isn't an instance
   */
  static Instance read(Path file) throws IOException {
    String name = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    try (var in = Files.newInputStream(file)) {
      return XmlInstance.read(name, in);
    } catch (IllegalArgumentException | IOException e) {
      throw new IOException(file + ": " + e.getMessage(), e);
    }
  }

  private static boolean isXml(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".xml");
  }
}
