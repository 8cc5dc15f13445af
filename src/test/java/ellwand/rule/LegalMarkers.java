package ellwand.rule;

import static ellwand.rule.Trial.copy;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cutting.CutPiece;
import ellwand.lay.Form;
import ellwand.lay.Marker;

/** Two markers with one of everything, both legal. */
public final class LegalMarkers {

  public static final CutPiece BACK = Trial.rectangle("back", "1 on fold", 300, 150);
  public static final CutPiece SLEEVE = Trial.sloped("sleeve", "pair", 200, 150);
  public static final CutPiece FRONT = Trial.sloped("front", "1", 300, 200);
  public static final CutPiece YOKE = Trial.rectangle("yoke", "2", 100, 80);

  private LegalMarkers() {}

  public static Marker open(Direction direction) {
    return Trial.open(
        Trial.lay(Trial.cloth(1000, 0, direction, Fold.OPEN), BACK, SLEEVE, FRONT, YOKE),
        800,
        copy(BACK, Form.OPENED, "open", false, 0, 0, 0),
        copy(SLEEVE, Form.WHOLE, "open", false, 0, 0, 300),
        copy(SLEEVE, Form.WHOLE, "open", true, 0, 0, 450),
        copy(FRONT, Form.WHOLE, "open", false, 0, 300, 0),
        copy(YOKE, Form.WHOLE, "open", false, 0, 600, 0),
        copy(YOKE, Form.WHOLE, "open", true, 0, 600, 80));
  }

  /** The second yoke lies on the opened stretch; the front wastes its twin. */
  public static Marker folded(Direction direction) {
    return Trial.folded(
        Trial.lay(Trial.cloth(1000, 0, direction, Fold.LENGTHWISE), BACK, SLEEVE, FRONT, YOKE),
        700,
        900,
        copy(BACK, Form.HALF, "folded", false, 0, 0, 0),
        copy(SLEEVE, Form.PAIR, "folded", false, 0, 0, 200),
        copy(FRONT, Form.WHOLE, "folded", true, 0, 300, 0),
        copy(YOKE, Form.WHOLE, "folded", false, 0, 600, 0),
        copy(YOKE, Form.WHOLE, "opened", false, 0, 700, 900));
  }
}
