package ellwand.rule;

import static ellwand.rule.Trial.copy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Wish;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What markers of a few rectangles come to, worked out by hand. */
class SoftRulesTest {

  private static final CutPiece PANEL = Trial.rectangle("panel", "1", 200, 300);
  private static final CutPiece TAB = Trial.rectangle("tab", "1", 50, 40);

  /** Two garments, each a panel of 200 x 300 and a tab of 50 x 40, on cloth 600 wide. */
  private static Marker marker(double length, double... xy) {
    List<Wanted> wanted = new ArrayList<>();
    for (int garment = 1; garment <= 2; garment++) {
      wanted.addAll(Trial.wanted(PANEL, "110", garment));
      wanted.addAll(Trial.wanted(TAB, "110", garment));
    }
    Lay lay = new Lay("tabard", Trial.cloth(600, 0, Direction.ANY_WAY, Fold.OPEN), wanted);
    return Trial.open(
        lay,
        length,
        copy(PANEL, "110", 1, Form.WHOLE, "open", false, 0, xy[0], xy[1]),
        copy(TAB, "110", 1, Form.WHOLE, "open", false, 0, xy[2], xy[3]),
        copy(PANEL, "110", 2, Form.WHOLE, "open", false, 0, xy[4], xy[5]),
        copy(TAB, "110", 2, Form.WHOLE, "open", false, 0, xy[6], xy[7]));
  }

  private static final Marker TIDY = marker(450, 0, 0, 150, 300, 250, 0, 250, 300);
  private static final Marker ROUGH = marker(450, 0, 0, 400, 300, 250, 0, 0, 300);

  private static List<Finding> findings(Wish wish, Marker marker) {
    return Rules.SOFT.get(wish).findings(new Inspection(marker, Optional.empty()));
  }

  @Test
  void bothAreLegalForNoWishIsAHardRule() {
    assertEquals(List.of(), Check.of(TIDY));
    assertEquals(List.of(), Check.of(ROUGH));
    assertTrue(Rules.SOFT.values().stream().noneMatch(Rule::hard));
  }

  @Test
  void spreadIsTheMeanWayToTheMiddleOfTheGarment() {
    // Middles (100, 150) and (175, 320), and (350, 150) and (275, 320): half of what is between.
    assertEquals(Math.hypot(75, 170) / 2, Rules.amount(Wish.GARMENTS_TOGETHER, TIDY), 1e-9);
    // The tabs have changed places: (100, 150) and (425, 320), (350, 150) and (25, 320).
    assertEquals(Math.hypot(325, 170) / 2, Rules.amount(Wish.GARMENTS_TOGETHER, ROUGH), 1e-9);
  }

  @Test
  void aStraightCutPartsPiecesAndCutsNone() {
    // From 200 to 250 nothing lies: one cut, two stretches of 450.
    assertEquals(1, Handling.of(TIDY).straightCuts());
    assertEquals(List.of(225.0), Handling.of(TIDY).straightCutsAtMm());
    assertEquals(225, Rules.amount(Wish.STRAIGHT_CUTS, TIDY), 1e-9);
    Marker across = marker(450, 0, 0, 190, 300, 250, 0, 300, 300);
    assertEquals(1, Handling.of(across).straightCuts());
    Marker bridged = marker(450, 0, 0, 180, 300, 200, 0, 210, 340);
    assertEquals(0, Handling.of(bridged).straightCuts());
    assertEquals(400, Rules.amount(Wish.STRAIGHT_CUTS, bridged), 1e-9);
  }

  @Test
  void aCutMayRunAlongTwoCuttingLines() {
    assertEquals(1, Handling.of(marker(400, 0, 0, 150, 300, 200, 0, 200, 300)).straightCuts());
  }

  @Test
  void leftOverIsWhatIsOutsideTheLargestRectangle() {
    // 450 x 600 less two panels and two tabs; above the tabs 450 x 260 is free.
    Handling tidy = Handling.of(TIDY);
    assertEquals(450 * 260, tidy.largestLeftOverMm2(), 1);
    assertEquals(450 * 600 - 2 * 200 * 300 - 2 * 50 * 40 - 450 * 260, tidy.otherLeftOverMm2(), 1);
    assertEquals(tidy.otherLeftOverMm2(), Rules.amount(Wish.ONE_LEFT_OVER, TIDY), 1e-9);
    assertEquals(117.0 / 146, tidy.largestShare(), 1e-4);
  }

  @Test
  void smallPiecesNearAnEndAreNamed() {
    assertEquals(0, Rules.amount(Wish.SMALL_OFF_END, TIDY), 1e-9);
    List<Finding> findings = findings(Wish.SMALL_OFF_END, ROUGH);
    // One touches the beginning, the other the end.
    assertEquals(List.of(100.0, 100.0), findings.stream().map(Finding::amount).toList());
    assertEquals(
        "Tab (size 110, garment 1) lies less than 0.01 mm from an end near x = 42.5 cm.",
        findings.get(0).sentence(Unit.CM));
    Handling rough = Handling.of(ROUGH);
    assertEquals(2, rough.smallPieces());
    assertEquals(2, rough.smallNearEnd());
    assertEquals(150, Handling.of(TIDY).smallOffEndMm(), 1e-9);
  }

  @Test
  void findingsSayWhatACutterWouldSee() {
    assertEquals(
        "1 straight cut across: stretches of 22.5 cm on average.",
        findings(Wish.STRAIGHT_CUTS, TIDY).get(0).sentence(Unit.CM));
    assertEquals(
        "Pieces lie 9.3 cm from the middle of their garment on average.",
        findings(Wish.GARMENTS_TOGETHER, TIDY).get(0).sentence(Unit.CM));
    assertFalse(findings(Wish.ONE_LEFT_OVER, TIDY).get(0).sentence(Unit.CM).isEmpty());
  }
}
