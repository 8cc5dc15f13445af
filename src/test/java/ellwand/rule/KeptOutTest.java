package ellwand.rule;

import static ellwand.rule.Trial.copy;
import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Remnant;
import ellwand.cloth.Stock;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KeptOutTest {

  private static final CutPiece BAND = Trial.rectangle("band", "2", 200, 100);

  /** 1000 mm between selvedges of 10 mm, a hole of 5 mm at x = 300, 710 mm from the edge. */
  private static Cloth holed(Fold fold, Optional<Stock> stock) {
    Cloth cloth =
        Trial.cloth(1000, 0, Direction.ANY_WAY, fold)
            .flawed(List.of(Flaw.round("hole", new Point(300, 710), 5)));
    return stock
        .map(
            s ->
                new Remnant(s.name(), "main", s.lengthMm(), 1020, Optional.of(10.0), cloth.flaws()))
        .map(r -> r.laidAs(cloth))
        .orElse(cloth);
  }

  private static List<String> told(Marker marker) {
    return Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList();
  }

  private static Marker open(double x, double y) {
    return Trial.open(
        Trial.lay(holed(Fold.OPEN, Optional.empty()), BAND),
        600,
        copy(BAND, Form.WHOLE, "open", false, 0, 0, 0),
        copy(BAND, Form.WHOLE, "open", false, 0, x, y));
  }

  @Test
  void aPieceBesideAFlawIsLegalWithoutAnyGap() {
    assertEquals(List.of(), told(open(306, 650)));
    assertEquals(List.of(), told(open(200, 594.9)));
  }

  @Test
  void aPieceOnAFlawIsNot() {
    assertEquals(
        List.of("Band takes 10.0 mm of flawed cloth (hole) near x = 300 mm."),
        told(open(200, 650)));
    assertEquals(
        List.of("Band takes 2.0 mm of flawed cloth (hole) near x = 304 mm."), told(open(303, 650)));
  }

  /** The hole lies 200 mm from the fold, on one of the two plies. */
  @Test
  void aFlawInOneHalfBarsBothPlies() {
    Lay lay = Trial.lay(holed(Fold.LENGTHWISE, Optional.empty()), BAND);
    for (double y : new double[] {94.9, 205.1}) {
      assertEquals(List.of(), told(folded(lay, y)), "y " + y);
    }
    assertEquals(
        List.of("Band takes 10.0 mm of flawed cloth (hole) near x = 300 mm."),
        told(folded(lay, 150)));
  }

  private static Marker folded(Lay lay, double y) {
    return Trial.marker(
        lay,
        Fold.LENGTHWISE,
        List.of(LaidCloth.of(lay.cloth(), Fold.LENGTHWISE).bands().get(0).zone(0, 600)),
        copy(BAND, Form.PAIR, "folded", false, 0, 200, y));
  }

  @Test
  void aRemnantEndsWhereItEnds() {
    Lay lay = Trial.lay(holed(Fold.OPEN, Optional.of(new Stock("offcut", 400))), BAND);
    Marker marker =
        Trial.open(
            lay,
            400.5,
            copy(BAND, Form.WHOLE, "open", false, 0, 0, 0),
            copy(BAND, Form.WHOLE, "open", false, 0, 200.5, 0));
    assertEquals(List.of("Zone open ends 0.5 mm beyond the end of the cloth."), told(marker));
  }

  @Test
  void aSlantedFlawIsAsWideAsItsInscribedCircle() {
    // A right triangle with legs of 30 and 40: inradius (30 + 40 - 50) / 2 = 10.
    Flaw flaw =
        new Flaw(
            "torn", Outline.of(List.of(new Point(0, 10), new Point(30, 10), new Point(0, 50))));
    Cloth torn = holed(Fold.OPEN, Optional.empty()).flawed(List.of(flaw));
    Marker marker =
        Trial.open(
            Trial.lay(torn, BAND),
            600,
            copy(BAND, Form.WHOLE, "open", false, 0, 0, 0),
            copy(BAND, Form.WHOLE, "open", false, 0, 300, 0));
    assertEquals(20, Check.of(marker).get(0).amount(), 0.05);
    assertEquals(new Box(0, 0, 30, 40), marker.keepOuts().get(0).outline().box());
  }
}
