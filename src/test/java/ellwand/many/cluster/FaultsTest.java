package ellwand.many.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import ellwand.many.Craft;
import ellwand.many.Errand;
import ellwand.many.Task;
import ellwand.many.TaskFailed;
import ellwand.work.Stop;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.apache.pekko.actor.typed.ActorSystem;
import org.apache.pekko.actor.typed.javadsl.Behaviors;
import org.apache.pekko.cluster.typed.Cluster;
import org.apache.pekko.cluster.typed.Down;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** One who asks, helpers that are processes of their own, and what may happen to them. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class FaultsTest {

  private final List<String> said = new CopyOnWriteArrayList<>();
  private final List<ToyProcess> helpers = new ArrayList<>();
  private final Stop end = new Stop();
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

  /** Pekko ends whoever is put out by others, as may happen where many are cut off. */
  @Test
  void whoAsksAndIsPutOutOpensAgain() throws Exception {
    open(0);
    Errand errand = workshop.give(Toy.takes(Duration.ofSeconds(1), "hem"), news -> {});
    ActorSystem<Void> other =
        Engine.start(Behaviors.empty(), new Door(Place.here(0), Optional.empty()), Build.here());
    Engine.join(other, workshop.place());
    ToyProcess.await(() -> Engine.answered(other), () -> "not let in");
    Cluster.get(other)
        .state()
        .getMembers()
        .forEach(
            member -> {
              if (!member.equals(Cluster.get(other).selfMember())) {
                Cluster.get(other).manager().tell(new Down(member.address()));
              }
            });
    told("opens again");
    Engine.end(other);
    assertEquals(Toy.made("hem"), result(errand));
    CompletableFuture<Void> helping = helping(Toy.there(text -> {}));
    cores(2);
    workshop.close();
    end.request();
    helping.join();
  }

  @Test
  void helperWhoseWorkIsRefusedGetsNothingMore() throws Exception {
    open(0);
    CompletableFuture<Void> helping = helping((task, stop, news) -> new byte[] {'x'});
    cores(2);
    Errand held = hold();
    Errand errand = workshop.give(Toy.takes(Duration.ZERO, "hem"), news -> {});
    assertEquals("x", result(errand));
    Errand anew = errand.refuse("it is crooked");
    assertEquals(1, told("it gets nothing more: it is crooked"));
    cores(1);
    held.withdraw();
    assertEquals(Toy.made("hem"), result(anew));
    assertThrows(TaskFailed.class, () -> anew.refuse("it is crooked"));
    for (CompletableFuture<Void> dismissed : List.of(helping, helping(Toy.there(text -> {})))) {
      CompletionException e = assertThrows(CompletionException.class, dismissed::join);
      assertTrue(e.getMessage().contains("it is crooked"), e::getMessage);
    }
  }

  /** A helper in this process. */
  private CompletableFuture<Void> helping(Craft craft) {
    Helper helper =
        new Helper(craft, 1, workshop::place, Optional.empty(), Optional.empty(), text -> {});
    return CompletableFuture.runAsync(
        () -> {
          try {
            helper.run(end);
          } catch (InterruptedException e) {
            throw new IllegalStateException(e);
          }
        });
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

  private long told(String words) throws InterruptedException {
    LongSupplier often = () -> said.stream().filter(line -> line.contains(words)).count();
    ToyProcess.await(() -> often.getAsLong() > 0, () -> "told " + said);
    return often.getAsLong();
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
