package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Markers on the desk's tables: laid, moved by hand, tidied, and what is left over. */
class LaidAtDeskTest extends AtDesk {

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

  private JsonNode laid() throws InterruptedException {
    maker.post("/job/table/lay?cloth=lining&" + JOB, "{\"seconds\":30}");
    await(t -> t.has("marker"));
    maker.post("/job/table/keep?cloth=lining&" + JOB, "{}");
    return await(t -> !t.path("searching").asBoolean()).path("marker");
  }

  /** However long it takes until it is legal. */
  private JsonNode tidied() throws InterruptedException {
    maker.post("/job/table/tidy?cloth=lining&" + JOB, "{\"seconds\":200}");
    await(t -> t.at("/marker/findings").isEmpty());
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
    JsonNode tidied = tidied();
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
    tidied();
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
    for (int i = 0; i < 2400; i++) {
      JsonNode table = lining();
      if (there.test(table)) {
        return table;
      }
      TimeUnit.MILLISECONDS.sleep(100);
    }
    throw new AssertionError("not within four minutes: " + lining());
  }
}
