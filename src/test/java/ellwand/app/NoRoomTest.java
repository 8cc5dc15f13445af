package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.file.job.OrderJobReader;
import ellwand.file.source.Folder;
import ellwand.job.OrderJob;
import ellwand.problem.InputException;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Mats of 40, 50 and 60 cm across in sizes S, M and L, and badges of 10 cm. */
class NoRoomTest {

  private static String refused(int widthCm) {
    return refused(widthCm, "{S: 1, M: 1, L: 1}");
  }

  private static String refused(int widthCm, String red) {
    String yaml =
        """
        ellwand: 1
        unit: cm
        sizes: {names: [S, M, L], grade: {mat: {a: [0, 10], b: [0, 10]}}}
        style:
          name: Mat
          size: M
          allowance: 0
          pieces:
            badge: {cut: {felt: 1}, outline: [[0, 0], [10, 0], [10, 10], [0, 10]]}
            mat: {cut: {felt: 1}, outline: [{point: c, at: [0, 0]}, {point: d, at: [30, 0]}, \
        {point: a, at: [30, 50]}, \
        {point: b, at: [0, 50]}]}
        cloths: {felt: {width: %d, fold: open}}
        order: {colours: {red: %s}, max-plies: 9, max-garments: 2}
        """
            .formatted(widthCm, red);
    Folder folder = Folder.DISK.with("order.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    OrderJob job = OrderJobReader.read("order.yaml", folder);
    Request request = Request.of(Effort.ofSteps(20), new Seed(1));
    Hands none =
        (lay, folds, part) -> {
          throw new AssertionError("nothing is searched for");
        };
    return assertThrows(InputException.class, () -> OrderRun.make(job, job.unit(), request, none))
        .getMessage();
  }

  @Test
  void theSizeThatNeedsMostIsNamedWithWhatItNeeds() {
    assertEquals(
        "order.yaml: piece mat: in size L it lies 60.0 cm across, but cloth felt has only 55.0 cm"
            + " for it. Use cloth at least 60.0 cm wide, or split the piece with a join.",
        refused(55));
  }

  @Test
  void soAreTheOtherSizesThatHaveNone() {
    assertEquals(
        "order.yaml: piece mat: in size L it lies 60.0 cm across, but cloth felt has only 45.0 cm"
            + " for it, and size M has no room either. Use cloth at least 60.0 cm wide, or split"
            + " the piece with a join.",
        refused(45));
    assertEquals(
        "order.yaml: piece mat: in size L it lies 60.0 cm across, but cloth felt has only 30.0 cm"
            + " for it, and sizes S, M have no room either. Use cloth at least 60.0 cm wide, or"
            + " split the piece with a join.",
        refused(30));
  }

  @Test
  void theOnlySizeOfAnOrderIsNamedToo() {
    assertEquals(
        "order.yaml: piece mat: in size M it lies 50.0 cm across, but cloth felt has only 45.0 cm"
            + " for it. Use cloth at least 50.0 cm wide, or split the piece with a join.",
        refused(45, "{M: 1}"));
  }
}
