package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Intake;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * Pleats that run down (along -y) from an upper edge, folded by sums along x: every layer must end
 * where the edge ends that it lies behind.
 */
class PleatMouthTest {

  private static final double LEFT = -300;
  private static final double FOOT = 100;

  /** The upper edge of the finished panel: it falls to the left and is hollow. */
  private static double height(double x) {
    return 500 + 0.1 * x - 0.0004 * x * x;
  }

  /** The finished edge between two places, moved to the left by so much, as short stretches. */
  private static List<Segment> edge(double from, double to, double moved) {
    List<Segment> line = new ArrayList<>();
    int steps = Math.max(1, (int) Math.ceil((from - to) / 4));
    for (int i = 0; i < steps && from > to; i++) {
      double a = from + (to - from) * i / steps;
      double b = from + (to - from) * (i + 1) / steps;
      line.add(new Segment.Line(new Point(a - moved, height(a)), new Point(b - moved, height(b))));
    }
    return line;
  }

  /**
   * A panel that is opened at each of these places, from right to left.
   *
   * @param deep how deep each pleat lies, mm
   * @param towardsFirst whether each is folded to the right
   */
  private static Piece pleated(
      List<Double> at, double deep, List<Boolean> towardsFirst, double allowance) {
    List<Segment> line = new ArrayList<>();
    List<Intake> pleats = new ArrayList<>();
    double from = 0;
    double moved = 0;
    for (int i = 0; i < at.size(); i++) {
      double x = at.get(i);
      line.addAll(edge(from, x, moved));
      Point first = new Point(x - moved, height(x));
      moved += 2 * deep;
      Point second = new Point(x - moved, height(x));
      line.add(new Segment.Line(first, second));
      Point down = new Point(0, -200);
      pleats.add(
          new Intake(
              "pleat " + (i + 1),
              Intake.Kind.PLEAT,
              new Intake.Leg(first, first.plus(down)),
              new Intake.Leg(second, second.plus(down)),
              towardsFirst.get(i)));
      from = x;
    }
    line.addAll(edge(from, LEFT, moved));
    return FoldedAway.panel(line, pleats, allowance);
  }

  /** The farthest that the edge of any layer of the folded panel lies from that of a plain one. */
  private static double misses(Piece piece, List<Double> at, double deep) {
    double allowance = piece.edge("waist").allowanceMm();
    Outline plain = cutting(FoldedAway.panel(edge(0, LEFT, 0), List.of(), allowance));
    List<Intake> pleats = piece.edge("waist").intakes();
    double most = 0;
    int inMouths = 0;
    for (Point p : FoldedAway.walked(cutting(piece), 0.5)) {
      if (p.y() < FOOT || p.x() > -5 || p.x() < LEFT - 2 * deep * at.size() + 5) {
        continue;
      }
      double folded = p.x();
      for (int i = 0; i < pleats.size(); i++) {
        double into = pleats.get(i).first().outer().x() - p.x();
        if (into > 2 * deep) {
          folded += 2 * deep;
        } else if (into > 0) {
          inMouths++;
          double behind = Math.min(into, 2 * deep - into);
          folded = at.get(i) + (pleats.get(i).towardsFirst() ? behind : -behind);
        }
      }
      most = Math.max(most, plain.distance(new Point(folded, p.y())));
    }
    assertTrue(inMouths > 5 * pleats.size(), "the mouths have a cutting line");
    return most;
  }

  private static Outline cutting(Piece piece) {
    return Cutter.cut(piece, 1, 1).cutting();
  }

  @Property(tries = 100)
  void knifePleatsEndWithTheClothTheyLieBehind(
      @ForAll @IntRange(min = 1, max = 4) int number,
      @ForAll @DoubleRange(min = 5, max = 25) double deep,
      @ForAll @DoubleRange(min = 5, max = 30) double allowance,
      @ForAll boolean towardsFirst) {
    List<Double> at = new ArrayList<>();
    List<Boolean> towards = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      at.add(-60.0 - 55 * i);
      towards.add(towardsFirst);
    }
    Piece piece = pleated(at, deep, towards, allowance);
    double misses = misses(piece, at, deep);
    assertTrue(misses < 0.1, "misses by " + misses);
    assertEquals(
        FoldedAway.panel(edge(0, LEFT, 0), List.of(), 0).edge("waist").sewnMm(),
        piece.edge("waist").sewnMm(),
        1e-3);
  }

  /** Both halves of an inverted pleat meet in front, with nothing of the edge between them. */
  @Test
  void anInvertedPleatEndsWithTheClothOnBothSides() {
    List<Double> at = List.of(-150.0, -150.0);
    assertTrue(misses(pleated(at, 20, List.of(true, false), 15), at, 20) < 0.1);
  }

  @Test
  void aBoxPleatEndsWithItsFace() {
    List<Double> at = List.of(-130.0, -170.0);
    assertTrue(misses(pleated(at, 20, List.of(false, true), 15), at, 20) < 0.1);
  }

  /** Pleats that lie nearer than they are deep go on under the next: folded images of images. */
  @Test
  void pleatsMayOverlap() {
    List<Double> at = List.of(-60.0, -75.0, -90.0);
    assertTrue(misses(pleated(at, 30, List.of(true, true, true), 15), at, 30) < 0.1);
  }

  @Test
  void aPleatThatReachesPastTheEndOfItsEdgeIsRefused() {
    InputException e =
        assertThrows(InputException.class, () -> pleated(List.of(-15.0), 20, List.of(true), 15));
    assertEquals(
        "what pleat 1 folds away reaches past the end of the edge. Fold it the other way, make it"
            + " narrower, or move it farther from the corner.",
        e.getMessage());
  }
}
