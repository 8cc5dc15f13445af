package ellwand.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.pattern.Piece;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample jobs can be read, and sewn: seams that meet are as long as each other. */
class SampleMarkersTest {

  /** What two sides of a seam may differ by; common practice. */
  private static final double EASED_IN_MM = 3;

  private static List<Piece> pieces(String job) {
    Job read = JobReader.read(Path.of("sample-markers", job, "job.yaml"));
    return read.style().pieces(read.garments().keySet().iterator().next());
  }

  private static double length(String job, String piece, String edge) {
    return pieces(job).stream()
        .filter(p -> p.name().equals(piece))
        .findFirst()
        .orElseThrow()
        .edge(edge)
        .line()
        .length();
  }

  @ParameterizedTest
  @ValueSource(strings = {"weir-jacket", "mill-trousers", "fell-bodywarmer", "harbour-cape"})
  void canBeRead(String job) {
    assertTrue(pieces(job).size() >= 2);
  }

  @Test
  void theJacketsSeamsMeet() {
    String job = "weir-jacket";
    for (String seam : List.of("side seam", "shoulder")) {
      assertEquals(length(job, "back", seam), length(job, "front", seam), EASED_IN_MM);
    }
    assertEquals(
        length(job, "sleeve", "front seam"), length(job, "sleeve", "back seam"), EASED_IN_MM);
    double armhole = length(job, "front", "armhole") + length(job, "back", "armhole");
    double cap = length(job, "sleeve", "front cap") + length(job, "sleeve", "back cap");
    assertTrue(cap >= armhole && cap <= armhole + 20, cap + " eased into " + armhole);
    double overlap = 15;
    double neck = length(job, "front", "neckline") - overlap + length(job, "back", "neckline");
    assertEquals(neck, length(job, "collar", "neckline"), EASED_IN_MM);
  }

  /** 10 in from 15 in at 1.5 to 1: the ruffle gauge page of instructables.com. */
  @Test
  void theJacketsPeplumIsHalfAsWideAgainAsTheWaist() {
    String job = "weir-jacket";
    double waist = 2 * (length(job, "back", "waist") + length(job, "front", "waist"));
    // Half the rectangle is drawn, to its fold.
    assertEquals(1.5 * waist, 2 * length(job, "peplum", "top"), 1e-6);
  }

  @Test
  void theTrousersSeamsMeet() {
    for (String seam : List.of("inside leg", "outside leg")) {
      assertEquals(
          length("mill-trousers", "back", seam),
          length("mill-trousers", "front", seam),
          EASED_IN_MM);
    }
    double waist =
        2 * (length("mill-trousers", "front", "waist") + length("mill-trousers", "back", "waist"));
    assertEquals(waist, length("mill-trousers", "waistband", "start to end"), EASED_IN_MM);
  }

  @Test
  void theBodywarmersSeamsMeet() {
    String job = "fell-bodywarmer";
    for (String seam : List.of("side seam", "shoulder")) {
      assertEquals(length(job, "back", seam), length(job, "front", seam), EASED_IN_MM);
    }
    assertEquals(
        length(job, "front", "neckline") + length(job, "back", "neckline"),
        length(job, "collar", "neckline"),
        EASED_IN_MM);
  }
}
