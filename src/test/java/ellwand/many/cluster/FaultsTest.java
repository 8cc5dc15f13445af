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
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** One who asks, helpers that are processes of their own, and what may happen to them. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class FaultsTest {

  private final List<String> said = new CopyOnWriteArrayList<>();
  private final List<ToyProcess> helpers = new ArrayList<>();
  private HelpedWorkshop workshop;

  @AfterEach
  void close() {
    workshop.close();
    helpers.forEach(ToyProcess::close);
  }

  /** All at once, since each takes its time until it is noticed. */
  @Test
  void taskOfHelperThatIsKilledOrEndsOrHangsIsDoneElsewhere() throws Exception {
    open(0);
    List<Task> tasks =
        List.of(
            Toy.takes(Duration.ofSeconds(1), "killed"),
            Toy.takes(Duration.ofSeconds(1), "ended"),
            Toy.kills(),
            Toy.hangs(Duration.ofSeconds(1)));
    tasks.forEach(task -> helper(1));
    cores(5);
    Errand held = hold();
    List<Errand> errands = tasks.stream().map(task -> workshop.give(task, news -> {})).toList();
    at("begun killed").kill();
    at("begun ended").signal("TERM");
    at("begun hanging");
    at("begun killing");
    told("helps no more");
    told("is late");
    told("is lost");
    cores(2);
    held.withdraw();
    for (String made : List.of("killed", "ended", "killing", "hanging")) {
      Errand errand = errands.get(List.of("killed", "ended", "killing", "hanging").indexOf(made));
      assertEquals(Toy.made(made), result(errand));
    }
    assertTrue(at("ended").ends());
  }

  /** Stopped, a process neither hears nor says anything, as behind a cable that is out. */
  @Test
  void partitionOfTenSecondsLosesNothing() throws Exception {
    open(0);
    helper(1);
    cores(2);
    List<Errand> errands = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      errands.add(workshop.give(Toy.takes(Duration.ofSeconds(2), "piece " + i), news -> {}));
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
    int port;
    try (ToyProcess asker = ToyProcess.start(ToyAsker.class)) {
      port = Integer.parseInt(asker.says("open at ", 1));
      helpers.add(ToyProcess.start(ToyHelper.class, Place.here(port), 1));
      helpers.get(0).says("begun first asker", 1);
      asker.kill();
    }
    open(port);
    cores(2);
    hold();
    assertEquals(
        Toy.made("next"), result(workshop.give(Toy.takes(Duration.ZERO, "next"), n -> {})));
    assertEquals(1, helpers.get(0).said("stopped first asker"));
  }

  @Test
  void twentyHelpersComeAndGo() throws Exception {
    open(0);
    List<Errand> errands = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      errands.add(workshop.give(Toy.takes(Duration.ofMillis(700), "piece " + i), news -> {}));
    }
    helper(7);
    helper(7);
    helpers.get(0).says("begun", 3);
    helpers.get(0).kill();
    helpers.get(1).says("begun", 3);
    helpers.get(1).signal("TERM");
    helper(6);
    for (int i = 0; i < errands.size(); i++) {
      assertEquals(Toy.made("piece " + i), result(errands.get(i)));
    }
  }

  private void open(int port) {
    Door door = new Door(Place.here(port), Optional.empty());
    workshop = HelpedWorkshop.open(Toy.here(), 1, door, said::add);
  }

  private void helper(int count) {
    helpers.add(ToyProcess.start(ToyHelper.class, workshop.place(), count));
  }

  /** Keeps this machine's core busy, so that all else is done by helpers. */
  private Errand hold() {
    return workshop.give(Toy.takes(Toy.LONG, "holds this machine"), news -> {});
  }

  /** The helper that said so. */
  private ToyProcess at(String words) throws InterruptedException {
    Supplier<Optional<ToyProcess>> who =
        () -> helpers.stream().filter(helper -> helper.said(words) > 0).findFirst();
    ToyProcess.await(() -> who.get().isPresent(), () -> "nobody said " + words);
    return who.get().orElseThrow();
  }

  private void told(String words) throws InterruptedException {
    ToyProcess.await(
        () -> said.stream().anyMatch(line -> line.contains(words)), () -> "told " + said);
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
