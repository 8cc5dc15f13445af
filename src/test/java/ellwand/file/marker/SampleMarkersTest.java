package ellwand.file.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cutting.Cutter;
import ellwand.file.job.JobReader;
import ellwand.job.Job;
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

  /** How much wider the widest piece lies than the cloth, halves opened, mm; below 0 if it fits. */
  private static double tooWide(String name) {
    Job job = JobReader.read(Path.of("sample-markers", name, "job.yaml"));
    String size = job.garments().keySet().iterator().next();
    double most = Double.NEGATIVE_INFINITY;
    for (Cloth cloth : job.cloths()) {
      List<Piece> pieces = job.style().pieces(size, cloth.name(), cloth.usableWidthMm());
      assertFalse(pieces.isEmpty(), cloth.name());
      for (Piece piece : pieces) {
        double half = Cutter.cut(piece, 1, 1).cutting().box().width();
        double width = piece.fold().isPresent() ? 2 * half : half;
        most = Math.max(most, width - cloth.usableWidthMm());
      }
    }
    return most;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "weir-jacket",
        "mill-trousers",
        "mill-bundles",
        "fell-bodywarmer",
        "gill-wrap-skirt",
        "stile-breeches"
      })
  void fitsOnItsCloths(String job) {
    assertTrue(tooWide(job) < 0);
  }

  @Test
  void theCapeIsWiderThanItsCloth() {
    // A half circle of 62 cm with hems of 2 cm is 128 cm wide, on 108 cm between the selvedges.
    assertEquals(1280 - 1080, tooWide("harbour-cape"), 0.1);
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
