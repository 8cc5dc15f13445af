package ellwand.cutting;

import static ellwand.cutting.Drawn.cutting;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Corners between unequal allowances, and turned-back hems, worked by hand in plane geometry. The
 * source is the definition itself: a cutting line runs its own allowance outside its sewing line,
 * two lines meet where they cross, and what is folded back lies as in a mirror. A line through (a,
 * b) at right angles to (n, m), of length l, moved out by w, is n (x - a) + m (y - b) = w l.
 */
class CornersByHandTest {

  private static final double EXACT = 1e-6;

  /**
   * A skirt side that leans out by 5 in 12, with a hem of 20 at its foot and a casing of 10 at its
   * top; the side itself has 6, the other side 15.
   */
  @Test
  void aHemMeetsALeaningSideOfLessAllowance() {
    Piece piece = Drawn.polygon(new double[] {20, 6, 10, 15}, 0, 0, 600, 0, 700, 240, 0, 240);
    // The side runs (100, 240), that is 5 : 12, so (12, -5) points out of it, and is 13 long.
    // Moved out by 6: 12 (x - 600) - 5 y = 78.
    // The hem moved out by 20: y = -20, so 12 (x - 600) = 78 - 100, x = 600 - 22 / 12.
    double foot = 600 - 22 / 12.0;
    // The casing moved out by 10: y = 250, so 12 (x - 600) = 78 + 1250, x = 600 + 1328 / 12.
    double top = 600 + 1328 / 12.0;
    Same.points(cutting(piece), -15, -20, foot, -20, top, 250, -15, 250);
  }

  /** A neckline's inner corner, sharper than square, with 12 on one side and 26 on the other. */
  @Test
  void unequalAllowancesMeetInAnInnerCornerThatIsNotSquare() {
    Piece piece =
        Drawn.polygon(
            new double[] {0, 0, 12, 26, 0, 0}, 0, 0, 400, 0, 400, 300, 160, 120, 55, 372, 0, 372);
    // From (400, 300) to (160, 120) the edge runs -4 : -3; (-3, 4), 5 long, points out.
    // Moved out by 12: -3 u + 4 v = 60, where u = x - 160 and v = y - 120.
    // From (160, 120) to (55, 372) it runs -5 : 12; (12, 5), 13 long, points out.
    // Moved out by 26: 12 u + 5 v = 338.
    // Four times the first and the second: 21 v = 578; then u = (4 v - 60) / 3.
    double v = 578 / 21.0;
    double u = (4 * v - 60) / 3;
    assertCorner(cutting(piece), new Point(160 + u, 120 + v));
  }

  /** The outer angle of a lapel: 10 along the front, 4 along the top, an angle of 3 : 4. */
  @Test
  void unequalAllowancesMeetAtASharpPoint() {
    Piece piece = Drawn.polygon(new double[] {10, 4, 0}, 0, 0, 300, 0, 0, 225);
    // The top runs from (300, 0) to (0, 225), -4 : 3; (3, 4), 5 long, points out.
    // Moved out by 4: 3 (x - 300) + 4 y = 20. The front moved out by 10: y = -10.
    // So 3 (x - 300) = 60. The point lies hypot(20, 10) = 22.4 from the corner, less than 3 x 10.
    assertCorner(cutting(piece), new Point(320, -10));
  }

  /**
   * A flared panel whose hem runs uphill, 3 : 4, so that nothing is level. Worked along the hem: s
   * from its first corner, t into the piece; then turned by 3 : 4.
   */
  @Test
  void aSlantingHemIsTurnedBackBetweenSidesOfUnequalAllowance() {
    // In s and t: hem (0, 0) to (500, 0), allowance 40; side to (450, 250), 10; top without any;
    // other side from (100, 250) back to (0, 0), 15.
    Piece piece =
        Drawn.from(x(0, 0), y(0, 0))
            .hem(x(500, 0), y(500, 0), 40)
            .line(x(450, 250), y(450, 250), 10)
            .line(x(100, 250), y(100, 250), 0)
            .line(0, 0, 15)
            .piece();
    // Step 1. The first side runs -1 : 5, so along the hem its allowance of 10 measures
    // 10 root(26) / 5. The other runs -2 : -5: 15 root(29) / 5.
    double near = 2 * Math.sqrt(26);
    double far = 3 * Math.sqrt(29);
    // Step 2. At the height t of the piece the sides' cutting lines lie at s = 500 + near - t / 5
    // and s = -far + 2 t / 5: at the hem 500 + near and -far, at the top 450 + near and 100 - far.
    // Step 3. Folded back along t = 0 the hem's edge, t = -40, comes to lie on t = 40. There the
    // sides' cutting lines are at 492 + near and 16 - far; so far must the edge of the hem reach.
    double[] st = {
      16 - far, -40, 492 + near, -40, 500 + near, 0, 450 + near, 250, 100 - far, 250, -far, 0
    };
    double[] xy = new double[st.length];
    for (int i = 0; i < st.length; i += 2) {
      xy[i] = x(st[i], st[i + 1]);
      xy[i + 1] = y(st[i], st[i + 1]);
    }
    Outline cut = cutting(piece);
    Same.points(cut, xy);
    // Step 4, as on the table: folded back, the hem's two corners lie on the sides' cutting lines.
    for (double s : List.of(16 - far, 492 + near)) {
      assertEquals(0, cut.distance(new Point(x(s, 40), y(s, 40))), EXACT);
    }
  }

  /** A sleeve that narrows to the wrist: its hem must widen again, beyond the wrist's own width. */
  @Test
  void aHemAtANarrowEndIsCutWiderThanTheEnd() {
    // Wrist 200 wide, sides leaning out by 1 in 10, no allowance but the hem's 30.
    Piece sleeve =
        Drawn.from(0, 0).line(400, -40, 0).line(400, 240, 0).line(0, 200, 0).hem(0, 0, 30).piece();
    // Folded back 30 the sleeve is 2 x 30 / 10 = 6 wider than at the wrist.
    Same.points(cutting(sleeve), 0, 0, 400, -40, 400, 240, 0, 200, -30, 203, -30, -3);
  }

  private static double x(double s, double t) {
    return 0.6 * s - 0.8 * t;
  }

  private static double y(double s, double t) {
    return 0.8 * s + 0.6 * t;
  }

  private static void assertCorner(Outline cut, Point corner) {
    assertTrue(
        cut.points().stream().anyMatch(p -> p.distance(corner) < EXACT),
        () -> corner + " is not among " + cut.points());
  }
}
