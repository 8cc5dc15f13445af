package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.draw.piece.Drafting;
import ellwand.draw.piece.GrainLine;
import ellwand.draw.piece.Pieces;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.pattern.Grain;
import ellwand.pattern.Mark;
import ellwand.rule.Asking;
import ellwand.rule.Trial;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class LaidTest {

  @Test
  void numbersRunZoneByZoneFromTheCutEnd() {
    List<String> pieces = Laid.of(Samples.jacket()).stream().map(Laid::piece).toList();
    assertEquals(
        List.of(
            "Back",
            "Front",
            "Front facing",
            "Collar",
            "Sleeve",
            "Collar",
            "Pocket",
            "Pocket",
            "Hanger loop"),
        pieces);
  }

  @Test
  void tellsWhichGarmentsAPlacementIsFor() {
    Copy own = Samples.laid(Pieces.pocket(), 1, Form.WHOLE, "folded", 0, 0, 0);
    Copy shared =
        new Copy(
            own.piece(),
            own.size(),
            1,
            OptionalInt.of(2),
            Form.PAIR,
            own.zone(),
            own.heading(),
            own.motion(),
            own.outline());
    List<Laid> laid = Laid.of(Samples.jacket().with(List.of(shared)));
    assertEquals("garments 1 and 2", laid.get(0).garments());
    assertTrue(laid.get(0).title("Jacket", true).contains("garments 1 and 2, cuts 2, top"));
  }

  @Test
  void tellsWhatAPlacementYields() {
    List<String> forms = Laid.of(Samples.jacket()).stream().map(Laid::form).toList();
    assertEquals("on the fold", forms.get(0));
    assertEquals("pair, cuts 2", forms.get(1));
    assertEquals("opened out", forms.get(5));
    assertEquals("cut 1", forms.get(6));
    assertEquals("cuts 2, one is spare", Laid.of(Samples.bib()).get(1).form());
    assertEquals("pair, as drawn", Laid.of(Samples.overalls()).get(1).form());
  }

  @Test
  void anOpenedHalfOnTwoPliesHasASpareTwin() {
    Marker jacket = Samples.jacket();
    Copy opened = Samples.laid(Pieces.collar(), 1, Form.OPENED, "folded", 0, 0, 0);
    Marker marker = jacket.with(List.of(opened));
    assertEquals("opened out, cuts 2, one is spare", Laid.of(marker).get(0).form());
  }

  /** 200 x 150 to the fold, its side marked 70 from the top: where two other pieces are sewn on. */
  @Test
  void anOpenedHalfIsMarkedOnBothSides() {
    CutPiece back =
        Asking.marked(
            Trial.rectangle("back", "1 on fold", 200, 150),
            List.of(new Mark("side", "e2", 70)),
            Optional.empty());
    Lay lay = Trial.lay(Trial.cloth(1000, 0, Direction.ANY_WAY, Fold.OPEN), back);
    Copy opened = Trial.copy(back, Form.OPENED, "open", false, 0, 10, 20);
    assertEquals(
        List.of(new Point(140, 20), new Point(140, 320)),
        Laid.of(Trial.open(lay, 900, opened)).get(0).marks());
  }

  @Test
  void grainLineTurnsWithItsPiece() {
    GrainLine drawn = GrainLine.of(Pieces.pocket());
    // The pocket is 130 x 110 on the sewing line; the line runs at 3/10 of its width.
    assertEquals(33, drawn.through().y(), 0.6);
    GrainLine turned = drawn.moved(new Motion(false, 180, 0, 0));
    assertEquals(-1, turned.towards().x(), 1e-12);
    assertEquals(-33, turned.through().y(), 0.6);
  }

  @Test
  void piecesAcrossTheClothPointTheirTopAlongTheWarp() {
    var strip = Drafting.rectangle("Strip", 300, 50, 10).grain(Grain.ACROSS).cut("main", "1");
    Point towards = GrainLine.of(strip).moved(new Motion(false, 90, 0, 0)).towards();
    assertEquals(1, towards.x(), 1e-12);
    assertEquals(0, towards.y(), 1e-12);
  }

  /** Turned on by 2 degrees from where it is on grain, the arrow is 2 degrees off the warp. */
  @Test
  void theArrowOfALeaningPieceLeans() {
    Marker jacket = Samples.jacket();
    Copy leaning = Samples.laid(Pieces.pocket(), 1, Form.WHOLE, "folded", 2, 0, 0);
    Marker marker = jacket.with(List.of(leaning));
    Laid laid = Laid.of(marker).get(0);
    assertEquals(2, laid.leanDegrees(), 1e-12);
    assertEquals(Math.sin(Math.toRadians(2)), laid.grain().towards().y(), 1e-12);
  }
}
