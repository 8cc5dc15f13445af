package ellwand.figures;

import static ellwand.rule.Trial.copy;
import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WidthNeededTest {

  private static final CutPiece BACK = Trial.rectangle("back", "1 on fold", 300, 150);

  /** Bars every 200 mm across from 80 mm beside the first cuttable line; by hand. */
  private static Marker barred(double foldMm) {
    Cloth bars =
        Trial.cloth(1000, 0, Direction.ANY_WAY, Fold.LENGTHWISE)
            .repeating(new Repeat(0, 200, false, true, true, 0, 80 + 10, Optional.empty()));
    LaidCloth laid = LaidCloth.of(bars, Fold.LENGTHWISE, foldMm);
    Marker marker =
        Trial.marker(
            Trial.lay(bars, BACK),
            Fold.LENGTHWISE,
            List.of(laid.band("folded").orElseThrow().zone(0, 300)),
            copy(BACK, Form.HALF, "folded", false, 0, 0, 0));
    assertEquals(List.of(), Check.of(marker));
    return marker;
  }

  /** The fold lies on the bar at 480; the first on which 150 have room is at 280. */
  @Test
  void aFoldOnABarMovesByWholeRepeats() {
    assertEquals(280 + 150 + 20, WidthNeeded.mm(barred(480)), 1e-6);
  }

  /** At 580, half way between two bars; so is 180, and before that there is no room for 150. */
  @Test
  void aFoldHalfWayBetweenBarsStaysSo() {
    assertEquals(180 + 150 + 20, WidthNeeded.mm(barred(580)), 1e-6);
  }
}
