package ellwand.nest.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.NoFitUnion;
import ellwand.geometry.RandomOutlines;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StripSearchTest {

  private static Outcome run(Strip strip, int threads, long steps) {
    return new StripSearch(strip, NoFitUnion::rings)
        .run(
            Optional.empty(),
            Request.of(Effort.ofSteps(steps), new Seed(7)).onThreads(threads),
            Listener.NONE);
  }

  @Test
  void layoutsAreLegalAndEachIsShorterThanTheLast() {
    Strip strip = Shapes.stars(4, 4, 9);
    List<Layout> heard = new ArrayList<>();
    List<Long> counts = new ArrayList<>();
    Outcome outcome =
        new StripSearch(strip, NoFitUnion::rings)
            .run(
                Optional.empty(),
                Request.of(Effort.ofSteps(400), new Seed(1)),
                (layout, evaluations) -> {
                  heard.add(layout);
                  counts.add(evaluations);
                });
    assertTrue(heard.size() > 3, "better layouts were found");
    for (int i = 0; i < heard.size(); i++) {
      assertEquals(List.of(), Shapes.faults(strip, heard.get(i)));
      assertTrue(i == 0 || heard.get(i).length() < heard.get(i - 1).length());
      assertTrue(i == 0 || counts.get(i) >= counts.get(i - 1));
    }
    assertEquals(heard.get(heard.size() - 1), outcome.layout().orElseThrow());
    assertTrue(outcome.evaluations() >= 400 * 1000);
  }

  @Test
  void blocksOfEqualCopiesAreRepeated() {
    Strip equal = Shapes.stars(4, 83, 9);
    List<List<StripForm>> unlike = new ArrayList<>();
    equal.copies().forEach(forms -> unlike.add(new ArrayList<>(forms)));
    Strip apart = new Strip(equal.shapes(), unlike, List.of(), Double.POSITIVE_INFINITY);
    List<Layout> heard = new ArrayList<>();
    StripSearch search = new StripSearch(equal, NoFitUnion::rings);
    Outcome tiled =
        search.run(
            Optional.empty(),
            Request.of(Effort.ofSteps(1500), new Seed(1)).onThreads(2),
            (layout, evaluations) -> heard.add(layout));
    for (Layout layout : heard) {
      assertEquals(List.of(), Shapes.faults(equal, layout));
    }
    assertTrue(heard.size() > 1);
    assertTrue(
        tiled.layout().orElseThrow().length()
            < 0.98 * run(apart, 1, 1500).layout().orElseThrow().length());
    Outcome further =
        search.run(tiled.layout(), Request.of(Effort.ofSteps(500), new Seed(2)), Listener.NONE);
    assertTrue(
        further.layout().orElseThrow().length()
            <= tiled.layout().orElseThrow().length() * (1 + 1e-12));
  }

  @Test
  void manyPointsAreLegalOnTheTrueOutlines() {
    SplittableRandom random = new SplittableRandom(2);
    Shape body = new Shape(RandomOutlines.smooth(random, 150, 10));
    Shape star = new Shape(RandomOutlines.star(random, 90, 12, 0.1));
    List<StripForm> bodies = List.of(StripForm.within(60, 0, body));
    List<StripForm> stars = List.of(StripForm.within(60, 1, star));
    Strip strip =
        Strip.open(List.of(body, star), List.of(bodies, bodies, bodies, stars, stars, stars));
    Layout layout = run(strip, 1, 300).layout().orElseThrow();
    assertEquals(List.of(), Shapes.faults(strip, layout));
  }

  @Test
  void stepsRepeatForOneThreadAndForTwo() {
    Strip strip = Shapes.stars(3, 4, 8);
    assertEquals(run(strip, 1, 600), run(strip, 1, 600));
    Outcome two = run(strip, 2, 2400);
    assertEquals(two.layout(), run(strip, 2, 2400).layout());
    assertEquals(List.of(), Shapes.faults(strip, two.layout().orElseThrow()));
  }

  @Test
  void aRectangleCutIntoSixIsPutTogetherAgain() {
    List<Shape> shapes =
        List.of(
            new Shape(0, 0, 6, 0, 4, 5, 0, 5),
            new Shape(6, 0, 12, 0, 12, 7, 9, 7, 4, 5),
            new Shape(0, 5, 4, 5, 3, 10, 0, 10),
            new Shape(4, 5, 9, 7, 8, 10, 3, 10),
            new Shape(9, 7, 12, 7, 12, 10, 8, 10),
            new Shape(12, 0, 15, 0, 15, 10, 12, 10));
    List<List<StripForm>> copies = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      copies.add(List.of(StripForm.within(10, i, shapes.get(i))));
    }
    Strip strip = Strip.open(shapes, copies);
    Layout layout = run(strip, 1, 3000).layout().orElseThrow();
    assertEquals(15, layout.length(), 1e-5);
    assertEquals(List.of(), Shapes.faults(strip, layout));
  }

  @Test
  void latticesWindowsAndObstaclesAreKept() {
    Shape box = Shapes.box(9, 7);
    Shape half = Shapes.box(12, 10);
    Shape flaw = Shapes.box(3, 3);
    List<StripForm> onLattice =
        List.of(new StripForm(0, 0, 43, 0, 9, new Lattice(5, 2), new Lattice(4, 1)));
    List<StripForm> onFold = List.of(StripForm.free(1, 0, 0, 0, 12));
    List<StripForm> inBand = List.of(StripForm.free(0, 20, 30, 0, 9));
    Strip strip =
        new Strip(
            List.of(box, half, flaw),
            List.of(onLattice, onLattice, onLattice, onFold, onFold, inBand, inBand, inBand),
            List.of(new Obstacle(2, 10, 4), new Obstacle(2, 20, 24)),
            Double.POSITIVE_INFINITY);
    Layout layout = run(strip, 1, 500).layout().orElseThrow();
    assertEquals(List.of(), Shapes.faults(strip, layout));
    for (int i = 3; i <= 4; i++) {
      assertEquals(0, layout.poses().get(i).y(), 0);
    }
  }

  @Test
  void aGapDoesNotCountAtTheCutEnds() {
    // two squares of side 10, each grown by 1 for a gap of 2: 10 + 2 + 10 along the strip
    Shape grown = new Shape(-1, -1, 11, -1, 11, 11, -1, 11);
    List<StripForm> forms = List.of(StripForm.free(0, 0, 0, 0, 10));
    Layout layout =
        run(Strip.open(List.of(grown), List.of(forms, forms)), 1, 50).layout().orElseThrow();
    assertEquals(22, layout.length(), 1e-5);
  }

  /** A square fits exactly before an obstacle and another behind it; two keep their gap. */
  @Test
  void aGapDoesNotCountAtObstacles() {
    Shape square = new Shape(-1, -1, 11, -1, 11, 11, -1, 11).bare(0, 0, 10, 0, 10, 10, 0, 10);
    List<StripForm> forms = List.of(StripForm.free(0, 0, 0, 0, 10));
    Strip strip =
        new Strip(
            List.of(square, Shapes.box(3, 10)),
            List.of(forms, forms, forms),
            List.of(new Obstacle(1, 10, 0)),
            Double.POSITIVE_INFINITY);
    Layout layout = run(strip, 1, 50).layout().orElseThrow();
    assertEquals(13 + 10 + 2 + 10, layout.length(), 1e-5);
    assertThrows(
        IllegalArgumentException.class,
        () -> new Strip(strip.shapes(), strip.copies(), List.of(new Obstacle(0, 0, 0)), 9));
  }

  @Test
  void aRemnantIsLongEnoughOrNot() {
    Shape box = Shapes.box(4, 3);
    List<StripForm> forms = List.of(StripForm.within(6, 0, box));
    List<List<StripForm>> four = Collections.nCopies(4, forms);
    Strip enough = new Strip(List.of(box), four, List.of(), 8);
    assertEquals(8, run(enough, 1, 200).layout().orElseThrow().length(), 1e-5);
    Strip tooShort = new Strip(List.of(box), four, List.of(), 7.9);
    assertTrue(run(tooShort, 1, 200).layout().isEmpty());
    Obstacle flaw = new Obstacle(0, 2, 1);
    assertTrue(
        run(new Strip(List.of(box), four, List.of(flaw), 10), 1, 200).layout().isEmpty(),
        "the area would do, but not round the flaw");
  }

  @Test
  void aStartIsNeverMadeWorse() {
    Strip strip = Shapes.stars(3, 4, 8);
    Layout start = run(strip, 1, 1500).layout().orElseThrow();
    Outcome outcome =
        new StripSearch(strip, NoFitUnion::rings)
            .run(Optional.of(start), Request.of(Effort.ofSteps(1), new Seed(3)), Listener.NONE);
    assertTrue(outcome.layout().orElseThrow().length() <= start.length() * (1 + 1e-12));
    assertEquals(List.of(), Shapes.faults(strip, outcome.layout().orElseThrow()));
  }

  @Test
  void aStopEndsTheSearchWithTheBestSoFar() {
    Strip strip = Shapes.stars(4, 6, 9);
    Stop stop = new Stop();
    Outcome outcome =
        new StripSearch(strip, NoFitUnion::rings)
            .run(
                Optional.empty(),
                Request.of(Effort.ofSteps(Long.MAX_VALUE - 1), new Seed(1)).onThreads(2).with(stop),
                (layout, evaluations) -> stop.request());
    assertEquals(List.of(), Shapes.faults(strip, outcome.layout().orElseThrow()));
  }

  @Test
  void aStopBeforeTheFirstLayoutEndsWithNone() {
    Stop stop = new Stop();
    stop.request();
    Outcome outcome =
        new StripSearch(Shapes.stars(2, 2, 7), NoFitUnion::rings)
            .run(
                Optional.empty(),
                Request.of(Effort.ofSteps(10), new Seed(1)).with(stop),
                Listener.NONE);
    assertTrue(outcome.layout().isEmpty());
  }
}
