package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeskTest {

  private static final String JOB = "name=weir-jacket.yaml";
  private static final String SIDE =
      "[\"style\",\"pieces\",\"back\",\"edges\",\"side seam\",\"allowance\"]";

  @TempDir Path folder;
  private Desk desk;
  private Visitor maker;

  @BeforeEach
  void open() {
    desk = Desk.start(folder, "127.0.0.1", 0);
    maker = Visitor.of(desk);
    if (maker.get("/jobs").json().path("jobs").isEmpty()) {
      maker.post("/jobs", "{\"sample\":\"weir-jacket\"}");
    }
  }

  @AfterEach
  void close() {
    desk.close();
  }

  /** As after a kill: nothing is handed over but the folder. */
  private void again() {
    desk.close();
    open();
  }

  private String file() throws IOException {
    return Files.readString(folder.resolve("weir-jacket.yaml"));
  }

  private Visitor.Reply edit(String at, String was, String value) {
    return maker.post(
        "/job/edit?" + JOB, "{\"at\":%s,\"was\":%s,\"value\":%s}".formatted(at, was, value));
  }

  @Test
  void everySampleOpens() {
    for (String sample : Workroom.SAMPLES) {
      String name =
          maker.post("/jobs", "{\"sample\":\"" + sample + "\"}").json().path("name").asText();
      JsonNode job = maker.get("/job?name=" + name.replace(" ", "%20")).json();
      assertTrue(job.path("problems").isEmpty(), sample + job.path("problems"));
    }
  }

  @Test
  void aStyleThatIsCalledAnOrderIsStillAStyle() {
    Workroom room = new Workroom(folder);
    String name = room.create("spring order", new byte[] {'#'});
    assertEquals("spring order 2.yaml", name);
    assertTrue(room.jobs().containsKey(name));
  }

  @Test
  void anEditChangesOneLineOfTheFile() throws IOException {
    String before = file();
    JsonNode was = at(maker.get("/job?" + JOB).json().path("entries"));
    assertEquals(200, edit(SIDE, was.toString(), "\"2.5 cm\"").status());
    String after = file();
    assertEquals(before.lines().count(), after.lines().count());
    long changed = 0;
    for (int i = 0; i < before.lines().count(); i++) {
      changed += before.lines().toList().get(i).equals(after.lines().toList().get(i)) ? 0 : 1;
    }
    assertEquals(1, changed);
    assertEquals("2.5 cm", at(maker.get("/job?" + JOB).json().path("entries")).asText());
  }

  private static JsonNode at(JsonNode entries) {
    return entries.at("/style/pieces/back/edges/side seam/allowance");
  }

  @Test
  void theLaterOfTwoEditsOfOneEntryIsRefused() throws IOException {
    JsonNode was = at(maker.get("/job?" + JOB).json().path("entries"));
    edit(SIDE, was.toString(), "\"2 cm\"");
    String mine = file();
    Visitor.Reply later = edit(SIDE, was.toString(), "\"3 cm\"");
    assertEquals(409, later.status());
    assertTrue(later.text().contains("this was changed meanwhile, to \\\"2 cm\\\""), later.text());
    assertEquals(mine, file());
  }

  @Test
  void anEditThatMakesNoSenseLeavesTheFileAlone() throws IOException {
    String before = file();
    JsonNode was = at(maker.get("/job?" + JOB).json().path("entries"));
    Visitor.Reply refused = edit(SIDE, was.toString(), "\"-2 cm\"");
    assertEquals(422, refused.status());
    assertTrue(
        refused.json().at("/problems/0/what").asText().contains("less than 0"), refused.text());
    assertEquals(before, file());
  }

  @Test
  void whatWasUndoneComesBackAlsoAfterANewStart() throws IOException {
    String before = file();
    JsonNode was = at(maker.get("/job?" + JOB).json().path("entries"));
    edit(SIDE, was.toString(), "\"2 cm\"");
    String after = file();
    again();
    maker.post("/job/undo?" + JOB, "{}");
    assertEquals(before, file());
    again();
    assertTrue(maker.get("/job?" + JOB).json().path("redo").asBoolean());
    maker.post("/job/redo?" + JOB, "{}");
    assertEquals(after, file());
    assertFalse(maker.get("/job?" + JOB).json().path("redo").asBoolean());
  }

  @Test
  void aMarkerIsLaidKeptMovedAndPutBack() throws Exception {
    maker.post("/job/table/lay?cloth=lining&" + JOB, "{\"seconds\":30}");
    await(t -> t.has("marker"));
    maker.post("/job/table/keep?cloth=lining&" + JOB, "{}");
    JsonNode laid = await(t -> !t.path("searching").asBoolean()).path("marker");
    assertTrue(laid.path("findings").isEmpty(), laid.path("findings").toString());
    assertTrue(
        Files.exists(folder.resolve(".ellwand/weir-jacket.yaml/markers/lining.marker.json")));

    again();
    assertEquals(laid.path("copies"), lining().path("marker").path("copies"), "nothing is lost");

    maker.post(
        "/job/table/step?cloth=lining&" + JOB,
        "{\"do\":\"move\",\"copies\":[0],\"along\":0,\"across\":5000}");
    JsonNode moved = lining().path("marker");
    assertFalse(moved.path("findings").isEmpty());
    assertEquals("[]", files(), "nothing illegal leaves");
    maker.post("/job/table/undo?cloth=lining&" + JOB, "{}");
    assertEquals(laid.path("copies"), lining().path("marker").path("copies"));
  }

  @Test
  void aMarkerThatNoLongerFitsItsPiecesSaysSo() throws Exception {
    maker.post("/job/table/lay?cloth=lining&" + JOB, "{\"seconds\":30}");
    await(t -> t.has("marker"));
    maker.post("/job/table/keep?cloth=lining&" + JOB, "{}");
    await(t -> !t.path("searching").asBoolean());
    JsonNode was = at(maker.get("/job?" + JOB).json().path("entries"));
    edit(SIDE, was.toString(), "\"6 cm\"");
    assertFalse(lining().path("marker").path("findings").isEmpty());
  }

  @Test
  void whatCannotBeLaidIsToldWhy() throws Exception {
    edit("[\"cloths\",\"lining\",\"width\"]", "114", "\"20 cm\"");
    maker.post("/job/table/lay?cloth=lining&" + JOB, "{\"seconds\":5}");
    JsonNode table = await(t -> !t.path("problems").isEmpty());
    assertTrue(table.at("/problems/0/what").asText().contains("lining"), table.toString());
  }

  @Test
  void aStyleOfAnotherFileIsChangedThereForAllThatShareIt() throws IOException {
    String job = file();
    Files.writeString(folder.resolve("coat.yaml"), job);
    String cloths = job.substring(job.indexOf("\ncloths:"));
    for (String name : new String[] {"spring.yaml", "autumn.yaml"}) {
      Files.writeString(
          folder.resolve(name), "ellwand: 1\nunit: cm\nstyle: {file: coat.yaml}\n" + cloths);
    }
    maker.get("/job?name=autumn.yaml");
    JsonNode spring = maker.get("/job?name=spring.yaml").json();
    assertEquals(
        "[\"autumn.yaml\",\"spring.yaml\"]", spring.at("/elsewhere/style/jobs").toString());
    String was = at(spring.path("entries")).toString();
    String edit = "{\"at\":" + SIDE + ",\"was\":" + was + ",\"value\":\"%s\"}";
    assertEquals(200, maker.post("/job/edit?name=spring.yaml", edit.formatted("2.5 cm")).status());
    assertTrue(Files.readString(folder.resolve("coat.yaml")).contains("allowance: 2.5 cm"));
    assertEquals("2.5 cm", at(maker.get("/job?name=autumn.yaml").json().path("entries")).asText());
    assertTrue(maker.get("/job/pieces?size=104&name=autumn.yaml").text().contains("2.5 cm"));

    Visitor.Reply refused =
        maker.post(
            "/job/rename?name=coat.yaml",
            "{\"what\":\"piece\",\"piece\":\"pocket\",\"to\":\"patch\"}");
    assertEquals(200, refused.status(), refused.text());
    Files.writeString(
        folder.resolve("cape.yaml"),
        job.replace("    pocket:\n", "    patch:\n      from: {file: coat.yaml, piece: patch}\n")
            .replaceAll(
                "(?s)(piece: patch\\}\n).*?(\n    peplum:)",
                "$1      cut: {main: 2, lining: 2}\n$2"));
    assertTrue(maker.get("/job?name=cape.yaml").json().path("problems").isEmpty());
    refused =
        maker.post(
            "/job/rename?name=coat.yaml",
            "{\"what\":\"piece\",\"piece\":\"patch\",\"to\":\"pouch\"}");
    assertEquals(422, refused.status());
    assertTrue(refused.text().contains("then in cape.yaml"), refused.text());

    again();
    maker.post("/job/undo?section=style&name=autumn.yaml", "{}");
    maker.post("/job/undo?section=style&name=autumn.yaml", "{}");
    assertEquals(job, Files.readString(folder.resolve("coat.yaml")));
  }

  @Test
  void aStyleOutsideTheFolderIsLeftAlone(@TempDir Path outside) throws IOException {
    Files.writeString(outside.resolve("coat.yaml"), file());
    String cloths = file().substring(file().indexOf("\ncloths:"));
    Files.writeString(
        folder.resolve("spring.yaml"),
        "ellwand: 1\nunit: cm\nstyle: {file: " + outside.resolve("coat.yaml") + "}\n" + cloths);
    Visitor.Reply refused =
        maker.post(
            "/job/edit?name=spring.yaml", "{\"at\":" + SIDE + ",\"was\":1.5,\"value\":\"2 cm\"}");
    assertEquals(422, refused.status());
    assertTrue(refused.text().contains("outside this folder"), refused.text());
  }

  @Test
  void aSecondStartFindsTheFirst() {
    assertEquals(desk.address(), Desk.open(folder).orElseThrow());
    InputException refused =
        assertThrows(InputException.class, () -> Desk.start(folder, "127.0.0.1", 0));
    assertTrue(refused.getMessage().contains("another desk is open"), refused.getMessage());
    desk.close();
    assertTrue(Desk.open(folder).isEmpty());
    open();
  }

  @Test
  void piecesArePrintedBeforeAnythingIsLaid() {
    Visitor.Reply pdf = maker.get("/job/print?paper=A4&" + JOB);
    assertEquals(200, pdf.status());
    assertTrue(pdf.text().startsWith("%PDF"));
    Visitor.Reply refused = maker.get("/job/print?paper=napkin&" + JOB);
    assertEquals(422, refused.status());
    assertTrue(refused.text().contains("napkin"), refused.text());
    assertEquals(409, maker.get("/job/print?paper=A4&of=marker&cloth=lining&" + JOB).status());
  }

  /** The page's forms know every word that a step of the file may hold, and no other. */
  @Test
  void everyStepHasAForm() throws IOException {
    String page = resource("/ellwand/desk/places/steps.js");
    Set<String> asked = new TreeSet<>();
    Matcher keys =
        Pattern.compile("(?:key: |name\\(|length\\(|point\\(|edge\\(|choice\\()'([a-z ]+)'")
            .matcher(page);
    while (keys.find()) {
      asked.add(keys.group(1));
    }
    Set<String> known = new TreeSet<>();
    new JsonMapper()
        .readTree(resource("/ellwand/job.schema.json"))
        .at("/$defs/step/properties")
        .fieldNames()
        .forEachRemaining(known::add);
    assertEquals(known, asked);
  }

  private static String resource(String name) throws IOException {
    return new String(DeskTest.class.getResourceAsStream(name).readAllBytes());
  }

  @Test
  void photosAreLimitedAndOneLotAtATime() {
    assertTrue(maker.get("/reference?paper=A4").text().startsWith("%PDF"));
    assertEquals(422, maker.get("/reference?paper=napkin").status());
    int lot = maker.post("/jobs/photos", "{}").json().path("lot").asInt();
    Visitor.Reply refused =
        maker.ask("POST", "/jobs/photo?file=a.jpg&lot=" + lot, new byte[40_500_000]);
    assertEquals(422, refused.status());
    assertTrue(refused.text().contains("larger than 40 MB"), refused.text());
    assertEquals(200, maker.ask("POST", "/jobs/photo?file=a.jpg&lot=" + lot, new byte[9]).status());
    refused = maker.post("/jobs/photos/look?lot=" + lot, "{}");
    assertEquals(422, refused.status(), "nine bytes are no photo");
    assertEquals(422, maker.get("/jobs/photos/picture?lot=" + lot).status());
    maker.post("/jobs/photos", "{}");
    refused = maker.ask("POST", "/jobs/photo?file=a.jpg&lot=" + lot, new byte[9]);
    assertTrue(refused.text().contains("other photos"), refused.text());
    assertEquals(422, maker.post("/jobs/photos/style?lot=" + (lot + 1), "{\"number\":1}").status());
  }

  @Test
  void anOrderIsAFileOfItsOwn() throws IOException {
    assertEquals(200, maker.post("/job/order?" + JOB, "{\"rust\":{\"104\":3}}").status());
    Path order = folder.resolve("weir-jacket order.yaml");
    assertTrue(Files.readString(order).contains("rust: {'104': 3}"), Files.readString(order));
    assertEquals(1, maker.get("/jobs").json().path("jobs").size(), "an order is no style");
    Visitor.Reply refused =
        maker.post(
            "/job/order/edit?" + JOB,
            "{\"at\":[\"order\",\"colours\",\"rust\",\"104\"],\"was\":3,\"value\":-1}");
    assertEquals(422, refused.status());
    assertTrue(Files.readString(order).contains("rust: {'104': 3}"));
    maker.post(
        "/job/order/edit?" + JOB,
        "{\"at\":[\"order\",\"colours\",\"rust\",\"104\"],\"was\":3,\"value\":5}");
    assertTrue(Files.readString(order).contains("rust: {'104': 5}"));
    maker.post("/job/order/undo?" + JOB, "{}");
    again();
    assertEquals(
        3, maker.get("/job/order?" + JOB).json().at("/entries/order/colours/rust/104").asInt());
  }

  private String files() {
    return maker.get("/job/files?" + JOB).json().path("files").toString();
  }

  @Test
  void aMarkerFollowsWhatItsPiecesAreCalled() throws Exception {
    JsonNode laid = laid();
    assertTrue(files().contains("lining.svg") && !files().contains("shopping"), files());
    String piece = laid.at("/copies/0/piece").asText();
    step("{\"do\":\"move\",\"copies\":[0],\"across\":3000}");
    maker.post(
        "/job/rename?" + JOB,
        "{\"what\":\"piece\",\"piece\":\"" + piece + "\",\"to\":\"other name\"}");
    maker.post("/job/table/undo?cloth=lining&" + JOB, "{}");
    assertEquals("other name", lining().at("/marker/copies/0/piece").asText());
    assertTrue(lining().at("/marker/findings").isEmpty(), lining().toString());
    again();
    assertTrue(lining().at("/marker/findings").isEmpty(), "so it is on disk");
    maker.post("/job/undo?" + JOB, "{}");
    assertEquals(piece, lining().at("/marker/copies/0/piece").asText());
    assertTrue(lining().at("/marker/findings").isEmpty());
  }

  @Test
  void whatAnotherProgramWroteCanBeHadAgain() throws IOException {
    String elsewhere = file().replace("title:", "# mine\ntitle:");
    Files.writeString(folder.resolve("weir-jacket.yaml"), elsewhere);
    JsonNode was = at(maker.get("/job?" + JOB).json().path("entries"));
    edit(SIDE, was.toString(), "\"2.5 cm\"");
    maker.post("/job/undo?" + JOB, "{}");
    assertEquals(elsewhere, file());
    Files.writeString(folder.resolve("weir-jacket.yaml"), elsewhere + "# more\n");
    maker.post("/job/undo?" + JOB, "{}");
    assertEquals(elsewhere, file());
    maker.post("/job/redo?" + JOB, "{}");
    assertEquals(elsewhere + "# more\n", file());
  }

  private JsonNode laid() throws InterruptedException {
    maker.post("/job/table/lay?cloth=lining&" + JOB, "{\"seconds\":30}");
    await(t -> t.has("marker"));
    maker.post("/job/table/keep?cloth=lining&" + JOB, "{}");
    return await(t -> !t.path("searching").asBoolean()).path("marker");
  }

  private Visitor.Reply step(String body) {
    return maker.post("/job/table/step?cloth=lining&" + JOB, body);
  }

  @Test
  void whatCannotBeDoneAsThingsAreIsAConflictAndWhatMakesNoSenseIsNot() throws Exception {
    String move = "{\"do\":\"move\",\"copies\":[0],\"along\":1}";
    assertEquals(409, step(move).status(), "nothing lies there yet");
    assertEquals(409, maker.post("/job/table/tidy?cloth=lining&" + JOB, "{}").status());
    laid();
    assertEquals(409, step(move.replace("[0]", "[99]")).status());
    step("{\"do\":\"pin\",\"copies\":[0]}");
    Visitor.Reply pinned = step(move);
    assertEquals(409, pinned.status());
    assertTrue(pinned.text().contains("is pinned where it lies"), pinned.text());
    for (String nonsense :
        List.of(
            "{\"do\":\"fold\",\"copies\":[0]}",
            "{\"do\":\"move\",\"along\":1}",
            "{\"do\":\"move\",\"copies\":[\"a\"]}",
            "{\"do\":\"move\",\"copies\":[0.5]}",
            "{\"do\":\"move\",\"copies\":[1],\"along\":1e300}",
            "{\"do\":\"turn\",\"copies\":[1],\"degrees\":1e9}",
            "{\"do\":\"exchange\",\"copies\":[1],\"others\":[1]}",
            "{\"do\":\"exchange\",\"copies\":[1]}")) {
      assertEquals(422, step(nonsense).status(), nonsense);
    }
    assertEquals(
        409,
        maker.post("/job/table/lay?cloth=lining&" + JOB, "{\"way\":\"crosswise fold\"}").status());
    assertEquals(404, maker.post("/job/table/undo?cloth=velvet&" + JOB, "{}").status());
    assertEquals(404, maker.get("/job?name=nothing.yaml").status());
    Visitor page = maker.with("Accept", "text/event-stream");
    assertEquals(404, page.get("/job/news?name=nothing.yaml").status());
  }

  @Test
  void pinsOutliveAKillAndCanBePutBack() throws Exception {
    JsonNode laid = laid();
    step("{\"do\":\"pin\",\"copies\":[0,1]}");
    step("{\"do\":\"move\",\"copies\":[2],\"across\":3000}");
    again();
    assertEquals("[0,1]", lining().at("/marker/pinned").toString());
    maker.post("/job/table/tidy?cloth=lining&" + JOB, "{\"seconds\":10}");
    JsonNode tidied =
        await(t -> t.at("/marker/findings").isEmpty() && !t.path("searching").asBoolean())
            .path("marker");
    for (int i = 0; i < 2; i++) {
      assertEquals(laid.path("copies").path(i), tidied.path("copies").path(i));
    }
    assertEquals("[0,1]", tidied.path("pinned").toString());
    maker.post("/job/table/undo?cloth=lining&" + JOB, "{}");
    assertFalse(lining().at("/marker/findings").isEmpty(), "the step before the tidying");
  }

  @Test
  void aTidiedMarkerHasThePiecesAsTheJobHasThemNow() throws Exception {
    laid();
    JsonNode was = at(maker.get("/job?" + JOB).json().path("entries"));
    edit(SIDE, was.toString(), "\"3 cm\"");
    assertFalse(lining().at("/marker/findings").isEmpty());
    maker.post("/job/table/tidy?cloth=lining&" + JOB, "{\"seconds\":10}");
    await(t -> t.at("/marker/findings").isEmpty());
  }

  @Test
  void whatIsLeftOverIsToldAndKeptOnTheShelf() throws Exception {
    JsonNode marker = laid();
    JsonNode left = maker.get("/job/table/left?cloth=lining&" + JOB).json();
    JsonNode place = left.path("places").path(0);
    assertTrue(place.path("length").asDouble() >= 60 && place.path("width").asDouble() >= 60);
    assertFalse(left.path("regions").isEmpty());
    Visitor.Reply kept = maker.post("/job/table/left?cloth=lining&" + JOB, place.toString());
    assertEquals(200, kept.status(), kept.text());
    JsonNode shelf = maker.get("/job?" + JOB).json().at("/entries/remnants");
    assertEquals(kept.json().size(), shelf.size());
    JsonNode remnant = shelf.path(kept.json().path(0).asText());
    assertEquals("lining", remnant.path("cloth").asText());
    assertTrue(file().contains(remnant.path("length").asText()), file());
    assertEquals(marker.path("copies"), lining().at("/marker/copies"), "it lies as before");
    Visitor.Reply again = maker.post("/job/table/left?cloth=lining&" + JOB, place.toString());
    assertNotEquals(kept.json().path(0), again.json().path(0));
    assertEquals(
        409, maker.post("/job/table/left?cloth=lining&" + JOB, "{\"x\":1,\"y\":2}").status());
  }

  private JsonNode lining() {
    for (JsonNode table : maker.get("/job/tables?" + JOB).json()) {
      if (table.at("/goods/name").asText().equals("lining")) {
        return table;
      }
    }
    throw new AssertionError("the job has a lining");
  }

  private JsonNode await(Predicate<JsonNode> there) throws InterruptedException {
    for (int i = 0; i < 600; i++) {
      JsonNode table = lining();
      if (there.test(table)) {
        return table;
      }
      TimeUnit.MILLISECONDS.sleep(100);
    }
    throw new AssertionError("not within a minute: " + lining());
  }
}
