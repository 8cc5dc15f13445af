package ellwand.many;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.app.AskedLay;
import ellwand.app.CompareRun;
import ellwand.app.FitRun;
import ellwand.app.Hands;
import ellwand.app.LayRun;
import ellwand.app.MostRun;
import ellwand.app.OrderRun;
import ellwand.app.Output;
import ellwand.app.ShelfRun;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.job.OrderJob;
import ellwand.lay.Lay;
import ellwand.lay.Scope;
import ellwand.nest.Nester;
import ellwand.nest.Tried;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Progress;
import ellwand.work.Request;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is made of tasks, that is of bytes, is to the last digit what a search here makes. */
class SameHereAndThereTest {

  private static final Request STEPS = Request.of(Effort.ofSteps(60), new Seed(3));

  private Workshop workshop;

  @BeforeEach
  void open() {
    workshop = new OwnCores(new MarkerCraft(), 2);
  }

  @AfterEach
  void close() {
    workshop.close();
  }

  private static JobFiles.Read<Job> job(String sample) {
    return JobFiles.job("sample-markers/" + sample + "/job.yaml", Folder.DISK);
  }

  private static Map<String, String> files(List<Output> outputs) {
    return outputs.stream()
        .filter(output -> output.name().endsWith(".json"))
        .collect(
            Collectors.toMap(
                Output::name,
                output -> new String(output.bytes(), UTF_8),
                (a, b) -> a,
                LinkedHashMap::new));
  }

  /** Asks both, and holds one against the other search by search. */
  private Hands both(JobFiles.Read<?> read, List<Lay> asked) {
    Hands tasks = read.hands(workshop, 1);
    return (lay, folds, request) -> {
      asked.add(lay);
      Request unheard = request.with(Progress.NONE);
      List<Tried> here = Nester.nest(lay, folds, unheard);
      List<Tried> there = tasks.nest(lay, folds, request);
      assertEquals(here.size(), there.size());
      for (int i = 0; i < here.size(); i++) {
        assertEquals(here.get(i).fold(), there.get(i).fold());
        assertEquals(here.get(i).marker(), there.get(i).marker());
        assertEquals(here.get(i).pleasing(), there.get(i).pleasing());
        assertEquals(here.get(i).carried(), there.get(i).carried());
        assertEquals(
            here.get(i).noRoom().map(e -> e.piece() + e.neededMm() + e.widestMm() + e.offRepeat()),
            there
                .get(i)
                .noRoom()
                .map(e -> e.piece() + e.neededMm() + e.widestMm() + e.offRepeat()));
      }
      return there;
    };
  }

  private List<Lay> asked() {
    return Collections.synchronizedList(new ArrayList<>());
  }

  @Test
  void laysOfJobsWithFoldsRepeatsAndWishes() {
    for (String sample : List.of("weir-jacket", "tarn-checks", "mill-bundles")) {
      JobFiles.Read<Job> read = job(sample);
      List<Lay> asked = asked();
      LayRun.make(read.what(), Unit.CM, STEPS, both(read, asked));
      assertEquals(read.what().cloths().size(), asked.size());
    }
  }

  @Test
  void laysOnRemnantsPieceByPieceAndGarmentByGarment() {
    JobFiles.Read<Job> read = job("tarn-waistcoat");
    List<Lay> asked = asked();
    ShelfRun.make(read.what(), Unit.CM, STEPS, both(read, asked));
    assertTrue(asked.stream().anyMatch(lay -> lay.cloth().stock().isPresent()));
    int before = asked.size();
    FitRun.fit(read.what(), "150cm x 30cm", Optional.empty(), Unit.CM, STEPS, both(read, asked));
    assertTrue(asked.stream().anyMatch(lay -> lay.scope() instanceof Scope.Part));
    MostRun.most(read.what(), "150cm x 2m", Optional.empty(), STEPS, both(read, asked));
    assertTrue(asked.size() > before + 2);
  }

  /** Pieces cut as for the cloth that is bought, laid on a remnant of it. */
  @Test
  void laysOfSeveralBolts() {
    String text =
        """
        ellwand: 1
        unit: cm
        style:
          name: Scarf
          allowance: 0
          pieces:
            square:
              cut: {main: 2}
              outline: [[0, 0], [20, 0], [20, 20], [0, 20]]
        cloths:
          main: {width: 90, fold: open, several-bolts: true, shrinkage: {along: 5 %}}
        remnants:
          long: {length: 45, width: 25, cloth: main}
        order: {garments: 3}
        """;
    JobFiles.Read<Job> read =
        JobFiles.job("scarf.yaml", Folder.EMPTY.with("scarf.yaml", text.getBytes(UTF_8)));
    List<Lay> asked = asked();
    ShelfRun.make(read.what(), Unit.CM, STEPS, both(read, asked));
    assertTrue(asked.stream().allMatch(lay -> lay.scope() instanceof Scope.Part));
  }

  @Test
  void laysInOtherWidthsAndOtherFolds() {
    JobFiles.Read<Job> read = job("weir-jacket");
    List<Lay> asked = asked();
    CompareRun.of(read.what(), Optional.empty())
        .by(both(read, asked))
        .make(List.of(900.0, 1500.0), Unit.CM, STEPS);
    assertEquals(
        List.of(900.0, 1500.0),
        List.copyOf(new TreeSet<>(asked.stream().map(lay -> lay.cloth().widthMm()).toList())));
  }

  @Test
  void laysOfAnOrder() {
    JobFiles.Read<OrderJob> read =
        JobFiles.order("sample-markers/beck-tunic/order.yaml", Folder.DISK);
    List<Lay> asked = asked();
    OrderRun.make(read.what(), Unit.CM, STEPS, both(read, asked));
    assertTrue(asked.stream().allMatch(lay -> lay.scope() instanceof Scope.Garments));
  }

  /** The whole of a run: marker files and figures. */
  @Test
  void filesOfARun() {
    JobFiles.Read<Job> read = job("stile-breeches");
    assertEquals(
        files(LayRun.make(read.what(), Unit.CM, STEPS).outputs()),
        files(LayRun.make(read.what(), Unit.CM, STEPS, read.hands(workshop, 1)).outputs()));
  }

  @Test
  void theSameTaskHasTheSameBytesAndMakesTheSame() {
    JobFiles.Read<Job> read = job("weir-jacket");
    Function<Integer, Task> task =
        seed -> {
          JobFiles.Read<Job> anew = job("weir-jacket");
          Lay lay = lay(anew);
          return new MarkerTask(
                  anew.files(),
                  AskedLay.of(anew.what(), lay),
                  lay.cloth().possibleFolds(),
                  Effort.ofSteps(20),
                  new Seed(seed),
                  1,
                  Optional.empty())
              .task();
        };
    assertArrayEquals(task.apply(1).asked(), task.apply(1).asked());
    byte[] one = workshop.give(task.apply(1), news -> {}).done().join();
    byte[] again = new MarkerCraft().work(task.apply(1), new Stop(), news -> {});
    assertArrayEquals(one, again);
    byte[] told = new MarkerCraft(read).work(task.apply(1), new Stop(), news -> {});
    assertArrayEquals(one, told);
    assertEquals(read.files().files().keySet(), job("weir-jacket").files().files().keySet());
  }

  private static Lay lay(JobFiles.Read<Job> read) {
    List<Lay> asked = new ArrayList<>();
    LayRun.make(
        read.what(),
        Unit.CM,
        Request.of(Effort.ofSteps(1), new Seed(1)),
        (lay, folds, request) -> {
          asked.add(lay);
          return Nester.nest(lay, folds, request);
        });
    return asked.get(0);
  }
}
