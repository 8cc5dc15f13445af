package ellwand.many;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.CompareRun;
import ellwand.app.Hands;
import ellwand.app.LayRun;
import ellwand.app.OrderRun;
import ellwand.app.PlannedOrder;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.job.OrderJob;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.rule.Check;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Several seeds that race for a marker. */
class RaceTest {

  private static final Request STEPS = Request.of(Effort.ofSteps(100), new Seed(5));

  private static final JobFiles.Read<Job> JACKET =
      JobFiles.job("sample-markers/weir-jacket/job.yaml", Folder.DISK);

  private static Marker first(int seeds, int cores, Request request) {
    try (Workshop workshop = new OwnCores(new MarkerCraft(), cores)) {
      return LayRun.make(JACKET.what(), Unit.CM, request, JACKET.hands(workshop, seeds))
          .markers()
          .get(0);
    }
  }

  @Test
  void ofSeveralTheShortestIsKeptAndWhoHelpsMakesNoDifference() {
    Marker raced = first(3, 1, STEPS);
    assertEquals(raced, first(3, 3, STEPS));
    double best = Double.POSITIVE_INFINITY;
    for (int seed = 5; seed < 8; seed++) {
      Request part = STEPS.with(STEPS.effort().part(0.7)).with(new Seed(seed));
      best = Math.min(best, first(1, 1, part).clothLengthMm());
    }
    assertTrue(raced.clothLengthMm() <= best, raced.clothLengthMm() + " of " + best);
    assertEquals("100steps for each of 3 seeds", raced.search().orElseThrow().effort());
  }

  @Test
  void onlyWhatIsShorterThanAllBeforeIsTold() {
    List<Double> told = Collections.synchronizedList(new ArrayList<>());
    Progress heard =
        news -> {
          if (news instanceof Progress.Shorter marker && marker.cloth().equals("main")) {
            told.add(marker.clothMm());
          }
        };
    Marker raced = first(2, 2, STEPS.with(heard));
    List<Double> falling = new ArrayList<>(told);
    falling.sort(Collections.reverseOrder());
    assertEquals(falling, told);
    assertEquals(raced.clothLengthMm(), told.get(told.size() - 1), 1e-6);
  }

  @Test
  void stoppedItHasTheBestByThen() {
    for (int seeds = 1; seeds <= 2; seeds++) {
      Stop stop = new Stop();
      Progress stopping = news -> stop.request();
      Request hour = new Request(Effort.ofSeconds(3600), new Seed(1), 1, stop, stopping);
      assertTrue(first(seeds, seeds, hour).stoppedEarly());
    }
  }

  /** On from the marker of a short search, in every fold in which that can be told. */
  @Test
  void aSearchGoesOnFromAMarker() {
    List<Lay> lays = new ArrayList<>();
    Hands noting =
        (lay, folds, request) -> {
          lays.add(lay);
          return Nester.nest(lay, folds, request);
        };
    LayRun.make(JACKET.what(), Unit.CM, Request.of(Effort.ofSteps(1), new Seed(1)), noting);
    int shorter = 0;
    int behind = 0;
    for (Lay lay : lays) {
      for (Tried tried :
          Nester.nest(
              lay, lay.cloth().possibleFolds(), Request.of(Effort.ofSteps(30), new Seed(1)))) {
        Marker from = tried.marker().orElseThrow();
        Optional<Marker> on = Nester.goOn(from, Request.of(Effort.ofSteps(300), new Seed(2)));
        if (on.isPresent()) {
          shorter++;
          behind += from.zones().size() > 1 ? 1 : 0;
          assertTrue(on.get().clothLengthMm() < from.clothLengthMm());
          assertEquals(from.fold(), on.get().fold());
          assertEquals(List.of(), Check.of(on.get()));
        }
      }
    }
    assertTrue(shorter > 0);
    assertTrue(behind > 0, "nothing behind the folded cloth");
  }

  /** Pieces that may turn off their grain belong to their own seed. */
  @Test
  void whereNoneCanBeGoneOnFromTheBestSeedIsKept() {
    String text =
        """
        ellwand: 1
        unit: cm
        style:
          name: Pennant
          allowance: 0
          pieces:
            flag:
              cut: {main: 1}
              outline: [[0, 0], [31, 4], [24, 17], [3, 20]]
        cloths:
          main: {width: 70, fold: open, grain-tolerance: 5}
        order: {garments: 7}
        """;
    JobFiles.Read<Job> read =
        JobFiles.job("flags.yaml", Folder.EMPTY.with("flags.yaml", text.getBytes(UTF_8)));
    List<Double> lengths = new ArrayList<>();
    try (Workshop workshop = new OwnCores(new MarkerCraft(), 1)) {
      for (int seed = 5; seed < 8; seed++) {
        lengths.add(lengthMm(read, STEPS.with(new Seed(seed)), read.hands(workshop, 1)));
      }
      assertEquals(Collections.min(lengths), lengthMm(read, STEPS, read.hands(workshop, 3)), 1e-9);
    }
    assertTrue(lengths.stream().distinct().count() > 1, lengths::toString);
  }

  private static double lengthMm(JobFiles.Read<Job> read, Request request, Hands hands) {
    return LayRun.make(read.what(), Unit.CM, request, hands).markers().get(0).clothLengthMm();
  }

  /** Nothing on wider cloth is longer, and the same widths come to the same again. */
  @Test
  void widerClothGoesOnFromNarrower() {
    List<Double> lengths = new ArrayList<>();
    try (Workshop workshop = new OwnCores(new MarkerCraft(), 2)) {
      for (int i = 0; i < 2; i++) {
        CompareRun.of(JACKET.what(), Optional.of("lining"))
            .by(JACKET.hands(workshop, 2))
            .make(List.of(1140.0, 1160.0, 1180.0), Unit.CM, STEPS)
            .comparison()
            .bestOfEach()
            .forEach(row -> lengths.add(row.tried().clothLengthMm()));
      }
    }
    assertEquals(lengths.subList(0, 3), lengths.subList(3, 6));
    assertTrue(lengths.get(0) >= lengths.get(1) && lengths.get(1) >= lengths.get(2));
  }

  /** In steps an order comes to the same, whether its markers are made one by one or at once. */
  @Test
  void anOrderComesToTheSameByManyHands() {
    String text =
        """
        ellwand: 1
        unit: cm
        style:
          name: Scarf
          size: S
          allowance: 0
          pieces:
            square:
              cut: {main: 1}
              outline: [[0, 0], [20, 0], [20, 20], [0, 20]]
        sizes: {names: [S, M]}
        cloths:
          main: {width: 70, fold: open}
        order: {colours: {red: {S: 6, M: 4}, blue: {M: 5}}, max-plies: 3, max-garments: 3}
        """;
    JobFiles.Read<OrderJob> read =
        JobFiles.order("scarves.yaml", Folder.EMPTY.with("scarves.yaml", text.getBytes(UTF_8)));
    PlannedOrder alone = OrderRun.make(read.what(), Unit.CM, STEPS);
    try (Workshop workshop = new OwnCores(new MarkerCraft(), 3)) {
      PlannedOrder together = OrderRun.make(read.what(), Unit.CM, STEPS, read.hands(workshop, 1));
      assertEquals(alone.markers(), together.markers());
      assertEquals(new String(alone.json(), UTF_8), new String(together.json(), UTF_8));
    }
    assertTrue(alone.markers().size() > 1, "markers: " + alone.markers().keySet());
  }
}
