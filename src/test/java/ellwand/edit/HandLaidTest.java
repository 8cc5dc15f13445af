package ellwand.edit;

import static ellwand.rule.Trial.copy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.LegalMarkers;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HandLaidTest {

  private static final CutPiece FRONT = Trial.rectangle("front", "1", 200, 100);
  private static final CutPiece BACK = Trial.rectangle("back", "1", 200, 100);
  private static final CutPiece TAB = Trial.rectangle("tab", "1", 50, 40);

  /** Front at the cut end, back 300 on, tab between them, none touching; 400 wide. */
  private static HandLaid three(double gap) {
    Lay lay = Trial.lay(Trial.cloth(400, gap, Direction.ANY_WAY, Fold.OPEN), FRONT, BACK, TAB);
    return HandLaid.of(
        Trial.open(
            lay,
            1000,
            copy(FRONT, Form.WHOLE, "open", false, 0, 0, 0),
            copy(BACK, Form.WHOLE, "open", false, 0, 300, 0),
            copy(TAB, Form.WHOLE, "open", false, 0, 225, 20)));
  }

  private static Box box(HandLaid laid, int copy) {
    return laid.marker().copies().get(copy).outline().box();
  }

  private static List<String> told(HandLaid laid) {
    return laid.findings().stream().map(f -> f.sentence(Unit.MM)).toList();
  }

  @Test
  void aMoveTellsWhatItBreaksAndTheNextStepThatItIsMended() {
    HandLaid over = three(0).move(Set.of(2), -50, 0);
    assertEquals(List.of("Front overlaps tab by 25.0 mm near x = 188 mm."), told(over));
    assertEquals(List.of(0, 2), over.findings().get(0).copies());
    assertEquals(List.of(), told(over.move(Set.of(2), 0, 150)));
  }

  @Test
  void aStepLeavesTheMarkerBeforeItAsItWas() {
    HandLaid before = three(0);
    Marker marker = before.marker();
    before.move(Set.of(0), 500, 0);
    assertSame(marker, before.marker());
    assertEquals(0, box(before, 0).minX());
  }

  @Test
  void whatWasMovedByHandIsNoSearchsAnyMore() {
    assertTrue(three(0).marker().search().isPresent());
    assertEquals(Optional.empty(), three(0).move(Set.of(0), 0, 50).marker().search());
  }

  @Test
  void aDragSlidesToContactAndKeepsTheGap() {
    assertEquals(250, box(three(0).slide(Set.of(2), 60, 0), 2).minX(), 1e-4);
    assertEquals(245, box(three(5).slide(Set.of(2), 60, 0), 2).minX(), 1e-4);
    assertEquals(List.of(), told(three(5).slide(Set.of(2), 60, 0)));
  }

  @Test
  void aDragLiftsACopyOverWhatLiesBetween() {
    HandLaid far = three(5).slide(Set.of(2), -400, 130);
    assertEquals(List.of(), told(far));
    HandLaid beyond = three(5).slide(Set.of(2), 350, 0);
    assertEquals(575, box(beyond, 2).minX(), 1e-9);
    assertEquals(625, beyond.marker().lengthMm(), 1e-9);
  }

  @Test
  void aDragEndsAtTheEdgeOfTheClothButBoughtClothGrows() {
    HandLaid down = three(0).slide(Set.of(2), 0, -90);
    assertEquals(0, box(down, 2).minY(), 1e-4);
    HandLaid on = three(0).slide(Set.of(1), 5000, 0);
    assertEquals(5500, on.marker().lengthMm(), 1e-9);
    assertEquals(5500, on.marker().zones().get(0).box().maxX(), 1e-9);
    assertEquals(List.of(), told(on));
  }

  @Test
  void aCopyWithNowhereToGoStays() {
    HandLaid laid = three(0);
    HandLaid touching = laid.slide(Set.of(2), 60, 0);
    assertEquals(box(touching, 2).minX(), box(touching.slide(Set.of(2), 30, 0), 2).minX(), 1e-4);
  }

  @Test
  void aDragKeepsOffFlaws() {
    Flaw hole = Flaw.round("hole", new Point(250, 210), 20);
    Lay lay =
        Trial.lay(Trial.cloth(400, 0, Direction.ANY_WAY, Fold.OPEN).flawed(List.of(hole)), TAB);
    HandLaid laid =
        HandLaid.of(Trial.open(lay, 600, copy(TAB, Form.WHOLE, "open", false, 0, 225, 20)));
    // The hole begins 200 - 20 - 10 mm from the first cuttable line.
    HandLaid up = laid.slide(Set.of(0), 0, 160);
    assertEquals(box(up, 0).maxY(), up.marker().keepOuts().get(0).outline().box().minY(), 0.1);
    assertTrue(box(up, 0).minY() > 20);
    assertEquals(List.of(), told(up));
  }

  @Test
  void aHalfOnTheFoldSlidesAlongIt() {
    HandLaid laid = HandLaid.of(LegalMarkers.folded(Direction.ANY_WAY)).move(Set.of(0), 0, 0);
    HandLaid on = laid.move(Set.of(2), 0, 150).slide(Set.of(0), 250, 70);
    assertEquals(0, box(on, 0).minY(), 1e-9);
    assertEquals(250, box(on, 0).minX(), 1e-9, told(on).toString());
  }

  @Test
  void aTurnedCopyIsTurnedWhereItLiesAndToldIfItsGrainForbidsIt() {
    HandLaid turned = three(0).turn(Set.of(2), 90);
    assertEquals(new Point(250, 40), box(turned, 2).centre());
    assertEquals(40, box(turned, 2).length(), 1e-9);
    assertEquals(List.of("grain"), turned.findings().stream().map(f -> f.rule().id()).toList());
    assertEquals(List.of(), told(three(0).turn(Set.of(2), 180)));
    assertEquals(
        three(0).marker().copies(),
        three(0).turn(Set.of(2), 180).turn(Set.of(2), 180).marker().copies());
  }

  @Test
  void exchangedCopiesLieMiddleOnMiddle() {
    HandLaid exchanged = three(0).exchange(Set.of(0), Set.of(1));
    assertEquals(List.of(), told(exchanged));
    assertEquals(300, box(exchanged, 0).minX(), 1e-9);
    assertEquals(0, box(exchanged, 1).minX(), 1e-9);
    assertEquals(
        List.of(new Point(250, 40), new Point(100, 50)),
        List.of(
            box(three(0).exchange(Set.of(0), Set.of(2)), 0).centre(),
            box(three(0).exchange(Set.of(0), Set.of(2)), 2).centre()));
  }

  @Test
  void anotherZoneIsTheOneUnderTheMiddle() {
    HandLaid laid = HandLaid.of(LegalMarkers.folded(Direction.ANY_WAY));
    HandLaid moved = laid.move(Set.of(3), 120, 0);
    assertEquals("opened", moved.marker().copies().get(3).zone());
    assertEquals(Check.of(moved.marker()).size(), moved.findings().size());
  }

  @Test
  void groupsChangePlacesAsTheyLie() {
    HandLaid exchanged = three(0).exchange(Set.of(0, 2), Set.of(1));
    assertEquals(new Point(137.5, 50), box(exchanged, 1).centre());
    assertEquals(262.5, box(exchanged, 0).minX(), 1e-9);
    assertEquals(225, box(exchanged, 2).minX() - box(exchanged, 0).minX(), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> three(0).exchange(Set.of(0), Set.of(0, 1)));
  }

  @Test
  void aGroupTurnsAboutItsMiddle() {
    HandLaid turned = three(0).turn(Set.of(0, 1), 180);
    assertEquals(300, box(turned, 0).minX(), 1e-9);
    assertEquals(0, box(turned, 1).minX(), 1e-9);
  }

  @Test
  void whatIsPinnedIsMovedByNobody() {
    HandLaid pinned = three(0).pin(Set.of(1)).move(Set.of(0), 0, 150);
    assertEquals(Set.of(1), pinned.pinned());
    assertThrows(IllegalArgumentException.class, () -> pinned.move(Set.of(0, 1), 10, 0));
    assertThrows(IllegalArgumentException.class, () -> pinned.exchange(Set.of(0), Set.of(1)));
    assertThrows(IllegalArgumentException.class, () -> pinned.turn(Set.of(1), 180));
    HandLaid free = pinned.unpin(Set.of(1)).move(Set.of(1), 10, 0);
    assertEquals(310, box(free, 1).minX(), 1e-9);
    assertThrows(IndexOutOfBoundsException.class, () -> free.pin(Set.of(3)));
  }
}
