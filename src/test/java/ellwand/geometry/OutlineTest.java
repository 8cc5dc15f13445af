package ellwand.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class OutlineTest {

  private static final List<Point> CLOCKWISE =
      List.of(new Point(0, 0), new Point(0, 10), new Point(20, 10), new Point(20, 0));

  @Test
  void itIsAlwaysCounterClockwise() {
    assertEquals(200, Outline.of(CLOCKWISE).area());
    assertThrows(IllegalArgumentException.class, () -> new Outline(CLOCKWISE));
    Outline over = Outline.of(CLOCKWISE).moved(new Motion(true, 90, 5, 5));
    assertEquals(200, over.area(), 1e-9);
    assertEquals(new Box(5, 5, 15, 25), over.box());
  }

  @Test
  void repeatedPointsAreDropped() {
    Point p = new Point(0, 0);
    assertEquals(3, Outline.of(List.of(p, p, new Point(9, 0), new Point(0, 9), p)).points().size());
  }

  @Test
  void twoPointsEncloseNothing() {
    assertThrows(IllegalArgumentException.class, () -> Outline.of(CLOCKWISE.subList(0, 2)));
  }

  @Test
  void needlessPointsAreThoseOnTheWay() {
    Outline outline =
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(5, 0),
                new Point(10, 0),
                new Point(20, 0),
                new Point(20, 10),
                new Point(10, 10.5),
                new Point(0, 10)));
    assertEquals(5, outline.withoutNeedless(1e-6).points().size());
    assertEquals(4, outline.withoutNeedless(1).points().size());
  }

  @Test
  void distanceIsToTheLineNotToWhatItEncloses() {
    Outline square = Outline.of(new Box(0, 0, 10, 10));
    assertEquals(5, square.distance(new Point(5, 5)));
    assertEquals(5, square.distance(new Point(13, 14)));
    assertEquals(0, square.distance(new Point(10, 3)));
  }

  @Test
  void quarterTurnsAreExact() {
    for (int turn : new int[] {-90, 0, 90, 180, 270, 360, 450}) {
      Point p = new Motion(false, turn, 0, 0).apply(new Point(3, 7));
      assertEquals(Math.rint(p.x()), p.x());
      assertEquals(Math.rint(p.y()), p.y());
    }
    assertEquals(new Point(-7, 3), new Motion(false, 90, 0, 0).apply(new Point(3, 7)));
    assertEquals(new Point(7, 3), new Motion(true, 90, 0, 0).apply(new Point(3, 7)));
  }

  @Test
  void aBoxIsNotInsideOut() {
    assertThrows(IllegalArgumentException.class, () -> new Box(1, 0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Box(0, Double.NaN, 1, 1));
  }

  @Test
  void mirroredTwiceAPointIsBack() {
    Point a = new Point(1, 2);
    Point b = new Point(7, -3);
    Point p = new Point(4, 9);
    assertEquals(0, p.distance(p.mirrored(a, b).mirrored(a, b)), 1e-12);
    assertEquals(new Point(4, -9), p.mirrored(new Point(0, 0), new Point(1, 0)));
  }

  /** A square with a notch from above; ways along x from these places run through its corners. */
  @Test
  void aPlaceAtTheHeightOfACornerLiesInsideOrOutsideAllTheSame() {
    Outline notched =
        Outline.of(
            List.of(
                new Point(0, 0),
                new Point(8, 0),
                new Point(8, 4),
                new Point(4, 2),
                new Point(0, 4)));
    assertTrue(notched.contains(new Point(2, 2)));
    assertTrue(notched.contains(new Point(6, 2)));
    assertFalse(notched.contains(new Point(-1, 2)));
    assertFalse(notched.contains(new Point(-1, 0)));
    assertFalse(notched.contains(new Point(-1, 4)));
    assertFalse(notched.contains(new Point(4, 3)));
  }
}
