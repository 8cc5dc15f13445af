package ellwand.file.marker;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.KeepOut;
import ellwand.cloth.Zone;
import ellwand.file.source.Json;
import ellwand.file.source.WholeFile;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import ellwand.lay.Marker;
import ellwand.lay.Scope;
import ellwand.pattern.Cut;
import ellwand.problem.InputException;
import ellwand.rule.Stated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkerFileTest {

  private static final MarkerFile FILE =
      new MarkerFile(
          "job.yaml",
          "ab".repeat(32),
          "linen",
          Optional.of("1 m x 2 m"),
          new Scope.Garments(Map.of("104", 1)),
          Fold.LENGTHWISE,
          Direction.ONE_WAY,
          new Stated(690, 812.345678, 812.345678, 0.8125, 2),
          Optional.of(new Marker.Search(Long.MAX_VALUE, 2, "5000steps", false)),
          List.of(
              new Zone(
                  "folded",
                  new Box(0, 0, 812.345678, 690),
                  2,
                  Set.of(Zone.Side.LOW_Y),
                  Zone.Face.WRONG)),
          List.of(
              new KeepOut(
                  "folded",
                  "stain",
                  new Outline(List.of(new Point(5, 5), new Point(9, 5), new Point(7, 9.25))))),
          List.of(new MarkerFile.Demand("front \"é\"", "104", 1, Cut.How.FOLD)),
          List.of(
              new Copy(
                  "front \"é\"",
                  "104",
                  1,
                  Form.HALF,
                  "folded",
                  Heading.DOWN,
                  new Motion(true, 180, 812.345678, 0),
                  new Outline(
                      List.of(new Point(0, 0), new Point(812.345678, 0), new Point(1.5, 200))))));

  @TempDir Path folder;

  private String written() {
    return text(FILE);
  }

  private static String text(MarkerFile file) {
    return new String(MarkerWriter.bytes(file), java.nio.charset.StandardCharsets.UTF_8);
  }

  private MarkerFile read(String text) throws IOException {
    return MarkerReader.read(Files.writeString(folder.resolve("x.marker.json"), text));
  }

  private String refusal(String text) {
    return assertThrows(InputException.class, () -> read(text)).getMessage();
  }

  @Test
  void readsWhatItWrote() throws IOException {
    assertEquals(FILE, read(written()));
  }

  @Test
  void keepsApartWholePartAndOthersThanTheJobsGarments() throws IOException {
    for (Scope scope : List.of(Scope.WHOLE, Scope.PART, FILE.scope())) {
      assertEquals(scope, read(text(of(scope, FILE.search()))).scope());
    }
  }

  @Test
  void saysThatAMarkerWasLaidByHand() throws IOException {
    String text = text(of(Scope.WHOLE, Optional.empty()));
    assertTrue(text.contains("\"byHand\":true,") && !text.contains("\"seed\""), text);
    assertEquals(Optional.empty(), read(text).search());
    assertTrue(
        refusal(text.replace("\"byHand\":true", "\"byHand\":false")).contains("there is no seed"));
  }

  private static MarkerFile of(Scope scope, Optional<Marker.Search> search) {
    return new MarkerFile(
        FILE.jobPath(),
        FILE.jobSha256(),
        FILE.cloth(),
        FILE.remnant(),
        scope,
        FILE.fold(),
        FILE.direction(),
        FILE.stated(),
        search,
        FILE.zones(),
        FILE.keepOuts(),
        FILE.demand(),
        FILE.copies());
  }

  @Test
  void writesNumbersPlainlyToSixDecimals() {
    assertTrue(written().contains("\"length\":812.345678,"), written());
    assertTrue(written().contains("\"turn\":180,"), written());
    assertEquals("10000000", Json.number(1e7).asText());
    assertEquals("0", Json.number(-1e-9).asText());
    assertEquals("0.333333", Json.number(1 / 3.0).asText());
  }

  @Test
  void writesRecordsFieldByField() {
    record Inner(List<String> words) {}
    record Outer(double share, int count, Inner inner) {}
    String text =
        new String(
            Json.bytes(new Outer(2 / 3.0, 7, new Inner(List.of("a", "b")))),
            java.nio.charset.StandardCharsets.UTF_8);
    assertEquals(
        "{\n  \"share\":0.666667,\n  \"count\":7,\n  \"inner\":{\n    \"words\":[ \"a\", \"b\" ]\n  }\n}\n",
        text);
  }

  @Test
  void saysWhereAMarkerEditedByHandIsWrong() {
    String good = written();
    assertTrue(
        refusal(good.replace("\"down\"", "\"sideways\""))
            .contains("heading cannot be 'sideways'. Use up, down"));
    assertTrue(refusal(good.replace("\"zone\":", "\"zona\":")).contains("there is no zone"));
    assertTrue(
        refusal(good.replace("\"garment\":1", "\"garment\":1.5"))
            .contains("garment is not a whole number"));
    assertTrue(refusal(good.replace("812.345678", "\"812\"")).contains("is not a number"));
    assertTrue(refusal(good.replace("812.345678", "1e999")).contains("is not a number"));
    assertTrue(refusal(good.replace("\"plies\":2", "\"plies\":3")).contains("zone folded"));
    assertTrue(refusal(good.replace("\"ellwand\":1", "\"ellwand\":2")).contains("no marker file"));
    assertTrue(refusal(good.substring(0, good.length() / 2)).contains("not well-formed JSON"));
    assertTrue(refusal("[".repeat(100_000)).contains("nested too deeply"));
    assertTrue(refusal("[1, 2]").contains("no marker file"));
    assertTrue(
        refusal(good.replace("\"form\":", "\"form\":\"half\",\"form\":"))
            .contains("'form' stands here a second time"));
    assertTrue(
        refusal(good.replace("\"zone\":", "\"zona\":"))
            .matches("(?s).*x\\.marker\\.json:\\d+: .*"));
  }

  @Test
  void writesWholeFilesOrNone() throws IOException {
    Path path = folder.resolve("new/deep/a.txt");
    WholeFile.write(path, new byte[] {1, 2});
    WholeFile.write(path, new byte[] {3});
    assertArrayEquals(new byte[] {3}, Files.readAllBytes(path));
    try (var files = Files.list(path.getParent())) {
      assertEquals(1, files.count());
    }
    String refusal =
        assertThrows(
                InputException.class, () -> WholeFile.write(path.resolve("b.txt"), new byte[] {1}))
            .getMessage();
    assertTrue(refusal.contains("b.txt: it cannot be written: "), refusal);
    assertTrue(refusal.contains("Choose another folder"), refusal);
  }
}
