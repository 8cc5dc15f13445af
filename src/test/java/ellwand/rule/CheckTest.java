package ellwand.rule;

import static ellwand.rule.Trial.added;
import static ellwand.rule.Trial.broken;
import static ellwand.rule.Trial.changed;
import static ellwand.rule.Trial.copy;
import static ellwand.rule.Trial.dropped;
import static ellwand.rule.Trial.formed;
import static ellwand.rule.Trial.headed;
import static ellwand.rule.Trial.named;
import static ellwand.rule.Trial.posed;
import static ellwand.rule.Trial.redrawn;
import static ellwand.rule.Trial.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Grain;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CheckTest {

  private final Marker open = LegalMarkers.open(Direction.ANY_WAY);
  private final Marker folded = LegalMarkers.folded(Direction.ANY_WAY);

  @Test
  void legalMarkersBreakNothing() {
    for (Direction direction : Direction.values()) {
      assertEquals(List.of(), told(LegalMarkers.open(direction)));
      assertEquals(List.of(), told(LegalMarkers.folded(direction)));
    }
  }

  @Test
  void rulesHaveNamesOfTheirOwn() {
    List<String> ids = Rules.HARD.stream().map(Rule::id).toList();
    assertEquals(ids.size(), ids.stream().distinct().count());
    assertTrue(Rules.HARD.stream().allMatch(Rule::hard));
  }

  // Counts

  @Test
  void droppedCopyIsMissed() {
    for (int i = 0; i < open.copies().size(); i++) {
      assertEquals(List.of("count"), broken(dropped(open, i)));
    }
    for (int i = 0; i < folded.copies().size(); i++) {
      assertEquals(List.of("count"), broken(dropped(folded, i)));
    }
    assertEquals(
        List.of("There are too few of sleeve: 2 pieces are wanted, the marker cuts 0."),
        told(dropped(folded, 1)));
    assertEquals(2, Check.of(dropped(folded, 1)).get(0).amount());
  }

  @Test
  void doubledCopyIsTooMuch() {
    Copy another = copy(LegalMarkers.YOKE, Form.WHOLE, "open", false, 0, 600, 300);
    assertEquals(
        List.of("There are too many of yoke: 2 pieces are wanted, the marker cuts 3."),
        told(added(open, another)));
    assertEquals(List.of("count", "overlap"), broken(added(open, open.copies().get(0))));
  }

  @Test
  void aPairDeliversTwoOfASymmetricPiece() {
    Marker marker = changed(dropped(folded, 4), 3, formed(Form.PAIR));
    assertEquals(List.of(), told(marker));
  }

  @Test
  void anotherGarmentsCopyIsNotWanted() {
    assertEquals(List.of("count"), broken(changed(open, 0, named("back", "110", 2))));
    assertTrue(
        told(changed(open, 0, named("back", "110", 2)))
            .contains(
                "The marker has back (size 110, garment 2), which the job does not ask for."));
    assertEquals(List.of("count"), broken(changed(open, 0, named("back", "116", 1))));
    assertEquals(List.of("count"), broken(changed(open, 0, named("cuff", "110", 1))));
    assertEquals(List.of("count"), broken(changed(open, 0, named("back", "110", -7))));
  }

  // Hand

  private static Marker turnedOver(Marker marker, int index, CutPiece cut) {
    Copy old = marker.copies().get(index);
    return changed(
        marker,
        index,
        c ->
            copy(
                cut,
                c.form(),
                c.zone(),
                !old.motion().flipped(),
                old.motion().turnDegrees(),
                old.outline().box().minX(),
                old.outline().box().minY()));
  }

  @Test
  void turnedOverInASingleZoneHasTheWrongHand() {
    assertEquals(List.of("hand"), broken(turnedOver(open, 3, LegalMarkers.FRONT)));
    assertEquals(
        List.of(
            "Front has the wrong hand near x = 45.0 cm: it is wanted as drawn, not turned over."),
        told(turnedOver(open, 3, LegalMarkers.FRONT)));
    assertEquals(List.of("hand"), broken(turnedOver(open, 1, LegalMarkers.SLEEVE)));
    assertEquals(List.of("hand"), broken(turnedOver(open, 2, LegalMarkers.SLEEVE)));
  }

  @Test
  void aPieceThatIsItsOwnMirrorImageHasNoHand() {
    assertEquals(List.of(), told(turnedOver(open, 0, LegalMarkers.BACK)));
    assertEquals(List.of(), told(turnedOver(open, 4, LegalMarkers.YOKE)));
  }

  @Test
  void handIsFreeInADoubleZone() {
    assertEquals(List.of(), told(turnedOver(folded, 1, LegalMarkers.SLEEVE)));
    assertEquals(List.of(), told(turnedOver(folded, 2, LegalMarkers.FRONT)));
  }

  @Test
  void twoOfTheSameHandAreNotAPair() {
    CutPiece front = Trial.sloped("front", "2", 300, 200);
    Lay lay = Trial.lay(Trial.cloth(1000, 0, Direction.ANY_WAY, Fold.LENGTHWISE), front);
    Marker pair = Trial.folded(lay, 300, 300, copy(front, Form.PAIR, "folded", false, 0, 0, 0));
    assertEquals(List.of("hand"), broken(pair));
    Marker twice =
        Trial.folded(
            lay,
            300,
            300,
            copy(front, Form.WHOLE, "folded", false, 0, 0, 0),
            copy(front, Form.WHOLE, "folded", true, 0, 0, 200));
    assertEquals(List.of(), told(twice));
  }

  /** Every corner of its mirror image lies on its line, and yet the two are not alike. */
  @Test
  void twoOfAUAreNoPair() {
    CutPiece u =
        Trial.piece(
            "facing",
            Grain.ALONG,
            "2",
            Trial.points(0, 0, 200, 0, 200, 120, 140, 120, 140, 30, 30, 30, 30, 120, 0, 120));
    Lay lay = Trial.lay(Trial.cloth(600, 0, Direction.ANY_WAY, Fold.LENGTHWISE), u);
    Marker marker = Trial.folded(lay, 300, 300, copy(u, Form.PAIR, "folded", false, 0, 0, 0));
    assertEquals(List.of("hand"), broken(marker));
  }

  @Test
  void aPocketLineGivesAPieceAHand() {
    CutPiece plain = Trial.rectangle("front", "1", 300, 200);
    CutPiece pocketed =
        new CutPiece(
            plain.piece(),
            plain.cutting(),
            plain.sewing(),
            List.of(),
            List.of(new CutPiece.Drawn("pocket", Trial.points(50, 20, 90, 20))),
            plain.fold());
    assertTrue(plain.symmetric());
    assertTrue(!LegalMarkers.FRONT.symmetric());
    assertTrue(!pocketed.symmetric());
  }

  // Cutting line

  @Test
  void shrunkOutlineIsNotThePiece() {
    Marker marker =
        changed(
            open,
            4,
            redrawn(
                o -> {
                  Point low = new Point(600, 0);
                  return new Outline(
                      o.points().stream().map(p -> low.plus(p.minus(low).times(0.99))).toList());
                }));
    List<Finding> findings = Check.of(marker);
    assertEquals(List.of("cutting line"), broken(marker));
    // The far corner of 100 x 80 comes 1 % of its diagonal nearer.
    assertEquals(Math.hypot(1, 0.8), findings.get(0).amount(), 1e-9);
    assertEquals(
        "The outline of yoke is not its cutting line in the stated place:"
            + " it strays by 1.3 mm near x = 70.0 cm.",
        findings.get(0).sentence(Unit.CM));
  }

  @Test
  void editedPoseDoesNotFitItsOutline() {
    assertEquals(List.of("cutting line"), broken(changed(open, 3, posed(m -> m.shifted(1, 0)))));
    assertEquals(
        List.of("hand", "cutting line"),
        broken(changed(open, 3, posed(m -> new Motion(true, m.turnDegrees(), m.x(), m.y())))));
  }

  @Test
  void outlineMayBeginAnywhereAndBeRounded() {
    Marker marker =
        changed(
            open,
            3,
            redrawn(
                o -> {
                  List<Point> ring = new ArrayList<>(o.points());
                  ring.add(ring.remove(0));
                  return new Outline(
                      ring.stream().map(p -> p.plus(new Point(0.004, -0.004))).toList());
                }));
    assertEquals(List.of(), told(marker));
  }

  @Test
  void cornerOnTheLineIsNoChangeButAnotherOrderIs() {
    Outline square = Outline.of(Trial.points(0, 0, 100, 0, 100, 100, 0, 100));
    Outline more = Outline.of(Trial.points(0, 0, 50, 0, 100, 0, 100, 100, 0, 100));
    assertTrue(SameLine.between(square, more).same());
    Outline one = Outline.of(Trial.points(0, 0, 100, 0, 50, 50, 100, 100, 0, 100));
    Outline two = Outline.of(Trial.points(0, 0, 100, 0, 100, 100, 0, 100, 50, 50));
    assertTrue(!SameLine.between(one, two).same());
  }

  @Test
  void crossingOutlineIsToldNotThrown() {
    Marker marker =
        changed(
            open,
            3,
            redrawn(o -> new Outline(Trial.points(300, 0, 600, 0, 600, 200, 400, -50, 300, 200))));
    assertTrue(broken(marker).contains("cutting line"));
  }

  @Test
  void placesThatAreNoneAreToldNotThrown() {
    for (double mm : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 1e300}) {
      Marker marker = changed(open, 3, posed(m -> new Motion(false, mm, mm, mm)));
      assertTrue(broken(marker).contains("cutting line"));
      told(marker);
    }
    Outline far = Outline.of(Trial.points(0, 0, 1e9, 0, 1e9, 1e9));
    assertTrue(broken(changed(open, 3, redrawn(o -> far))).contains("cutting line"));
    assertTrue(broken(open.with(List.of())).contains("count"));
  }

  // Grain and heading

  @Test
  void turnOffTheGrainIsTold() {
    for (double turn : new double[] {90, 3, -0.5, 180.001}) {
      CutPiece yoke = LegalMarkers.YOKE;
      Marker marker = changed(open, 5, c -> copy(yoke, Form.WHOLE, "open", false, turn, 600, 300));
      assertEquals(List.of("grain"), broken(marker), "turn " + turn);
    }
    assertEquals(
        List.of(
            "Yoke lies 3.0 degrees off its grain near x = 65.2 cm; it wants its grain along"
                + " the warp."),
        told(
            changed(
                open, 5, c -> copy(LegalMarkers.YOKE, Form.WHOLE, "open", false, 3, 600, 300))));
  }

  @Test
  void turnsOnTheGrainAreKept() {
    for (Grain grain : Grain.NAMED) {
      CutPiece band = Trial.piece("band", grain, "1", Trial.points(0, 0, 200, 0, 200, 60, 0, 60));
      Lay lay = Trial.lay(Trial.cloth(1000, 0, Direction.ANY_WAY, Fold.OPEN), band);
      for (double turn : grain.turns(false)) {
        Marker marker =
            Trial.open(lay, 400, copy(band, Form.WHOLE, "open", false, turn - 360, 0, 0));
        assertEquals(List.of(), told(marker));
      }
    }
  }

  @Test
  void oneWayClothWantsOneHeading() {
    CutPiece yoke = LegalMarkers.YOKE;
    for (Direction direction : Direction.values()) {
      Marker marker =
          changed(
              LegalMarkers.open(direction),
              5,
              c -> copy(yoke, Form.WHOLE, "open", false, 180, 600, 80));
      assertEquals(direction == Direction.ANY_WAY ? List.of() : List.of("heading"), broken(marker));
    }
  }

  @Test
  void garmentsMayOpposeOnlyWhereTheClothSaysSo() {
    for (Direction direction : Direction.values()) {
      CutPiece yoke = LegalMarkers.YOKE;
      List<Wanted> wanted = new ArrayList<>(Trial.wanted(yoke, "110", 1));
      wanted.addAll(Trial.wanted(yoke, "110", 2));
      Lay lay = new Lay("tabard", Trial.cloth(1000, 0, direction, Fold.OPEN), wanted);
      Marker marker =
          Trial.open(
              lay,
              400,
              copy(yoke, "110", 1, Form.WHOLE, "open", false, 0, 0, 0),
              copy(yoke, "110", 1, Form.WHOLE, "open", false, 0, 0, 100),
              copy(yoke, "110", 2, Form.WHOLE, "open", false, 180, 0, 200),
              copy(yoke, "110", 2, Form.WHOLE, "open", false, 180, 0, 300));
      assertEquals(direction == Direction.ONE_WAY ? List.of("heading") : List.of(), broken(marker));
      assertEquals(direction == Direction.ONE_WAY ? 2 : 0, Check.of(marker).size());
    }
  }

  @Test
  void recordedHeadingMustBeTheRealOne() {
    assertEquals(List.of("heading"), broken(changed(open, 0, headed(Heading.DOWN))));
  }
}
