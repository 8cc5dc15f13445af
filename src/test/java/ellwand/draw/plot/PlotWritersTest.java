package ellwand.draw.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** What is written is drawn again by readers that share nothing with the writers. */
class PlotWritersTest {

  private static final Box FRAME = new Box(-15, -15, 12_000, 1500);

  @Property(tries = 25)
  void hpglDrawsTheSameLinesWithinHalfAUnit(
      @ForAll @Size(min = 3, max = 25) List<@DoubleRange(min = -10, max = 1400) Double> numbers) {
    Plot plot = plot(numbers);
    HpglReader read = new HpglReader(text(HpglWriter.bytes(plot)));
    for (int pen = 1; pen <= 2; pen++) {
      List<Stroke> strokes = new ArrayList<>();
      if (pen == 1) {
        strokes.addAll(plot.drawn());
      } else {
        strokes.addAll(plot.notches());
        strokes.addAll(plot.cut());
      }
      int number = pen;
      List<List<Point>> drawn =
          read.lines().stream()
              .filter(l -> l.pen() == number)
              .map(l -> l.points().stream().map(p -> p.plus(new Point(-15, -15))).toList())
              .toList();
      assertEquals(strokes.size(), drawn.size());
      // Half a unit each way: 0.0125 mm, 0.018 mm aslant.
      assertTrue(Region.sameLines(lines(strokes), drawn, 0.02), "pen " + pen);
    }
    assertEquals(FRAME.length(), read.widthMm(), 0.0125);
    assertEquals(FRAME.width(), read.heightMm(), 0.0125);
  }

  @Property(tries = 25)
  void dxfHoldsTheSameLinesOnTheirLayers(
      @ForAll @Size(min = 3, max = 25) List<@DoubleRange(min = -10, max = 1400) Double> numbers) {
    Plot plot = plot(numbers);
    String[] pairs = text(DxfWriter.bytes(plot)).split("\r\n");
    assertTrue(Region.sameLines(lines(plot.drawn()), polylines(pairs, "DRAW"), 0.001));
    assertTrue(Region.sameLines(lines(plot.notches()), polylines(pairs, "NOTCH"), 0.001));
    assertTrue(Region.sameLines(lines(plot.cut()), polylines(pairs, "CUT"), 0.001));
  }

  @Test
  void labelsStandWhereTheyAreAndReadAsTheyDid() {
    HpglReader read = new HpglReader(text(HpglWriter.bytes(plot(List.of(1.0, 2.0, 3.0)))));
    HpglReader.Label label = read.labels().get(0);
    assertEquals("1 Rucken, linke Halfte", label.words());
    assertEquals(1, label.pen());
    assertEquals(115, label.at().x(), 0.02);
    assertEquals(215, label.at().y(), 0.02);
    assertEquals(90, label.turnDegrees(), 0.001);
    assertTrue(label.heightMm() > 5 && label.heightMm() < 8, label.heightMm() + " mm high");
  }

  @Test
  void whatIsDrawnComesBeforeWhatIsCut() {
    HpglReader read = new HpglReader(text(HpglWriter.bytes(plot(List.of(1.0, 2.0, 3.0, 40.0)))));
    List<Integer> pens = read.lines().stream().map(HpglReader.Drawn::pen).toList();
    assertEquals(pens.stream().sorted().toList(), pens);
    assertEquals(List.of(1, 2), pens.stream().distinct().toList());
  }

  /** Zigzags and triangles through the numbers, and one label. */
  private static Plot plot(List<Double> numbers) {
    List<Stroke> drawn = new ArrayList<>();
    List<Stroke> notches = new ArrayList<>();
    List<Stroke> cut = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      double a = numbers.get(i);
      double b = numbers.get((i + 1) % numbers.size());
      Point one = new Point(8 * i, a);
      Point two = new Point(8 * i + 3.337, b + 0.001);
      drawn.add(new Stroke(List.of(one, two, new Point(a + 10, 8 * i)), false));
      notches.add(new Stroke(List.of(two, two.plus(new Point(0, 3))), false));
      cut.add(new Stroke(List.of(one, two, new Point(8 * i + 30, a + 77.7)), true));
    }
    Item.Text words =
        Item.Text.of("label", "1 Rücken, linke Hälfte", new Point(100, 200), 9, Item.Anchor.MIDDLE)
            .turned(90);
    return new Plot("plot", FRAME, List.of(words), drawn, notches, cut);
  }

  private static List<List<Point>> lines(List<Stroke> strokes) {
    List<List<Point>> lines = new ArrayList<>();
    for (Stroke stroke : strokes) {
      List<Point> line = new ArrayList<>(stroke.points());
      if (stroke.closed()) {
        line.add(stroke.start());
      }
      lines.add(line);
    }
    return lines;
  }

  /** The polylines of a layer, by group codes alone. */
  private static List<List<Point>> polylines(String[] pairs, String layer) {
    List<List<Point>> lines = new ArrayList<>();
    List<Point> line = null;
    boolean closed = false;
    String entity = "";
    String on = "";
    double x = 0;
    for (int i = 0; i + 1 < pairs.length; i += 2) {
      int code = Integer.parseInt(pairs[i].strip());
      String value = pairs[i + 1];
      switch (code) {
        case 0 -> {
          if (value.equals("SEQEND") && on.equals(layer)) {
            if (closed) {
              line.add(line.get(0));
            }
            lines.add(line);
          }
          if (value.equals("POLYLINE")) {
            line = new ArrayList<>();
            closed = false;
          }
          entity = value;
        }
        case 8 -> on = value;
        case 70 -> closed = entity.equals("POLYLINE") ? value.equals("1") : closed;
        case 10 -> x = Double.parseDouble(value);
        case 20 -> {
          if (entity.equals("VERTEX")) {
            line.add(new Point(x, Double.parseDouble(value)));
          }
        }
        default -> {}
      }
    }
    return lines;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.US_ASCII);
  }
}
