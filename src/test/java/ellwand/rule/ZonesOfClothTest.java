package ellwand.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class ZonesOfClothTest {

  private final Marker open = LegalMarkers.open(Direction.ANY_WAY);
  private final Marker folded = LegalMarkers.folded(Direction.ANY_WAY);

  private static List<String> told(Marker marker) {
    return Check.of(marker).stream()
        .filter(f -> f.rule() == ZonesOfCloth.RULE)
        .map(f -> f.sentence(Unit.CM))
        .toList();
  }

  private static Marker with(Marker marker, int index, UnaryOperator<Zone> change) {
    List<Zone> zones = new ArrayList<>(marker.zones());
    zones.set(index, change.apply(zones.get(index)));
    return marker.withZones(zones);
  }

  private static UnaryOperator<Zone> from(double x0, double x1, double y0, double y1) {
    return z -> new Zone(z.id(), new Box(x0, y0, x1, y1), z.plies(), z.foldEdges(), z.sideUp());
  }

  @Test
  void widthIsTheCloths() {
    assertEquals(
        List.of("Cloth main, open, has no zone like open: 101.0 cm wide, 1 ply."),
        told(with(open, 0, from(0, 800, 0, 1010))));
    assertEquals(1, told(with(open, 0, from(0, 800, 10, 1000))).size());
    // Folded lengthwise, half the usable width; opened, all of it.
    assertEquals(1, told(with(folded, 0, from(0, 700, 0, 600))).size());
    assertEquals(1, told(with(folded, 1, from(700, 900, 0, 500))).size());
  }

  @Test
  void pliesFoldEdgesAndFaceAreThoseOfTheFold() {
    assertEquals(
        List.of("Cloth main, open, has no zone like open: 100.0 cm wide, 2 plies."),
        told(with(open, 0, z -> new Zone(z.id(), z.box(), 2, z.foldEdges(), z.sideUp()))));
    assertEquals(
        1, told(with(folded, 0, z -> new Zone(z.id(), z.box(), 2, Set.of(), z.sideUp()))).size());
    assertEquals(
        1,
        told(with(open, 0, z -> new Zone(z.id(), z.box(), 1, z.foldEdges(), Zone.Face.WRONG)))
            .size());
  }

  @Test
  void zonesDoNotOverlapAndComeInOrder() {
    assertEquals(
        List.of("Zones folded and opened overlap by 5.0 mm."),
        told(with(folded, 1, from(695, 900, 0, 1000))));
    Marker swapped = with(with(folded, 0, from(900, 1600, 0, 500)), 1, from(0, 200, 0, 1000));
    assertEquals(List.of("Zone folded must come before zone opened."), told(swapped));
    assertEquals(
        List.of("Zone open begins before the cut end."),
        told(with(open, 0, from(-5, 800, 0, 1000))));
  }

  @Test
  void zoneNamesAreUnique() {
    assertTrue(
        told(with(
                folded, 1, z -> new Zone("folded", z.box(), z.plies(), z.foldEdges(), z.sideUp())))
            .contains("Two zones are called folded."));
  }

  /** A pair of sleeves on lengths of 490 mm, each 7 repeats long. */
  @Test
  void lengthsAreCutWhereStripesLieOnStripes() {
    CutPiece sleeve = Trial.sloped("sleeve", "pair", 300, 200);
    Cloth bars =
        Trial.cloth(1000, 0, Direction.ONE_WAY, Fold.TURNED).repeating(Repeat.even(70, 0, 25, 0));
    Band band = LaidCloth.of(bars, Fold.TURNED).bands().get(0);
    Copy pair = Trial.copy(sleeve, Form.PAIR, "double", false, 0, 0, 0);
    Lay lay = Trial.lay(bars, sleeve);
    assertEquals(List.of(), told(Trial.marker(lay, Fold.TURNED, List.of(band.zone(0, 490)), pair)));
    assertEquals(
        List.of(
            "Cloth main is folded or cut across 10.0 mm off the place where its stripes would lie"
                + " on stripes."),
        told(Trial.marker(lay, Fold.TURNED, List.of(band.zone(0, 500)), pair)));
  }

  /** Usable are 600 mm of it, and a selvedge of 10 mm lies on the lower ply beyond the fold. */
  @Test
  void noPartFoldIsDeeperThanItsClothAllows() {
    CutPiece front = Trial.sloped("front", "1 on fold", 300, 200);
    Cloth wide = Trial.cloth(900, 0, Direction.ANY_WAY, Fold.PART);
    Lay lay = Trial.lay(wide, front);
    List<Zone> zones =
        LaidCloth.of(wide, Fold.PART, 300).stretches().get(0).stream()
            .map(band -> band.zone(0, 300))
            .toList();
    assertEquals(List.of(), told(new Marker(lay, Fold.PART, zones, List.of())));
    Lay narrow = lay.on(Trial.cloth(600, 0, Direction.ANY_WAY, Fold.PART));
    assertEquals(
        List.of(
            "Cloth main, 62.0 cm wide, can be folded over by less than 29.5 cm, not by 30.0 cm as"
                + " this part fold asks: make the marker anew for this width."),
        told(new Marker(narrow, Fold.PART, zones, List.of())));
  }

  @Test
  void foldMustBeOneThatTheJobAllows() {
    Marker marker =
        Trial.marker(
            open.lay(), Fold.LENGTHWISE, folded.zones(), folded.copies().toArray(c -> new Copy[c]));
    assertEquals(List.of("Cloth main is not to be laid like this: lengthwise fold."), told(marker));
  }
}
