package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import ellwand.job.Job;
import ellwand.pattern.Piece;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A graded style, read from the sample job. */
class SizesTest {

  private static final Path TUNIC = Path.of("sample-markers/beck-tunic/job.yaml");

  @TempDir Path folder;

  private Job changed(String old, String now) throws IOException {
    String text = Files.readString(TUNIC);
    assertTrue(text.contains(old), old);
    return JobReader.read(Files.writeString(folder.resolve("job.yaml"), text.replace(old, now)));
  }

  private String refusal(String old, String now) {
    InputException e = assertThrows(InputException.class, () -> changed(old, now));
    return String.join(
        "\n", e.problems().stream().map(p -> p.toString().replace(folder + "/", "")).toList());
  }

  private static Piece piece(Style style, String size, String name) {
    return style.pieces(size).stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void pointsFollowTheBodyMeasures() {
    Style style = JobReader.read(TUNIC).style();
    assertEquals(
        List.of("92", "98", "104", "110", "116", "122", "128", "134", "140"),
        List.copyOf(style.sizes()));
    // Drawn at (375, 175) in 104; height 104 to 140 is 360 mm, chest 58 to 72 is 140 mm.
    Point underarm = piece(style, "140", "front").edge("side seam").line().start();
    assertEquals(375 + 0.42 * 360, underarm.x(), 1e-6);
    assertEquals(175 + 140 / 4.0, underarm.y(), 1e-6);
  }

  @Test
  void gatheredRectanglesAreComputedAnewInEachSize() throws IOException {
    Style style = JobReader.read(TUNIC).style();
    for (String size : style.sizes()) {
      double neck =
          piece(style, size, "front").edge("neckline").line().length()
              + piece(style, size, "back").edge("neckline").line().length();
      double band = piece(style, size, "neck band").edge("top").line().length();
      assertEquals(neck, band, 0.01, size);
    }
    String sizes =
        "\"92\": 2, \"98\": 3, \"104\": 3, \"110\": 3, \"116\": 3, \"122\": 3, \"128\": 4";
    Style bySize =
        changed("length: 3  ", "length: {" + sizes + ", \"134\": 4, \"140\": 4} ").style();
    assertEquals(20, piece(bySize, "92", "neck band").edge("side").line().length(), 1e-9);
    assertEquals(40, piece(bySize, "140", "neck band").edge("side").line().length(), 1e-9);
    assertTrue(
        refusal("length: 3  ", "length: {" + sizes + "} ")
            .contains("piece neck band: no length is given for size 134. Give one for each size."));
  }

  @Test
  void theDrawnSizeIsLaidWhereNoOtherIsAskedFor() throws IOException {
    String wanted = "order:\n  garments: {\"98\": 2, \"104\": 1, \"116\": 1}\n";
    assertEquals(Map.of("104", 3), changed(wanted, "order: {garments: 3}\n").garments());
    assertEquals(Map.of("104", 1), changed(wanted, "").garments());
  }

  @Test
  void stepsAndTablesAreReadInTheUnitOfTheFile() throws IOException {
    Style steps = changed("neck centre: {x: 0.49 height}", "neck centre: [0.5, 0]").style();
    assertEquals(470 + 10, piece(steps, "116", "front").edge("neckline").line().start().x(), 1e-9);
    assertEquals(470 - 10, piece(steps, "92", "front").edge("neckline").line().start().x(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "size: \"104\"           # | size: \"105\"  # |the pieces are drawn in size 105",
        "\"92\", \"98\"| \"92\", \"92\"|size 92 is named twice. Name it once.",
        "      neck centre: {x: 0.49 height}|      nick: {x: 0.49 height}|"
            + "piece front: no point or line of it is called nick. Use one of hem centre, hem side",
        "sleeve:\\n      underarm|slave:\\n      underarm|"
            + "piece slave: no piece called slave is drawn. Perhaps sleeve is meant.",
        "x: 0.49 height|x: 0.49 girth|no girth is given for sizes 92",
        "x: 0.49 height|x: half the height|'half the height' is not a share of a body measure."
            + " Write for example 1/4 chest.",
        "{x: 0.49 height}|{\"92\": [1, 2], \"97\": [1, 2]}|there is no size 97",
        "{x: 0.49 height}|{\"92\": [1, 2]}|no shift is given for size 98",
        "{x: 0.49 height}|{x: -3 height}|piece front: in size 122, the outline crosses",
        "[front.shoulder, back.shoulder]|[front.shoulder, back.elbow]|no edge is called back.elbow",
      })
  void mistakesAreNamed(String old, String now, String message) {
    String refusal = refusal(old.replace("\\n", "\n").strip(), now.replace("\\n", "\n").strip());
    assertTrue(refusal.contains(message), refusal);
  }

  /** The notch is as wrong in all nine sizes. */
  @Test
  void whatIsWrongAsDrawnIsToldOnce() throws IOException {
    String refusal = refusal("{edge: armhole, at: 7.5,", "{edge: armhole, at: 75,");
    assertEquals(1, refusal.lines().count(), refusal);
    assertTrue(refusal.contains("piece back, edge armhole: a notch at 75.0 cm"), refusal);
  }
}
