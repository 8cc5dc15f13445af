package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Garments;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.pose.NoRoomException;
import ellwand.pattern.Cut;
import ellwand.rule.Asking;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The width that is told is enough, and a step less is not. */
class WidthEnoughTest {

  private static final double STEP_MM = 10;

  /** 500 mm between selvedges of 10 mm. */
  private static Cloth narrow(Direction direction, Fold fold) {
    return Trial.cloth(500, 0, direction, fold);
  }

  private static Lay wide(Lay lay, double widthMm) {
    return lay.on(lay.cloth().wide(widthMm));
  }

  private static Marker nested(Lay lay, Fold fold) {
    return Nester.nest(lay, fold, Request.of(Effort.ofSteps(5), new Seed(1)));
  }

  private static void assertEnough(double widthMm, Lay lay, Fold fold) {
    assertEquals(OptionalDouble.of(widthMm), WidthEnough.mm(lay, List.of(fold), STEP_MM));
    assertEquals(
        List.of(),
        Check.of(nested(wide(lay, widthMm), fold)).stream().map(f -> f.sentence(Unit.MM)).toList());
    assertThrows(NoRoomException.class, () -> nested(wide(lay, widthMm - STEP_MM), fold));
  }

  @Test
  void openClothIsAsWideAsItsWidestPiece() {
    Lay lay =
        Trial.lay(
            narrow(Direction.ANY_WAY, Fold.OPEN),
            Trial.rectangle("apron", "1", 300, 603),
            Trial.rectangle("cape", "1 on fold", 300, 405));
    assertEnough(830, lay, Fold.OPEN);
  }

  /** Nothing can be opened, so that both plies need room for the pair. */
  @Test
  void aStackOfFoldedPliesIsTwiceAsWide() {
    Lay lay =
        Trial.lay(
            narrow(Direction.ANY_WAY, Fold.LENGTHWISE),
            Trial.sloped("sleeve", "pair", 300, 401),
            Trial.rectangle("back", "1 on fold", 300, 299));
    assertEnough(830, lay, Fold.STACKED);
  }

  /** Bars 200 mm apart from 90 mm beside the edge on: the mark lies 20 beyond one, or 40. */
  @Test
  void aBarHasToLieWhereThePieceWantsIt() {
    Cloth bars =
        narrow(Direction.ONE_WAY, Fold.OPEN)
            .repeating(new Repeat(0, 200, false, true, true, 0, 90, Optional.empty()));
    Lay lay =
        Trial.lay(
            bars,
            Asking.marked(Trial.sloped("apron", "1", 300, 450), 50, Asking.at(Double.NaN, 40)));
    // Its low side, where the mark is, lies at 130 from the edge; its high side at 580.
    assertEnough(590, lay, Fold.OPEN);
  }

  /** Bars so far apart that the first line to fold at lies 590 mm from the first cuttable. */
  @Test
  void aFoldNeedsALineToFoldAt() {
    Cloth bars = narrow(Direction.ANY_WAY, Fold.LENGTHWISE).repeating(Repeat.even(0, 1200, 0, 0));
    Lay lay = Trial.lay(bars, Trial.sloped("sleeve", "pair", 300, 95));
    assertEnough(620, lay, Fold.LENGTHWISE);
    // Without an opened stretch the narrower side needs room for the pair.
    assertEnough(710, lay, Fold.STACKED);
  }

  @Test
  void whatNoClothIsWideEnoughForHasNone() {
    Lay lay =
        Trial.lay(narrow(Direction.ANY_WAY, Fold.OPEN), Trial.rectangle("sail", "1", 300, 4000));
    assertEquals(OptionalDouble.empty(), WidthEnough.mm(lay, List.of(Fold.OPEN), STEP_MM));
    assertFalse(WidthEnough.hasRoom(lay, Fold.OPEN));
  }

  private static boolean whole(CutPiece piece) {
    return piece.piece().cuts().stream().anyMatch(cut -> cut.how() == Cut.How.WHOLE);
  }

  /**
   * Two alike come off both plies at once there, the lower mirrored, on the other side of a bar.
   */
  @Test
  void whatWantsAPlaceBesideABarCannotBeCutTwiceInAStack() {
    Cloth bars = narrow(Direction.ONE_WAY, Fold.LENGTHWISE).repeating(Repeat.even(0, 30, 0, 28));
    Lay lay =
        Trial.lay(
            bars,
            Asking.marked(Trial.rectangle("yoke", "2", 209, 424), 20, Asking.at(Double.NaN, 5)));
    assertEquals(OptionalDouble.empty(), WidthEnough.mm(lay, List.of(Fold.STACKED), STEP_MM));
    assertTrue(WidthEnough.mm(lay, List.of(Fold.LENGTHWISE), STEP_MM).isPresent());
  }

  @Property(tries = 40)
  void theWidthToldIsEnoughAndAStepLessIsNot(@ForAll long seed) {
    Random random = new Random(seed);
    Fold fold =
        List.of(Fold.OPEN, Fold.LENGTHWISE, Fold.STACKED, Fold.PART, Fold.DOUBLE, Fold.TURNED)
            .get(random.nextInt(6));
    Cloth cloth = narrow(Direction.ONE_WAY, fold.asOnePly());
    boolean barred = random.nextBoolean();
    if (barred) {
      int across = 20 + random.nextInt(200);
      boolean halfDrop = random.nextInt(4) == 0;
      cloth =
          cloth.repeating(
              new Repeat(
                  halfDrop ? 70 : 0,
                  across,
                  halfDrop,
                  true,
                  true,
                  0,
                  random.nextInt(50),
                  Optional.empty()));
    }
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      CutPiece piece =
          Garments.piece(random, "piece " + i, 200, 600, "2", "1", "pair", "1 on fold");
      CutPiece asking =
          barred && random.nextBoolean() && !(fold == Fold.STACKED && whole(piece))
              ? Asking.marked(
                  piece,
                  20,
                  Asking.at(Double.NaN, piece.fold().isPresent() ? 0 : random.nextInt(20)))
              : piece;
      wanted.addAll(Trial.wanted(asking, "110", 1));
    }
    Lay lay = new Lay("smock", cloth, wanted);
    boolean enough = WidthEnough.hasRoom(lay, fold);
    if (enough) {
      nested(lay, fold);
    } else {
      assertThrows(NoRoomException.class, () -> nested(lay, fold));
      OptionalDouble told = WidthEnough.mm(lay, List.of(fold), STEP_MM);
      assertTrue(told.isPresent());
      assertEnough(told.getAsDouble(), lay, fold);
    }
  }
}
