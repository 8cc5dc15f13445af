package ellwand.many.cluster;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipFile;

/** Which build of the program this is: two of one version may make other markers. */
final class Build {

  private static final int SHOWN = 8;

  private Build() {}

  /** The version, and some digits that only builds of the same content share. */
  static String here() {
    String version = Build.class.getPackage().getImplementationVersion();
    return (version == null ? "(not packaged)" : version) + " build " + digits();
  }

  private static String digits() {
    try {
      return of(Path.of(Build.class.getProtectionDomain().getCodeSource().getLocation().toURI()));
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Of a jar or a folder of classes: what is in it, whenever it was packed.
   *
   * @param from read whole, or of a jar its list of contents
   */
  static String of(Path from) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      Map<String, Long> sums = Files.isDirectory(from) ? folder(from) : jar(from);
      sums.forEach(
          (name, sum) -> digest.update((name + ' ' + sum + '\n').getBytes(StandardCharsets.UTF_8)));
      return HexFormat.of().formatHex(digest.digest()).substring(0, SHOWN);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** But what the packing itself wrote. */
  private static Map<String, Long> jar(Path jar) throws IOException {
    Map<String, Long> sums = new TreeMap<>();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      zip.stream()
          .filter(entry -> !entry.isDirectory() && !entry.getName().startsWith("META-INF/"))
          .forEach(entry -> sums.put(entry.getName(), entry.getCrc()));
    }
    return sums;
  }

  private static Map<String, Long> folder(Path folder) throws IOException {
    Map<String, Long> sums = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        CRC32 sum = new CRC32();
        sum.update(Files.readAllBytes(file));
        sums.put(folder.relativize(file).toString(), sum.getValue());
      }
    }
    return sums;
  }
}
