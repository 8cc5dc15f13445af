package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Block.Stack;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Fit;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shift;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.SvgWriter;
import ellwand.draw.sheet.TitleBlock;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** The pieces of a style with all their lines, side by side, tops up. */
public final class PieceDrawing {

  private static final double DOTS_PER_INCH = 200;

  /** Between pieces on paper, mm. */
  private static final double GAP = 4;

  private final String style;
  private final Map<String, List<CutPiece>> piecesBySize;
  private final Shown shown;
  private final Palette palette;
  private final boolean nested;

  private PieceDrawing(
      String style, Map<String, List<CutPiece>> piecesBySize, Shown shown, boolean nested) {
    this.nested = nested;
    this.style = style;
    this.piecesBySize = piecesBySize;
    this.shown = shown;
    this.palette =
        new Palette(
            piecesBySize.values().stream()
                .flatMap(List::stream)
                .map(CutPiece::name)
                .distinct()
                .toList());
  }

  /**
   * @param style its name
   * @param piecesBySize as cut, sizes in the order in which they are to be shown
   * @param unit that allowances are shown in
   */
  public static PieceDrawing of(String style, Map<String, List<CutPiece>> piecesBySize, Unit unit) {
    return new PieceDrawing(
        style, new LinkedHashMap<>(piecesBySize), new Shown(unit).atTable(), false);
  }

  /**
   * All sizes of each piece on one another, told apart by their dashes.
   *
   * @param style its name
   * @param piecesBySize as cut, from small to large
   */
  public static PieceDrawing nested(
      String style, Map<String, List<CutPiece>> piecesBySize, Unit unit) {
    return new PieceDrawing(
        style, new LinkedHashMap<>(piecesBySize), new Shown(unit).atTable(), true);
  }

  /** SVG in UTF-8, true to size in mm, lettered so that it reads well printed on one A4 page. */
  public byte[] svg() {
    Fit fit = fit();
    return SvgWriter.bytes(
        drawing(fit.paper().innerWidthMm() * fit.scale(), fit.scale(), 1)
            .withMargin(Paper.MARGIN_MM * fit.scale()));
  }

  /** A PNG picture of what is on the A4 page, 200 dots to the inch of that page. */
  public byte[] png() {
    Fit fit = fit();
    Drawing drawing = drawing(fit.paper().innerWidthMm() * fit.scale(), fit.scale(), fit.scale());
    return PdfWriter.picture(PdfWriter.onePage(drawing, fit.scale()), DOTS_PER_INCH);
  }

  /** One A4 page, its scale stated. */
  public byte[] pdf() {
    Fit fit = fit();
    Drawing drawing = drawing(fit.paper().innerWidthMm() * fit.scale(), fit.scale(), fit.scale());
    return PdfWriter.onePage(drawing, fit.scale(), fit.paper());
  }

  /**
   * One page as large as it must be.
   *
   * @param scale mm of cloth for one mm of paper; 1 is full size
   */
  public byte[] pdf(double scale) {
    if (!(scale > 0)) {
      throw new IllegalArgumentException("a scale must be above 0, not " + scale);
    }
    Fit fit = fit();
    double width = fit.paper().innerWidthMm() * fit.scale();
    return PdfWriter.onePage(drawing(width, scale, scale), scale);
  }

  private Fit fit() {
    Map<Double, List<Standing>> byScale = new HashMap<>();
    return Fit.onA4(
        (paper, scale) -> {
          List<Standing> standing = byScale.computeIfAbsent(scale, this::standing);
          double width = paper.innerWidthMm() * scale;
          Stack stack = stack(standing, width, new Reading(scale), scale);
          return widest(standing) <= width && stack.heightMm() <= paper.innerHeightMm() * scale;
        });
  }

  private Drawing drawing(double widthMm, double readAt, double stated) {
    List<Standing> standing = standing(readAt);
    double width = Math.max(widthMm, widest(standing));
    Stack stack = stack(standing, width, new Reading(readAt), stated);
    return new Drawing(
        style, new Box(0, 0, width, stack.heightMm()), stack.items(new Point(0, stack.heightMm())));
  }

  private Stack stack(List<Standing> standing, double width, Reading reading, double stated) {
    double gap = reading.mm(GAP);
    List<Block> blocks = new ArrayList<>(List.of(head(width, reading, stated)));
    if (nested) {
      blocks.add(new SizeKey(List.copyOf(piecesBySize.keySet()), width, reading));
    }
    blocks.addAll(rows(standing, width, gap));
    return new Stack(blocks, gap);
  }

  private static double widest(List<Standing> standing) {
    return standing.stream().mapToDouble(s -> s.box().length()).max().orElse(0);
  }

  private List<Standing> standing(double readAt) {
    Reading reading = new Reading(readAt);
    List<Standing> standing = new ArrayList<>();
    if (nested) {
      for (String kind : palette.kinds()) {
        NestedCell cell = new NestedCell(kind, inAllSizes(kind), palette.fill(kind), reading);
        standing.add(new Standing(id(standing), "", kind, cell.box(), cell::items));
      }
      return standing;
    }
    piecesBySize.forEach(
        (size, cuts) -> {
          for (CutPiece cut : cuts) {
            PieceCell cell = new PieceCell(cut, style, size, reading, shown);
            Colour fill = palette.fill(cut.name());
            standing.add(
                new Standing(id(standing), size, cell.title(), cell.box(), () -> cell.items(fill)));
          }
        });
    return standing;
  }

  private static String id(List<Standing> standing) {
    return "piece-" + (standing.size() + 1);
  }

  private Map<String, CutPiece> inAllSizes(String kind) {
    Map<String, CutPiece> bySize = new LinkedHashMap<>();
    piecesBySize.forEach(
        (size, cuts) ->
            cuts.stream()
                .filter(c -> c.name().equals(kind))
                .findFirst()
                .ifPresent(c -> bySize.put(size, c)));
    return bySize;
  }

  /** Fills rows from the left; each size begins a row. */
  private static List<SideBySide> rows(List<Standing> standing, double width, double gap) {
    List<List<Standing>> rows = new ArrayList<>();
    double used = 0;
    String row = "";
    for (Standing one : standing) {
      double length = one.box().length();
      if (rows.isEmpty() || !one.row().equals(row) || used + gap + length > width) {
        rows.add(new ArrayList<>());
        used = -gap;
      }
      rows.get(rows.size() - 1).add(one);
      used += gap + length;
      row = one.row();
    }
    return rows.stream().map(r -> new SideBySide(List.copyOf(r), gap)).toList();
  }

  private Block head(double width, Reading reading, double stated) {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell("pieces", Integer.toString(palette.kinds().size())));
    cells.add(new Cell("sizes", String.join(", ", piecesBySize.keySet())));
    return new TitleBlock(
        style,
        TitleBlock.drawnAt(stated)
            + (nested ? ", cutting lines" : ", allowances in " + shown.unitWords()),
        cells,
        width,
        reading);
  }

  /**
   * A piece, or all sizes of it.
   *
   * @param row what is not the same begins another row
   */
  private record Standing(
      String id, String row, String title, Box box, Supplier<List<Item>> items) {}

  /** Pieces standing side by side. */
  private record SideBySide(List<Standing> standing, double gapMm) implements Block {

    @Override
    public double heightMm() {
      return standing.stream().mapToDouble(s -> s.box().width()).max().orElse(0);
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>();
      double x = upperLeft.x();
      double y = upperLeft.y() - heightMm();
      for (Standing one : standing) {
        Box box = one.box();
        Point way = new Point(x - box.minX(), y - box.minY());
        List<Item> shifted = Shift.by(way, one.items().get());
        items.add(Item.Group.titled(one.id(), "piece", one.title(), shifted));
        x += box.length() + gapMm;
      }
      return items;
    }
  }
}
