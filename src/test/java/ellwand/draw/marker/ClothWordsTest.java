package ellwand.draw.marker;

import static ellwand.rule.Trial.copy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Band;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Shown;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the person who lays the cloth is told, in every fold. 1000 mm between selvedges of 10. */
class ClothWordsTest {

  private static final CutPiece SLEEVE = Trial.sloped("sleeve", "pair", 200, 100);
  private static final Flaw HOLE = Flaw.round("hole", new Point(300, 900), 20);

  private static Cloth plain(Fold fold) {
    return Trial.cloth(1000, 0, Direction.ANY_WAY, fold);
  }

  /** A pair in the first zone, up to 240 along the cloth. */
  private static Marker paired(Cloth cloth, LaidCloth laid) {
    List<Zone> zones = new ArrayList<>();
    for (Band band : laid.stretches().get(0)) {
      zones.add(band.zone(0, 240));
    }
    Copy pair = copy(SLEEVE, Form.PAIR, zones.get(0).id(), false, 0, 0, 0);
    Marker marker = Trial.marker(Trial.lay(cloth, SLEEVE), laid.fold(), zones, pair);
    assertEquals(List.of(), Check.of(marker));
    return marker;
  }

  private static String told(Marker marker) {
    return String.join(" ", ClothWords.of(marker, new Shown(Unit.CM)));
  }

  @Test
  void flawsAndStripesSayWhichEdgeIsFoldedOver() {
    Cloth holed = plain(Fold.PART).flawed(List.of(HOLE));
    assertTrue(
        told(paired(holed, LaidCloth.of(holed, Fold.PART, 200)))
            .startsWith(
                "Fold the edge that its flaws are measured from over by 20.0 cm plus the selvedge,"
                    + " right sides together."));
    Cloth barred = plain(Fold.PART).flawed(List.of(HOLE)).repeating(Repeat.even(60, 40, 0, 10));
    assertTrue(
        told(paired(barred, LaidCloth.of(barred, Fold.PART, 200)))
            .startsWith(
                "Fold the edge that its flaws and stripes are measured from over by 20.0 cm"));
    Cloth bare = plain(Fold.PART);
    assertTrue(
        told(paired(bare, LaidCloth.of(bare, Fold.PART, 200)))
            .startsWith("Fold one edge of the cloth over by 20.0 cm plus the selvedge, right"));
  }

  @Test
  void stripesAreCalledStripes() {
    Cloth striped = plain(Fold.PART).repeating(Repeat.even(60, 40, 20, 10));
    String told = told(paired(striped, LaidCloth.of(striped, Fold.PART, 200)));
    assertTrue(
        told.contains("Cut the end so that the middle of a stripe lies 2.0 cm from it."), told);
    assertTrue(
        told.contains(
            "The middle of a stripe lies 1.0 cm from the edge of the cloth; pin the plies so that"
                + " stripes lie on stripes."),
        told);
    assertTrue(told.matches(".*The fold lies .*middles? of .*stripes?\\. .*"), told);
    assertFalse(told.contains("bar"), told);
    // There is nothing to pin on one ply.
    Cloth single = plain(Fold.OPEN).repeating(Repeat.even(60, 40, 20, 10));
    Marker open =
        Trial.open(
            Trial.lay(single, Trial.rectangle("patch", "1", 100, 80)),
            240,
            copy(Trial.rectangle("patch", "1", 100, 80), Form.WHOLE, "open", false, 0, 0, 0));
    assertTrue(told(open).contains("stripe lies 1.0 cm from the edge of the cloth. "), told(open));
  }

  @Test
  void theFirstOfTwoFoldsIsTold() {
    Cloth bare = plain(Fold.DOUBLE);
    assertTrue(
        told(paired(bare, LaidCloth.of(bare, Fold.DOUBLE, 300)))
            .contains("the selvedges meet 31.0 cm from the first fold. First fold: 2 plies"));
    Cloth holed = bare.flawed(List.of(HOLE));
    assertTrue(
        told(paired(holed, LaidCloth.of(holed, Fold.DOUBLE, 300)))
            .contains(
                "31.0 cm from the first fold, which is that of the edge that its flaws are measured"
                    + " from."));
  }

  /** Bars every 70 mm mirror every 35, so that the second fold lies beyond where edges meet. */
  @Test
  void selvedgesThatDoNotMeetAreNotSaidToMeet() {
    Cloth barred = plain(Fold.DOUBLE).repeating(Repeat.even(0, 70, 0, 30));
    Marker marker = paired(barred, LaidCloth.of(barred, Fold.DOUBLE, 20 + 35 * 8));
    assertTrue(ClothWords.besideMm(marker) > 0);
    assertFalse(told(marker).contains("selvedges meet"), told(marker));
    assertFalse(svg(marker).contains("selvedges meet"));
    Cloth bare = plain(Fold.DOUBLE);
    assertTrue(svg(paired(bare, LaidCloth.of(bare, Fold.DOUBLE, 300))).contains("selvedges meet"));
  }

  @Test
  void clothThatIsFoldedAcrossIsMeasuredFromItsFold() {
    Cloth cloth = plain(Fold.CROSSWISE);
    Marker folded = paired(cloth, LaidCloth.of(cloth, Fold.CROSSWISE));
    assertEquals("fold", ClothWords.start(folded));
    assertTrue(svg(folded).contains("Numbers run from the fold."));
    assertTrue(Laid.of(folded).get(0).heading().equals("away from fold"));
    Cloth turned = plain(Fold.TURNED);
    Marker cut = paired(turned, LaidCloth.of(turned, Fold.TURNED));
    assertEquals("cut end", ClothWords.start(cut));
    assertTrue(svg(cut).contains("Numbers run from the cut end."));
  }

  @Test
  void theSelvedgeIsToldOnlyWhereAcrossIsMeasuredFromIt() {
    String selvedge = "easurements across start inside the selvedges, 1.0 cm from each edge";
    for (Fold fold : List.of(Fold.LENGTHWISE, Fold.PART, Fold.DOUBLE)) {
      Cloth cloth = plain(fold);
      LaidCloth laid = LaidCloth.of(cloth, fold, fold == Fold.LENGTHWISE ? 500 : 300);
      assertFalse(told(paired(cloth, laid)).contains(selvedge), fold.words());
    }
    Cloth across = plain(Fold.CROSSWISE);
    String told = told(paired(across, LaidCloth.of(across, Fold.CROSSWISE)));
    assertTrue(told.contains("M" + selvedge), told);
    String jacket = told(Samples.jacket());
    assertTrue(jacket.contains("Where it is opened, m" + selvedge), jacket);
  }

  @Test
  void ringsAreExplainedWhereThereAreSome() {
    Cloth barred = plain(Fold.PART).repeating(Repeat.even(60, 40, 0, 10));
    String svg = svg(paired(barred, LaidCloth.of(barred, Fold.PART, 200)));
    assertTrue(svg.contains("Light lines: middles of the stripes."));
    assertFalse(svg.contains("Rings:"));
  }

  private static String svg(Marker marker) {
    return new String(
            MarkerDrawing.of(marker, Samples.figures(marker), Samples.head(marker), Unit.CM).svg(),
            java.nio.charset.StandardCharsets.UTF_8)
        .replaceAll("\\s+", " ");
  }
}
