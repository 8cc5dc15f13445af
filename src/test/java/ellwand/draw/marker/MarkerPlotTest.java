package ellwand.draw.marker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.plot.HpglReader;
import ellwand.draw.plot.HpglWriter;
import ellwand.draw.plot.Plot;
import ellwand.draw.plot.Stroke;
import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Marker;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarkerPlotTest {

  private static final Marker JACKET = Samples.jacket();
  private static final Plot PLOT = MarkerPlot.of(JACKET, "Weir jacket");

  @Test
  void everyCopyIsCutAlongItsWholeLineButWhereItLiesOnAFold() {
    List<Stroke> cut = PLOT.cut();
    for (Copy copy : JACKET.copies()) {
      if (copy.form() == Form.HALF) {
        Box box = copy.outline().box();
        Stroke open =
            cut.stream().filter(s -> !s.closed() && inside(s, box)).findFirst().orElseThrow();
        assertEquals(length(copy.outline()) - onFold(copy), open.lengthMm(), 1e-6);
      } else {
        assertTrue(
            cut.stream().anyMatch(s -> s.closed() && s.points().equals(copy.outline().points())),
            copy.piece());
      }
    }
    assertEquals(JACKET.copies().size(), cut.size());
  }

  @Test
  void everyCopySaysItsNumberAndEveryFoldIsNamed() {
    List<String> words = PLOT.words().stream().map(Item.Text::words).toList();
    for (int i = 1; i <= JACKET.copies().size(); i++) {
      String number = Integer.toString(i);
      assertTrue(words.stream().anyMatch(w -> w.matches(number + "( .*)?")), number + words);
    }
    assertTrue(words.contains("fold"));
    assertTrue(words.contains("Weir jacket, main, lengthwise fold"));
  }

  /** Through the words that would stand on the first piece. */
  @Test
  void wordsStandBesideAJoin() {
    Item.Text name = first(PLOT);
    double y = name.at().y();
    List<Point> join = List.of(new Point(-100, y), new Point(5000, y));
    Plot joined = MarkerPlot.unheaded(JACKET, "Weir jacket", List.of(join));
    assertTrue(acrossJoin(PLOT, y) > 0);
    assertEquals(0, acrossJoin(joined, y));
    assertEquals(name.words(), first(joined).words());
  }

  private static Item.Text first(Plot plot) {
    return plot.words().stream()
        .filter(text -> text.words().startsWith("1 "))
        .findFirst()
        .orElseThrow();
  }

  private static long acrossJoin(Plot plot, double y) {
    return plot.words().stream()
        .map(Item.Text::box)
        .filter(box -> box.minY() < y && y < box.maxY())
        .count();
  }

  @Test
  void theMachineDrawsEveryOutlineWhereItWasChecked() {
    Plot plot = PLOT.shortened();
    HpglReader read = new HpglReader(new String(HpglWriter.bytes(plot), StandardCharsets.US_ASCII));
    Point corner = new Point(plot.frame().minX(), plot.frame().minY());
    for (Copy copy : JACKET.copies()) {
      if (copy.form() != Form.HALF) {
        boolean found =
            read.lines().stream()
                .filter(l -> l.pen() == 2)
                .map(l -> l.points().stream().map(p -> p.plus(corner)).toList())
                .anyMatch(line -> isNear(line, copy.outline()));
        assertTrue(found, copy.piece());
      }
    }
  }

  @Test
  void theOrderTakesLessTravelThanThatOfTheCopies() {
    assertTrue(PLOT.shortened().travelMm() < PLOT.travelMm());
    assertEquals(PLOT.cutMm(), PLOT.shortened().cutMm(), 1e-6);
  }

  /** The fold lies along y = 0. */
  private static double onFold(Copy copy) {
    List<Double> xs =
        copy.outline().points().stream().filter(p -> p.y() < 1e-6).map(Point::x).toList();
    return Collections.max(xs) - Collections.min(xs);
  }

  private static boolean isNear(List<Point> line, Outline outline) {
    return line.size() == outline.points().size() + 1
        && line.stream().allMatch(p -> outline.distance(p) < 0.05)
        && outline.points().stream()
            .allMatch(p -> line.stream().anyMatch(q -> q.distance(p) < 0.05));
  }

  private static boolean inside(Stroke stroke, Box box) {
    Box grown = box.grown(0.001);
    return stroke.points().stream()
        .allMatch(
            p ->
                p.x() >= grown.minX()
                    && p.x() <= grown.maxX()
                    && p.y() >= grown.minY()
                    && p.y() <= grown.maxY());
  }

  private static double length(Outline outline) {
    return new Stroke(outline.points(), true).lengthMm();
  }
}
