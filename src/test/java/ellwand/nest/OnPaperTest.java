package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class OnPaperTest {

  private static final List<Double> QUARTERS = List.of(0.0, 90.0, 180.0, 270.0);
  private static final double GAP = 5;
  private static final Box CORNER = new Box(0, 0, 80, 60);

  @Property(tries = 25)
  void piecesKeepApartAndOffTheEdgesAndTheCorner(
      @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 20, max = 150) Double> sides,
      @ForAll @DoubleRange(min = 0.3, max = 1) double slim) {
    List<Outline> pieces =
        sides.stream()
            .map(
                side ->
                    Outline.of(
                        List.of(
                            new Point(0, 0),
                            new Point(side, slim * side / 3),
                            new Point(side, slim * side),
                            new Point(side / 4, slim * side))))
            .toList();
    OnPaper paper = new OnPaper(pieces, QUARTERS, GAP, CORNER);
    for (double extra : new double[] {0, 40}) {
      double width = paper.leastWidthMm() + extra;
      List<Motion> motions = paper.within(width, request()).orElseThrow();
      List<Region> placed = new ArrayList<>();
      placed.add(Region.of(new Box(0, width - CORNER.width(), CORNER.length(), width)));
      for (int i = 0; i < pieces.size(); i++) {
        Region piece = Region.of(pieces.get(i).moved(motions.get(i)));
        Box box = piece.box();
        assertTrue(box.minX() > 1.5 && box.minY() > 1.5 && box.maxY() < width - 1.5);
        for (Region other : placed) {
          // Room round a piece is cut off a little to have fewer points, and none is kept round
          // what stands in the corner.
          double least = other == placed.get(0) ? GAP / 2 - 1 : GAP - 2;
          assertTrue(piece.distance(other) > least, "too near");
        }
        placed.add(piece);
      }
    }
  }

  @Test
  void aLongPieceIsTurnedOntoNarrowPaper() {
    Outline strip = Outline.of(new Box(0, 0, 30, 300));
    OnPaper paper = new OnPaper(List.of(strip), QUARTERS, GAP, new Box(0, 0, 10, 10));
    assertEquals(35, paper.leastWidthMm(0), 1e-9);
    Motion motion = paper.within(50, request()).orElseThrow().get(0);
    assertEquals(90, motion.turnDegrees() % 180, 0);
  }

  private static Request request() {
    return Request.of(Effort.ofSteps(20), new Seed(1));
  }
}
