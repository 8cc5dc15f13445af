package ellwand.nest.choice;

import static ellwand.nest.NesterTest.cloth;
import static ellwand.nest.NesterTest.lay;
import static ellwand.nest.NesterTest.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Cloth;
import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.LaidCloth;
import ellwand.cutting.CutPiece;
import ellwand.geometry.NoFitUnion;
import ellwand.lay.Heading;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.nest.kernel.KnownNoFits;
import ellwand.nest.pose.Station;
import ellwand.nest.repeat.Phases;
import ellwand.nest.stretch.Decision;
import ellwand.nest.stretch.Placing;
import ellwand.rule.Trial;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Choices tried one and all, held against every decision that there is. */
class GlancesTest {

  private static final Effort PLENTY = Effort.ofSteps(1_000_000);

  private record Trials(LayPlan plan, Placing placing) {}

  private static Trials of(Lay lay) {
    return of(lay, PLENTY);
  }

  private static Trials of(Lay lay, Effort effort) {
    LaidCloth cloth = LaidCloth.of(lay.cloth(), lay.cloth().folds().get(0));
    Phases repeat = new Phases(lay, cloth);
    return new Trials(
        FirstPlan.of(lay, cloth, repeat),
        new Placing(
            lay,
            cloth,
            repeat,
            new KnownNoFits(NoFitUnion::rings),
            Request.of(effort, new Seed(1)),
            (news, maker) -> {}));
  }

  /** Pieces of which some may lie on the fold, double, or behind on what is opened. */
  private static Lay folded(SplittableRandom random) {
    Cloth cloth = cloth(900, 2, Direction.ANY_WAY, Fold.LENGTHWISE);
    List<Wanted> wanted = new ArrayList<>();
    String[] cuts = {"1", "pair", "1", "1"};
    for (int i = 0; i < cuts.length; i++) {
      CutPiece piece =
          Trial.sloped("p" + i, cuts[i], 80 + random.nextInt(250), 60 + random.nextInt(200));
      wanted.addAll(Trial.wanted(piece, "110", 1));
    }
    return new Lay("smock", cloth, wanted);
  }

  /** Every station of every serving, as a slow and obvious count. */
  private static List<List<Station>> every(List<Serving> servings) {
    List<List<Station>> all = List.of(List.of());
    for (Serving serving : servings) {
      List<List<Station>> longer = new ArrayList<>();
      for (List<Station> begun : all) {
        for (Station station : serving.stations()) {
          List<Station> more = new ArrayList<>(begun);
          more.add(station);
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }

  @Property(tries = 12)
  void whatIsShortestOfAllIsFound(@ForAll int seed) {
    Lay lay = folded(new SplittableRandom(seed));
    Trials slow = of(lay);
    double shortest = Double.POSITIVE_INFINITY;
    int number = 0;
    for (List<Station> stations : every(slow.plan.servings())) {
      Decision decision = new Decision(stations, Map.of(), Map.of());
      if (!Choices.keepingFold(slow.plan, decision).equals(List.of(decision))) {
        continue;
      }
      number++;
      shortest = Math.min(shortest, slow.placing.construct(decision).orElseThrow().clothMm());
    }
    Trials quick = of(lay);
    quick.placing.construct(quick.plan.decision());
    Glances glances = new Glances(quick.plan, quick.placing);
    glances.look();
    assertTrue(number > 4);
    assertFalse(glances.more());
    assertEquals(number, Choices.all(quick.plan, 1000).size());
    assertEquals(shortest, quick.placing.best().clothMm(), 1e-9);
  }

  /** Copies of a piece are served alike; of three garments the first keeps its heading. */
  @Test
  void garmentsHeadEitherWayButForTheFirst() {
    CutPiece front = Trial.sloped("front", "1", 300, 200);
    Lay lay =
        lay(
            cloth(700, 0, Direction.ONE_WAY_PER_GARMENT, Fold.OPEN),
            wanted(front, 1),
            wanted(front, 2),
            wanted(front, 3));
    LayPlan plan = of(lay).plan;
    Set<Map<Integer, Heading>> headings = new HashSet<>();
    Choices.all(plan, 1000).forEach(decision -> headings.add(decision.headings()));
    Set<Map<Integer, Heading>> expected = new HashSet<>();
    Heading first = plan.decision().headings().get(1);
    for (Heading second : Heading.values()) {
      for (Heading third : Heading.values()) {
        expected.add(Map.of(1, first, 2, second, 3, third));
      }
    }
    assertEquals(expected, headings);
    assertEquals(4, Choices.all(plan, 4).size());
    assertEquals(List.of(), Choices.all(plan, 3));
  }

  /** Nothing is laid twice, however often one looks. */
  @Test
  void whatWasLookedAtIsNotLaidAgain() {
    Trials trials = of(folded(new SplittableRandom(7)));
    trials.placing.construct(trials.plan.decision());
    Glances glances = new Glances(trials.plan, trials.placing);
    glances.look();
    double spent = trials.placing.spent();
    glances.look();
    assertEquals(spent, trials.placing.spent());
  }

  /** Few steps tell few choices apart, more tell more; they take no more of the effort for that. */
  @ParameterizedTest
  @ValueSource(longs = {20, 400, 4_000})
  void searchesTakeTheirShareOfTheEffort(long steps) {
    Trials trials = of(folded(new SplittableRandom(7)), Effort.ofSteps(steps));
    trials.placing.construct(trials.plan.decision());
    Glances glances = new Glances(trials.plan, trials.placing);
    glances.look();
    double looked = trials.placing.spent();
    double rough = trials.placing.best().clothMm();
    glances.tryShortest();
    assertTrue(trials.placing.spent() > looked);
    assertEquals(looked + 0.25, trials.placing.spent(), 0.02 + 10.0 / steps);
    assertTrue(trials.placing.best().clothMm() <= rough);
  }
}
