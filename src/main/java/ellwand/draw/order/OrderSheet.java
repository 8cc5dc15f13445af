package ellwand.draw.order;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Pages;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.PdfWriter.OnPaper;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.Table;
import ellwand.draw.sheet.Table.Column;
import ellwand.draw.sheet.TitleBlock;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.figures.LayTicket;
import ellwand.figures.OrderCloth;
import ellwand.figures.OrderFigures;
import ellwand.figures.OrderText;
import ellwand.figures.SpreadWords;
import ellwand.figures.ToBuy;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The report of a cut order: totals, cloth, costs, markers, and a ticket for each lay. */
public final class OrderSheet {

  private final OrderFigures figures;
  private final Shown shown;
  private final Shown bulk;
  private final Pages pages;

  private OrderSheet(OrderFigures figures, Unit unit) {
    this.figures = figures;
    this.shown = new Shown(unit);
    this.bulk = new Shown(unit).inBulk();
    this.pages = new Pages(figures.title());
  }

  /**
   * A4 pages.
   *
   * @param unit that lengths are shown in
   */
  public static byte[] pdf(OrderFigures figures, Unit unit) {
    OrderSheet sheet = new OrderSheet(figures, unit);
    sheet.head();
    sheet.colours();
    sheet.sizes();
    figures.cloths().forEach(sheet::plan);
    figures.lays().forEach(sheet::ticket);
    sheet.pages.add("Take care", figures.cautions());
    return bytes(figures.title() + ", cut order", sheet.pages);
  }

  static byte[] bytes(String title, Pages pages) {
    List<Drawing> drawings = pages.drawings();
    try (PdfWriter writer = new PdfWriter(title)) {
      for (int i = 0; i < drawings.size(); i++) {
        Drawing foot = Pages.foot(title, i + 1, drawings.size(), Paper.A4);
        Point low = new Point(Paper.MARGIN_MM, Paper.MARGIN_MM);
        Point over = new Point(Paper.MARGIN_MM, Paper.MARGIN_MM + Pages.FOOT);
        writer.page(
            Paper.A4, List.of(new OnPaper(drawings.get(i), 1, over), new OnPaper(foot, 1, low)));
      }
      return writer.bytes();
    }
  }

  private void head() {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell("garments", Integer.toString(figures.garments())));
    cells.add(new Cell("lays", Integer.toString(figures.total().lays())));
    cells.add(new Cell("markers", Integer.toString(figures.markers().size())));
    if (figures.several()) {
      cells.add(new Cell("cloths", Integer.toString(figures.cloths().size())));
    }
    cells.add(new Cell("cloth cut", bulk.bought(figures.total().clothMm())));
    figures.toBuyMm().ifPresent(mm -> cells.add(new Cell("cloth to buy", bulk.bought(mm))));
    if (figures.total().cost() > 0) {
      cells.add(cost("cost", figures.total().cost()));
      if (figures.toBuyMm().isPresent() && figures.total().boughtCost() > 0) {
        cells.add(cost("cloth as bought", figures.total().boughtCost()));
        cells.add(cost("cloth as cut", figures.total().cutCost()));
      }
      double saved = figures.plain().cost() - figures.total().cost();
      if (saved > 0) {
        cells.add(cost(figures.plainEstimated() ? "saved, estimated" : "saved", saved));
      }
    }
    double trims = figures.buy().cost(ToBuy.Kind.TRIM);
    if (trims > 0) {
      cells.add(new Cell("trims", Shown.money(trims, figures.buy().currency())));
    }
    String names =
        figures.cloths().stream().map(OrderCloth::cloth).collect(Collectors.joining(", "));
    String aside = names.isEmpty() ? "cut order" : "cut order, " + names;
    pages.add(new TitleBlock(figures.title(), aside, cells, Pages.widthMm(), new Reading(1)));
    pages.space(4);
  }

  private Cell cost(String of, double amount) {
    return new Cell(of, Shown.money(amount, figures.currency()));
  }

  private Table table(Column... columns) {
    return new Table(List.of(columns), false, new Reading(1));
  }

  private void colours() {
    Table table =
        table(
            Column.words(35, "Cloth"),
            Column.words(45, "Colour"),
            Column.numbers(30, "Garments"),
            Column.numbers(35, "Cloth, end loss", "included"),
            Column.numbers(35, "To buy"));
    pages.head("Cloth needed");
    List<Block> rows = new ArrayList<>();
    for (OrderCloth cloth : figures.cloths()) {
      cloth
          .clothByColour()
          .forEach(
              (colour, mm) ->
                  rows.add(
                      table.row(
                          List.of(
                              cloth.cloth(),
                              colour,
                              Integer.toString(cloth.colours().get(colour)),
                              bulk.bought(mm),
                              cloth.toBuyByColour().containsKey(colour)
                                  ? bulk.bought(cloth.toBuyByColour().get(colour))
                                  : ""))));
    }
    pages.add(table.head(), rows);
    pages.space(5);
  }

  private void sizes() {
    boolean priced = figures.total().cost() > 0 || figures.trimmed();
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.words(30, "Size"), Column.numbers(20, "Wanted"), Column.numbers(20, "Cut")));
    boolean trimmed = figures.trimmed();
    double each = Math.min(35, (trimmed ? 60.0 : 82.0) / figures.cloths().size());
    for (OrderCloth cloth : figures.cloths()) {
      columns.add(
          Column.numbers(
              each, "Cloth per", figures.several() ? "garment, " + cloth.cloth() : "garment"));
    }
    if (trimmed) {
      columns.add(Column.numbers(22, "Trims per", "garment"));
    }
    if (priced) {
      columns.add(Column.numbers(30, "Cost per", "garment"));
    }
    Table table = table(columns.toArray(Column[]::new));
    List<Block> rows = new ArrayList<>();
    for (OrderFigures.SizeTotal size : figures.sizes()) {
      List<String> cells =
          new ArrayList<>(
              List.of(size.size(), Integer.toString(size.wanted()), Integer.toString(size.cut())));
      for (OrderCloth cloth : figures.cloths()) {
        Double mm = size.clothMm().get(cloth.cloth());
        cells.add(mm == null ? "" : shown.length(mm));
      }
      if (trimmed) {
        cells.add(Shown.money(size.trims(), figures.currency()));
      }
      if (priced) {
        cells.add(Shown.money(size.cost(), figures.currency()));
      }
      rows.add(table.row(cells));
    }
    pages.head("Garments");
    pages.add(table.head(), rows);
    pages.space(5);
  }

  /** How one cloth is cut: its markers, and what there is to say of the plan. */
  private void plan(OrderCloth cloth) {
    Table table =
        table(
            Column.words(38, "Marker"),
            Column.words(60, "Garments x size"),
            Column.numbers(26, "Length"),
            Column.numbers(34, "Estimated"),
            Column.numbers(24, "Utilisation"));
    List<Block> rows = new ArrayList<>();
    for (OrderCloth.OrderMarker marker : cloth.markers()) {
      boolean made = marker.utilisation().isPresent();
      rows.add(
          table.row(
              List.of(
                  marker.name(),
                  mix(marker.garments()),
                  shown.length(marker.lengthMm()),
                  made
                      ? shown.length(marker.estimatedMm()) + " (" + off(marker.offBy()) + ")"
                      : "given",
                  marker.utilisation().map(Shown::share).orElse(""))));
    }
    String of = cloth.cloth().isEmpty() ? "" : " of " + cloth.cloth();
    String share =
        cloth.utilisation().map(u -> ", " + Shown.share(u) + " of all cloth used").orElse("");
    pages.head("Markers" + of + share);
    pages.add(table.head(), rows);
    pages.space(1);
    Pages.sentences("", OrderText.sentences(figures, cloth, shown.unit())).ifPresent(pages::add);
    pages.space(5);
  }

  private static String off(double share) {
    return String.format(java.util.Locale.ROOT, "%+.1f %%", share * 100);
  }

  private void ticket(LayTicket lay) {
    List<String> captions = new ArrayList<>(lay.garments().keySet());
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words(6, ""));
    columns.add(Column.words(40, "Colour"));
    columns.add(Column.numbers(18, "Plies"));
    double each = Math.min(16, 92.0 / captions.size());
    captions.forEach(size -> columns.add(Column.numbers(each, size)));
    columns.add(Column.numbers(32, "Cloth"));
    Table table = new Table(columns, true, new Reading(1));
    List<Block> rows = new ArrayList<>();
    lay.plies()
        .forEach(
            (colour, plies) -> {
              List<String> cells = new ArrayList<>(List.of("", colour, plies.toString()));
              captions.forEach(s -> cells.add(lay.cut().get(colour).get(s).toString()));
              cells.add(bulk.bought(lay.clothMm().get(colour)));
              rows.add(table.row(cells));
            });
    List<Cell> cells =
        List.of(
            new Cell("marker", lay.marker()),
            new Cell("garments x size", mix(lay.garments())),
            new Cell("marker length", shown.length(lay.lengthMm())),
            new Cell("plies", Integer.toString(lay.totalPlies())),
            new Cell("cloth", bulk.bought(lay.totalClothMm())),
            new Cell("of which end loss", bulk.bought(lay.endLossMm())));
    Block title =
        new TitleBlock(
            "Lay " + lay.number(),
            "cut ticket, " + (lay.cloth().isEmpty() ? "" : lay.cloth() + ", ") + figures.title(),
            cells,
            Pages.widthMm(),
            new Reading(1));
    Optional<Block> how = Pages.sentences("", SpreadWords.sentences(lay, shown.unit()));
    // A ticket goes to the table in one piece.
    pages.add(
        title,
        table.head().heightMm()
            + rows.stream().mapToDouble(Block::heightMm).sum()
            + 1
            + how.map(Block::heightMm).orElse(0.0));
    pages.add(table.head(), rows);
    pages.space(1);
    how.ifPresent(pages::add);
    pages.space(6);
  }

  static String mix(Map<String, Integer> garments) {
    return garments.entrySet().stream()
        .map(e -> e.getValue() + " x " + e.getKey())
        .collect(Collectors.joining(", "));
  }
}
