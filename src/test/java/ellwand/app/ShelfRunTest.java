package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Scarf;
import ellwand.cloth.Stock;
import ellwand.cloth.Wish;
import ellwand.figures.Figures;
import ellwand.file.job.JobReader;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfRunTest {

  @TempDir private Path folder;

  /** Squares of 20 cm: two fit on a remnant of 25 x 45 cm, one on 25 x 25, and one is bought. */
  @Test
  void usesUpRemnantsFirstAndBuysTheRest() throws IOException {
    Path path =
        Files.writeString(
            folder.resolve("job.yaml"),
            Scarf.job(4)
                .replace(
                    "fold: open}",
                    "fold: open, price: GBP 5 per m, wishes: [straight cuts]}\nremnants:\n"
                        + "  long: {length: 45, width: 25}\n  short: {length: 25, width: 25}"));
    Job job = JobReader.read(path);
    LaidJob made = ShelfRun.make(job, Unit.CM, Request.of(Effort.ofSteps(60), new Seed(1)));
    assertEquals(
        List.of(Optional.of("long"), Optional.of("short"), Optional.empty()),
        made.markers().stream().map(m -> m.lay().cloth().stock().map(Stock::name)).toList());
    assertEquals(List.of(2, 1, 1), made.markers().stream().map(m -> m.copies().size()).toList());
    for (Marker marker : made.markers()) {
      assertEquals(List.of(), Check.of(marker));
    }
    assertEquals(4, made.figures().garments());
    for (Figures figures : made.figures().cloths()) {
      boolean bought = figures.lies().remnant().isEmpty();
      assertEquals(bought ? List.of(Wish.STRAIGHT_CUTS) : List.of(), figures.wishes().asked());
      assertEquals(bought ? 0 : 1, figures.cautions().size());
    }
    // 20 cm of cloth at GBP 5 per m.
    assertEquals(1.0, made.figures().totalCost(), 1e-9);
  }

  private static final String COAT =
      """
      ellwand: 1
      unit: cm
      style:
        name: Coat
        allowance: 0
        pieces:
          body:
            cut: {main: 1}
            outline: [[0, 0], [60, 0], [60, 70], [0, 70]]
          sleeve:
            cut: {main: pair}
            outline: [[0, 0], [40, 0], [30, 30], [0, 30]]
      cloths:
        main: {width: 90, fold: open, price: GBP 5 per m, several-bolts: BOLTS}
      remnants:
        small: {length: 45, width: 35}
        large: {length: 45, width: 65}
      order: {garments: 1}
      """;

  private LaidJob coat(String bolts) throws IOException {
    Path path = Files.writeString(folder.resolve("coat.yaml"), COAT.replace("BOLTS", bolts));
    return ShelfRun.make(
        JobReader.read(path), Unit.CM, Request.of(Effort.ofSteps(60), new Seed(1)));
  }

  @Test
  void aGarmentComesFromOneBoltUnlessTheJobAllowsSeveral() throws IOException {
    LaidJob made = coat("false");
    assertEquals(1, made.markers().size());
    assertEquals(3, made.markers().get(0).copies().size());
    assertTrue(made.figures().cautions().stream().noneMatch(c -> c.contains("Shades")));
  }

  /** The pair of sleeves on the larger remnant; the body is larger than either. */
  @Test
  void piecesComeFromRemnantsFirstWhereSeveralBoltsAreAllowed() throws IOException {
    LaidJob made = coat("true");
    assertEquals(
        List.of(Optional.of("large"), Optional.empty()),
        made.markers().stream().map(m -> m.lay().cloth().stock().map(Stock::name)).toList());
    assertEquals(
        List.of("sleeve", "sleeve"),
        made.markers().get(0).copies().stream().map(Copy::piece).toList());
    assertEquals(
        List.of("body"), made.markers().get(1).copies().stream().map(Copy::piece).toList());
    assertEquals(
        "Garment 1 (one size) comes from several pieces of main: sleeve from large; body from"
            + " the cloth to buy.",
        made.figures().cautions().get(0));
    assertTrue(made.figures().cautions().get(1).startsWith("Shades differ from bolt to bolt"));
    // Each file can be held against the job, and still notices what is not there.
    for (Output output : made.outputs()) {
      Path file = folder.resolve(output.name());
      Files.write(file, output.bytes());
      if (file.toString().endsWith("marker.json")) {
        assertEquals(
            List.of(),
            CheckRun.marker(file.toString(), Folder.DISK, Optional.empty(), Optional.empty())
                .findings());
        Path cut = folder.resolve("cut.marker.json");
        Files.writeString(
            cut,
            Files.readString(file).replaceFirst("\"form\" ?: ?\"whole\"", "\"form\": \"half\""));
        assertNotEquals(
            List.of(),
            CheckRun.marker(cut.toString(), Folder.DISK, Optional.empty(), Optional.empty())
                .findings());
      }
    }
  }

  /** Whatever remnants there are, every piece is cut just once, and no marker breaks a rule. */
  @Property(tries = 2)
  void everyPieceIsCutOnceFromSomewhere(@ForAll @IntRange(min = 1, max = 100_000) int seed)
      throws IOException {
    Random random = new Random(seed);
    StringBuilder remnants = new StringBuilder("remnants:\n");
    for (int i = 0; i < 1 + random.nextInt(2); i++) {
      remnants.append(
          String.format(
              "  r%d: {length: %d, width: %d, flaws: [{at: [%d, %d], radius: %d}]}%n",
              i,
              25 + random.nextInt(80),
              25 + random.nextInt(80),
              random.nextInt(60),
              random.nextInt(25),
              1 + random.nextInt(8)));
    }
    String job =
        COAT.substring(0, COAT.indexOf("remnants:"))
                .replace("BOLTS", "true")
                .replace("fold: open", random.nextBoolean() ? "fold: open" : "fold: double fold")
            + remnants
            + "order: {garments: 2}\n";
    Path made = Files.createTempDirectory("shelf");
    Job read = JobReader.read(Files.writeString(made.resolve("job.yaml"), job));
    LaidJob run = ShelfRun.make(read, Unit.CM, Request.of(Effort.ofSteps(40), new Seed(seed)));
    int pieces = 0;
    for (Marker marker : run.markers()) {
      assertEquals(List.of(), Check.of(marker));
      pieces += marker.lay().wanted().size();
    }
    assertEquals(4, pieces);
  }
}
