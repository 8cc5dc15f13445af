package ellwand.many.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.many.Errand;
import ellwand.many.Task;
import ellwand.many.TaskFailed;
import ellwand.problem.InputException;
import ellwand.work.Stop;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One who asks and one helper, with a core each. */
class HelpersTest {

  private static final String VERSION = "the same";

  private static HelpedWorkshop workshop;
  private static CompletableFuture<Void> helping;
  private static final Stop END = new Stop();
  private static final List<String> SAID = new CopyOnWriteArrayList<>();

  /** What keeps this machine's core busy, so that all else is done by the helper. */
  private Errand held;

  @BeforeAll
  static void open() throws InterruptedException {
    workshop = open(0);
    helping = CompletableFuture.runAsync(() -> help(VERSION, END, HelpersTest::found));
    ToyProcess.await(() -> workshop.cores() == 2, () -> "the helper did not come");
  }

  private static HelpedWorkshop open(int port) {
    Door door = new Door(Place.here(port), Optional.empty());
    return HelpedWorkshop.open(Toy.here(), 1, door, text -> {}, VERSION, HelpedWorkshop.SILENT);
  }

  /** Whose name is not known before it has been asked for once. */
  private static Optional<Place> found() {
    return SAID.isEmpty() ? Optional.empty() : Optional.of(workshop.place());
  }

  private static void help(String version, Stop stop, Supplier<Optional<Place>> asker) {
    try {
      new Helper(
              Toy.there(SAID::add),
              1,
              asker,
              Optional.empty(),
              Optional.empty(),
              SAID::add,
              version,
              Helper.SILENT)
          .run(stop);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @AfterAll
  static void close() {
    END.request();
    helping.join();
    workshop.close();
  }

  @BeforeEach
  void hold() {
    held = workshop.give(Toy.takes(Toy.LONG, "holds this machine"), news -> {});
  }

  @AfterEach
  void letGo() {
    held.withdraw();
  }

  @Test
  void workIsSharedOutAndNewsComesBack() throws Exception {
    letGo();
    List<String> news = new CopyOnWriteArrayList<>();
    List<Errand> errands = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      Task task = Toy.takes(Duration.ofMillis(500), "piece " + i);
      errands.add(workshop.give(task, told -> news.add(Toy.text(told))));
    }
    for (int i = 0; i < 8; i++) {
      assertEquals(Toy.made("piece " + i), result(errands.get(i)));
      assertTrue(news.contains("piece " + i), news::toString);
    }
    assertTrue(said("begun piece") >= 1, "the helper did nothing");
    assertTrue(said("begun piece") <= 7, "the helper did all");
  }

  @Test
  void longJobsComeThroughWhole() throws Exception {
    byte[] bytes = new byte[5_000_000];
    new Random(1).nextBytes(bytes);
    Errand echo = workshop.give(Toy.echo(bytes), news -> {});
    assertArrayEquals(bytes, echo.done().get(ToyProcess.PATIENCE_SECONDS, TimeUnit.SECONDS));
  }

  @Test
  void whatFailsIsToldOnce() throws Exception {
    Errand failing = workshop.give(Toy.fails("no room for the sleeve"), news -> {});
    ExecutionException e = assertThrows(ExecutionException.class, () -> result(failing));
    assertInstanceOf(TaskFailed.class, e.getCause());
    assertTrue(e.getCause().getMessage().contains("no room for the sleeve"), e::toString);
    Errand next = workshop.give(Toy.takes(Duration.ZERO, "next"), news -> {});
    assertEquals(Toy.made("next"), result(next));
    assertEquals(1, said("begun no room for the sleeve"));
  }

  @Test
  void whatIsHurriedOrWithdrawnStops() throws Exception {
    Errand hurried = workshop.give(Toy.takes(Toy.LONG, "hurried"), news -> {});
    hears("begun hurried");
    hurried.hurry();
    assertEquals("stopped", result(hurried));
    Errand withdrawn = workshop.give(Toy.takes(Toy.LONG, "withdrawn"), news -> {});
    hears("begun withdrawn");
    withdrawn.withdraw();
    hears("stopped withdrawn");
    assertThrows(CancellationException.class, () -> withdrawn.done().get());
  }

  @Test
  void helperWaitsUntilTheNameIsKnown() {
    assertEquals("No machine is known by that name yet. Waiting.", SAID.get(0));
  }

  @Test
  void placeThatIsTakenIsRefusedWithAWord() {
    InputException e = assertThrows(InputException.class, () -> open(workshop.place().port()));
    assertTrue(e.getMessage().contains("in use already"), e::getMessage);
  }

  @Test
  void helperOfAnotherVersionIsRefusedWithAWord() {
    InputException e =
        assertThrows(InputException.class, () -> help("another", new Stop(), HelpersTest::found));
    assertTrue(e.getMessage().contains("another version"), e::getMessage);
    assertEquals(2, workshop.cores());
  }

  private static long said(String words) {
    return SAID.stream().filter(line -> line.contains(words)).count();
  }

  private static void hears(String words) throws InterruptedException {
    ToyProcess.await(() -> said(words) >= 1, () -> "'%s' not in %s".formatted(words, SAID));
  }

  private static String result(Errand errand) throws Exception {
    return Toy.text(errand.done().get(ToyProcess.PATIENCE_SECONDS, TimeUnit.SECONDS));
  }
}
