package ellwand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Markers for plotters and cutting machines. */
class PlottedMarkerTest {

  @TempDir private Path folder;

  @Test
  void filesForMachinesAreWrittenBesideTheOthers() throws IOException {
    Path job = Path.of("src/test/resources/ellwand/cli/bib.yaml");
    Path out = folder.resolve("out");
    Ran ran = Ran.of("lay", job, "--also", "hpgl,DXF,svg,pdf", "--effort", "20steps", "--out", out);
    assertEquals(0, ran.code(), ran.err());
    for (String ending : new String[] {"pdf", "svg", "dxf", "hpgl"}) {
      assertTrue(Files.exists(out.resolve("main.plot." + ending)), ending);
    }
    assertTrue(Files.exists(out.resolve("main.marker.json")));
    String hpgl = Files.readString(out.resolve("main.plot.hpgl"), StandardCharsets.US_ASCII);
    assertTrue(hpgl.startsWith("IN;"));
    assertTrue(ran.err().contains("main, for a plotter: cuts "), ran.err());
  }

  @Test
  void anUnknownKindIsRefusedBeforeTheSearch() throws IOException {
    Path job = Path.of("src/test/resources/ellwand/cli/bib.yaml");
    Path out = folder.resolve("out");
    Ran ran = Ran.of("lay", job, "--also", "dwg", "--effort", "20steps", "--out", out);
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("'dwg' is no kind of file for a plotter"), ran.err());
    assertFalse(Files.exists(out));
  }
}
