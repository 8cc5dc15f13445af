package ellwand.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.order.Spreading.Faces;
import ellwand.order.Spreading.PlyHeadings;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the ways of spreading ask of plies, garments and cloth; each garment takes a metre. */
class SpreadingTest {

  private static final Spreading HALF_SETS = spreading(Faces.FACE_TO_FACE, true, false);
  private static final Spreading ONE_HANDED = spreading(Faces.FACE_TO_FACE, false, true);
  private static final Spreading FOLDED = spreading(Faces.FOLDED, false, false);

  private static Spreading spreading(Faces faces, boolean halfSets, boolean oneHanded) {
    return new Spreading(faces, PlyHeadings.ONE_WAY, Direction.ANY_WAY, halfSets, oneHanded);
  }

  private static CutOrderPlan plan(String sizes, Tolerance tolerance, Spreading spreading) {
    return Orders.plan(Orders.spread(20, 2, sizes, tolerance, spreading));
  }

  @Test
  void wholeSetsWithoutOneHandedPiecesMayHaveOddPlies() {
    CutOrderPlan plan = plan("10=7", Tolerance.NONE, spreading(Faces.FACE_TO_FACE, false, false));
    assertEquals(7000, plan.clothMm());
    assertEquals(7, plan.cut("red", "10"));
  }

  @Test
  void twoPliesOfHalfSetsMakeAGarment() {
    CutOrderPlan plan = plan("10=7", Tolerance.NONE, HALF_SETS);
    assertEquals(7, plan.cut("red", "10"));
    assertEquals(14_000, plan.clothMm());
    assertEvenPlies(plan);
  }

  @Test
  void aFoldedPlyIsTwoLayersOfOneLength() {
    CutOrderPlan plan = plan("10=7", Tolerance.NONE, FOLDED);
    assertEquals(7, plan.cut("red", "10"));
    assertEquals(7000, plan.clothMm());
    assertEvenPlies(plan);
  }

  @Test
  void theFoldCountsTwiceAgainstThePlyLimit() {
    // 20 garments, 2 a marker: 10 folds, which are 20 plies: one lay, and 22 garments need two.
    assertEquals(1, plan("10=20", Tolerance.NONE, FOLDED).lays().size());
    assertEquals(2, plan("10=22", Tolerance.NONE, FOLDED).lays().size());
  }

  @Test
  void oneHandedPiecesFaceToFaceComeInEvenNumbers() {
    CutOrderPlan plan = plan("10=8, 12=4", Tolerance.NONE, ONE_HANDED);
    assertEquals(Map.of("10", 8, "12", 4), plan.cut().get("red"));
    assertEquals(List.of(), plan.misses());
    assertEvenPlies(plan);
  }

  @Test
  void anOddNumberThatNeedsBeEvenIsMissedByOne() {
    CutOrderPlan plan = plan("10=8, 12=5", Tolerance.NONE, ONE_HANDED);
    assertEquals(1, plan.misses().size());
    assertEquals(
        "colour red, size 12: 5 wanted, 6 cut: this spreading cuts every size in even numbers;"
            + " allow a garment over or under, or spread with all faces up",
        plan.misses().get(0).toString());
    assertEquals(Map.of("10", 8, "12", 6), plan.cut().get("red"));
    assertFalse(plan.proved());
  }

  @Test
  void aGarmentUnderMakesTheOddNumberEven() {
    CutOrderPlan plan = plan("10=8, 12=5", new Tolerance(0, 1), ONE_HANDED);
    assertEquals(List.of(), plan.misses());
    assertEquals(4, plan.cut("red", "12"));
  }

  private static void assertEvenPlies(CutOrderPlan plan) {
    for (PlannedLay lay : plan.lays()) {
      lay.plies().forEach((colour, plies) -> assertTrue(plies % 2 == 0, lay.toString()));
    }
  }
}
