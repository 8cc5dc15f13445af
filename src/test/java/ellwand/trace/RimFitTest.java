package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RimFitTest {

  /** As a trace at 3 pixels to the mm has it. */
  private static final double NOISE_MM = 0.08;

  private static final double BLUR_MM = 0.5;

  private static RimEdges fitted(List<Path> shape, long seed) {
    Rim rim = PaperShapes.traced(PaperShapes.round(shape), BLUR_MM, NOISE_MM, seed);
    return RimFit.of(rim, p -> 0.3);
  }

  /** How far two outlines lie apart at most, mm. */
  private static double apart(List<Path> shape, RimEdges found) {
    Outline drawn = Outline.of(PaperShapes.round(shape).flattened(0.01));
    Outline traced = Outline.of(PaperShapes.round(found.edges()).flattened(0.01));
    double most = 0;
    for (Point p : traced.points()) {
      most = Math.max(most, drawn.distance(p));
    }
    for (Point p : new Rim(drawn.points()).even(1).points()) {
      most = Math.max(most, traced.distance(p));
    }
    return most;
  }

  private static long curves(RimEdges found) {
    return found.edges().stream()
        .flatMap(e -> e.segments().stream())
        .filter(Segment.Cubic.class::isInstance)
        .count();
  }

  @Test
  void cornersAndCurvesComeBackFromANoisyTrace() {
    for (long seed = 1; seed <= 3; seed++) {
      for (List<Path> shape : List.of(PaperShapes.leg(), PaperShapes.front())) {
        RimEdges found = fitted(shape, seed);
        assertEquals(shape.size(), found.edges().size());
        assertTrue(apart(shape, found) < 0.4, () -> "off by " + apart(shape, found));
        for (Path edge : found.edges()) {
          assertTrue(
              shape.stream().anyMatch(e -> e.start().distance(edge.start()) < 0.25),
              () -> "a corner at " + edge.start());
        }
        assertTrue(curves(found) <= 7, () -> curves(found) + " curves");
      }
    }
  }

  @Test
  void straightEdgesAreOneLineEach() {
    RimEdges found = fitted(PaperShapes.front(), 4);
    long straight =
        found.edges().stream()
            .filter(e -> e.segments().size() == 1 && e.segments().get(0) instanceof Segment.Line)
            .count();
    assertEquals(4, straight);
  }

  @Test
  void aRoundedCornerIsACurveAndNoCorner() {
    List<Path> pocket = PaperShapes.pocket();
    RimEdges found = fitted(pocket, 2);
    assertEquals(2, found.edges().size());
    assertTrue(apart(pocket, found) < 0.4);
  }

  @Test
  void aRoundPieceHasOneEdgeThatReturnsToItsStart() {
    RimEdges found = fitted(PaperShapes.circle(), 1);
    assertEquals(1, found.edges().size());
    Path round = found.edges().get(0);
    assertEquals(0, round.start().distance(round.end()), 1e-9);
    assertTrue(apart(PaperShapes.circle(), found) < 0.4);
  }

  @Test
  void trianglesSlitsAndTabsAreNotchesAndLeaveTheEdgeStraight() {
    List<Path> shape = new ArrayList<>(PaperShapes.front());
    // Inwards is up: a triangle of 6 x 5 mm, a slit of 0.8 x 8 mm, a tab of 6 x 4 mm.
    Point start = shape.get(0).start();
    Point end = shape.get(0).end();
    shape.set(0, nicked(start, end, new double[][] {{50, 6, 5}, {110, 0.8, 8}, {180, 6, -4}}));
    RimEdges found = fitted(shape, 3);
    assertEquals(6, found.edges().size());
    assertEquals(3, found.nicks().size());
    Point along = end.minus(start).unit();
    for (double at : new double[] {50, 110, 180}) {
      assertTrue(
          found.nicks().stream()
              .anyMatch(n -> Math.abs(n.mouth().minus(start).dot(along) - at) < 1),
          () -> found.nicks().toString());
    }
    assertTrue(apart(PaperShapes.front(), found) < 0.5);
  }

  @Test
  void aPointedCornerIsNoNotch() {
    List<Path> wedge =
        List.of(
            Path.line(new Point(0, 0), new Point(200, 0)),
            Path.line(new Point(200, 0), new Point(0, 60)),
            Path.line(new Point(0, 60), new Point(0, 0)));
    RimEdges found = fitted(wedge, 1);
    assertEquals(3, found.edges().size());
    assertEquals(List.of(), found.nicks());
  }

  @Test
  void whateverIsTracedIsDrawnNearIt() {
    Random dice = new Random(11);
    for (int k = 0; k < 25; k++) {
      List<Point> ragged = new ArrayList<>();
      int corners = 3 + dice.nextInt(20);
      for (int i = 0; i < corners; i++) {
        double turn = 2 * Math.PI * (i + 0.6 * dice.nextDouble()) / corners;
        double mm = 25 + 60 * dice.nextDouble();
        ragged.add(new Point(Math.cos(turn) * mm, Math.sin(turn) * mm));
      }
      ragged.add(ragged.get(0));
      List<Segment> lines = new ArrayList<>();
      for (int i = 1; i < ragged.size(); i++) {
        lines.add(new Segment.Line(ragged.get(i - 1), ragged.get(i)));
      }
      List<Path> shape = List.of(new Path(lines));
      RimEdges found = fitted(shape, k);
      Path round = PaperShapes.round(found.edges());
      assertEquals(0, round.start().distance(round.end()), 1e-6);
      double apart = apart(shape, found);
      assertTrue(apart < 3 || !found.nicks().isEmpty(), k + ": off by " + apart);
    }
  }

  /** A line with nicks, each by the middle of its mouth, its width and its depth, mm. */
  private static Path nicked(Point start, Point end, double[][] nicks) {
    Point along = end.minus(start).unit();
    List<Segment> line = new ArrayList<>();
    Point at = start;
    for (double[] nick : nicks) {
      Point middle = start.plus(along.times(nick[0]));
      Point from = middle.minus(along.times(nick[1] / 2));
      Point tip = middle.plus(along.left().times(nick[2]));
      Point to = middle.plus(along.times(nick[1] / 2));
      line.add(new Segment.Line(at, from));
      line.add(new Segment.Line(from, tip));
      line.add(new Segment.Line(tip, to));
      at = to;
    }
    line.add(new Segment.Line(at, end));
    return new Path(line);
  }

  /** Such as where paper can hardly be told from its ground: curves are not tried for ever. */
  @Test
  void aBorderThatTurnsEverywhereIsLeftInLines() {
    List<Point> teeth = new ArrayList<>();
    for (int i = 0; i < 240; i++) {
      double turn = 2 * Math.PI * i / 240;
      double out = i % 2 == 0 ? 300 : 320;
      teeth.add(new Point(out * Math.cos(turn), out * Math.sin(turn)));
    }
    RimEdges found = RimFit.of(new Rim(teeth), p -> 0.3);
    assertTrue(found.edges().size() > 100, () -> found.edges().size() + " edges");
    assertTrue(
        found.edges().stream().allMatch(e -> e.segments().size() == 1 && e.straight(0.01)),
        () -> found.edges().toString());
  }
}
