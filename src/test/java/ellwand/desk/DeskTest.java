package ellwand.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import ellwand.file.job.JobReader;
import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of jobs, orders and their files at the desk. */
class DeskTest extends AtDesk {

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
  void aJobBegunWithAStyleLaysTheSizeThatIsDrawn() throws IOException {
    Files.copy(Path.of("sample-markers/beck-tunic/job.yaml"), folder.resolve("tunic.yaml"));
    Visitor.Reply begun = maker.post("/jobs", "{\"style\":\"tunic.yaml\"}");
    assertEquals(200, begun.status(), begun.text());
    assertEquals(
        Map.of("104", 1),
        JobReader.read(folder.resolve(begun.json().path("name").asText())).garments());
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
}
