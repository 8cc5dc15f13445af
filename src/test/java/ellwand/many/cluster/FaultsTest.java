package ellwand.many.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import ellwand.many.Errand;
import ellwand.many.Task;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** One who asks, helpers that are processes of their own, and what may happen to them. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class FaultsTest {

  private static final String VERSION = "the same";

  private final List<String> said = new CopyOnWriteArrayList<>();
  private final List<ToyProcess> helpers = new ArrayList<>();
  private HelpedWorkshop workshop;

  @BeforeEach
  void open() {
    workshop = open(0);
  }

  private HelpedWorkshop open(int port) {
    return HelpedWorkshop.open(
        new Toy(false), 1, new Door(Place.here(port), Optional.empty()), said::add, VERSION);
  }

  @AfterEach
  void close() {
    workshop.close();
    helpers.forEach(ToyProcess::close);
  }

  @Test
  void taskOfKilledHelperIsDoneElsewhere() throws Exception {
    Errand errand = atHelper(Toy.takes(Duration.ofSeconds(2), "hem"), Duration.ofSeconds(4));
    helpers.get(0).says("begun hem", 1);
    helpers.get(0).kill();
    assertEquals(Toy.made("hem"), result(errand));
    assertEquals(1, workshop.cores());
    assertTrue(said.stream().anyMatch(line -> line.contains("lost")), said::toString);
  }

  @Test
  void helperThatIsAskedToEndGivesItsTaskBack() throws Exception {
    Errand errand = atHelper(Toy.takes(Duration.ofSeconds(1), "cuff"), Duration.ofSeconds(3));
    helpers.get(0).says("begun cuff", 1);
    helpers.get(0).signal("TERM");
    assertEquals(Toy.made("cuff"), result(errand));
    helpers.get(0).says("ended", 1);
    assertTrue(helpers.get(0).ends());
    assertTrue(said.stream().anyMatch(line -> line.contains("helps no more")), said::toString);
  }

  @Test
  void taskThatTakesItsHelperDownIsDoneElsewhere() throws Exception {
    Errand errand = atHelper(Toy.kills(), Duration.ofSeconds(1));
    assertEquals(Toy.made("killing"), result(errand));
  }

  @Test
  void taskThatHangsIsDoneElsewhere() throws Exception {
    Errand errand = atHelper(Toy.hangs(Duration.ofSeconds(1)), Duration.ofSeconds(1));
    assertEquals(Toy.made("hanging"), result(errand));
    assertTrue(said.stream().anyMatch(line -> line.contains("late")), said::toString);
  }

  /** Stopped, a process neither hears nor says anything, as behind a cable that is out. */
  @Test
  void partitionOfTenSecondsLosesNothing() throws Exception {
    helper(1);
    cores(2);
    List<Errand> errands = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      errands.add(workshop.give(Toy.takes(Duration.ofSeconds(3), "piece " + i), news -> {}));
    }
    helpers.get(0).says("begun", 1);
    helpers.get(0).signal("STOP");
    Thread.sleep(10_000);
    helpers.get(0).signal("CONT");
    for (int i = 0; i < 8; i++) {
      assertEquals(Toy.made("piece " + i), result(errands.get(i)));
    }
    cores(2);
  }

  @Test
  void helpersOfKilledAskerHelpTheNext() throws Exception {
    workshop.close();
    int port;
    try (ToyProcess asker = ToyProcess.start(ToyAsker.class)) {
      port = Integer.parseInt(asker.says("open at ", 1));
      helpers.add(ToyProcess.start(ToyHelper.class, Place.here(port), 1, Engine.version()));
      helpers.get(0).says("begun first asker", 1);
      asker.kill();
    }
    workshop =
        HelpedWorkshop.open(
            new Toy(false),
            1,
            new Door(Place.here(port), Optional.empty()),
            said::add,
            Engine.version());
    cores(2);
    workshop.give(Toy.takes(Toy.LONG, "holds this machine"), news -> {});
    assertEquals(
        Toy.made("next"), result(workshop.give(Toy.takes(Duration.ZERO, "next"), n -> {})));
    assertEquals(1, helpers.get(0).said("stopped first asker"));
  }

  @Test
  void twentyHelpersComeAndGo() throws Exception {
    List<Errand> errands = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      errands.add(workshop.give(Toy.takes(Duration.ofMillis(700), "piece " + i), news -> {}));
    }
    for (int i = 0; i < 3; i++) {
      helper(5);
    }
    helpers.get(0).says("begun", 3);
    helpers.get(0).kill();
    helpers.get(1).says("begun", 3);
    helpers.get(1).signal("TERM");
    helpers.get(2).says("begun", 3);
    helpers.get(2).kill();
    helper(5);
    for (int i = 0; i < errands.size(); i++) {
      assertEquals(Toy.made("piece " + i), result(errands.get(i)));
    }
  }

  @Test
  void helperOfAnotherVersionIsRefusedWithAWord() throws Exception {
    helpers.add(ToyProcess.start(ToyHelper.class, workshop.place(), 1, "another"));
    helpers.get(0).says("refused", 1);
    assertEquals(1, helpers.get(0).said("version"));
    assertEquals(1, workshop.cores());
  }

  private void helper(int count) {
    helpers.add(ToyProcess.start(ToyHelper.class, workshop.place(), count, VERSION));
  }

  /** Begun at a new helper, since this machine is held for so long. */
  private Errand atHelper(Task task, Duration held) throws Exception {
    helper(1);
    cores(2);
    workshop.give(Toy.takes(held, "holds this machine"), news -> {});
    return workshop.give(task, news -> {});
  }

  private void cores(int cores) throws InterruptedException {
    ToyProcess.await(() -> workshop.cores() == cores, () -> "told " + said);
  }

  private String result(Errand errand) throws InterruptedException, ExecutionException {
    try {
      return Toy.text(errand.done().get(ToyProcess.PATIENCE_SECONDS, TimeUnit.SECONDS));
    } catch (TimeoutException e) {
      return fail("not done; there were told " + said, e);
    }
  }
}
