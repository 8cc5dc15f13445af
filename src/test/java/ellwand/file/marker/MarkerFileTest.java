package ellwand.file.marker;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.cloth.KeepOut;
import ellwand.cloth.Zone;
import ellwand.file.source.Folder;
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
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                      List.of(new Point(0, 0), new Point(812.345678, 0), new Point(1.5, 200))))),
          Set.of(0));

  @TempDir Path folder;

  private String written() {
    return text(FILE);
  }

  private static String text(MarkerFile file) {
    return new String(MarkerWriter.bytes(file), StandardCharsets.UTF_8);
  }

  private static MarkerFile read(String text) {
    return MarkerReader.read(
        "x.marker.json", Folder.EMPTY.with("x.marker.json", text.getBytes(StandardCharsets.UTF_8)));
  }

  private String refusal(String text) {
    return assertThrows(InputException.class, () -> read(text)).getMessage();
  }

  @Test
  void readsWhatItWrote() throws IOException {
    assertEquals(FILE, read(written()));
  }

  @Test
  void keepsWhomASecondPieceIsFor() throws IOException {
    String shared =
        written()
            .replaceFirst("(\"garment\":1,)(\\s*)\"form\"", "$1$2\"secondGarment\":2,$2\"form\"");
    MarkerFile file = read(shared);
    assertEquals(List.of(1, 2), file.copies().get(0).garments());
    assertEquals(shared, text(file));
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
        FILE.copies(),
        FILE.pinned());
  }

  @Test
  void writesNumbersPlainlyToSixDecimals() {
    assertTrue(written().contains("\"length\":812.345678,"), written());
    assertTrue(written().contains("\"turn\":180,"), written());
    assertEquals("10000000", Json.number(1e7).asText());
    assertEquals("0", Json.number(-1e-9).asText());
    assertEquals("0.333333", Json.number(1 / 3.0).asText());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"down\"|\"sideways\"|" + "x.marker.json:50: heading cannot be 'sideways'. Use up, down.",
        "\"zone\":|\"zona\":|x.marker.json:33: there is no zone. Add it.\\n"
            + "x.marker.json:44: there is no zone. Add it.",
        "\"garment\":1|\"garment\":1.5|"
            + "x.marker.json:41: garment is not a whole number. Write one of at most 100000."
            + "\\nx.marker.json:47: garment is not a whole number. Write one of at most 100000.",
        "812.345678|\"812\"|x.marker.json:16: length is not a number of mm or degrees. Write it"
            + " without unit and quotes.",
        "812.345678|1e999|x.marker.json:16: length is not a number of mm or degrees. Write it"
            + " without unit and quotes.",
        "\"plies\":2|\"plies\":3|x.marker.json:23: zone folded has 3 plies. Give it 2 where the"
            + " cloth lies double, else 1 and no fold.",
        "\"ellwand\":1|\"ellwand\":2|x.marker.json:1: this is no marker of Ellwand. Name a file"
            + " that ends with .marker.json.",
        "\"form\":|\"form\":\"half\",\"form\":|x.marker.json:48: 'form' stands here a second time,"
            + " after line 48. Give it another name, or take one of the two out.",
        "\"stoppedEarly\":false|\"stoppedEarly\":0|"
            + "x.marker.json:22: stoppedEarly is neither true nor false. Write one of the two.",
        "\"threads\":2|\"threads\":200000|"
            + "x.marker.json:20: threads is not a whole number. Write one of at most 100000.",
        "\"cloth\":\"linen\"|\"cloth\":7|"
            + "x.marker.json:10: cloth is not a text. Put it in quotes.",
        "\"x1\":812.345678|\"x1\":-900|x.marker.json:23: the zone ends before it begins. Write x1"
            + " of at least x0, and y1 of at least y0.",
        "[ 1.5, 200 ]|[ 1.5 ]|"
            + "x.marker.json:55: a point in outline is not [x, y]. Write two numbers.",
        "[ 1.5, 200 ]|[ 1.5, 0 ]|x.marker.json:55: outline encloses nothing. Give it three points"
            + " or more, each as [x, y].",
        "\"foldEdges\":|\"foldEdges\":3,\"was\":|"
            + "x.marker.json:30: foldEdges is not a list. Put it in brackets.",
      })
  void saysWhereAMarkerEditedByHandIsWrong(String old, String now, String told) throws IOException {
    assertTrue(written().contains(old), written());
    assertEquals(told.replace("\\n", "\n"), refusal(written().replace(old, now)));
  }

  @Test
  void saysWhereAFileIsNoMarker() {
    String good = written();
    assertTrue(refusal(good.substring(0, good.length() / 2)).contains("not well-formed JSON"));
    assertTrue(refusal("[".repeat(100_000)).contains("nested too deeply"));
    assertEquals(
        "x.marker.json:1: this is no marker of Ellwand. Name a file that ends with .marker.json.",
        refusal("[1, 2]"));
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
