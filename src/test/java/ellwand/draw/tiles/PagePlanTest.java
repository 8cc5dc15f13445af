package ellwand.draw.tiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PagePlanTest {

  private static final Ink LINE = Ink.line(Colour.INK, 0.5);

  @Property
  void everyPlaceIsSeenOnOnePageAndShownThere(
      @ForAll @DoubleRange(min = 10, max = 3000) double length,
      @ForAll @DoubleRange(min = 10, max = 2000) double width,
      @ForAll @DoubleRange(min = 0, max = 1) double x,
      @ForAll @DoubleRange(min = 0, max = 1) double y) {
    Tiling tiling = new Tiling(PrintPaper.parse("A4"), new Box(-50, 20, length - 50, width + 20));
    Point place = new Point(-50 + x * length, 20 + y * width);
    int seen = 0;
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        Tile tile = new Tile(row, column);
        if (holds(tiling.seen(tile), place)) {
          seen++;
          assertTrue(holds(tiling.shown(tile), place));
        }
      }
    }
    // On a join it is at the edge of both.
    assertTrue(seen == 1 || seen >= 2 && onAJoin(tiling, place), seen + " pages");
  }

  private static boolean onAJoin(Tiling tiling, Point place) {
    double column = (place.x() - tiling.frame().minX()) / tiling.stepX();
    double row = (tiling.frame().maxY() - place.y()) / tiling.stepY();
    return Math.abs(column - Math.rint(column)) < 1e-6 || Math.abs(row - Math.rint(row)) < 1e-6;
  }

  private static boolean holds(Box box, Point p) {
    return p.x() >= box.minX() - 1e-9
        && p.x() <= box.maxX() + 1e-9
        && p.y() >= box.minY() - 1e-9
        && p.y() <= box.maxY() + 1e-9;
  }

  @Test
  void onlyPagesWithSomethingOnThemArePrinted() {
    Tiling tiling = new Tiling(PrintPaper.parse("A4"), new Box(0, 0, 560, 280));
    Item apart =
        new Item.Lines(
            "line",
            List.of(
                List.of(new Point(10, 200), new Point(100, 200)),
                List.of(new Point(400, 200), new Point(500, 210))),
            false,
            LINE);
    PagePlan plan = PagePlan.of(tiling, List.of(apart));
    assertEquals(List.of("A1", "A3"), plan.tiles().stream().map(Tile::name).toList());
    assertEquals(List.of(), plan.joins());
  }

  @Test
  void aPageInsideAPieceIsPrintedThoughNoLineIsOnIt() {
    Tiling tiling = new Tiling(PrintPaper.parse("A4"), new Box(0, 0, 560, 820));
    Item piece =
        Item.Lines.closed(
            "piece",
            LINE.filled(Colour.WHITE),
            List.of(new Point(5, 5), new Point(555, 5), new Point(555, 815), new Point(5, 815)));
    PagePlan plan = PagePlan.of(tiling, List.of(piece));
    assertEquals(9, plan.tiles().size());
    assertTrue(plan.tiles().contains(new Tile(1, 1)));
    assertEquals(12, plan.joins().size());
  }

  @Test
  void pagesAreJoinedWhereSomethingRunsAcross() {
    Tiling tiling = new Tiling(PrintPaper.parse("A4"), new Box(0, 0, 370, 280));
    Item across = Item.Lines.open("line", LINE, new Point(10, 100), new Point(360, 120));
    Item beside = Item.Lines.open("line", LINE, new Point(10, 100), new Point(100, 120));
    Item other = Item.Lines.open("line", LINE, new Point(300, 100), new Point(350, 120));
    assertEquals(1, PagePlan.of(tiling, List.of(across)).joins().size());
    assertEquals(0, PagePlan.of(tiling, List.of(beside, other)).joins().size());
  }

  @Test
  void rowsAreCalledAsTheLettersGo() {
    assertEquals("A1", new Tile(0, 0).name());
    assertEquals("Z12", new Tile(25, 11).name());
    assertEquals("AA1", new Tile(26, 0).name());
    assertEquals("BA3", new Tile(52, 2).name());
  }

  @Test
  void whatIsPrintedOfAFourLetterPageHasRoomOnBoth() {
    // A4 is 210 x 297 mm (ISO 216), Letter 8 1/2 x 11 in. That both share a tile of 190 x 259 mm
    // is common practice, from memory.
    PrintPaper both = PrintPaper.parse("A4-Letter");
    assertEquals(190, both.innerWidthMm(), 1e-9);
    assertEquals(259, both.innerHeightMm(), 1e-9);
    PrintPaper letter = PrintPaper.parse("letter");
    assertTrue(both.innerWidthMm() <= letter.innerWidthMm());
    assertTrue(both.innerHeightMm() <= letter.innerHeightMm());
    assertFalse(both.isRoll());
    assertTrue(PrintPaper.parse("roll: 36 in").isRoll());
    assertEquals(914.4, PrintPaper.parse("roll:36in").widthMm(), 1e-9);
  }
}
