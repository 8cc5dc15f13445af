package ellwand.rule;

import static ellwand.rule.Trial.broken;
import static ellwand.rule.Trial.changed;
import static ellwand.rule.Trial.copy;
import static ellwand.rule.Trial.formed;
import static ellwand.rule.Trial.shifted;
import static ellwand.rule.Trial.told;
import static ellwand.rule.Trial.zoned;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a copy may lie, and as what. */
class ZonesAndFormsTest {

  private final Marker open = LegalMarkers.open(Direction.ANY_WAY);
  private final Marker folded = LegalMarkers.folded(Direction.ANY_WAY);

  @Test
  void zoneBordersAreKeptToAHundredth() {
    assertEquals(List.of(), told(changed(open, 0, shifted(0, -0.005))));
    Marker over = changed(open, 0, shifted(0, -0.02));
    assertEquals(List.of("zone"), broken(over));
    assertEquals(0.02, Check.of(over).get(0).amount(), 1e-9);
    assertEquals(List.of("zone"), broken(changed(open, 0, shifted(-0.02, 0))));
    Marker past = changed(open, 5, shifted(101, 0));
    assertEquals(
        List.of("Yoke juts out over the end of zone open by 1.0 mm near x = 80.1 cm."), told(past));
  }

  /** One back on cloth folded lengthwise. */
  private static Marker back(double usableMm, double gapMm, Form form) {
    CutPiece back = LegalMarkers.BACK;
    return Trial.folded(
        Trial.lay(Trial.cloth(usableMm, gapMm, Direction.ANY_WAY, Fold.LENGTHWISE), back),
        300,
        300,
        copy(back, form, "folded", false, 0, 0, 0));
  }

  @Test
  void noGapIsAskedAtCutEndSelvedgeAndFold() {
    assertEquals(List.of(), told(back(300, 25, Form.HALF)));
  }

  @Test
  void rezonedCopyIsOutOfItsZone() {
    assertEquals(List.of("zone"), broken(changed(folded, 4, zoned("folded"))));
    assertEquals(List.of("form", "zone"), broken(changed(folded, 0, zoned("opened"))));
    assertEquals(List.of("count", "form", "zone"), broken(changed(folded, 1, zoned("opened"))));
    assertEquals(List.of("form"), broken(changed(open, 4, zoned("attic"))));
  }

  @Test
  void formsMustSuitPieceAndZone() {
    assertTrue(broken(changed(open, 1, formed(Form.PAIR))).contains("form"));
    assertTrue(broken(changed(open, 0, formed(Form.HALF))).contains("form"));
    assertTrue(broken(changed(open, 0, formed(Form.WHOLE))).contains("form"));
    assertTrue(broken(changed(open, 3, formed(Form.OPENED))).contains("form"));
    assertTrue(broken(changed(open, 3, formed(Form.HALF))).contains("form"));
  }

  @Test
  void halfPieceMustStandOnTheFold() {
    assertEquals(List.of(), told(changed(folded, 0, shifted(0, 0.009))));
    Marker off = changed(folded, 0, shifted(0, 0.02));
    assertEquals(List.of("fold"), broken(off));
    assertEquals(0.02, Check.of(off).get(0).amount(), 1e-9);
    // Headed down by mirroring, it still stands on the fold; by turning alone it does not.
    CutPiece back = LegalMarkers.BACK;
    assertEquals(
        List.of(), told(changed(folded, 0, c -> copy(back, Form.HALF, "folded", true, 180, 0, 0))));
    assertEquals(
        List.of("fold"),
        broken(changed(folded, 0, c -> copy(back, Form.HALF, "folded", false, 180, 0, 0))));
  }

  @Test
  void anOpenedHalfInADoubleZoneWastesItsTwin() {
    assertEquals(List.of(), told(back(1000, 0, Form.OPENED)));
  }
}
