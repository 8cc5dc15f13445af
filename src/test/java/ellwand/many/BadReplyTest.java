package ellwand.many;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.Scarf;
import ellwand.app.LayRun;
import ellwand.file.source.Folder;
import ellwand.job.Job;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What comes back from a helper is not trusted. */
class BadReplyTest {

  private static final String SCARF = Scarf.job(2);

  private static final JobFiles.Read<Job> READ =
      JobFiles.job("scarf.yaml", Folder.EMPTY.with("scarf.yaml", SCARF.getBytes(UTF_8)));

  private static void lay(UnaryOperator<byte[]> altered) {
    Craft craft = (task, stop, news) -> altered.apply(new MarkerCraft().work(task, stop, news));
    try (Workshop workshop = new OwnCores(craft, 1)) {
      LayRun.make(
          READ.what(),
          Unit.CM,
          Request.of(Effort.ofSteps(5), new Seed(1)),
          READ.hands(workshop, 1));
    }
  }

  /** Replaces words of the marker's file. */
  private static UnaryOperator<byte[]> marker(String what, String by) {
    return bytes -> {
      Map<String, byte[]> files = new LinkedHashMap<>(Parcel.of(bytes).files());
      String text = new String(files.get("OPEN.marker.json"), UTF_8);
      String altered = text.replaceFirst(what, by);
      assertTrue(!altered.equals(text), text);
      files.put("OPEN.marker.json", altered.getBytes(UTF_8));
      return new Parcel(files).bytes();
    };
  }

  private static String refused(UnaryOperator<byte[]> altered) {
    return assertThrows(TaskFailed.class, () -> lay(altered)).getMessage();
  }

  @Test
  void theMarkerAsItIsIsTaken() {
    lay(bytes -> bytes);
  }

  @Test
  void aMarkerThatBreaksARuleIsRefused() {
    assertTrue(
        refused(marker("\"outline\":\\[.*", "\"outline\":[[0,0],[900,0],[900,900],[0,900]]"))
            .contains("breaks a rule"));
    assertTrue(refused(marker("\"turn\":0(\\.0)?", "\"turn\":45")).contains("breaks a rule"));
    assertTrue(
        refused(
                marker(
                    "\"piece\":\"square\",\\s+\"size\":[^,]+,\\s+\"garment\":2,\\s+\"form\"",
                    "\"piece\":\"square\",\"size\":\"one size\",\"garment\":1,\"form\""))
            .contains("breaks a rule"));
  }

  @Test
  void whatIsNoAnswerIsRefused() {
    assertTrue(refused(marker("\"copies\"", "\"others\"")).contains("cannot be read"));
    assertTrue(refused(bytes -> new byte[] {1, 2, 3}).contains("lacks its said.json"));
    assertTrue(
        refused(bytes -> new Parcel(Map.of("said.json", "{}".getBytes(UTF_8))).bytes())
            .contains("is no answer"));
    assertTrue(
        refused(bytes -> new Parcel(Map.of("said.json", "{\"tried\":[]}".getBytes(UTF_8))).bytes())
            .contains("other ways"));
  }

  /** Whoever brought it, the next may bring what is right. */
  @Test
  void whatIsRefusedIsAskedForAnew() {
    List<String> refused = new ArrayList<>();
    try (OwnCores own = new OwnCores(new MarkerCraft(), 1);
        Workshop workshop = new BadFirst(own, refused)) {
      Request request = Request.of(Effort.ofSteps(5), new Seed(1));
      assertEquals(
          LayRun.make(READ.what(), Unit.CM, request).markers(),
          LayRun.make(READ.what(), Unit.CM, request, READ.hands(workshop, 1)).markers());
    }
    assertEquals(List.of("a parcel lacks its said.json"), refused);
  }

  /** The first that brings something brings what is no answer. */
  private record BadFirst(Workshop others, List<String> refused) implements Workshop {

    @Override
    public int cores() {
      return 1;
    }

    @Override
    public Errand give(Task task, Consumer<byte[]> news) {
      Errand right = others.give(task, news);
      return new Errand() {
        @Override
        public CompletableFuture<byte[]> done() {
          return CompletableFuture.completedFuture(new byte[] {1, 2, 3});
        }

        @Override
        public void hurry() {}

        @Override
        public Errand refuse(String why) {
          refused.add(why);
          return right;
        }

        @Override
        public void withdraw() {}
      };
    }

    @Override
    public void close() {}
  }

  @Test
  void aTaskThatSaysNothingIsRefused() {
    assertThrows(TaskFailed.class, () -> MarkerTask.of(new byte[0]));
    assertThrows(
        TaskFailed.class,
        () -> MarkerTask.of(new Parcel(Map.of("asked.json", "{}".getBytes(UTF_8))).bytes()));
  }

  @Test
  void problemsComeBackAsTheyAre() {
    List<Problem> problems =
        List.of(
            Problem.onEdge("front", "hem", "it is odd", "Mend it").at("coat.yaml", 7),
            Problem.of("there is more", "See to it"));
    InputException told =
        assertThrows(
            InputException.class,
            () -> MarkerReply.read(MarkerReply.refusing(problems), null, List.of()));
    assertEquals(problems, told.problems());
  }
}
