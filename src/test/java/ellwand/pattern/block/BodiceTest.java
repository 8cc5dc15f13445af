package ellwand.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.pattern.Edge;
import ellwand.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

class BodiceTest {

  private static final double INCH = 25.4;

  /**
   * The example of moonlightpatterns.com, 'Drafting children's bodice block', 18 to 24 months, cm:
   * half the back 10.9 with 1 of ease, the armhole 7.6 with 1, so the back is 2 x 9.9 and the
   * chest, which is not told, 2 x (2 x 9.9 + 6.6). Neck width 4.9 = neck / 6 + 0.5.
   */
  private static final double CHEST = 2 * (2 * 9.9 + 6.6);

  private static final Drafted EXAMPLE =
      new Drafted()
          .of("chest", CHEST)
          .of("back width", 2 * 9.9)
          .of("neck", 26.4)
          .of("armhole depth", 12.4)
          .of("back waist", 23)
          .with("front", new Bodice(Side.FRONT))
          .with("back", new Bodice(Side.BACK));

  private static Point back(String point) {
    return EXAMPLE.point("back", point);
  }

  private static Point front(String point) {
    return EXAMPLE.point("front", point);
  }

  /** Across from the centre, where an edge comes nearest to it. */
  private static double narrowestMm(String piece, String edge) {
    return Box.around(EXAMPLE.piece(piece).edge(edge).line().flattened(0.01)).minY();
  }

  /** All lengths as the example tells them, within 0.5 mm. */
  @Test
  void measuresBackAsItsMethodsExample() {
    double within = 0.5;
    Point nape = back("neck centre");
    assertEquals(124, nape.x() - back("underarm").x(), within, "nape to armhole line");
    assertEquals(230, nape.x() - back("waist centre").x(), within, "nape to waist");
    assertEquals(109, narrowestMm("back", "armhole"), within, "half the back width");
    double half = back("underarm").y() + front("underarm").y();
    assertEquals(294, half, within, "half the bodice");
    assertEquals(60, 2 * half - 10 * CHEST, within, "ease round the chest");
    assertEquals(
        38,
        back("underarm").y() - narrowestMm("back", "armhole"),
        within,
        "half the armhole's 7.6");
    assertEquals(back("underarm").y(), front("underarm").y(), within, "front width = back width");
    assertEquals(10, back("waist centre").x() - front("waist centre").x(), within, "front longer");
    assertEquals(49, back("neck").y(), within, "neck width");
    assertEquals(49, front("neck").y(), within, "neck width");
    assertEquals(49, front("neck").x() - front("neck centre").x(), within, "front neck depth");
    assertEquals(15, back("neck").x() - nape.x(), within, "back neck rise");
  }

  /**
   * artvani-vani.blogspot.com, 9sewing.blogspot.com and frillsandflares.blogspot.com where they
   * speak of the same lengths. They are other methods, so near is enough.
   */
  @Test
  void comesNearToOtherMethodsWhereTheyOverlap() {
    double chest = 10 * CHEST;
    assertEquals(chest / 8 + 2.5 * INCH, 124, 6, "armhole depth");
    assertEquals(chest / 12 + INCH / 4, back("neck").y(), 2, "neck width by the chest");
    assertEquals(264 / 6.0 + 5, back("neck").y(), 1e-9, "neck width by the neck");
    double drop = back("neck").x() - back("shoulder tip").x();
    assertTrue(drop >= 20 && drop <= 25, "shoulder drop 2 to 2.5 cm");
    assertEquals(INCH, drop, 0.5, "shoulder drop 1 in");
    double quarter = back("underarm").y();
    assertTrue(quarter > chest / 4 + 0.75 * INCH / 2, "more ease than a half of 3/4 in a quarter");
    assertTrue(quarter < chest / 4 + 1.5 * INCH, "less than 1 1/2 in a quarter");
    assertTrue(quarter >= (chest / 2 + 20) / 2, "no less than half the chest and 2 cm");
    double halfWayDown = (back("shoulder tip").x() + back("underarm").x()) / 2;
    assertEquals(halfWayDown, narrowest("back").x(), 0.5, "narrowest half way down the armhole");
    assertEquals(
        INCH / 2,
        narrowest("back").y() - narrowest("front").y(),
        0.5,
        "the front 1/2 in further in");
  }

  private static Point narrowest(String piece) {
    List<Point> line = EXAMPLE.piece(piece).edge("armhole").line().flattened(0.001);
    return line.stream().min((p, q) -> Double.compare(p.y(), q.y())).orElseThrow();
  }

  /** Our own check: a neckline that comes to the neck it is drafted for, before any ease. */
  @Test
  void theNecklineComesToTheNeck() {
    double half = EXAMPLE.lengthMm("front", "neckline") + EXAMPLE.lengthMm("back", "neckline");
    assertEquals(264, 2 * half, 8);
  }

  /**
   * Sewn at the shoulder, neckline and armhole run on without a corner, and both folds are met
   * squarely.
   */
  @Test
  void linesRunOnAcrossItsSeams() {
    Piece front = EXAMPLE.piece("front");
    Piece back = EXAMPLE.piece("back");
    assertEquals(
        180, corner(front, "shoulder", "neckline") + corner(back, "shoulder", "neckline"), 0.1);
    assertEquals(
        180, corner(front, "armhole", "shoulder") + corner(back, "armhole", "shoulder"), 0.1);
    assertEquals(
        180, corner(front, "side seam", "armhole") + corner(back, "side seam", "armhole"), 0.1);
    assertEquals(
        180, corner(front, "waist", "side seam") + corner(back, "waist", "side seam"), 0.1);
    for (Piece piece : List.of(front, back)) {
      String centre = "centre " + piece.name();
      assertEquals(90, corner(piece, "neckline", centre), 0.1);
      assertEquals(90, corner(piece, centre, "waist"), 0.1);
    }
  }

  /** The angle between two edges that meet, inside the piece, degrees. */
  private static double corner(Piece piece, String one, String other) {
    Edge a = piece.edge(one);
    Edge b = piece.edge(other);
    boolean inOrder = a.line().end().distance(b.line().start()) < 1e-6;
    Point in = (inOrder ? a : b).line().endDirection();
    Point out = (inOrder ? b : a).line().startDirection();
    return 180 - Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
  }
}
