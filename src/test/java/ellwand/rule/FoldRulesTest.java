package ellwand.rule;

import static ellwand.rule.Trial.copy;
import static ellwand.rule.Trial.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each fold kept, and each broken in one way. */
class FoldRulesTest {

  private static final CutPiece BACK = Trial.rectangle("back", "1 on fold", 300, 150);
  private static final CutPiece COLLAR = Trial.rectangle("collar", "2 on fold", 100, 80);
  private static final CutPiece FRONT = Trial.rectangle("front", "1", 300, 500);

  /** 1000 mm between selvedges of 10 mm. */
  private static Lay lay(Direction direction, Fold fold, CutPiece... pieces) {
    return Trial.lay(Trial.cloth(1000, 0, direction, fold), pieces);
  }

  private static Marker laid(Lay lay, Fold fold, double border, Copy... copies) {
    List<Zone> zones = new ArrayList<>();
    LaidCloth laid =
        border > 0 ? LaidCloth.of(lay.cloth(), fold, border) : LaidCloth.of(lay.cloth(), fold);
    laid.stretches().get(0).forEach(band -> zones.add(band.zone(0, 300)));
    return Trial.marker(lay, fold, zones, copies);
  }

  /** Its opened outline at 0, 100. */
  private static Copy opened(Form form) {
    Copy c = copy(COLLAR, Form.OPENED, "folded", false, 0, 0, 100);
    return Trial.formed(form).apply(c);
  }

  @Test
  void pairOfOpenedHalvesYieldsTwo() {
    Lay lay = lay(Direction.ANY_WAY, Fold.LENGTHWISE, COLLAR);
    Copy both = opened(Form.PAIR);
    assertEquals(160, both.outline().box().maxY() - 100, 1e-9);
    assertEquals(List.of(), told(laid(lay, Fold.LENGTHWISE, 0, both)));
    Copy one = opened(Form.OPENED);
    assertEquals(
        List.of("There are too few of collar: 2 pieces are wanted, the marker cuts 1."),
        told(laid(lay, Fold.LENGTHWISE, 0, one)));
  }

  @Test
  void partFoldIsAnyDepthButItsSingleZoneBeginsBeyondTheSelvedge() {
    Lay lay = lay(Direction.ONE_WAY, Fold.PART, BACK, FRONT);
    Marker marker =
        laid(
            lay,
            Fold.PART,
            170,
            copy(BACK, Form.HALF, "folded", false, 0, 0, 0),
            copy(FRONT, Form.WHOLE, "single", false, 0, 0, 180));
    assertEquals(List.of(), told(marker));
    Marker onSelvedge =
        marker.with(
            List.of(marker.copies().get(0), copy(FRONT, Form.WHOLE, "single", false, 0, 0, 175)));
    assertEquals(
        List.of("Front juts out over the edge of zone single by 5.0 mm near x = 15.0 cm."),
        told(onSelvedge));
    List<Zone> wider = new ArrayList<>(marker.zones());
    Zone single = wider.get(1);
    wider.set(
        1, new Zone("single", new Box(0, 180, 300, 900), 1, single.foldEdges(), single.sideUp()));
    assertEquals(
        List.of("Cloth main, part fold, has no zone like single: 72.0 cm wide, 1 ply."),
        told(marker.withZones(wider)));
  }

  @Test
  void nothingCrossesTheMeetingLine() {
    Lay lay = lay(Direction.ONE_WAY, Fold.DOUBLE, BACK, FRONT);
    CutPiece strip = Trial.rectangle("front", "1", 300, 250);
    Lay fits = lay(Direction.ONE_WAY, Fold.DOUBLE, BACK, strip);
    Copy back = copy(BACK, Form.HALF, "first fold", false, 0, 0, 0);
    assertEquals(
        List.of(),
        told(
            laid(
                fits,
                Fold.DOUBLE,
                160,
                back,
                copy(strip, Form.WHOLE, "second fold", false, 0, 0, 180))));
    Marker across =
        laid(lay, Fold.DOUBLE, 160, back, copy(FRONT, Form.WHOLE, "second fold", false, 0, 0, 10));
    assertEquals("zone", Check.of(across).get(0).rule().id());
    assertThrows(IllegalArgumentException.class, () -> LaidCloth.of(lay.cloth(), Fold.DOUBLE, 490));
  }

  @Test
  void crosswiseFoldIsBarredForOneWayCloth() {
    Copy front = copy(FRONT, Form.WHOLE, "folded", false, 0, 0, 0);
    assertEquals(
        List.of(),
        told(laid(lay(Direction.ANY_WAY, Fold.CROSSWISE, FRONT), Fold.CROSSWISE, 0, front)));
    assertEquals(
        List.of(
            "Cloth main cannot lie like this: the cloth is cut one way and one ply would head the"
                + " other way: cut it across and turn the upper length round (crosswise turned)."),
        told(laid(lay(Direction.ONE_WAY, Fold.CROSSWISE, FRONT), Fold.CROSSWISE, 0, front)));
  }

  @Test
  void lengthsThatLieDoubleCountTwice() {
    Lay lay = lay(Direction.ANY_WAY, Fold.CROSSWISE, FRONT);
    List<Zone> zones = new ArrayList<>();
    LaidCloth laid = LaidCloth.of(lay.cloth(), Fold.CROSSWISE);
    zones.add(laid.stretches().get(0).get(0).zone(0, 200));
    zones.add(laid.stretches().get(1).get(0).zone(200, 600));
    Marker marker =
        Trial.marker(
            lay, Fold.CROSSWISE, zones, copy(FRONT, Form.WHOLE, "opened", false, 0, 300, 0));
    assertEquals(600, marker.lengthMm(), 1e-9);
    assertEquals(800, marker.clothLengthMm(), 1e-9);
  }

  @Test
  void onlyATubeLiesAsOne() {
    Cloth cloth = Trial.cloth(1000, 0, Direction.ANY_WAY, Fold.TUBULAR);
    assertEquals(
        Problem.of("the cloth is no tube", "Write tubular: true if it is one, else fold it"),
        cloth.barred(Fold.TUBULAR).orElseThrow());
  }
}
