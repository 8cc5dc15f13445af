package ellwand.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import ellwand.geometry.Point;
import ellwand.pattern.Style;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A quarter of a body graded by a published chart of children's sizes: each seam by its quarter.
 */
class PublishedSizesTest {

  private static final Path TUNIC = Path.of("sample-markers/beck-tunic/job.yaml");

  private static final List<String> SIZES =
      List.of("92", "98", "104", "110", "116", "122", "128", "134", "140");

  /**
   * cm, by size. 92 to 122: a Nordic magazine's chart of children's sizes; chest and waist of 128
   * to 140: another published chart. Charts differ by up to 2 cm, so the figures stay the user's.
   */
  private static final Map<String, double[]> CHART =
      Map.of(
          "chest", new double[] {54, 56, 58, 60, 62, 64, 66, 69, 72},
          "waist", new double[] {53, 54, 55, 56, 57, 58, 58, 60, 62},
          "hip", new double[] {58, 60, 62, 64, 66, 68},
          "back waist", new double[] {22.5, 24, 25, 26.5, 28, 29.5});

  @TempDir private Path folder;

  /** Half a front drawn in 104 without ease: its sides lie a quarter of chest, waist, hip out. */
  private static String job(List<String> sizes) {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < sizes.size(); i++) {
      int size = i;
      body.append("    \"%s\": {".formatted(sizes.get(i)));
      CHART.forEach(
          (name, cm) ->
              body.append(
                  size < cm.length ? "%s: %s, ".formatted(name, Double.toString(cm[size])) : ""));
      body.append("height: %s}%n".formatted(sizes.get(i)));
    }
    boolean all = sizes.size() == SIZES.size();
    return """
        ellwand: 1
        unit: cm
        sizes:
          names: %s
          body:
        %s  grade:
            front:
              hip side: {y: %s}
              waist side: {y: 1/4 waist}
              underarm: {y: 1/4 chest}
              nape: {x: %s}
        style:
          name: Quarter
          size: "104"
          allowance: 0
          pieces:
            front:
              cut: {main: 1 on fold}
              fold: centre
              outline:
                - {point: hip centre, at: [-12, 0]}
                - {point: hip side, at: [-12, 15.5]}
                - {point: waist side, at: [0, 13.75]}
                - {point: underarm, at: [12, 14.5]}
                - {point: nape, at: [25, 0]}
              edges:
                hip: {from: hip centre, to: hip side}
                lower side: {from: hip side, to: waist side}
                upper side: {from: waist side, to: underarm}
                slope: {from: underarm, to: nape}
                centre: {from: nape, to: hip centre}
        cloths: {main: {width: 140, fold: open}}
        order: {garments: {"104": 1}}
        """
        .formatted(
            sizes.stream().map(s -> '"' + s + '"').toList(),
            body,
            all ? "1/4 chest" : "1/4 hip",
            all ? "1/6 height" : "1 back waist");
  }

  private Style graded(List<String> sizes) throws IOException {
    return JobReader.read(Files.writeString(folder.resolve("job.yaml"), job(sizes))).style();
  }

  /** How far out an end of an edge lies in each size, mm: the upper one, or the lower. */
  private static List<Double> out(Style style, List<String> sizes, String edge, boolean upper) {
    return each(style, sizes, edge, upper, Point::y);
  }

  private static List<Double> each(
      Style style, List<String> sizes, String edge, boolean upper, ToDoubleFunction<Point> mm) {
    List<Double> each = new ArrayList<>();
    for (String size : sizes) {
      ellwand.geometry.Path line = style.pieces(size).get(0).edge(edge).line();
      boolean start = line.start().x() > line.end().x() == upper;
      each.add(Math.round(1e6 * mm.applyAsDouble(start ? line.start() : line.end())) / 1e6);
    }
    return each;
  }

  @Test
  void eachSeamMovesByItsQuarterOfTheChart() throws IOException {
    List<String> sizes = SIZES.subList(0, 6);
    Style style = graded(sizes);
    // Chest 54 56 58 60 62 64 cm: 2 cm a size, 5 mm a quarter; in 104 at 58 / 4 = 14.5 cm.
    assertEquals(
        List.of(135.0, 140.0, 145.0, 150.0, 155.0, 160.0), out(style, sizes, "upper side", true));
    // Waist 53 54 55 56 57 58 cm: 1 cm a size, 2.5 mm a quarter; 55 / 4 = 13.75 cm.
    assertEquals(
        List.of(132.5, 135.0, 137.5, 140.0, 142.5, 145.0), out(style, sizes, "lower side", true));
    // Hip 58 60 62 64 66 68 cm: 2 cm a size, 5 mm a quarter; 62 / 4 = 15.5 cm.
    assertEquals(
        List.of(145.0, 150.0, 155.0, 160.0, 165.0, 170.0), out(style, sizes, "lower side", false));
    // Back waist length 22.5 24 25 26.5 28 29.5 cm: wholly along the back.
    assertEquals(
        List.of(225.0, 240.0, 250.0, 265.0, 280.0, 295.0),
        each(style, sizes, "slope", true, Point::x));
  }

  @Test
  void aChartWithUnevenStepsIsFollowedUnevenly() throws IOException {
    Style style = graded(SIZES);
    // Chest goes on by 2, 3, 3 cm from 122: 64 66 69 72, a quarter 160 165 172.5 180 mm.
    assertEquals(
        List.of(160.0, 165.0, 172.5, 180.0),
        out(style, SIZES, "upper side", true).subList(5, SIZES.size()));
    // Waist by 0, 2, 2 cm: 58 58 60 62, a quarter 145 145 150 155 mm.
    assertEquals(
        List.of(145.0, 145.0, 150.0, 155.0),
        out(style, SIZES, "lower side", true).subList(5, SIZES.size()));
  }

  @Test
  void theSampleGivesThePublishedFigures() throws IOException {
    JsonNode body = new YAMLMapper().readTree(TUNIC.toFile()).get("sizes").get("body");
    for (int i = 0; i < SIZES.size(); i++) {
      JsonNode size = body.get(SIZES.get(i));
      assertEquals(Double.parseDouble(SIZES.get(i)), size.get("height").asDouble());
      for (String name : List.of("chest", "waist", "back waist")) {
        if (i < CHART.get(name).length) {
          assertEquals(CHART.get(name)[i], size.get(name).asDouble(), name + " of " + SIZES.get(i));
        }
      }
    }
  }
}
