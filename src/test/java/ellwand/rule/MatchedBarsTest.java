package ellwand.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.pattern.Bars;
import ellwand.pattern.Grain;
import ellwand.pattern.Mark;
import ellwand.pattern.Match;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * Whether pieces match is seen by sewing them together: each place of the cloth has a colour, and
 * the colours on both sides of a seam are held against each other. Lengths in mm.
 */
class MatchedBarsTest {

  private static final double W = 60;
  private static final double L = 80;
  private static final double SELVEDGE = 10;

  /** Along the side seams, which lie along the cloth or lean outward to the hem. */
  private static CutPiece side(String name, String cut, double width, double lean) {
    CutPiece piece =
        Trial.piece(
            name, Grain.ALONG, cut, Trial.points(0, 0, 300, 0, 300, width, 0, width + lean));
    return Asking.marked(piece, List.of(new Mark("side", "e2", 100)), Optional.empty());
  }

  private static final Match SIDES = new Match("front", "side", "back", "side", Bars.ALONG);

  private static Repeat across(boolean even) {
    return new Repeat(0, W, false, true, even, 0, 17, Optional.empty());
  }

  private static Lay lay(Repeat repeat, Match match, CutPiece... pieces) {
    Cloth cloth = Trial.cloth(3000, 0, Direction.ONE_WAY, Fold.OPEN).repeating(repeat);
    Lay lay = Trial.lay(cloth, pieces);
    return new Lay(lay.style(), lay.cloth(), lay.wanted(), List.of(match));
  }

  private static List<String> told(Lay lay, Copy... copies) {
    return Check.of(Trial.open(lay, 900, copies)).stream().map(f -> f.sentence(Unit.MM)).toList();
  }

  /** Where a place of a drawn piece lies on the open cloth, across from its edge. */
  private static Point on(Copy copy, double x, double y) {
    return copy.motion().apply(new Point(x, y)).plus(new Point(0, SELVEDGE));
  }

  /** How much the colours of two places differ as one goes the same way from both. */
  private static double difference(
      Point one, Point other, double step, ToDoubleFunction<Point> colour) {
    double worst = 0;
    for (double mm = -70; mm <= 70; mm += 7) {
      double a = colour.applyAsDouble(one.plus(new Point(0, mm)));
      double b = colour.applyAsDouble(other.plus(new Point(0, step * mm)));
      worst = Math.max(worst, Math.abs(a - b));
    }
    return worst;
  }

  /** A stripe that fades from one side to the other: no line of it is a mirror line. */
  private static double fading(Point p) {
    double share = (p.y() - 17) / W;
    return share - Math.floor(share + 1e-9);
  }

  /** A stripe that is darkest in the middle of a bar. */
  private static double even(Point p) {
    return Math.cos(2 * Math.PI * (p.y() - 17) / W);
  }

  /**
   * Fronts as drawn and turned over, the back opened: the front as drawn, whose side seam is on its
   * left, is sewn to the right side of the back, and the other front to the other side.
   */
  @Property(tries = 200)
  void unevenStripesGoOnAcrossBothSideSeams(
      @ForAll @IntRange(max = 5) int front,
      @ForAll @IntRange(max = 5) int mirrored,
      @ForAll @IntRange(max = 5) int back) {
    CutPiece fronts = side("front", "pair", 150, 0);
    CutPiece half = side("back", "1 on fold", 170, 0);
    Lay lay = lay(across(false), SIDES, fronts, half);
    Copy asDrawn = Trial.copy(fronts, Form.WHOLE, "open", false, 0, 0, 300 + 10 * front);
    Copy over = Trial.copy(fronts, Form.WHOLE, "open", true, 0, 0, 600 + 10 * mirrored);
    Copy opened = Trial.copy(half, Form.OPENED, "open", false, 0, 0, 900 + 10 * back);
    double right =
        difference(on(asDrawn, 200, 150), on(opened, 200, -170), 1, MatchedBarsTest::fading);
    double left = difference(on(over, 200, 150), on(opened, 200, 170), 1, MatchedBarsTest::fading);
    List<String> told = told(lay, asDrawn, over, opened);
    int off = (right > 1e-6 ? 1 : 0) + (left > 1e-6 ? 1 : 0);
    assertEquals(off, told.size(), () -> told.toString());
  }

  @Test
  void bothSidesOfAGarmentMatchOnUnevenStripes() {
    CutPiece fronts = side("front", "pair", 150, 0);
    CutPiece half = side("back", "1 on fold", 170, 0);
    Lay lay = lay(across(false), SIDES, fronts, half);
    // The back's sides lie 5 and 345 from where it begins at 900, the fronts' 150 and 0.
    Copy opened = Trial.copy(half, Form.OPENED, "open", false, 0, 0, 900);
    Copy asDrawn = Trial.copy(fronts, Form.WHOLE, "open", false, 0, 0, 900 - 150 - 3 * 60);
    Copy over = Trial.copy(fronts, Form.WHOLE, "open", true, 0, 0, 900 + 340 + 120);
    assertEquals(List.of(), told(lay, asDrawn, over, opened));
    // On the same places of the repeat as drawn, the stripes would run against each other.
    Copy mirrored = Trial.copy(fronts, Form.WHOLE, "open", true, 0, 0, 900 + 340 + 130);
    assertEquals(
        List.of("Front does not match back: side and side lie 10.0 mm apart in the repeat."),
        told(lay, asDrawn, mirrored, opened));
  }

  @Test
  void aMatchMayMissByHalfAMillimetreUnlessTheRepeatSaysOther() {
    CutPiece fronts = side("front", "pair", 150, 0);
    CutPiece half = side("back", "1 on fold", 170, 0);
    // As above.
    Copy opened = Trial.copy(half, Form.OPENED, "open", false, 0, 0, 900);
    Copy asDrawn = Trial.copy(fronts, Form.WHOLE, "open", false, 0, 0, 900 - 150 - 3 * 60);
    for (boolean strict : new boolean[] {false, true}) {
      Repeat repeat = strict ? across(false).matchingWithin(0.1) : across(false);
      for (double off : new double[] {0, 0.45, 0.55}) {
        Copy over = Trial.copy(fronts, Form.WHOLE, "open", true, 0, 0, 900 + 340 + 120 + off);
        assertEquals(
            off > (strict ? 0.1 : 0.5) ? 1 : 0,
            told(lay(repeat, SIDES, fronts, half), asDrawn, over, opened).size());
      }
    }
  }

  /** Bars that meet at a leaning seam do so all along it: a chevron. */
  @Property(tries = 200)
  void evenStripesMeetAllAlongALeaningSeam(
      @ForAll @IntRange(max = 5) int front, @ForAll @IntRange(max = 5) int back) {
    CutPiece fronts = side("front", "pair", 150, 90);
    CutPiece backs = side("back", "pair", 170, 90);
    Lay lay = lay(across(true), SIDES, fronts, backs);
    List<Copy> copies = new ArrayList<>();
    for (boolean over : new boolean[] {false, true}) {
      double from = over ? 1500 : 0;
      // Mirrored about the middle of a bar, 17 - 10 + 60 k from the first cuttable line.
      copies.add(
          Trial.copy(
              fronts, Form.WHOLE, "open", over, 0, 0, from + mirrored(over, 10 * front, 240)));
      copies.add(
          Trial.copy(
              backs, Form.WHOLE, "open", over, 0, 0, from + 600 + mirrored(over, 10 * back, 260)));
    }
    // Down the seam both are 90 further out over 300: the back is turned over, and runs the other
    // way.
    double off =
        difference(
            on(copies.get(0), 200, 180), on(copies.get(3), 200, 200), -1, MatchedBarsTest::even);
    List<String> told = told(lay, copies.toArray(Copy[]::new));
    assertEquals(off < 1e-6, told.isEmpty(), () -> off + " " + told);
  }

  /** Where the low side of a copy lies, so that both hands count alike from a bar. */
  private static double mirrored(boolean over, double mm, double width) {
    double first = 17 - SELVEDGE;
    return over ? first + 300 - (mm + width) : first + mm;
  }

  /** A yoke is sewn on as it is drawn: both plies of the seam are of one hand. */
  @Property(tries = 200)
  void unevenStripesGoOnOverAYoke(
      @ForAll @IntRange(max = 5) int below, @ForAll @IntRange(max = 5) int above) {
    CutPiece skirt =
        Asking.marked(
            Trial.sloped("front", "pair", 300, 150),
            List.of(new Mark("side", "e3", 50)),
            Optional.empty());
    CutPiece yoke =
        Asking.marked(
            Trial.piece("back", Grain.ALONG, "pair", Trial.points(0, 0, 90, 0, 90, 150, 0, 150)),
            List.of(new Mark("side", "e1", 100)),
            Optional.empty());
    Lay lay = lay(across(false), SIDES, skirt, yoke);
    Copy skirtAsDrawn = Trial.copy(skirt, Form.WHOLE, "open", false, 0, 0, 10 * below);
    Copy skirtOver = Trial.copy(skirt, Form.WHOLE, "open", true, 0, 0, 600);
    Copy yokeAsDrawn = Trial.copy(yoke, Form.WHOLE, "open", false, 0, 0, 1200 + 10 * above);
    Copy yokeOver = Trial.copy(yoke, Form.WHOLE, "open", true, 0, 0, 1800);
    double off =
        difference(on(skirtAsDrawn, 0, 100), on(yokeAsDrawn, 90, 100), 1, MatchedBarsTest::fading);
    List<String> told = told(lay, skirtAsDrawn, skirtOver, yokeAsDrawn, yokeOver);
    assertEquals(off < 1e-6, told.isEmpty(), () -> off + " " + told);
  }

  /**
   * A print that shows the same a column on and half a repeat further, and nowhere else: two counts
   * of the repeat that every such step adds whole numbers to.
   */
  private static double print(Point p) {
    double slanting = p.x() / L + p.y() / (2 * W);
    double across = p.y() / W;
    return Math.rint(1000 * (slanting - Math.floor(slanting + 1e-9)))
        + (across - Math.floor(across + 1e-9));
  }

  /** Marks at 200: in the same column, or half a repeat further along in the next. */
  @Property(tries = 200)
  void aHalfDropIsMetInEitherColumn(
      @ForAll @IntRange(max = 3) int along,
      @ForAll @IntRange(max = 5) int across,
      @ForAll boolean uneven) {
    CutPiece front = side("front", "pair", 150, 0);
    CutPiece back = side("back", "pair", 170, 0);
    Repeat drop = new Repeat(L, W, true, true, !uneven, 13, 17, Optional.empty());
    Lay lay = lay(drop, SIDES, front, back);
    Copy asDrawn = Trial.copy(front, Form.WHOLE, "open", false, 0, 0, 10);
    Copy over = Trial.copy(front, Form.WHOLE, "open", true, 0, 400, 10);
    // Met when the seams are 0 or 60 + 120 k apart.
    double x = 20 * along;
    double y = 160 + 240 + 20 * across;
    Copy backOver = Trial.copy(back, Form.WHOLE, "open", true, 0, x, y);
    Copy backAsDrawn =
        Trial.copy(back, Form.WHOLE, "open", false, 0, 400 + x, 10 - 170 + 960 - 20 * across);
    double right =
        difference(on(asDrawn, 200, 150), on(backOver, 200, 170), 1, MatchedBarsTest::print);
    double left =
        difference(on(over, 200, 150), on(backAsDrawn, 200, 170), 1, MatchedBarsTest::print);
    List<String> told = told(lay, asDrawn, over, backOver, backAsDrawn);
    int off = (right > 1e-6 ? 1 : 0) + (left > 1e-6 ? 1 : 0);
    assertEquals(off, told.size(), () -> right + " " + left + " " + told);
  }

  /**
   * On folded cloth a front that is turned over is as drawn on the upper ply, and its twin below is
   * wasted: the front that is kept matches the back, not the twin.
   */
  @Test
  void ofAPieceWhoseTwinIsWastedTheOneThatIsKeptMatches() {
    CutPiece front = side("front", "1", 150, 0);
    CutPiece half = side("back", "1 on fold", 170, 0);
    Cloth cloth = Trial.cloth(3000, 0, Direction.ONE_WAY, Fold.LENGTHWISE).repeating(across(true));
    Lay lay = new Lay("smock", cloth, Trial.lay(cloth, front, half).wanted(), List.of(SIDES));
    double fold = cloth.nearestMirrorMm(1500);
    Copy opened = Trial.copy(half, Form.OPENED, "folded", false, 0, 0, 900);
    int met = 0;
    for (double mm = 0; mm < W; mm++) {
      Copy over = Trial.copy(front, Form.WHOLE, "folded", true, 0, 400, mm);
      Point kept = new Point(0, SELVEDGE + fold - over.motion().apply(new Point(200, 150)).y());
      Point right = new Point(0, SELVEDGE + fold + opened.motion().apply(new Point(200, -170)).y());
      boolean meets = difference(kept, right, 1, MatchedBarsTest::even) < 1e-6;
      met += meets ? 1 : 0;
      List<String> told =
          Check.of(Trial.folded(lay, 800, 800, opened, over)).stream()
              .map(f -> f.sentence(Unit.MM))
              .toList();
      assertEquals(meets ? 0 : 1, told.size(), () -> told.toString());
    }
    assertEquals(1, met);
  }
}
