package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cutting.Cutter;
import ellwand.job.Job;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.Seam;
import ellwand.pattern.Workpiece;
import ellwand.pattern.block.Block;
import ellwand.pattern.block.FromBody;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class BlocksInSizesTest {

  private static final Path BLOCKS = Path.of("src/test/resources/ellwand/file/blocks.yaml");

  /** A cap fits within 0.5 mm; the rest is far nearer. */
  private static final double FITS_MM = 0.5;

  @Test
  void seamsComeOutRightInEverySize() {
    Job job = JobReader.read(BLOCKS);
    assertEquals(9, job.style().sizes().size());
    for (String size : job.style().sizes()) {
      for (Seam seam : job.style().seams()) {
        assertEquals(
            0, seam.mismatchMm(job.style().pieces(size)), FITS_MM, size + " " + seam.one());
      }
    }
  }

  /** By the measures of each size: from 92 to 140 nothing stays as it was. */
  @Test
  void everySizeIsDraftedAnew() {
    Job job = JobReader.read(BLOCKS);
    List<String> sizes = job.style().sizes();
    for (int i = 1; i < sizes.size(); i++) {
      for (String piece : List.of("front", "back", "sleeve", "leg front", "leg back")) {
        assertTrue(
            area(job, sizes.get(i), piece) > 1.02 * area(job, sizes.get(i - 1), piece),
            piece + " " + sizes.get(i));
      }
    }
  }

  private static double area(Job job, String size, String name) {
    Piece piece =
        job.style().pieces(size).stream().filter(p -> p.name().equals(name)).findFirst().get();
    return Cutter.cut(piece, 1, 1).sewing().area();
  }

  /** What the guide says of each block: its name, points, edges, measures and ease. */
  @Test
  void theGuideNamesAllThatABlockHas() throws IOException {
    String guide = Files.readString(Path.of("src/site/markdown/blocks.md"));
    Set<String> missing = new TreeSet<>();
    Job job = JobReader.read(BLOCKS);
    for (Outlined piece : job.style().design().outlined()) {
      Block block = ((FromBody) piece.start()).block();
      String kind = block.words().replaceAll(" (front|back)$", "");
      String section = guide.substring(guide.indexOf("`" + kind));
      section =
          section.contains("\n## ") ? section.substring(0, section.indexOf("\n## ")) : section;
      for (String measure : block.measures()) {
        mention(section, measure, missing);
        mention(guide, "\n|" + measure + "|", missing);
      }
      for (String ease : block.usualEaseMm().keySet()) {
        mention(section, "`" + ease + "`", missing);
      }
      Workpiece work = job.style().design().making("104").piece(piece.name());
      for (String point : work.marks().keySet()) {
        mention(section, point, missing);
      }
      String ofSection = section;
      work.edges().forEach(edge -> mention(ofSection, edge.name(), missing));
    }
    assertEquals(Set.of(), missing);
  }

  private static void mention(String text, String words, Set<String> missing) {
    if (!text.contains(words)) {
      missing.add(words);
    }
  }
}
