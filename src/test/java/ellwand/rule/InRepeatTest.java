package ellwand.rule;

import static ellwand.rule.Trial.copy;
import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.pattern.Bars;
import ellwand.pattern.Match;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** On cloth with 1000 mm between selvedges of 10 mm. Marks lie on low-y edges of sloped pieces. */
class InRepeatTest {

  private static final double ANY = Double.NaN;

  private static Lay lay(Fold fold, Repeat repeat, List<Match> matches, CutPiece... pieces) {
    Lay lay = Trial.lay(Trial.cloth(1000, 0, Direction.ANY_WAY, fold).repeating(repeat), pieces);
    return new Lay(lay.style(), lay.cloth(), lay.wanted(), matches);
  }

  private static List<String> told(Marker marker) {
    return Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList();
  }

  private static Marker one(CutPiece piece, Repeat repeat, double turn, double x, double y) {
    return Trial.open(
        lay(Fold.OPEN, repeat, List.of(), piece),
        900,
        copy(piece, Form.WHOLE, "open", false, turn, x, y));
  }

  private static CutPiece wanting(double along, double across) {
    return Asking.marked(Trial.sloped("front", "1", 200, 100), 50, Asking.at(along, across));
  }

  @Test
  void aPieceOnItsPlaceIsLegalAndOneBesideItIsNot() {
    Repeat checks = Repeat.even(60, 40, 20, 30);
    CutPiece front = wanting(0, 0);
    // The mark is at x + 50, y + 10 from the edge; bars at 20 + 60 k and 30 + 40 k.
    assertEquals(List.of(), told(one(front, checks, 0, 90, 20)));
    assertEquals(
        List.of("Front has its at 3.0 mm off its place in the repeat near x = 193 mm."),
        told(one(front, checks, 0, 93, 20)));
    assertEquals(
        List.of("Front has its at 5.0 mm off its place in the repeat near x = 190 mm."),
        told(one(front, checks, 0, 90, 25)));
  }

  @Test
  void aPieceThatDoesNotAskForABarMayLieAnywhereOnIt() {
    Repeat checks = Repeat.even(60, 40, 20, 30);
    assertEquals(List.of(), told(one(wanting(0, ANY), checks, 0, 90, 33)));
    assertEquals(List.of(), told(one(wanting(ANY, 0), checks, 0, 97, 20)));
  }

  /**
   * Turned by half, the mark is 50 from the high x end, on the high side; 15 mm counts backwards.
   */
  @Test
  void aTurnedPieceCountsFromItsOwnTop() {
    Repeat stripes = Repeat.even(60, 0, 20, 0);
    CutPiece front = wanting(15, ANY);
    // Mark at x + 150 = 20 - 15 + 180.
    assertEquals(List.of(), told(one(front, stripes, 180, 35, 0)));
    assertEquals(1, told(one(front, stripes, 180, 65, 0)).size());
    assertEquals(List.of(), told(one(front, stripes, 0, 45, 0)));
  }

  @Test
  void aHalfDropAllowsBothColumns() {
    Repeat drop = new Repeat(60, 40, true, true, true, 0, 10, Optional.empty());
    CutPiece front = wanting(0, 0);
    // Mark at x + 50, y: even columns at y 0, 80, odd ones at 40 with x half a repeat on.
    assertEquals(List.of(), told(one(front, drop, 0, 10, 80)));
    assertEquals(List.of(), told(one(front, drop, 0, 40, 40)));
    assertEquals(1, told(one(front, drop, 0, 10, 40)).size());
    assertEquals(1, told(one(front, drop, 0, 40, 80)).size());
  }

  @Test
  void aHemLiesOnTheBorder() {
    Repeat border = new Repeat(0, 0, false, true, true, 0, 0, Optional.of(70.0));
    CutPiece skirt = Asking.marked(Trial.sloped("skirt", "1", 200, 100), 50, Asking.onBorder());
    assertEquals(List.of(), told(one(skirt, border, 0, 0, 60)));
    assertEquals(
        List.of("Skirt has its at 4.0 mm off its place on the border near x = 100 mm."),
        told(one(skirt, border, 0, 0, 64)));
  }

  /** Folded in the middle, the other ply of a pair lies as far beyond the fold. */
  @Test
  void aPairOnAFoldHasItsBorderOnBothPlies() {
    CutPiece cuff = Asking.marked(Trial.sloped("cuff", "pair", 200, 100), 50, Asking.onBorder());
    // The fold lies 510 mm from the edge; at 60 mm from it one ply is on either line.
    for (double line : new double[] {510 - 60, 510 + 60}) {
      Repeat border = new Repeat(0, 0, false, true, true, 0, 0, Optional.of(line));
      Lay lay = lay(Fold.LENGTHWISE, border, List.of(), cuff);
      for (double y = 0; y <= 400; y += 20) {
        assertEquals(1, told(folded(lay, cuff, y)).size(), "one ply is off the border");
      }
    }
  }

  private static final CutPiece FRONT =
      Asking.marked(Trial.sloped("front", "1", 200, 100), 50, Optional.empty());
  private static final CutPiece BACK =
      Asking.marked(Trial.sloped("back", "1", 220, 100), 80, Optional.empty());

  private static Marker two(Bars bars, double turn, double backX, double backY) {
    Lay lay =
        lay(
            Fold.OPEN,
            Repeat.even(60, 40, 7, 9),
            List.of(new Match("front", "at", "back", "at", bars)),
            FRONT,
            BACK);
    return Trial.open(
        lay,
        900,
        copy(FRONT, Form.WHOLE, "open", false, 0, 0, 0),
        copy(BACK, Form.WHOLE, "open", false, turn, backX, backY));
  }

  @Test
  void matchedPlacesLieAlikeOnTheBarsThatAreMeant() {
    // Marks at 50 and at backX + 80.
    assertEquals(List.of(), told(two(Bars.ACROSS, 0, 210, 3)));
    assertEquals(
        List.of("Front does not match back: at and at lie 2.0 mm apart in the repeat."),
        told(two(Bars.ACROSS, 0, 212, 3)));
    assertEquals(List.of(), told(two(Bars.ALONG, 0, 217, 120)));
    assertEquals(1, told(two(Bars.BOTH, 0, 217, 120)).size());
    assertEquals(List.of(), told(two(Bars.BOTH, 0, 210, 120)));
  }

  @Test
  void matchedPlacesMirrorWhereOnePieceIsTurned() {
    // The front's mark is 43 beyond a bar; the turned back's must be 43 before one: x = 7 - 43 + 60
    // k.
    double mark = 7 - 43 + 60 * 6;
    assertEquals(List.of(), told(two(Bars.ACROSS, 180, mark - (220 - 80), 300)));
    assertEquals(1, told(two(Bars.ACROSS, 180, mark - (220 - 80) + 1, 300)).size());
  }

  @Test
  void aPairOnAFoldMeetsTheBarsOfBothPlies() {
    // The fold lies on the bar 510 mm from the edge; 80 mm from it is the next but one.
    CutPiece sleeve =
        Asking.marked(Trial.sloped("sleeve", "pair", 200, 100), 50, Asking.at(ANY, 0));
    Lay lay = lay(Fold.LENGTHWISE, Repeat.even(0, 40, 0, 30), List.of(), sleeve);
    for (double y : new double[] {0, 80}) {
      assertEquals(List.of(), told(folded(lay, sleeve, y)));
      assertEquals(1, told(folded(lay, sleeve, y + 1)).size());
    }
  }

  /** Folded zone to 300, opened beyond: bars run on, whatever the first zone's length. */
  @Test
  void barsRunOnIntoTheOpenedStretch() {
    CutPiece front = wanting(0, ANY);
    Lay lay = lay(Fold.LENGTHWISE, Repeat.even(60, 40, 20, 30), List.of(), front);
    // The mark is at x + 50: bars at 20 + 60 k.
    assertEquals(List.of(), told(opened(lay, front, 330)));
    assertEquals(
        List.of("Front has its at 10.0 mm off its place in the repeat near x = 440 mm."),
        told(opened(lay, front, 340)));
  }

  private static Marker opened(Lay lay, CutPiece front, double x) {
    return Trial.folded(lay, 310, 900, copy(front, Form.WHOLE, "opened", false, 0, x, 0));
  }

  @Test
  void aPartFoldOffTheMirrorLinesIsFound() {
    CutPiece front = Trial.sloped("front", "pair", 200, 100);
    Lay lay = lay(Fold.PART, Repeat.even(0, 40, 0, 30), List.of(), front);
    // Bars at 30 + 40 k from the edge, and half way between: 20 + 20 k from the first cuttable.
    for (double border : new double[] {200, 205}) {
      Lay plain = lay(Fold.PART, Repeat.even(60, 0, 0, 0), List.of(), front);
      Marker marker =
          Trial.marker(
              lay,
              Fold.PART,
              LaidCloth.of(plain.cloth(), Fold.PART, border).stretches().get(0).stream()
                  .map(band -> band.zone(0, 400))
                  .toList(),
              copy(front, Form.PAIR, "folded", false, 0, 0, 0));
      assertEquals(border == 200 ? 0 : 1, told(marker).size(), () -> told(marker).toString());
    }
  }

  private static Marker folded(Lay lay, CutPiece sleeve, double y) {
    return Trial.marker(
        lay,
        Fold.LENGTHWISE,
        List.of(LaidCloth.of(lay.cloth(), Fold.LENGTHWISE).bands().get(0).zone(0, 600)),
        copy(sleeve, Form.PAIR, "folded", false, 0, 0, y));
  }
}
