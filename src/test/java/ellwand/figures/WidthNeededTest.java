package ellwand.figures;

import static ellwand.rule.Trial.copy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Garments;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Nester;
import ellwand.rule.Asking;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class WidthNeededTest {

  private static final CutPiece BACK = Trial.rectangle("back", "1 on fold", 300, 150);

  private static final CutPiece OTHER = Trial.rectangle("yoke", "1 on fold", 300, 100);

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

  private static Marker plain(Fold fold, double line, Copy... copies) {
    Cloth cloth = Trial.cloth(1200, 0, Direction.ANY_WAY, fold);
    List<Zone> zones =
        LaidCloth.of(cloth, fold, line).stretches().get(0).stream()
            .map(band -> band.zone(0, 300))
            .toList();
    Marker marker = Trial.marker(Trial.lay(cloth, BACK, OTHER), fold, zones, copies);
    assertEquals(List.of(), Check.of(marker));
    return marker;
  }

  /** 150 double, the selvedge that is turned in, and the 200 of what lies single. */
  @Test
  void aPartFoldIsNoDeeperThanWhatLiesOnIt() {
    Marker marker =
        plain(
            Fold.PART,
            220,
            copy(BACK, Form.HALF, "folded", false, 0, 0, 0),
            copy(OTHER, Form.OPENED, "single", false, 0, 0, 600));
    assertEquals(2 * 150 + 10 + 200 + 20, WidthNeeded.mm(marker), 0.011);
  }

  /** 150 beside the first fold and 100 beside the second, and both selvedges between them. */
  @Test
  void theEdgesOfADoubleFoldMeetBetweenWhatLiesOnIt() {
    Marker marker =
        plain(
            Fold.DOUBLE,
            300,
            copy(BACK, Form.HALF, "first fold", false, 0, 0, 0),
            copy(OTHER, Form.HALF, "second fold", false, 180, 0, 510));
    assertEquals(2 * (150 + 100 + 10) + 20, WidthNeeded.mm(marker), 0.011);
  }

  /** Turned cloth is narrowest here with what lies double one repeat farther from the edge. */
  @Test
  void whatLiesDoubleMayMoveAwayFromTheEdge() {
    theMarkerCanBeHadOnTheWidthNeededAndOnNoLess(-124557);
  }

  /** A mirror line on the edge is none to fold at, though nothing lies on what is folded. */
  @Test
  void noFoldIsOnTheEdge() {
    theMarkerCanBeHadOnTheWidthNeededAndOnNoLess(681);
    theMarkerCanBeHadOnTheWidthNeededAndOnNoLess(3335);
  }

  /** By trying every fold and every shift. */
  @Property(tries = 60)
  void theMarkerCanBeHadOnTheWidthNeededAndOnNoLess(@ForAll long seed) {
    Random random = new Random(seed);
    Fold fold =
        List.of(Fold.OPEN, Fold.LENGTHWISE, Fold.PART, Fold.DOUBLE, Fold.CROSSWISE, Fold.TURNED)
            .get(random.nextInt(6));
    boolean halfDrop = random.nextInt(5) == 0;
    Repeat repeat =
        new Repeat(
            halfDrop ? 60 : 0,
            20 + random.nextInt(120),
            halfDrop,
            true,
            true,
            0,
            random.nextInt(80),
            Optional.empty());
    Direction direction = fold == Fold.CROSSWISE ? Direction.ANY_WAY : Direction.ONE_WAY;
    Lay lay =
        new Lay(
            "smock",
            Trial.cloth(1000, 3, direction, fold).repeating(repeat),
            IntStream.range(0, 1 + random.nextInt(4))
                .mapToObj(i -> asking(random, "piece " + i))
                .flatMap(piece -> Trial.wanted(piece, "110", 1).stream())
                .toList());
    Marker marker = Nester.nest(lay, fold, Request.of(Effort.ofSteps(5), new Seed(1)));
    // What nothing lies double on is open cloth, whatever it was to be.
    Assume.that(fold == Fold.OPEN || marker.zones().stream().anyMatch(z -> z.plies() == 2));
    double needed = WidthNeeded.mm(marker);
    assertTrue(needed <= 1020 + 1e-6, "" + needed);
    assertTrue(Narrowed.possible(marker, needed), fold + " on " + needed);
    for (int less : new int[] {1, 3, 10}) {
      assertFalse(Narrowed.possible(marker, needed - less), fold + " on less than " + needed);
    }
  }

  /** What is cut on the fold may ask for the bar of the fold only. */
  private static CutPiece asking(Random random, String name) {
    CutPiece cut = Garments.piece(random, name, 200, 200, "2", "1", "pair", "1 on fold");
    return Asking.marked(
        cut, 20, Asking.at(Double.NaN, cut.fold().isPresent() ? 0 : random.nextInt(20)));
  }
}
