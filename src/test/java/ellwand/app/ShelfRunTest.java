package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Stock;
import ellwand.file.Job;
import ellwand.file.JobReader;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
            """
            ellwand: 1
            unit: cm
            style:
              name: Scarf
              allowance: 0
              pieces:
                square:
                  cut: {main: 1}
                  outline: [[0, 0], [20, 0], [20, 20], [0, 20]]
            cloths:
              main: {width: 90, fold: open, price: GBP 5 per m}
            remnants:
              long: {length: 45, width: 25}
              short: {length: 25, width: 25}
            order: {garments: 4}
            """);
    Job job = JobReader.read(path);
    LayRun.Made made =
        ShelfRun.make(
            job,
            Unit.CM,
            new SearchOptions(Effort.ofSteps(60), new Seed(1), 1),
            new Stop(),
            Progress.NONE);
    assertEquals(
        List.of(Optional.of("long"), Optional.of("short"), Optional.empty()),
        made.markers().stream().map(m -> m.lay().cloth().stock().map(Stock::name)).toList());
    assertEquals(List.of(2, 1, 1), made.markers().stream().map(m -> m.copies().size()).toList());
    for (Marker marker : made.markers()) {
      assertEquals(List.of(), Check.of(marker));
    }
    assertEquals(4, made.figures().garments());
    // 20 cm of cloth at GBP 5 per m.
    assertEquals(1.0, made.figures().totalCost(), 1e-9);
  }
}
