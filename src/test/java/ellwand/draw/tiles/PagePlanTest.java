package ellwand.draw.tiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.draw.piece.PaperPiece;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Piece;
import java.util.List;
import java.util.Optional;
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

  /** A piece as large as the four pages has its words beside the joins, not across them. */
  @Test
  void wordsStandOnOnePageWhereThereIsRoom() {
    Tiling tiling = new Tiling(PrintPaper.parse("A4"), new Box(0, 0, 370, 540));
    CutPiece cut =
        Cutter.cut(
            new Piece(
                "panel",
                List.of(
                    edge("hem", 5, 5, 365, 5),
                    edge("right", 365, 5, 365, 535),
                    edge("top", 365, 535, 5, 535),
                    edge("left", 5, 535, 5, 5)),
                Optional.empty(),
                Grain.ALONG,
                List.of(),
                List.of(),
                List.of(new Cut("main", 1, Cut.How.WHOLE))),
            1,
            1);
    PaperPiece piece =
        new PaperPiece(
            cut, "style", "98", List.of("main: cut 1"), Optional.empty(), PaperPiece.Lines.BOTH);
    Reading reading = new Reading(1.3);
    Box across = ground(piece.items(Motion.NONE, reading, List.of()));
    Box beside = ground(piece.items(Motion.NONE, reading, tiling.joins()));
    assertEquals(6, tiling.joins().size());
    assertTrue(pages(tiling, across) == 0, across::toString);
    assertTrue(pages(tiling, beside) >= 1, beside::toString);
  }

  /** How many pages show all of a box. */
  private static int pages(Tiling tiling, Box box) {
    int pages = 0;
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        Box shown = tiling.shown(new Tile(row, column));
        boolean all =
            shown.contains(new Point(box.minX(), box.minY()))
                && shown.contains(new Point(box.maxX(), box.maxY()));
        pages += all ? 1 : 0;
      }
    }
    return pages;
  }

  private static Edge edge(String name, double x, double y, double toX, double toY) {
    return new Edge(name, Path.line(new Point(x, y), new Point(toX, toY)), 0, false);
  }

  private static Box ground(List<Item> items) {
    return items.stream()
        .filter(i -> i instanceof Item.Lines l && l.kind().equals("label-ground"))
        .map(i -> Box.around(((Item.Lines) i).lines().get(0)))
        .findFirst()
        .orElseThrow();
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
