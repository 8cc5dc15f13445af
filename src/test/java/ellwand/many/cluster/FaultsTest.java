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
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.apache.pekko.actor.ActorRef;
import org.apache.pekko.actor.PoisonPill;
import org.apache.pekko.actor.typed.ActorSystem;
import org.apache.pekko.actor.typed.javadsl.Adapter;
import org.apache.pekko.actor.typed.javadsl.Behaviors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * One who asks, and what may happen to helpers. Those that are killed or cut off are processes of
 * their own, the others live in this one.
 */
@EnabledOnOs({OS.LINUX, OS.MAC})
class FaultsTest {

  /** Where what has to be lost should be lost soon. */
  private static final Duration IMPATIENT = Duration.ofSeconds(4);

  /** Of whoever asks: what three helpers leave undone is begun there at once. */
  private static final int OWN_CORES = 3;

  /** What the asker tells, and what helpers in this process say. */
  private final List<String> said = new CopyOnWriteArrayList<>();

  private final List<ToyProcess> processes = new ArrayList<>();
  private final Map<Stop, CompletableFuture<Void>> helpers = new LinkedHashMap<>();
  private HelpedWorkshop workshop;

  @AfterEach
  void close() {
    workshop.close();
    processes.forEach(ToyProcess::close);
    helpers.keySet().forEach(Stop::request);
    helpers.values().forEach(helper -> helper.handle((none, why) -> why).join());
  }

  /**
   * All at once, since each takes its time until it is noticed. Stopped, a process neither hears
   * nor says anything, as behind a cable that is out.
   */
  @Test
  void helperThatIsKilledOrCutOffForTenSecondsOrEndsOrHangsLosesNothing() throws Exception {
    open(0, HelpedWorkshop.SILENT);
    process(1);
    process(1);
    helpers(2);
    Errand held = hold();
    Errand killed = takes(Duration.ofSeconds(3), "killed");
    Errand cutOff = takes(Duration.ofSeconds(3), "cut off");
    at("begun killed").kill();
    ToyProcess far = at("begun cut off");
    long since = System.nanoTime();
    far.signal("STOP");
    CompletableFuture<Duration> cut =
        CompletableFuture.supplyAsync(
            () -> goesOn(far, since), CompletableFuture.delayedExecutor(10, TimeUnit.SECONDS));
    helper(Toy.there(said::add));
    Errand hanging = workshop.give(Toy.hangs(Duration.ofSeconds(4)), news -> {});
    said("begun hanging", 1);
    Stop end = helper(Toy.there(said::add));
    Errand ended = takes(Duration.ofSeconds(3), "ended");
    said("begun ended", 1);
    // Whatever is begun anew is begun here.
    held.withdraw();
    end.request();
    // A busy machine may be late to end it.
    boolean forTenSeconds = cut.join().compareTo(HelpedWorkshop.SILENT) < 0;
    assertEquals(Toy.made("ended"), result(ended));
    assertEquals(Toy.made("hanging"), result(hanging));
    assertEquals(Toy.made("killed"), result(killed));
    assertEquals(Toy.made("cut off"), result(cutOff));
    assertEquals(1, said("helps no more", 1));
    long lost = said("is lost", 1);
    assertTrue(lost == 1 || lost == 2 && !forTenSeconds, () -> cut.join() + " " + said);
    assertTrue(said("is late", 1) >= 1);
    assertEquals(Toy.made("back"), backFrom(far));
  }

  /** How long it was stopped at the most. */
  private static Duration goesOn(ToyProcess far, long since) {
    try {
      far.signal("CONT");
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return Duration.ofNanos(System.nanoTime() - since);
  }

  private String backFrom(ToyProcess far) throws Exception {
    Errand held = hold();
    Errand back = takes(Duration.ZERO, "back");
    far.says("begun back", 1);
    held.withdraw();
    return result(back);
  }

  @Test
  void helperOfKilledAskerHelpsTheNext() throws Exception {
    int port;
    try (ToyProcess asker = ToyProcess.start(ToyAsker.class)) {
      port = Integer.parseInt(asker.says("open at ", 1));
      helper(Toy.there(said::add), () -> Optional.of(Place.here(port)), IMPATIENT);
      said("begun first asker", 1);
      asker.kill();
    }
    said("stopped first asker", 1);
    open(port, IMPATIENT);
    helpers(1);
    hold();
    assertEquals(Toy.made("next"), result(takes(Duration.ZERO, "next")));
  }

  /** However slow some are to come, there are tasks left for them. */
  @Test
  void twentyHelpersComeAndGo() throws Exception {
    open(0, IMPATIENT);
    Errand held = hold();
    List<Errand> errands = new ArrayList<>(pieces(0));
    process(7);
    processes.get(0).says("begun", 3);
    processes.get(0).kill();
    errands.addAll(pieces(50));
    List<Stop> ends = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      ends.add(helper(Toy.there(said::add)));
    }
    said("begun", 3);
    ends.forEach(Stop::request);
    for (int i = 0; i < 6; i++) {
      helper(Toy.there(said::add));
    }
    held.withdraw();
    for (int i = 0; i < errands.size(); i++) {
      assertEquals(Toy.made("piece " + i), result(errands.get(i)));
    }
  }

  private List<Errand> pieces(int first) {
    return IntStream.range(first, first + 50)
        .mapToObj(i -> takes(Duration.ofMillis(700), "piece " + i))
        .toList();
  }

  /** As where memory runs out: Pekko ends then. */
  @Test
  void whoAsksAndIsEndedOpensAgain() throws Exception {
    open(0, IMPATIENT);
    Errand errand = takes(Duration.ofSeconds(1), "hem");
    Door door = new Door(Place.here(0), Optional.empty());
    ActorSystem<Void> other = Engine.start(Behaviors.empty(), door, IMPATIENT);
    Adapter.toClassic(Engine.root(other, workshop.place()))
        .tell(PoisonPill.getInstance(), ActorRef.noSender());
    said("opens again", 1);
    Engine.end(other);
    assertEquals(Toy.made("hem"), result(errand));
    helper(Toy.there(said::add));
    helpers(1);
  }

  @Test
  void helperWhoseWorkIsRefusedGetsNothingMore() throws Exception {
    open(0, IMPATIENT);
    helper((task, stop, news) -> new byte[] {'x'});
    helpers(1);
    Errand held = hold();
    Errand errand = takes(Duration.ZERO, "hem");
    assertEquals("x", result(errand));
    Errand anew = errand.refuse("it is crooked");
    assertEquals(1, said("it gets nothing more: it is crooked", 1));
    helpers(0);
    held.withdraw();
    assertEquals(Toy.made("hem"), result(anew));
    assertThrows(TaskFailed.class, () -> anew.refuse("it is crooked"));
    helper(Toy.there(said::add));
    for (CompletableFuture<Void> dismissed : helpers.values()) {
      CompletionException e = assertThrows(CompletionException.class, dismissed::join);
      assertTrue(e.getMessage().contains("it is crooked"), e::getMessage);
    }
  }

  private void open(int port, Duration silent) {
    Door door = new Door(Place.here(port), Optional.empty());
    workshop = HelpedWorkshop.open(Toy.here(), OWN_CORES, door, said::add, Build.here(), silent);
  }

  /** Helpers as a process. */
  private void process(int count) {
    processes.add(ToyProcess.start(ToyHelper.class, workshop.place(), count));
  }

  private Stop helper(Craft craft) {
    return helper(craft, () -> Optional.of(workshop.place()), Helper.SILENT);
  }

  /** A helper in this process, until it is stopped. */
  private Stop helper(Craft craft, Supplier<Optional<Place>> asker, Duration silent) {
    Stop end = new Stop();
    Helper helper =
        new Helper(
            craft, 1, asker, Optional.empty(), Optional.empty(), text -> {}, Build.here(), silent);
    helpers.put(
        end,
        CompletableFuture.runAsync(
            () -> run(helper, end), run -> new Thread(run, "helper").start()));
    return end;
  }

  private static void run(Helper helper, Stop end) {
    try {
      helper.run(end);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private Errand takes(Duration time, String text) {
    return workshop.give(Toy.takes(time, text), news -> {});
  }

  /** Keeps this machine's cores busy, so that all else is done by helpers. */
  private Errand hold() {
    Task task = Toy.takes(Toy.LONG, "holds this machine");
    return workshop.give(new Task(task.kind(), task.asked(), OWN_CORES, task.most()), news -> {});
  }

  /** The process that said so. */
  private ToyProcess at(String words) throws InterruptedException {
    Supplier<Optional<ToyProcess>> who =
        () -> processes.stream().filter(process -> process.said(words) > 0).findFirst();
    ToyProcess.await(() -> who.get().isPresent(), () -> "nobody said " + words);
    return who.get().orElseThrow();
  }

  /** Waits until this was said so often; how often it was. */
  private long said(String words, int times) throws InterruptedException {
    ToyProcess.await(() -> often(words) >= times, () -> "'%s' not in %s".formatted(words, said));
    return often(words);
  }

  private long often(String words) {
    return said.stream().filter(line -> line.contains(words)).count();
  }

  /** Waits until so many helpers of one core each are there. */
  private void helpers(int count) throws InterruptedException {
    ToyProcess.await(() -> workshop.cores() == OWN_CORES + count, () -> "told " + said);
  }

  private String result(Errand errand) throws InterruptedException, ExecutionException {
    try {
      return Toy.text(errand.done().get(ToyProcess.PATIENCE_SECONDS, TimeUnit.SECONDS));
    } catch (TimeoutException e) {
      return fail("not done; there were said " + said, e);
    }
  }
}
