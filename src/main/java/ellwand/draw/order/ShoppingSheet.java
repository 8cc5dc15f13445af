package ellwand.draw.order;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Pages;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.Table;
import ellwand.draw.sheet.Table.Column;
import ellwand.draw.sheet.TitleBlock;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.figures.Shopping;
import ellwand.figures.ShoppingText;
import ellwand.figures.ToBuy;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** The page to take to the shop: every cloth and every trim, with boxes to tick. */
public final class ShoppingSheet {

  private ShoppingSheet() {}

  /**
   * A4 pages, mostly one.
   *
   * @param heading what it is for
   * @param garments how many garments that makes
   * @param cautions sentences on what is bought
   * @param unit that lengths are shown in
   */
  public static byte[] pdf(
      String heading, int garments, Shopping buy, List<String> cautions, Unit unit) {
    Pages pages = new Pages(heading);
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell("garments", Integer.toString(garments)));
    for (ToBuy.Kind kind : List.of(ToBuy.Kind.CLOTH, ToBuy.Kind.TRIM)) {
      if (buy.cost(kind) > 0) {
        String name = kind == ToBuy.Kind.CLOTH ? "cloth" : "trims";
        cells.add(new Cell(name, Shown.money(buy.cost(kind), buy.currency())));
      }
    }
    if (buy.known() && buy.cost() > 0) {
      cells.add(new Cell("all together", Shown.money(buy.cost(), buy.currency())));
      cells.add(new Cell("per garment", Shown.money(buy.cost() / garments, buy.currency())));
    }
    pages.add(new TitleBlock(heading, "shopping list", cells, Pages.widthMm(), new Reading(1)));
    pages.space(4);
    table(pages, "Cloth", buy.items(ToBuy.Kind.CLOTH), unit);
    table(pages, "Trims", buy.items(ToBuy.Kind.TRIM), unit);
    Pages.sentences("", ShoppingText.sums(garments, buy)).ifPresent(pages::add);
    pages.space(4);
    pages.add("Take care", cautions);
    return OrderSheet.bytes(heading + ", shopping list", pages);
  }

  private static void table(Pages pages, String name, List<ToBuy> items, Unit unit) {
    if (items.isEmpty()) {
      return;
    }
    Table table =
        new Table(
            List.of(
                Column.words(6, ""),
                Column.words(62, name),
                Column.words(28, "Width"),
                Column.numbers(24, "To buy"),
                Column.numbers(38, "At"),
                Column.numbers(26, "Cost")),
            true,
            new Reading(1));
    List<Block> rows = new ArrayList<>();
    for (ToBuy item : items) {
      rows.add(
          table.row(
              List.of(
                  "",
                  item.words(unit),
                  ShoppingText.width(item, unit),
                  item.amount(unit),
                  item.price(unit),
                  ShoppingText.cost(item))));
    }
    pages.head(name);
    pages.add(table.head(), rows);
    pages.space(5);
  }
}
