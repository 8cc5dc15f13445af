package ellwand.draw.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RowsTest {

  private static final Ink INK = Ink.line(Colour.INK, 1).filled(Colour.WHITE);

  private static Stream<Item> flat(Item item) {
    return item instanceof Item.Group g
        ? g.items().stream().flatMap(RowsTest::flat)
        : Stream.of(item);
  }

  private static List<Item> broken(int rows, List<Item> items) {
    Rows broken = new Rows(rows, new Box(-5, -5, 1205, 105), 1200, new Reading(1));
    return broken.items(items, new Box(0, 0, 1200, 100)).stream().flatMap(RowsTest::flat).toList();
  }

  private static double length(Item.Lines lines) {
    double sum = 0;
    for (List<Point> line : lines.lines()) {
      for (int i = lines.closed() ? 0 : 1; i < line.size(); i++) {
        Point way = line.get(i).minus(line.get((i + line.size() - 1) % line.size()));
        sum += Math.hypot(way.x(), way.y());
      }
    }
    return sum;
  }

  @Test
  void onlyALongLayIsBroken() {
    assertEquals(1, Rows.suiting(5900, 1000));
    assertEquals(2, Rows.suiting(6100, 1000));
    assertEquals(5, Rows.suiting(60_000, 1000));
    // With eight rows 83 m of folded cloth had no room on a page at any scale.
    assertEquals(5, Rows.suiting(83_400, 700));
    Item.Lines line = Item.Lines.open("x", INK, new Point(0, 0), new Point(1200, 0));
    assertEquals(List.of(line), broken(1, List.of(line)));
  }

  /** Nothing of a line or an area is lost or drawn twice, and each lies in its own row. */
  @Property(tries = 100)
  void whatIsCutAddsUp(
      @ForAll @IntRange(min = 2, max = 5) int rows,
      @ForAll @DoubleRange(min = 0, max = 1100) double x,
      @ForAll @DoubleRange(min = 1, max = 1100) double length,
      @ForAll @DoubleRange(min = -80, max = 80) double slant) {
    double end = Math.min(1200, x + length);
    List<Point> ring =
        List.of(
            new Point(x, 0), new Point(end, 10), new Point(end, 90), new Point(x, 90 - slant / 9));
    Item.Lines area = Item.Lines.closed("piece", INK, ring);
    List<Item.Lines> parts =
        broken(rows, List.of(area)).stream()
            .filter(i -> i instanceof Item.Lines l && l.kind().equals("piece"))
            .map(Item.Lines.class::cast)
            .toList();
    double outline =
        parts.stream().filter(p -> p.ink().line().isPresent()).mapToDouble(RowsTest::length).sum();
    assertEquals(length(area), outline, 1e-6);
    double filled =
        parts.stream()
            .filter(p -> p.ink().fill().isPresent())
            .flatMap(p -> p.lines().stream())
            .mapToDouble(l -> Outline.of(l).area())
            .sum();
    assertEquals(Outline.of(ring).area(), filled, 1e-6);
    parts.stream()
        .flatMap(p -> p.lines().stream())
        .flatMap(List::stream)
        .forEach(p -> assertTrue(p.x() >= -1e-9 && p.x() <= 1200.0 / rows + 1e-9, p::toString));
  }

  @Test
  void aCopyAcrossABreakHasItsNumberInBothRows() {
    List<Item> copy =
        List.of(
            Item.Lines.closed("cutting", INK, Outline.of(new Box(500, 10, 700, 90)).points()),
            Item.Text.of("label", "7 front", new Point(600, 50), 20, Item.Anchor.MIDDLE));
    List<String> words =
        broken(
                2,
                List.of(new Item.Group("seventh", "copy", Optional.empty(), Optional.of(7), copy)))
            .stream()
            .filter(Item.Text.class::isInstance)
            .map(i -> ((Item.Text) i).words())
            .toList();
    assertEquals(List.of("7", "goes on in row 2", "7", "goes on from row 1"), words);
  }

  /** Its outline lies in the first row only, a group of its marks reaches into the second. */
  @Test
  void aCopyOfWhichNoLineLiesInARowHasNoNumberThere() {
    Item leader = Item.Lines.open("leader", INK, new Point(500, 50), new Point(700, 50));
    List<Item> copy =
        List.of(
            Item.Lines.closed("cutting", INK, Outline.of(new Box(400, 10, 500, 90)).points()),
            Item.Text.of("label", "7", new Point(450, 50), 20, Item.Anchor.MIDDLE),
            new Item.Group("marks", "marks", Optional.empty(), Optional.empty(), List.of(leader)));
    List<Item> kept =
        broken(
            2, List.of(new Item.Group("seventh", "copy", Optional.empty(), Optional.of(7), copy)));
    assertEquals(
        List.of("7"),
        kept.stream()
            .filter(i -> i instanceof Item.Text t && t.words().equals("7"))
            .map(i -> ((Item.Text) i).words())
            .toList());
  }

  @Test
  void wordsStandOnce() {
    List<Item> words = new ArrayList<>();
    for (int i = 0; i <= 12; i++) {
      words.add(Item.Text.of("number", "" + i, new Point(100 * i, -3), 3, Item.Anchor.MIDDLE));
    }
    List<Item> kept =
        broken(3, words).stream()
            .filter(i -> i instanceof Item.Text t && t.kind().equals("number"))
            .toList();
    assertEquals(13, kept.size());
  }
}
