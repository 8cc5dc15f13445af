package ellwand.many.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildTest {

  @TempDir private Path folder;

  /** Of one class, packed at some time. */
  private Path jar(String name, byte[] made, long packed) throws IOException {
    Path jar = folder.resolve(name);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
      for (String file : new String[] {"META-INF/MANIFEST.MF", "ellwand/Marker.class"}) {
        ZipEntry entry = new ZipEntry(file);
        entry.setLastModifiedTime(FileTime.fromMillis(packed));
        zip.putNextEntry(entry);
        zip.write(file.startsWith("META") ? Long.toString(packed).getBytes() : made);
      }
    }
    return jar;
  }

  @Test
  void whatIsInTheJarCountsAndNotWhenItWasPacked() throws IOException {
    byte[] made = {1, 2, 3};
    String build = Build.of(jar("a.jar", made, 1_000_000_000_000L));
    assertEquals(build, Build.of(jar("b.jar", made, 1_700_000_000_000L)));
    assertNotEquals(build, Build.of(jar("c.jar", new byte[] {1, 2, 4}, 1_000_000_000_000L)));
    Path classes = Files.createDirectories(folder.resolve("classes/ellwand"));
    Files.write(classes.resolve("Marker.class"), made);
    assertEquals(build, Build.of(folder.resolve("classes")));
  }
}
