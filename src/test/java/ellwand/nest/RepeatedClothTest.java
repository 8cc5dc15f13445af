package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Garments;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Asks;
import ellwand.pattern.Bars;
import ellwand.pattern.Grain;
import ellwand.pattern.Mark;
import ellwand.pattern.Match;
import ellwand.problem.InputException;
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
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Random pieces that ask for their places, on random stripes and checks. */
class RepeatedClothTest {

  private static final List<Fold> FOLDS =
      List.of(Fold.OPEN, Fold.LENGTHWISE, Fold.PART, Fold.DOUBLE, Fold.CROSSWISE, Fold.TURNED);

  /** Every marker keeps every rule, and is no longer than the pieces one behind the other. */
  @Property(tries = 30)
  void everyMarkerIsLegalAndNoLongerThanOneAfterAnother(@ForAll long seed) {
    Random random = new Random(seed);
    Fold fold = FOLDS.get(random.nextInt(FOLDS.size()));
    boolean halfDrop = random.nextInt(4) == 0;
    double along = halfDrop || random.nextInt(3) > 0 ? 20 + random.nextInt(90) : 0;
    double across = halfDrop || along == 0 || random.nextBoolean() ? 20 + random.nextInt(60) : 0;
    boolean evenAlong = fold == Fold.CROSSWISE || random.nextBoolean();
    boolean evenAcross = fold != Fold.OPEN || random.nextBoolean();
    Repeat repeat =
        new Repeat(
            along,
            across,
            halfDrop,
            evenAlong,
            evenAcross,
            random.nextInt(50),
            random.nextInt(50),
            Optional.empty());
    Direction direction =
        fold == Fold.CROSSWISE
            ? Direction.ANY_WAY
            : repeat.headingShows()
                ? Direction.values()[1 + random.nextInt(2)]
                : Direction.values()[random.nextInt(3)];
    Cloth cloth = Trial.cloth(1000, random.nextInt(2) * 3, direction, fold).repeating(repeat);
    int count = 2 + random.nextInt(3);
    List<CutPiece> pieces = new ArrayList<>();
    List<Match> matches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pieces.add(asking(random, "piece " + i));
      if (i > 1 && random.nextBoolean()) {
        // The fold of a half piece wants a bar of its own, on a half drop both ways.
        boolean halves = pieces.stream().anyMatch(p -> p.fold().isPresent());
        if (!(halves && halfDrop)) {
          Bars bars = halves ? Bars.ACROSS : Bars.values()[random.nextInt(3)];
          matches.add(new Match("piece " + i, "at", "piece " + (i - 1), "at", bars));
        }
      }
    }
    List<Wanted> wanted = new ArrayList<>();
    for (int garment = 1; garment <= 1 + random.nextInt(2); garment++) {
      for (CutPiece piece : pieces) {
        wanted.addAll(Trial.wanted(piece, "110", garment));
      }
    }
    List<Flaw> flaws = random.nextInt(3) == 0 ? flaws(random) : List.of();
    Lay lay = new Lay("overall", cloth.flawed(flaws), wanted, matches);
    Marker marker = Nester.nest(lay, fold, Request.of(Effort.ofSteps(40), new Seed(seed)));
    assertEquals(List.of(), Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList());
    double oneAfterAnother = 0;
    for (Wanted w : wanted) {
      oneAfterAnother += 2 * (w.cut().cutting().box().length() + cloth.gapMm() + along);
    }
    double longest =
        pieces.stream().mapToDouble(p -> p.cutting().box().length()).max().orElseThrow();
    // Behind the last flaw, or so far on that none lies where the cloth lies double.
    double lastFlaw = flaws.stream().mapToDouble(f -> f.outline().box().maxX()).max().orElse(0);
    double behindFlaws = flaws.isEmpty() ? 0 : 2 * (lastFlaw + longest + along);
    double most = 2 * oneAfterAnother + behindFlaws;
    assertTrue(marker.clothLengthMm() <= most + 1e-6, () -> marker.clothLengthMm() + " > " + most);
  }

  private static List<Flaw> flaws(Random random) {
    return Stream.generate(
            () ->
                Flaw.round(
                    "hole",
                    new Point(random.nextInt(600), random.nextInt(1020)),
                    5 + random.nextInt(40)))
        .limit(1 + random.nextInt(3))
        .toList();
  }

  /** Checks of 70 mm from 25 mm on, with a hole where the back would lie folded. */
  private static Lay holed(Fold fold, Direction direction) {
    Cloth checks =
        Trial.cloth(1000, 3, direction, fold)
            .repeating(Repeat.even(70, 40, 25, 30))
            .flawed(List.of(Flaw.round("hole", new Point(150, 480), 20)));
    // The apron is wider than half the cloth, and has to lie on a bar.
    return Trial.lay(
        checks,
        Asking.marked(Trial.rectangle("back", "1 on fold", 200, 150), 50, Asking.at(0, 0)),
        Asking.marked(Trial.sloped("front", "pair", 150, 200), 80, Asking.at(0, 0)),
        Asking.marked(Trial.sloped("apron", "1", 300, 700), 100, Asking.at(0, 0)));
  }

  /** Where it is opened behind what lies folded, flaws and bars are met as they come. */
  @ParameterizedTest
  @EnumSource(names = {"LENGTHWISE", "PART", "DOUBLE", "CROSSWISE", "TURNED"})
  void flawedClothWithBarsLiesFoldedAndThenOpened(Fold fold) {
    Lay lay = holed(fold, fold == Fold.TURNED ? Direction.ONE_WAY : Direction.ANY_WAY);
    Marker marker = Nester.nest(lay, fold, Request.of(Effort.ofSteps(100), new Seed(1)));
    assertEquals(List.of(), Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList());
    assertTrue(marker.zones().stream().anyMatch(z -> z.plies() == 2));
    if (fold != Fold.PART) {
      assertTrue(marker.zone("opened").box().minX() > 0);
    }
    // Cut or folded across where bars come to lie on bars.
    double bar = fold == Fold.CROSSWISE ? 25 : 0;
    double across = marker.acrossMm();
    assertTrue(across == 0 || Math.abs(Math.IEEEremainder(across - bar, 70)) < 1e-6, "" + across);
  }

  /** Fronts and backs in pairs, the sides straight; a half as well, opened. */
  @Test
  void bothSidesOfAGarmentMatchOnUnevenStripes() {
    for (String backs : List.of("pair", "1 on fold")) {
      Marker marker =
          laid(lay(uneven(), sided("front", "pair", 200, 0), sided("back", backs, 240, 0)));
      assertEquals(List.of(), Check.of(marker));
    }
  }

  @Test
  void aLeaningSeamMatchesOnlyWhereTheRepeatMirrors() {
    CutPiece front = sided("front", "pair", 200, 60);
    CutPiece back = sided("back", "pair", 240, 60);
    assertEquals(List.of(), Check.of(laid(lay(Repeat.even(0, 40, 0, 0), front, back))));
    InputException refused =
        assertThrows(InputException.class, () -> laid(lay(uneven(), front, back)));
    assertEquals(
        "piece front: side cannot match back.side on stripes along the cloth: the seam leans across"
            + " them, so that they would meet in a mirror, and this repeat has no mirror line."
            + " Ask for bars: across, take cloth with an even repeat, or leave the match out.",
        refused.getMessage());
  }

  /** It matches both ways whatever is asked, so that asking for bars across is no way out. */
  @Test
  void aLeaningSeamOnAnUnevenHalfDropIsNotSentToBarsAcross() {
    CutPiece front = sided("front", "pair", 200, 60);
    CutPiece back = sided("back", "pair", 240, 60);
    Repeat drop = new Repeat(60, 40, true, true, false, 0, 0, Optional.empty());
    InputException refused = assertThrows(InputException.class, () -> laid(lay(drop, front, back)));
    assertTrue(
        refused.getMessage().endsWith(" Take cloth with an even repeat, or leave the match out."),
        refused.getMessage());
  }

  /** Matched halves keep their middle on a bar or half way between two, whichever is shorter. */
  @Test
  void anOpenedHalfMatchesFromEitherMirrorLine() {
    // The cloth has room for the back's middle on one line only, 20 from its edge on.
    Cloth cloth = Trial.cloth(400, 0, Direction.ONE_WAY, Fold.OPEN);
    for (double start : new double[] {10, 30}) {
      Lay lay =
          lay(
              cloth.repeating(Repeat.even(0, 40, 0, start)),
              sided("front", "pair", 120, 0),
              sided("back", "1 on fold", 195, 0));
      assertEquals(List.of(), Check.of(laid(lay)));
    }
  }

  private static Repeat uneven() {
    return new Repeat(0, 40, false, true, false, 0, 0, Optional.empty());
  }

  private static CutPiece sided(String name, String cut, double width, double lean) {
    CutPiece piece =
        Trial.piece(
            name, Grain.ALONG, cut, Trial.points(0, 0, 200, 0, 200, width, 0, width + lean));
    return Asking.marked(piece, List.of(new Mark("side", "e2", 70)), Optional.empty());
  }

  private static Lay lay(Repeat repeat, CutPiece... pieces) {
    return lay(Trial.cloth(1000, 0, Direction.ONE_WAY, Fold.OPEN).repeating(repeat), pieces);
  }

  private static Lay lay(Cloth cloth, CutPiece... pieces) {
    Lay lay = Trial.lay(cloth, pieces);
    Match match = new Match("front", "side", "back", "side", Bars.ALONG);
    return new Lay(lay.style(), cloth, lay.wanted(), List.of(match));
  }

  private static Marker laid(Lay lay) {
    return Nester.nest(lay, Fold.OPEN, Request.of(Effort.ofSteps(10), new Seed(1)));
  }

  private static CutPiece asking(Random random, String name) {
    CutPiece cut = Garments.piece(random, name, 200, 200, "2", "1", "pair", "1 on fold");
    boolean first = name.endsWith("0") || name.endsWith("1");
    // What is cut on the fold has its mark there, so it can only want the bar of the fold.
    boolean onFold = cut.fold().isPresent();
    Optional<Asks.Place> place =
        first && random.nextBoolean()
            ? Asking.at(
                random.nextBoolean() ? random.nextInt(20) : Double.NaN,
                random.nextBoolean() ? (onFold ? 0 : random.nextInt(20)) : Double.NaN)
            : Optional.empty();
    return Asking.marked(cut, random.nextInt((int) cut.cutting().box().length()), place);
  }
}
