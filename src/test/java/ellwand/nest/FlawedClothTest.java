package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Garments;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Flaw;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Random pieces on random cloth with flaws, however it lies. */
class FlawedClothTest {

  private static final double WIDTH_MM = 900;

  /** Plies for an order are not spread over flaws. */
  private static final List<Fold> FOLDS =
      Arrays.stream(Fold.values()).filter(f -> f == f.asOnePly()).toList();

  /** The gap counts between pieces only: two stains leave 100 mm for bands 99 mm wide. */
  @Test
  void aPieceMayTouchAFlaw() {
    CutPiece band = Trial.rectangle("band", "2", 300, 99);
    List<Flaw> stains =
        List.of(
            new Flaw("stain", Outline.of(Trial.points(0, 0, 900, 0, 900, 60, 0, 60))),
            new Flaw("stain", Outline.of(Trial.points(0, 160, 900, 160, 900, 220, 0, 220))));
    Cloth cloth = Trial.cloth(200, 10, Direction.ANY_WAY, Fold.OPEN).flawed(stains);
    Marker marker =
        Nester.nest(
            Trial.lay(cloth, band), Fold.OPEN, Request.of(Effort.ofSteps(200), new Seed(1)));
    assertEquals(List.of(), Check.of(marker));
    // Beyond the stains the first would end at 1200.
    assertTrue(marker.lengthMm() < 620, () -> "" + marker.lengthMm());
  }

  /** Every marker keeps every rule, and is no longer than the copies one after another. */
  @Property(tries = 40)
  void everyMarkerIsLegalAndNoLongerThanOneAfterAnother(@ForAll long seed) {
    Random random = new Random(seed);
    Fold fold = FOLDS.get(random.nextInt(FOLDS.size()));
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(4); i++) {
      wanted.addAll(Trial.wanted(foldable(random, i), "110", 1));
    }
    Lay lay = new Lay("tabard", cloth(random, fold), wanted);
    Marker marker = Nester.nest(lay, fold, Request.of(Effort.ofSteps(40), new Seed(seed)));
    assertEquals(List.of(), Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList());
    assertTrue(
        marker.clothLengthMm() <= OneAfterAnother.clothMm(lay, fold) + 1e-6,
        () -> fold + " " + marker.clothLengthMm() + " " + OneAfterAnother.clothMm(lay, fold));
  }

  /** The first is a half piece, since no other asks for a part fold. */
  private static CutPiece foldable(Random random, int index) {
    String[] cuts = {"2", "pair", "1 on fold"};
    String[] half = {"1 on fold"};
    return Garments.piece(random, "piece " + index, 250, 250, index == 0 ? half : cuts);
  }

  private static Cloth cloth(Random random, Fold fold) {
    List<Flaw> flaws = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(4); i++) {
      Point at = new Point(random.nextInt(800), random.nextInt(920));
      flaws.add(
          random.nextBoolean()
              ? Flaw.round("hole", at, 5 + random.nextInt(60))
              : new Flaw(
                  "torn",
                  Outline.of(
                      List.of(
                          at,
                          at.plus(new Point(30 + random.nextInt(90), random.nextInt(20))),
                          at.plus(new Point(random.nextInt(20), 30 + random.nextInt(90)))))));
    }
    if (random.nextBoolean()) {
      flaws.add(
          Flaw.cutEnd(
              List.of(
                  new Point(random.nextInt(60), 0),
                  new Point(random.nextInt(60), 400),
                  new Point(random.nextInt(60), WIDTH_MM + 20))));
    }
    boolean tubular = fold == Fold.TUBULAR;
    Direction direction =
        fold == Fold.CROSSWISE
            ? Direction.ANY_WAY
            : Direction.values()[random.nextInt(Direction.values().length)];
    return new Cloth(
            "main",
            Goods.wide(tubular ? WIDTH_MM / 2 : WIDTH_MM + 20)
                .selvedge(tubular ? 0 : 10)
                .tube(tubular),
            Laying.in(fold).heading(direction).gap(random.nextInt(3) * 2).ends(40),
            Selling.inSteps(50).at(8, "EUR"))
        .flawed(flaws);
  }
}
