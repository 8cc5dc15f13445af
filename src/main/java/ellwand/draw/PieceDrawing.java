package ellwand.draw;

import ellwand.cutting.CutPiece;
import ellwand.draw.Block.Stack;
import ellwand.draw.TitleBlock.Cell;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pieces of a style with all their lines, side by side, tops up. */
public final class PieceDrawing {

  private static final double DOTS_PER_INCH = 200;

  /** Between pieces on paper, mm. */
  private static final double GAP = 4;

  private final String style;
  private final Map<String, List<CutPiece>> piecesBySize;
  private final Shown shown;
  private final Palette palette;

  private PieceDrawing(String style, Map<String, List<CutPiece>> piecesBySize, Shown shown) {
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
    return new PieceDrawing(style, new LinkedHashMap<>(piecesBySize), new Shown(unit).atTable());
  }

  /** SVG in UTF-8, true to size in mm, lettered so that it reads well printed on one A4 page. */
  public byte[] svg() {
    Fit fit = fit();
    return SvgWriter.bytes(drawing(fit.paper().innerWidthMm() * fit.scale(), fit.scale(), 1));
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
    return Fit.onA4(
        (paper, scale) -> {
          Box frame = drawing(paper.innerWidthMm() * scale, scale, scale).frame();
          return frame.length() <= paper.innerWidthMm() * scale + 1e-6
              && frame.width() <= paper.innerHeightMm() * scale;
        });
  }

  private Drawing drawing(double widthMm, double readAt, double stated) {
    Reading reading = new Reading(readAt);
    List<Block> rows = new ArrayList<>();
    double width = widthMm;
    List<PieceCell> row = new ArrayList<>();
    double used = 0;
    int number = 0;
    for (Map.Entry<String, List<CutPiece>> size : piecesBySize.entrySet()) {
      for (CutPiece cut : size.getValue()) {
        PieceCell cell =
            PieceCell.of(
                "piece-" + ++number,
                cut,
                style,
                size.getKey(),
                palette.fill(cut.name()),
                reading,
                shown);
        double needed = cell.box().length() + reading.mm(GAP);
        if (!row.isEmpty() && used + needed > width) {
          rows.add(new Row(List.copyOf(row), reading.mm(GAP)));
          row.clear();
          used = 0;
        }
        row.add(cell);
        used += needed;
        width = Math.max(width, used);
      }
      rows.add(new Row(List.copyOf(row), reading.mm(GAP)));
      row.clear();
      used = 0;
    }
    rows.add(0, head(width, reading, stated));
    Stack stack = new Stack(rows, reading.mm(GAP));
    return new Drawing(
        style, new Box(0, 0, width, stack.heightMm()), stack.items(new Point(0, stack.heightMm())));
  }

  private Block head(double width, Reading reading, double stated) {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell("pieces", Integer.toString(palette.kinds().size())));
    cells.add(new Cell("sizes", String.join(", ", piecesBySize.keySet())));
    return new TitleBlock(
        style,
        "drawn "
            + (stated == 1 ? "full size" : "1:" + MarkerSheet.scale(stated))
            + ", allowances in "
            + shown.unitWords(),
        cells,
        width,
        reading);
  }

  /** Pieces standing side by side. */
  private record Row(List<PieceCell> cells, double gapMm) implements Block {

    @Override
    public double heightMm() {
      return cells.stream().mapToDouble(c -> c.box().width()).max().orElse(0);
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>();
      double x = upperLeft.x();
      for (PieceCell cell : cells) {
        Point way =
            new Point(x - cell.box().minX(), upperLeft.y() - heightMm() - cell.box().minY());
        items.add(
            new Item.Group(
                cell.id(), "piece", Optional.of(cell.title()), Shift.by(way, cell.items())));
        x += cell.box().length() + gapMm;
      }
      return items;
    }
  }
}
