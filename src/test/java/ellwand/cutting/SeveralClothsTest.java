package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Allowance;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** One piece that is cut otherwise in each of its cloths; 400 long, half of it 150 wide. */
class SeveralClothsTest {

  private static final Allowance USUAL = Allowance.byCloth(Map.of("wool", 15.0, "lining", 10.0));

  private static Piece skirt(Allowance hem, Allowance centre, String wool, String lining) {
    Point a = new Point(0, 0);
    Point b = new Point(400, 0);
    Point c = new Point(400, 150);
    Point d = new Point(0, 150);
    return new Piece(
        "back",
        List.of(
            new Edge("centre back", Path.line(a, b), centre, false),
            new Edge("waist", Path.line(b, c), USUAL, false),
            new Edge("side", Path.line(c, d), USUAL, false),
            new Edge("hem", Path.line(d, a), hem, false)),
        Optional.of("centre back"),
        Grain.ALONG,
        List.of(new Notch("centre back", 220, 1, 3)),
        List.of(),
        List.of(Cut.parse("wool", wool), Cut.parse("lining", lining)));
  }

  private static final Piece BACK =
      skirt(
          Allowance.byCloth(Map.of("wool", 40.0, "lining", 20.0)),
          Allowance.of(30),
          "pair",
          "1 on fold");

  @Test
  void aPairHasASeamWhereTheLiningLiesOnTheFold() {
    CutPiece wool = Cutter.cut(BACK.inCloth("wool"), 1, 1);
    assertEquals(new Box(-40, -30, 415, 165), wool.cutting().box());
    assertEquals(Optional.empty(), wool.fold());
    assertEquals(1, wool.notches().size());
    CutPiece lining = Cutter.cut(BACK.inCloth("lining"), 1, 1);
    assertEquals(new Box(-20, 0, 410, 160), lining.cutting().box());
    assertEquals(430, lining.fold().get().from().distance(lining.fold().get().to()), 1e-9);
    // Nobody snips into a fold.
    assertEquals(List.of(), lining.notches());
    assertEquals(new Box(-20, -160, 410, 160), lining.opened().cutting().box());
  }

  @Test
  void eachClothKnowsItsOwnCutOnly() {
    assertEquals("pair", BACK.inCloth("wool").cuts().get(0).toString());
    assertEquals(1, BACK.inCloth("wool").cuts().size());
    assertFalse(BACK.inCloth("wool").sameForm(BACK.inCloth("lining")));
    Piece lining = BACK.inCloth("lining");
    assertTrue(lining.sameForm(lining.cut(List.of(Cut.parse("felt", "2 on fold")))));
  }

  @Property(tries = 200)
  void everyAllowanceIsThatOfItsCloth(
      @ForAll @IntRange(min = 0, max = 60) int wool,
      @ForAll @IntRange(min = 0, max = 60) int lining,
      @ForAll @IntRange(min = 0, max = 60) int centre) {
    Allowance hem = Allowance.byCloth(Map.of("wool", (double) wool)).or(Allowance.of(lining));
    Piece piece = skirt(hem, Allowance.of(Math.max(3, centre)), "2 pairs", "1 on fold");
    for (Piece in : piece.inCloths()) {
      boolean folded = in.cuts().get(0).how() == Cut.How.FOLD;
      Box box = Cutter.cut(in, 1, 1).cutting().box();
      double usual = folded ? 10 : 15;
      double area =
          (400 + usual + (folded ? lining : wool))
              * (150 + usual + (folded ? 0 : Math.max(3, centre)));
      assertEquals(area, box.length() * box.width(), 1e-6);
    }
  }

  @Test
  void aHalfIsNoSinglePiece() {
    InputException e =
        assertThrows(InputException.class, () -> skirt(USUAL, Allowance.of(30), "2", "1 on fold"));
    assertEquals(
        "it is a half piece, of which wool would have one side only", e.problems().get(0).what());
  }

  @Test
  void nothingMayBeLeftUnsaid() {
    InputException e =
        assertThrows(
            InputException.class,
            () ->
                skirt(
                    Allowance.byCloth(Map.of("wool", 40.0)),
                    Allowance.of(30),
                    "pair",
                    "1 on fold"));
    assertEquals(
        List.of("it is not said how wide its allowance is in lining"),
        e.problems().stream().map(p -> p.what()).toList());
    assertEquals(Optional.of("hem"), e.problems().get(0).edge());
  }
}
