package ellwand.draw.tiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PageNameTest {

  private static final Box PAGE = new Box(100, 200, 290, 470);
  private static final PageName NAME = new PageName("B3", "page 7 of 12", "Gale cape");
  private static final Ink LINE = Ink.line(Colour.INK, 0.5);

  private static List<Item.Text> words(Item... drawn) {
    return Item.texts(NAME.items(PAGE, new Inked(List.of(drawn)))).toList();
  }

  private static Box box(List<Item.Text> words) {
    return words.stream().map(Item.Text::box).reduce(Box::union).orElseThrow();
  }

  private static Item rows(double pitch) {
    List<List<Point>> lines = new ArrayList<>();
    for (double y = PAGE.minY(); y < PAGE.maxY(); y += pitch) {
      lines.add(List.of(new Point(0, y), new Point(500, y)));
    }
    return new Item.Lines("line", lines, false, LINE);
  }

  @Test
  void standsInTheCornerWhereItIsFree() {
    List<Item.Text> words = words();
    assertEquals(new Point(103, 203), words.get(0).at());
    assertEquals("page 7 of 12 · Gale cape", words.get(1).words());
  }

  @Test
  void keepsOffLinesAndWordsButNotOffTheCloth() {
    Item slanted = Item.Lines.open("line", LINE, new Point(100, 230), new Point(150, 190));
    Item cloth =
        Item.Lines.closed(
            "cloth", Ink.area(Colour.WHITE), Outline.of(new Box(0, 0, 500, 500)).points());
    Item.Text label = Item.Text.of("label", "back", new Point(160, 204), 5, Item.Anchor.START);
    Box name = box(words(slanted, cloth, label));
    assertFalse(new Inked(List.of(slanted)).crosses(name), name::toString);
    assertFalse(label.box().touches(name), name::toString);
    assertTrue(name.minY() < 240, name::toString);
  }

  @Test
  void leavesTheTitleOutWhereThereIsRoomForLess() {
    double left = box(words()).maxX() - 5;
    List<List<Point>> posts = new ArrayList<>();
    for (double x = left; x < PAGE.maxX(); x += 20) {
      posts.add(List.of(new Point(x, 0), new Point(x, 500)));
    }
    List<Item.Text> words = words(new Item.Lines("line", posts, false, LINE));
    assertEquals("page 7 of 12", words.get(1).words());
    assertTrue(box(words).maxX() < left);
  }

  @Test
  void standsInTheCornerWhereNothingIsFree() {
    assertEquals(new Point(103, 203), words(rows(3)).get(0).at());
  }

  @Test
  void aLongTitleEndsOnThePage() {
    PageName longer = new PageName("B3", "page 7 of 12", "Gale cape for Larkfield ".repeat(20));
    Box name = box(Item.texts(longer.items(PAGE, new Inked(List.of()))).toList());
    assertTrue(name.maxX() <= PAGE.maxX(), name::toString);
  }
}
