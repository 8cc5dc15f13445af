package ellwand.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RimFitTest {

  private static final double NOISE_MM = 0.08;

  private static RimEdges fitted(List<Path> shape, long seed) {
    return RimFit.of(
        PaperShapes.traced(PaperShapes.round(shape), 0.5, NOISE_MM, seed), p -> 0.3);
  }

  private static double farthest(List<Path> shape, RimEdges found) {
    Outline drawn = Outline.of(PaperShapes.round(shape).flattened(0.01));
    Outline traced = Outline.of(PaperShapes.round(found.edges()).flattened(0.01));
    double most = 0;
    for (Point p : traced.points()) {
      most = Math.max(most, drawn.distance(p));
    }
    for (Point p : drawn.points()) {
      most = Math.max(most, traced.distance(p));
    }
    return most;
  }

  private static long count(RimEdges found, Class<? extends Segment> kind) {
    return found.edges().stream()
        .flatMap(e -> e.segments().stream())
        .filter(kind::isInstance)
        .count();
  }

  @Test
  void aTracedPieceHasTheCornersLinesAndCurvesItWasDrawnWith() {
    for (long seed = 1; seed <= 5; seed++) {
      for (List<Path> shape :
          List.of(PaperShapes.pocket(), PaperShapes.leg(), PaperShapes.front())) {
        RimEdges found = fitted(shape, seed);
        System.out.println(
            seed + " edges " + found.edges().size() + " of " + shape.size()
                + " lines " + count(found, Segment.Line.class)
                + " curves " + count(found, Segment.Cubic.class)
                + " off " + farthest(shape, found) + " nicks " + found.nicks().size()
                + (found.edges().size() < shape.size() ? found.edges().stream().map(e -> "\n   " + e.start()).toList() : ""));
      }
      RimEdges c = fitted(PaperShapes.circle(), seed);
      System.out.println("circle edges " + c.edges().size() + " curves " + count(c, Segment.Cubic.class) + " off " + farthest(PaperShapes.circle(), c));
    }
  }
}
