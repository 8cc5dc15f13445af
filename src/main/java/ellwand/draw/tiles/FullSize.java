package ellwand.draw.tiles;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.PdfWriter.OnPaper;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing full size on pages, with its head.
 *
 * @param drawing without the head, in a frame that has room for it
 * @param head at the upper left of the frame
 * @param outlines of what is on the pages, for the map
 */
public record FullSize(
    Drawing drawing, PrintHead head, List<List<Point>> outlines, PagePlan plan, Ground ground) {

  /** What the page itself looks like. */
  public enum Ground {
    LIGHT,
    DARK
  }

  /**
   * @param paper pages, or a roll, whose page becomes as long as the drawing
   */
  public static FullSize of(
      Drawing drawing,
      PrintHead head,
      List<List<Point>> outlines,
      PrintPaper paper,
      Ground ground) {
    PrintPaper cut = paper.isRoll() ? paper.cutTo(drawing.frame().length()) : paper;
    Tiling tiling = new Tiling(cut, drawing.frame());
    List<Item> all = new ArrayList<>(drawing.items());
    all.addAll(head.ground(upperLeft(drawing.frame())));
    return new FullSize(drawing, head, outlines, PagePlan.of(tiling, all), ground);
  }

  private static Point upperLeft(Box frame) {
    return new Point(frame.minX(), frame.maxY());
  }

  /** Adds its pages to a PDF, the first one, which carries the head, first. */
  public void addTo(PdfWriter pdf) {
    List<Item> items = new ArrayList<>(drawing.items());
    List<PageMap> map =
        plan.tiles().size() > 1 ? List.of(new PageMap(plan, outlines, head.reading())) : List.of();
    items.addAll(head.items(upperLeft(drawing.frame()), map));
    List<Item> coloured = ground == Ground.DARK ? Recoloured.dark(items) : items;
    Drawing all = new Drawing(drawing.title(), drawing.frame(), coloured);
    for (Tile tile : plan.tiles()) {
      page(pdf, all, tile);
    }
  }

  private void page(PdfWriter pdf, Drawing all, Tile tile) {
    PrintPaper paper = plan.tiling().paper();
    Paper sheet = new Paper(paper.widthMm(), paper.heightMm());
    Box shown = plan.tiling().shown(tile);
    Point low = new Point(paper.sideMm(), paper.endMm());
    List<OnPaper> placed = new ArrayList<>();
    if (ground == Ground.DARK) {
      placed.add(ground(sheet));
    }
    Drawing near = Clipped.to(shown, all);
    placed.add(new OnPaper(near, 1, low).clipped());
    if (plan.tiles().size() > 1) {
      List<Item> marks = new ArrayList<>(new JoinMarks(plan, tile, new Reading(1)).items());
      marks.addAll(name(tile, near, marks));
      List<Item> furniture = List.of(Item.Group.furniture("page-marks", marks));
      placed.add(new OnPaper(new Drawing(all.title(), shown, furniture), 1, low));
    }
    pdf.page(sheet, placed);
  }

  private List<Item> name(Tile tile, Drawing near, List<Item> marks) {
    List<Item> taken = new ArrayList<>(near.items());
    taken.addAll(marks);
    int number = plan.tiles().indexOf(tile) + 1;
    String ofHowMany = "page " + number + " of " + plan.tiles().size();
    return new PageName(tile.name(), ofHowMany, drawing.title())
        .items(plan.tiling().seen(tile), new Inked(taken));
  }

  private static OnPaper ground(Paper sheet) {
    Box all = new Box(0, 0, sheet.widthMm(), sheet.heightMm());
    Item area = Item.Lines.closed("ground", Ink.area(new Colour(0)), Outline.of(all).points());
    return new OnPaper(new Drawing("", all, List.of(area)), 1, new Point(0, 0));
  }
}
