package ellwand.nest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.Goods;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Laying;
import ellwand.cloth.Repeat;
import ellwand.cloth.Selling;
import ellwand.cutting.CutPiece;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.nest.pose.Stations;
import ellwand.pattern.Bars;
import ellwand.pattern.Cut.How;
import ellwand.pattern.Grain;
import ellwand.pattern.Match;
import ellwand.rule.Check;
import ellwand.rule.Trial;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Two garments of a size, cut from both plies at once. */
class SharedPliesTest {

  private static Lay lay(Cloth cloth, int garments, CutPiece... cuts) {
    List<Wanted> wanted = new ArrayList<>();
    for (int garment = 1; garment <= garments; garment++) {
      for (CutPiece cut : cuts) {
        wanted.addAll(Trial.wanted(cut, "110", garment));
      }
    }
    return new Lay("tabard", cloth, wanted);
  }

  private static Marker nested(Lay lay, Fold fold, int steps) {
    Marker marker = Nester.nest(lay, fold, Request.of(Effort.ofSteps(steps), new Seed(1)));
    assertEquals(List.of(), Check.of(marker).stream().map(f -> f.sentence(Unit.MM)).toList());
    return marker;
  }

  private static Cloth folded(double usableMm) {
    return Trial.cloth(usableMm, 0, Direction.ONE_WAY, Fold.LENGTHWISE);
  }

  /** Too wide to lie beside another on the fold, so that two halves would take two lengths. */
  @Test
  void twoGarmentsTakeNoMoreThanOneThatWantsTwo() {
    CutPiece front = Trial.rectangle("front", "1 on fold", 600, 300);
    CutPiece twice = Trial.rectangle("front", "2 on fold", 600, 300);
    Marker marker = nested(lay(folded(1300), 2, front), Fold.LENGTHWISE, 20);
    assertEquals(600, marker.lengthMm(), 1e-6);
    assertEquals(
        nested(lay(folded(1300), 1, twice), Fold.LENGTHWISE, 20).lengthMm(),
        marker.lengthMm(),
        1e-6);
    assertEquals(1, marker.copies().size());
    assertEquals(Form.PAIR, marker.copies().get(0).form());
    assertEquals(List.of(1, 2), marker.copies().get(0).garments());
  }

  /** What has no hand is wanted once by each of three: the third's twin is spare. */
  @Test
  void theOddOneIsCutForItself() {
    CutPiece pocket = Trial.rectangle("pocket", "1", 200, 150);
    CutPiece sleeve = Trial.sloped("sleeve", "pair", 500, 150);
    Marker marker = nested(lay(folded(1000), 3, pocket, sleeve), Fold.LENGTHWISE, 50);
    List<Copy> pockets = marker.copies().stream().filter(c -> c.piece().equals("pocket")).toList();
    assertEquals(List.of(List.of(1, 2), List.of(3)), pockets.stream().map(Copy::garments).toList());
  }

  /** Plies lie right sides together, so that the twin has the other hand. */
  @Test
  void nobodyGetsTheWrongHand() {
    CutPiece flap = Trial.sloped("flap", "1", 200, 150);
    CutPiece sleeve = Trial.sloped("sleeve", "pair", 500, 150);
    Marker marker = nested(lay(folded(1000), 2, flap, sleeve), Fold.LENGTHWISE, 50);
    assertTrue(marker.copies().stream().allMatch(c -> c.secondGarment().isEmpty()));
    Copy shared =
        marker.copies().stream().filter(c -> c.piece().equals("sleeve")).findFirst().orElseThrow();
    // Two garments that each want a flap as drawn are not served by one of each hand.
    Lay flaps = lay(folded(1000), 2, flap);
    Copy laid = Trial.copy(flap, Form.PAIR, "folded", false, 0, 0, 100);
    Marker wrong =
        Trial.folded(
            flaps,
            200,
            200,
            new Copy(
                "flap",
                "110",
                1,
                OptionalInt.of(2),
                Form.PAIR,
                "folded",
                laid.heading(),
                laid.motion(),
                laid.outline()));
    assertEquals(Form.PAIR, shared.form());
    assertEquals(
        List.of("hand"), Check.of(wrong).stream().map(f -> f.rule().id()).distinct().toList());
  }

  /** Across the warp or aslant the other ply mirrors it end for end, and off its grain. */
  @Test
  void twoThatLieAcrossAreCutAtOnceOnlyWhereTheyMayHeadBothWays() {
    for (Grain grain : List.of(Grain.ALONG, Grain.ACROSS, Grain.EITHER, Grain.BIAS, Grain.at(30))) {
      CutPiece flap =
          Trial.piece("flap", grain, "2", Trial.points(0, 0, 200, 40, 200, 110, 0, 150));
      CutPiece sleeve = Trial.sloped("sleeve", "pair", 500, 150);
      for (Direction direction : Direction.values()) {
        Cloth cloth = Trial.cloth(1000, 0, direction, Fold.LENGTHWISE);
        Marker marker = nested(lay(cloth, 1, flap, sleeve), Fold.LENGTHWISE, 20);
        List<Copy> flaps = marker.copies().stream().filter(c -> c.piece().equals("flap")).toList();
        boolean asDrawn =
            !grain.equals(Grain.at(30))
                && (direction == Direction.ANY_WAY || !grain.equals(Grain.ACROSS));
        assertEquals(asDrawn ? 1 : 2, flaps.size(), grain.word() + " " + direction);
      }
    }
  }

  @Test
  void aTwinThatHeadsTheOtherWayOrLiesOffItsGrainIsFound() {
    for (Grain grain : List.of(Grain.ACROSS, Grain.at(30))) {
      CutPiece flap =
          Trial.piece("flap", grain, "2", Trial.points(0, 0, 200, 40, 200, 110, 0, 150));
      double turn = grain.turns(false).get(0);
      Copy pair = Trial.copy(flap, Form.PAIR, "folded", false, turn, 200, 100);
      Marker marker = Trial.folded(lay(folded(1000), 1, flap), 450, 450, pair);
      assertEquals(
          List.of(grain.equals(Grain.ACROSS) ? "heading" : "grain"),
          Check.of(marker).stream().map(f -> f.rule().id()).toList());
    }
  }

  /** One that lies on one ply cannot serve two. */
  @Test
  void aSinglePlyServesOneGarment() {
    CutPiece pocket = Trial.rectangle("pocket", "1", 200, 150);
    Lay pockets = lay(Trial.cloth(1000, 0, Direction.ONE_WAY, Fold.OPEN), 2, pocket);
    Copy laid = Trial.copy(pocket, Form.WHOLE, "open", false, 0, 0, 0);
    Copy shared =
        new Copy(
            "pocket",
            "110",
            1,
            OptionalInt.of(2),
            Form.WHOLE,
            "open",
            laid.heading(),
            laid.motion(),
            laid.outline());
    assertEquals(
        List.of("count"),
        Check.of(Trial.open(pockets, 200, shared)).stream().map(f -> f.rule().id()).toList());
  }

  /** Each garment's collar has to match its own yoke, wherever that lies. */
  @Test
  void whatMatchesItsOwnGarmentIsNotShared() {
    Cloth striped =
        new Cloth(
            "main",
            Goods.wide(1000).repeating(Optional.of(Repeat.even(100, 0, 0, 0))),
            Laying.in(Fold.LENGTHWISE),
            Selling.USUAL);
    CutPiece pocket = Trial.rectangle("pocket", "1", 200, 150);
    Lay free = lay(striped, 2, pocket);
    Lay matched =
        new Lay(
            "tabard",
            striped,
            free.wanted(),
            List.of(new Match("pocket", "a", "yoke", "b", Bars.ALONG)));
    assertEquals(1, servings(free));
    assertEquals(2, servings(matched));
  }

  private static int servings(Lay lay) {
    return Stations.servings(lay, LaidCloth.of(lay.cloth(), Fold.LENGTHWISE)).size();
  }

  /** Whatever garments ask, the marker is legal: garments that share a piece head the same way. */
  @Property(tries = 25)
  void sharedMarkersAreLegal(
      @ForAll @IntRange(min = 1, max = 5) int garments,
      @ForAll @IntRange(min = 1, max = 3) int pockets,
      @ForAll Direction direction,
      @ForAll @IntRange(min = 150, max = 400) int width) {
    Cloth cloth = Trial.cloth(1000, 3, direction, Fold.LENGTHWISE);
    CutPiece front = Trial.rectangle("front", "1 on fold", 500, width);
    CutPiece pocket = Trial.rectangle("pocket", Integer.toString(pockets), 200, 150);
    CutPiece vee =
        Trial.piece("vee", Grain.ALONG, "1", Trial.points(0, 0, 300, 0, 250, 60, 300, 120, 0, 120));
    Lay lay = lay(cloth, garments, front, pocket, vee);
    Marker marker = nested(lay, Fold.LENGTHWISE, 10);
    assertEquals(
        lay.wanted().stream().filter(w -> w.how() == How.WHOLE).count(),
        marker.copies().stream()
            .filter(c -> !c.piece().equals("front"))
            .mapToInt(c -> c.form() == Form.PAIR ? 2 : 1)
            .sum());
  }
}
