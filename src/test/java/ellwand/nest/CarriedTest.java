package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Grain;
import ellwand.rule.Check;
import ellwand.rule.LegalMarkers;
import ellwand.rule.Trial;
import ellwand.units.Length;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Markers that are carried over to cloth that lies otherwise. */
class CarriedTest {

  private static final double ROUNDING_MM = 1e-6;

  private static Lay lay(Random dice, Cloth cloth) {
    List<Wanted> wanted = new ArrayList<>();
    int garments = 1 + dice.nextInt(2);
    List<CutPiece> cuts = new ArrayList<>();
    for (int i = 0; i <= dice.nextInt(4); i++) {
      double length = 100 + dice.nextInt(400);
      double width = 60 + dice.nextInt(300);
      String name = "piece " + i;
      cuts.add(
          switch (dice.nextInt(4)) {
            case 0 -> Trial.rectangle(name, "1 on fold", length, width);
            case 1 -> Trial.sloped(name, "pair", length, width);
            case 2 -> Trial.rectangle(name, Integer.toString(1 + dice.nextInt(3)), length, width);
            default ->
                Trial.piece(
                    name,
                    Grain.ALONG,
                    dice.nextBoolean() ? "1" : "2 on fold",
                    Trial.points(0, 0, length, 0, length * 0.7, width, length * 0.2, width));
          });
    }
    for (int garment = 1; garment <= garments; garment++) {
      for (CutPiece cut : cuts) {
        wanted.addAll(Trial.wanted(cut, "110", garment));
      }
    }
    return new Lay("tabard", cloth, wanted);
  }

  private static Request request(int steps) {
    return Request.of(Effort.ofSteps(steps), new Seed(1));
  }

  private static void legal(Marker marker) {
    assertEquals(List.of(), Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList());
  }

  @Test
  void everythingLiesOpenOnThePlyItIsCutFrom() {
    Marker folded = LegalMarkers.folded(Direction.ONE_WAY);
    Marker both =
        folded.of(
            folded.lay().on(Trial.cloth(1000, 0, Direction.ONE_WAY, Fold.LENGTHWISE, Fold.OPEN)));
    Marker open = Carried.opened(both).orElseThrow();
    legal(open);
    assertEquals(both.clothLengthMm(), open.clothLengthMm(), ROUNDING_MM);
    // One back, two sleeves, one front and two yokes, of which one lay opened.
    assertEquals(6, open.copies().size());
  }

  @Test
  void doesNotOpenWhatMayNotLieOpen() {
    assertEquals(Optional.empty(), Carried.opened(LegalMarkers.folded(Direction.ONE_WAY)));
  }

  /** As far as it takes no gap: that both of a pair may touch at the fold. */
  @Property(tries = 12)
  void openNeverTakesMoreThanFolded(
      @ForAll Direction direction, @ForAll @IntRange(max = 9999) int number) {
    Random dice = new Random(number);
    List<Fold> folds =
        Cloth.anyFold(false, direction).stream().filter(f -> dice.nextInt(3) > 0).toList();
    Cloth cloth =
        Trial.cloth(
            900 + dice.nextInt(400),
            0,
            direction,
            Fold.OPEN,
            Fold.LENGTHWISE,
            Fold.CROSSWISE,
            Fold.TURNED,
            Fold.PART,
            Fold.DOUBLE);
    List<Fold> tried = new ArrayList<>(cloth.possibleFolds());
    tried.retainAll(folds);
    if (!tried.contains(Fold.OPEN)) {
      tried.add(Fold.OPEN);
    }
    List<Tried> all = Nester.nest(lay(dice, cloth), tried, request(8));
    double open =
        all.stream()
            .filter(t -> t.fold() == Fold.OPEN)
            .findFirst()
            .flatMap(Tried::marker)
            .orElseThrow()
            .clothLengthMm();
    for (Tried one : all) {
      one.marker().ifPresent(CarriedTest::legal);
      one.marker()
          .ifPresent(m -> assertTrue(open <= m.clothLengthMm() + ROUNDING_MM, one.fold().words()));
    }
  }

  /** Both of a pair would touch where the cloth was folded, so they are moved apart. */
  @Test
  void opensWithTheGapThatIsAskedFor() {
    CutPiece side = Trial.sloped("side", "pair", 500, 480);
    Cloth cloth = Trial.cloth(1000, 4, Direction.ONE_WAY, Fold.LENGTHWISE, Fold.OPEN);
    Marker folded =
        Nester.nest(Trial.lay(cloth, side), List.of(Fold.LENGTHWISE), request(1))
            .get(0)
            .marker()
            .orElseThrow();
    Box box = folded.copies().get(0).outline().box();
    // One of the two is the fold, the other the selvedges.
    for (double across : List.of(-box.minY(), 500 - box.maxY())) {
      List<Copy> atEdge = folded.copies().stream().map(copy -> copy.shifted(0, across)).toList();
      Marker touching = new Marker(folded.lay(), folded.fold(), folded.zones(), atEdge);
      legal(touching);
      Marker open = Carried.opened(touching).orElseThrow();
      legal(open);
      assertEquals(2, open.copies().size());
      assertEquals(touching.clothLengthMm(), open.clothLengthMm(), ROUNDING_MM);
    }
  }

  /** Nothing but the gap at the fold makes it longer, and that is told. */
  @Property(tries = 24)
  void openTakesMoreThanFoldedOnlyForTheGapAtTheFold(
      @ForAll Direction direction, @ForAll @IntRange(max = 9999) int number) {
    Random dice = new Random(number);
    Cloth cloth =
        Trial.cloth(
            900 + dice.nextInt(400),
            1 + dice.nextInt(12),
            direction,
            Fold.OPEN,
            Fold.LENGTHWISE,
            Fold.CROSSWISE,
            Fold.PART,
            Fold.DOUBLE);
    List<Tried> all = Nester.nest(lay(dice, cloth), cloth.possibleFolds(), request(8));
    Tried open = all.stream().filter(t -> t.fold() == Fold.OPEN).findFirst().orElseThrow();
    legal(open.marker().orElseThrow());
    for (Tried one : all) {
      one.marker()
          .filter(open::isLongerThan)
          .ifPresent(
              shorter -> {
                String why = Carried.inTheWay(shorter, Unit.MM).orElseThrow();
                assertTrue(
                    why.contains("the gap of " + new Length(cloth.gapMm()).show(Unit.MM)), why);
                legal(withoutGap(Carried.unfolded(shorter).orElseThrow()));
                assertTrue(
                    one.fold() != Fold.CROSSWISE
                        || open.marker().orElseThrow().clothLengthMm()
                            <= shorter.clothLengthMm() + cloth.gapMm() + ROUNDING_MM);
              });
    }
  }

  private static Marker withoutGap(Marker marker) {
    Cloth cloth = marker.lay().cloth();
    return marker.of(
        marker.lay().on(Trial.cloth(cloth.usableWidthMm(), 0, cloth.direction(), Fold.OPEN)));
  }

  /** Both of a pair touch the fold, 300 mm wide each. */
  private static Marker touchingTheFold(double widthMm, Fold fold) {
    CutPiece side = Trial.rectangle("side", "pair", 500, 300);
    Cloth cloth = Trial.cloth(widthMm, 5, Direction.ONE_WAY, Fold.OPEN, fold);
    Marker folded =
        Nester.nest(Trial.lay(cloth, side), List.of(fold), request(8))
            .get(0)
            .marker()
            .orElseThrow();
    double low = folded.copies().get(0).outline().box().minY();
    double foldMm = folded.zones().get(0).foldEdges().contains(Zone.Side.LOW_Y) ? 0 : widthMm / 2;
    double up = foldMm == 0 ? -low : foldMm - 300 - low;
    return folded.with(List.of(folded.copies().get(0).shifted(0, up)));
  }

  @Test
  void movesWhatTouchedTheFoldOffItWhereThereIsRoom() {
    Marker folded = touchingTheFold(605, Fold.LENGTHWISE);
    Marker open = Carried.opened(folded).orElseThrow();
    legal(open);
    assertEquals(folded.clothLengthMm(), open.clothLengthMm(), ROUNDING_MM);
    assertEquals(Optional.empty(), Carried.inTheWay(folded, Unit.MM));
  }

  @Test
  void tellsThatTheWidthHasNoRoomForTheGapAtTheFold() {
    Marker folded = touchingTheFold(604, Fold.LENGTHWISE);
    legal(folded);
    assertEquals(Optional.empty(), Carried.opened(folded));
    assertEquals(
        Optional.of(
            "opened flat, the shorter way has no room for the gap of 5 mm where the fold was"),
        Carried.inTheWay(folded, Unit.MM));
  }

  /** In every way of laying, whatever gap there is. */
  @Property(tries = 12)
  void narrowMarkersLieOnWiderCloth(
      @ForAll Direction direction, @ForAll Fold fold, @ForAll @IntRange(max = 9999) int number) {
    Random dice = new Random(number);
    Cloth narrow =
        Trial.cloth(900 + dice.nextInt(400), dice.nextInt(6), direction, fold.asOnePly());
    if (fold == Fold.TUBULAR || narrow.barred(fold).isPresent()) {
      return;
    }
    Lay lay = lay(dice, narrow);
    if (!WidthEnough.hasRoom(lay, fold)) {
      return;
    }
    Marker marker = Nester.nest(lay, fold, request(8));
    Cloth wide = narrow.wide(narrow.widthMm() + 1 + dice.nextInt(300));
    Marker carried = Carried.onto(lay.on(wide), marker).orElseThrow();
    assertEquals(marker.clothLengthMm(), carried.clothLengthMm(), ROUNDING_MM);
    assertEquals(wide.widthMm(), carried.lay().cloth().widthMm());
  }
}
