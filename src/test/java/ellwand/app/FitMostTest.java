package ellwand.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.file.job.JobReader;
import ellwand.job.Job;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How often an order comes out of a remnant: by halving, within one effort, stopped at once. */
class FitMostTest {

  private static final Job WAISTCOAT =
      JobReader.read(Path.of("sample-markers/tarn-waistcoat/job.yaml"));

  @Test
  void everyAnswerIsFoundWithAsManyTriesAsThereAreHalvings() {
    for (int bound = 0; bound <= 70; bound++) {
      int halvings = (int) Math.ceil(Math.log(bound + 1) / Math.log(2) - 1e-9);
      for (int answer = 0; answer <= bound; answer++) {
        List<Integer> left = new ArrayList<>();
        int right = answer;
        int found =
            MostRun.most(
                bound,
                () -> false,
                (number, tries) -> {
                  left.add(tries);
                  return number <= right ? number : 0;
                });
        assertEquals(answer, found);
        assertTrue(left.size() <= halvings, bound + ": " + left);
        assertTrue(left.isEmpty() || left.get(0) == halvings, bound + ": " + left);
      }
    }
  }

  @Test
  void aStopEndsItAndIsSaid() {
    Stop stop = new Stop();
    List<Integer> tried = new ArrayList<>();
    int found =
        MostRun.most(
            100,
            stop::wanted,
            (number, tries) -> {
              tried.add(number);
              stop.request();
              return number;
            });
    assertEquals(List.of(found), tried);
    Request request = Request.of(Effort.ofSteps(100), new Seed(1)).with(stop);
    FitTimes none = MostRun.most(WAISTCOAT, "150cm x 30m", Optional.empty(), request);
    assertEquals(0, none.cut());
    assertEquals(
        List.of("The search was stopped early; more may be cut from 150cm x 30m."), none.remarks());
  }

  @Test
  void aLongRemnantCutsManyOrders() {
    Request request = Request.of(Effort.ofSteps(200), new Seed(1));
    FitTimes found = MostRun.most(WAISTCOAT, "150cm x 4m", Optional.empty(), request);
    // One takes 0.27 m2 of 1.48 x 4 m: 21 by area, and at a usual utilisation of 0.6 to 0.9 of it.
    assertTrue(found.cut() >= 12 && found.cut() <= 20, found.cut() + " garments");
    assertEquals(List.of(), found.remarks());
  }

  @Test
  void partOfAnOrderCountsToo() {
    Job two = WAISTCOAT.withGarments(Map.of(WAISTCOAT.garments().keySet().iterator().next(), 2));
    Request request = Request.of(Effort.ofSteps(400), new Seed(1));
    FitTimes one = MostRun.most(two, "150cm x 45cm", Optional.empty(), request);
    assertEquals(1, one.cut());
    assertTrue(one.achieved());
    assertTrue(one.text().startsWith("1 garment can be cut from 150cm x 45cm: "), one.text());
  }

  /** What one try shows the next begin with: fewer that fit for sure, or more than were tried. */
  @Test
  void whatATryShowsIsNotTriedAgain() {
    List<Integer> tried = new ArrayList<>();
    int found =
        MostRun.most(
            100,
            () -> false,
            (number, tries) -> {
              tried.add(number);
              return number <= 50 ? 70 : 72;
            });
    assertEquals(72, found);
    assertEquals(List.of(50, 85, 78, 75, 73), tried);
  }
}
