package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Garments;
import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Laying;
import ellwand.cloth.Selling;
import ellwand.cloth.Zone;
import ellwand.cutting.CutPiece;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.choice.Choices;
import ellwand.nest.choice.FirstPlan;
import ellwand.nest.choice.LayPlan;
import ellwand.nest.pose.Station;
import ellwand.nest.repeat.Phases;
import ellwand.nest.stretch.Decision;
import ellwand.pattern.Cut;
import ellwand.pattern.Grain;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FoldedClothTest {

  private static Marker nested(Lay lay, Fold fold, int steps) {
    Marker marker = Nester.nest(lay, fold, Request.of(Effort.ofSteps(steps), new Seed(1)));
    assertEquals(List.of(), Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList());
    return marker;
  }

  private static Cloth cloth(double usable, double selvedge, Direction direction, Fold... folds) {
    return new Cloth(
        "main",
        Goods.wide(usable + 2 * selvedge).selvedge(selvedge),
        Laying.in(folds).heading(direction),
        Selling.inSteps(50));
  }

  /** 1000 mm wide; beside each other the gap would count. */
  private static Cloth gapped(Direction direction, Fold fold) {
    return Trial.cloth(1000, 5, direction, fold);
  }

  private static Cloth tube(double flat) {
    return new Cloth(
        "main",
        Goods.wide(flat).tube(true),
        Laying.in(Fold.TUBULAR).heading(Direction.ONE_WAY),
        Selling.inSteps(50));
  }

  private static Copy of(Marker marker, String piece) {
    return marker.copies().stream().filter(c -> c.piece().equals(piece)).findFirst().orElseThrow();
  }

  /** Each half stands on the fold if it may; a third piece leaves no room for that. */
  @Test
  void twoHalvesThatLieOpenedInADoubleZoneAreOnePlacement() {
    CutPiece collar =
        Trial.piece(
            "collar", Grain.ACROSS, "2 on fold", Trial.points(0, 0, 200, 0, 200, 90, 0, 90));
    Lay lay = Trial.lay(cloth(500, 0, Direction.ANY_WAY, Fold.LENGTHWISE), collar);
    Marker marker = nested(lay, Fold.LENGTHWISE, 20);
    // Across the grain it cannot stand on a lengthwise fold; 180 long opened, 200 wide.
    assertEquals(1, marker.copies().size());
    assertEquals(Form.PAIR, marker.copies().get(0).form());
    assertEquals(180, marker.lengthMm(), 1e-6);
    assertEquals(2 * 2 * 200 * 90.0, marker.lay().wantedAreaMm2());
  }

  /** A back on the fold beside a skirt that is wider than half the cloth. */
  @Test
  void partFoldIsAsDeepAsThePieceOnIt() {
    CutPiece back = Trial.rectangle("back", "1 on fold", 600, 150);
    CutPiece apron = Trial.sloped("apron", "1", 600, 680);
    Lay lay = Trial.lay(cloth(1000, 20, Direction.ONE_WAY, Fold.PART), back, apron);
    Marker marker = nested(lay, Fold.PART, 200);
    assertEquals(600, marker.lengthMm(), 1e-6);
    assertEquals(Form.HALF, of(marker, "back").form());
    assertEquals(150, marker.zone("folded").box().maxY(), 0.011);
    // The turned-in selvedge covers 20 mm more; the single cloth reaches to 1000 - 150.
    assertEquals(170, marker.zone("single").box().minY(), 0.011);
    assertEquals(850, marker.zone("single").box().maxY(), 0.011);
    assertEquals(600, marker.clothLengthMm(), 1e-6);
  }

  /** Two half pieces of unlike width, which together take all of the cloth. */
  @Test
  void doubleFoldMeetsWhereTheWiderPieceEnds() {
    CutPiece front = Trial.rectangle("front", "1 on fold", 500, 300);
    CutPiece back = Trial.rectangle("back", "1 on fold", 500, 180);
    Lay lay = Trial.lay(cloth(1000, 20, Direction.ONE_WAY, Fold.DOUBLE), front, back);
    Marker marker = nested(lay, Fold.DOUBLE, 200);
    assertEquals(500, marker.lengthMm(), 1e-6);
    // Both selvedges lie side by side, 20 mm each, between the two zones.
    LaidCloth laid =
        Borders.of(lay, Fold.DOUBLE).stream()
            .filter(l -> Math.abs(l.bands().get(0).highY() - 300) < 0.011)
            .findFirst()
            .orElseThrow();
    assertEquals(340, laid.band("second fold").orElseThrow().lowY(), 0.011);
    assertEquals(520, laid.band("second fold").orElseThrow().highY(), 1e-6);
  }

  /** A pair wider than half the cloth: folded across, the cloth counts twice. */
  @Test
  void crosswiseFoldCountsTwice() {
    CutPiece cape = Trial.rectangle("cape", "pair", 400, 700);
    Lay lay = Trial.lay(gapped(Direction.ANY_WAY, Fold.CROSSWISE), cape);
    Marker marker = nested(lay, Fold.CROSSWISE, 20);
    assertEquals(Form.PAIR, marker.copies().get(0).form());
    assertEquals(400, marker.lengthMm(), 1e-6);
    assertEquals(800, marker.clothLengthMm(), 1e-6);
    assertEquals(400 * 700 * 2.0 / (1000 * 800), marker.utilisation(), 1e-9);
  }

  /** Its fold edge lies across the warp when its grain does. */
  @Test
  void halfStandsOnACrosswiseFold() {
    CutPiece yoke =
        Trial.piece(
            "yoke", Grain.ACROSS, "1 on fold", Trial.points(0, 0, 900, 0, 900, 200, 0, 200));
    Lay lay = Trial.lay(cloth(1000, 10, Direction.ANY_WAY, Fold.CROSSWISE), yoke);
    Marker marker = nested(lay, Fold.CROSSWISE, 20);
    assertEquals(Form.HALF, marker.copies().get(0).form());
    assertEquals(0, marker.copies().get(0).outline().box().minX(), 1e-6);
    assertEquals(400, marker.clothLengthMm(), 1e-6);
  }

  @Test
  void turnedLengthsLieOneWay() {
    CutPiece cape = Trial.rectangle("cape", "pair", 400, 700);
    Lay lay = Trial.lay(gapped(Direction.ONE_WAY, Fold.TURNED), cape);
    Marker marker = nested(lay, Fold.TURNED, 20);
    assertEquals(Form.PAIR, marker.copies().get(0).form());
    assertEquals(800, marker.clothLengthMm(), 1e-6);
  }

  @Test
  void tubeHasAFoldOnEachSide() {
    CutPiece front = Trial.rectangle("front", "1 on fold", 500, 300);
    CutPiece back = Trial.rectangle("back", "1 on fold", 500, 290);
    Lay lay = Trial.lay(tube(600), front, back);
    Marker marker = nested(lay, Fold.TUBULAR, 200);
    assertEquals(500, marker.lengthMm(), 1e-6);
    assertEquals(500 * 590 * 2.0 / (1200 * 500), marker.utilisation(), 1e-9);
  }

  /** Drawn 2 degrees askew, two bands lie side by side only if they may turn by as much. */
  @Test
  void grainToleranceSavesCloth() {
    double turn = Math.toRadians(2);
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    CutPiece band =
        Trial.piece(
            "band",
            Grain.ALONG,
            "2",
            Trial.points(
                0, 0, 300 * c, 300 * s, 300 * c - 50 * s, 300 * s + 50 * c, -50 * s, 50 * c));
    Marker exact = nested(Trial.lay(tolerant(100.001, 0), band), Fold.OPEN, 200);
    assertTrue(exact.lengthMm() > 500, exact::toString);
    Marker turned = nested(Trial.lay(tolerant(100.001, 2), band), Fold.OPEN, 200);
    assertEquals(300, turned.lengthMm(), 0.5);
    // The same on a cloth that does not allow it.
    Marker strict = turned.of(exact.lay());
    assertTrue(Check.of(strict).stream().allMatch(f -> f.rule().id().equals("grain")));
    assertEquals(2, Check.of(strict).size());
  }

  private static Cloth tolerant(double usable, double degrees) {
    Cloth c = cloth(usable, 0, Direction.ANY_WAY, Fold.OPEN);
    return new Cloth(
        c.name(),
        Goods.wide(c.widthMm()).shrinking(c.shrinkage()),
        Laying.in(c.folds()).heading(c.direction()).offGrain(degrees),
        Selling.inSteps(50));
  }

  /** Side by side on open cloth they are 300 long; in the fold there is no room beside the pair. */
  private static Lay betterOpen(Fold... folds) {
    return Trial.lay(
        cloth(1000, 0, Direction.ONE_WAY, folds),
        Trial.rectangle("front", "pair", 300, 450),
        Trial.rectangle("pocket", "1", 300, 100));
  }

  @Test
  void aNamedFoldIsMadeAlsoWhereOpenClothWouldTakeLess() {
    Marker marker = nested(betterOpen(Fold.LENGTHWISE), Fold.LENGTHWISE, 200);
    assertTrue(liesFolded(marker));
    assertEquals(600, marker.lengthMm(), 1e-6);
  }

  @Test
  void whereAnyFoldWillDoTheLeastClothIsTaken() {
    Lay lay = betterOpen(Fold.LENGTHWISE, Fold.OPEN);
    List<Tried> tried =
        Nester.nest(lay, lay.cloth().folds(), Request.of(Effort.ofSteps(200), new Seed(1)));
    assertEquals(600, tried.get(0).marker().orElseThrow().lengthMm(), 1e-6);
    assertEquals(300, tried.get(1).marker().orElseThrow().lengthMm(), 1e-6);
  }

  /** A single piece has no twin, and a pair that is too wide has no room. */
  @Test
  void whatNothingCanBeCutFromDoubleLiesOpen() {
    Lay lay =
        Trial.lay(
            cloth(1000, 0, Direction.ONE_WAY, Fold.LENGTHWISE),
            Trial.sloped("apron", "1", 300, 450),
            Trial.sloped("wrap", "pair", 300, 510));
    Marker marker = nested(lay, Fold.LENGTHWISE, 50);
    assertFalse(liesFolded(marker));
    assertEquals(List.of("opened"), marker.zones().stream().map(Zone::id).toList());
  }

  /** The meeting line that leaves room for the pair is kept, though others would lie open. */
  @Test
  void ofTheWaysToMakeADoubleFoldOneThatFoldsIsTaken() {
    Marker marker = nested(betterOpen(Fold.DOUBLE), Fold.DOUBLE, 200);
    assertTrue(liesFolded(marker));
  }

  /** All that lies open is no way to serve a lay whose fold is named. */
  @Test
  void aChoiceThatLeavesTheFoldEmptyIsMended() {
    Lay lay = betterOpen(Fold.LENGTHWISE);
    LaidCloth laid = LaidCloth.of(lay.cloth(), Fold.LENGTHWISE);
    LayPlan plan = FirstPlan.of(lay, laid, new Phases(lay, laid));
    Decision opened = plan.decision();
    for (int i = 0; i < plan.servings().size(); i++) {
      List<Station> stations = plan.servings().get(i).stations();
      opened = opened.at(i, stations.get(stations.size() - 1));
    }
    assertTrue(opened.stations().stream().noneMatch(Station::folded));
    List<Decision> mended = Choices.keepingFold(plan, opened);
    assertEquals(List.of(opened.at(0, plan.servings().get(0).stations().get(0))), mended);
    assertEquals(mended, Choices.keepingFold(plan, mended.get(0)));
    assertFalse(Choices.neighbours(plan, mended.get(0)).contains(opened));
  }

  /** Whether any cut goes through both plies and wastes neither. */
  private static boolean liesFolded(Marker marker) {
    return marker.copies().stream()
        .filter(c -> marker.zone(c.zone()).plies() == 2)
        .anyMatch(c -> c.form() == Form.HALF || c.form() == Form.PAIR);
  }

  /** What anyone can do: one copy behind the other on the open cloth. */
  @Property(tries = 30)
  void everyFoldGivesALegalMarker(@ForAll long seed) {
    Random random = new Random(seed);
    boolean tubular = random.nextInt(7) == 0;
    Direction direction = Direction.values()[random.nextInt(3)];
    double usable = 700 + random.nextInt(800);
    double selvedge = random.nextInt(3) * 8;
    Cloth bare = tubular ? tube(usable / 2) : cloth(usable, selvedge, direction, Fold.OPEN);
    List<Fold> folds =
        Cloth.anyFold(tubular, direction).stream().filter(f -> bare.barred(f).isEmpty()).toList();
    Fold fold = folds.get(random.nextInt(folds.size()));
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(3); i++) {
      CutPiece piece =
          Garments.piece(
              random,
              "piece " + i,
              250,
              (int) (usable / 2) - 80,
              "2",
              "pair",
              "1 on fold",
              "2 on fold");
      wanted.addAll(Trial.wanted(piece, "110", 1));
      wanted.addAll(Trial.wanted(piece, "110", 2));
    }
    Lay lay =
        new Lay(
            "tabard", tubular ? bare : cloth(usable, bare.selvedgeMm(), direction, fold), wanted);
    Marker marker = nested(lay, tubular ? Fold.TUBULAR : fold, 30);
    double most = OneAfterAnother.clothMm(lay, tubular ? Fold.TUBULAR : fold);
    assertTrue(marker.clothLengthMm() <= most + 1e-6, () -> marker.clothLengthMm() + " " + most);
    // Each has room in every fold; but a half piece alone has no fold edge where lengths lie end
    // over end, since its grain runs along the warp.
    boolean twins = wanted.stream().anyMatch(w -> w.how() != Cut.How.FOLD || two(wanted, w));
    if (fold != Fold.OPEN && (twins || !fold.doublesLength())) {
      assertTrue(liesFolded(marker), fold::words);
    }
  }

  private static boolean two(List<Wanted> wanted, Wanted one) {
    return wanted.stream().filter(one::equals).count() == 2;
  }
}
