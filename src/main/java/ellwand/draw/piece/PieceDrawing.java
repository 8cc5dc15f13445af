package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Block.Stack;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Fit;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.PngPicture;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.SvgWriter;
import ellwand.draw.sheet.Table;
import ellwand.draw.sheet.Table.Column;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** The pieces of a style with their lines, side by side, tops up, on as many pages as it takes. */
public final class PieceDrawing {

  private static final double DOTS_PER_INCH = 200;

  /** Pictures are not made higher than this, so that any machine can show them. */
  private static final double MOST_DOTS = 20_000;

  /** Between pieces on paper, mm. */
  private static final double GAP = 4;

  private final Pictured pictured;

  private PieceDrawing(Pictured pictured) {
    this.pictured = pictured;
  }

  /** Each size on pages of its own, its pieces as large as their paper pattern. */
  public static PieceDrawing of(
      String title, String style, Map<String, List<CutPiece>> piecesBySize, Unit unit) {
    return of(title, style, piecesBySize, unit, Map.of());
  }

  /**
   * Each size on pages of its own.
   *
   * @param title heads every page
   * @param style its name
   * @param piecesBySize as cut, sizes in the order in which they are to be shown
   * @param unit that allowances are shown in
   * @param remarks for its head, each under a few words that say what it is about
   */
  public static PieceDrawing of(
      String title,
      String style,
      Map<String, List<CutPiece>> piecesBySize,
      Unit unit,
      Map<String, String> remarks) {
    return new PieceDrawing(new CutPieces(title, style, piecesBySize, unit, false, false, remarks));
  }

  /** The same with the length of each edge when sewn in place of its allowance. */
  public static PieceDrawing lengths(
      String title,
      String style,
      Map<String, List<CutPiece>> piecesBySize,
      Unit unit,
      Map<String, String> remarks) {
    return new PieceDrawing(new CutPieces(title, style, piecesBySize, unit, false, true, remarks));
  }

  /**
   * All sizes of each piece on one another, told apart by their dashes.
   *
   * @param piecesBySize as cut, from small to large
   */
  public static PieceDrawing nested(
      String title,
      String style,
      Map<String, List<CutPiece>> piecesBySize,
      Unit unit,
      Map<String, String> remarks) {
    return new PieceDrawing(new CutPieces(title, style, piecesBySize, unit, true, false, remarks));
  }

  /**
   * Pieces before and after they were altered, on one another, with what was done.
   *
   * @param piecesBySize sizes in the order in which they are to be shown
   */
  public static PieceDrawing before(String title, Map<String, List<AlteredPiece>> piecesBySize) {
    return new PieceDrawing(new AlteredPieces(title, piecesBySize));
  }

  /**
   * SVG in UTF-8, true to size in mm, lettered so that it reads well printed on A4; pages under one
   * another.
   */
  public byte[] svg() {
    Fit fit = fit();
    double margin = Paper.MARGIN_MM * fit.scale();
    List<Drawing> pages = pages(fit.paper(), fit.scale(), 1);
    return SvgWriter.bytes(Drawing.underOneAnother(pages, margin).withMargin(margin));
  }

  /** A PNG picture of what is on the A4 pages, 200 dots to the inch unless they are very many. */
  public byte[] png() {
    Fit fit = fit();
    List<Drawing> pages = pages(fit.paper(), fit.scale(), fit.scale());
    Drawing all = Drawing.underOneAnother(pages, Paper.MARGIN_MM * fit.scale());
    double inches = (all.frame().width() / fit.scale() + 2 * Paper.MARGIN_MM) / Unit.INCH.mm();
    return PngPicture.of(all, fit.scale(), Math.min(DOTS_PER_INCH, MOST_DOTS / inches));
  }

  /** A4 pages, their scale stated. */
  public byte[] pdf() {
    Fit fit = fit();
    return PdfWriter.pages(pages(fit.paper(), fit.scale(), fit.scale()), fit.scale(), fit.paper());
  }

  /**
   * A page for each size, or for all sizes nested, each as large as it must be.
   *
   * @param scale mm of cloth for one mm of paper; 1 is full size
   */
  public byte[] pdf(double scale) {
    if (!(scale > 0)) {
      throw new IllegalArgumentException("a scale must be above 0, not " + scale);
    }
    Fit fit = fit();
    double width = fit.paper().innerWidthMm() * fit.scale();
    Reading reading = new Reading(scale);
    List<Drawing> drawings = new ArrayList<>();
    for (String group : pictured.groups()) {
      List<Standing> standing = pictured.standing(group, reading, drawings.size());
      double wide = Math.max(width, PieceRow.widest(standing));
      List<PieceRow> rows = PieceRow.rows(standing, wide, reading.mm(GAP));
      drawings.add(page(group, rows, wide, reading, scale));
    }
    return PdfWriter.pages(drawings, scale);
  }

  /** One scale for all pages, after the size that takes most room. */
  private Fit fit() {
    String largest = pictured.largest();
    Map<Double, List<Standing>> byScale = new LinkedHashMap<>();
    return Fit.onPages(
        (paper, scale) -> {
          if (!pictured.hasRoom(largest, paper, scale)) {
            return OptionalInt.empty();
          }
          Reading reading = new Reading(scale);
          List<Standing> standing =
              byScale.computeIfAbsent(scale, s -> pictured.standing(largest, reading, 0));
          if (PieceRow.widest(standing) > paper.innerWidthMm() * scale) {
            return OptionalInt.empty();
          }
          List<List<PieceRow>> pages = broken(largest, standing, paper, reading);
          boolean fits = pages.stream().allMatch(p -> fits(largest, p, paper, reading));
          return fits ? OptionalInt.of(pages.size()) : OptionalInt.empty();
        });
  }

  private boolean fits(String group, List<PieceRow> rows, Paper paper, Reading reading) {
    Stack stack = stack(group, rows, paper.innerWidthMm() * reading.scale(), reading, 1);
    return stack.heightMm() <= paper.innerHeightMm() * reading.scale();
  }

  /** Rows dealt out to pages, from the top. */
  private List<List<PieceRow>> broken(
      String group, List<Standing> standing, Paper paper, Reading reading) {
    double width = paper.innerWidthMm() * reading.scale();
    List<List<PieceRow>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    for (PieceRow row : PieceRow.rows(standing, width, reading.mm(GAP))) {
      List<PieceRow> page = pages.get(pages.size() - 1);
      page.add(row);
      if (page.size() > 1 && !fits(group, page, paper, reading)) {
        page.remove(page.size() - 1);
        pages.add(new ArrayList<>(List.of(row)));
      }
    }
    return pages;
  }

  private List<Drawing> pages(Paper paper, double scale, double stated) {
    Reading reading = new Reading(scale);
    List<Drawing> drawings = new ArrayList<>();
    int pieces = 0;
    for (String group : pictured.groups()) {
      List<Standing> standing = pictured.standing(group, reading, pieces);
      pieces += standing.size();
      for (List<PieceRow> rows : broken(group, standing, paper, reading)) {
        drawings.add(page(group, rows, paper.innerWidthMm() * scale, reading, stated));
      }
    }
    return drawings;
  }

  private Drawing page(
      String group, List<PieceRow> rows, double width, Reading reading, double stated) {
    Stack stack = stack(group, rows, width, reading, stated);
    return new Drawing(
        pictured.title(),
        new Box(0, 0, width, stack.heightMm()),
        stack.items(new Point(0, stack.heightMm())));
  }

  private Stack stack(
      String group, List<PieceRow> rows, double width, Reading reading, double stated) {
    List<Block> blocks = new ArrayList<>(pictured.head(group, width, reading, stated));
    blocks.addAll(rows);
    List<Standing.Untold> untold =
        rows.stream()
            .flatMap(row -> row.standing().stream())
            .flatMap(standing -> standing.untold().stream())
            .toList();
    if (!untold.isEmpty()) {
      blocks.add(table(untold, reading));
    }
    return new Stack(blocks, reading.mm(GAP));
  }

  /** How to cut what is too small to say so itself. */
  private static Block table(List<Standing.Untold> untold, Reading reading) {
    Table table =
        new Table(List.of(Column.words(50, "piece"), Column.words(130, "cut")), false, reading);
    List<Block> lines = new ArrayList<>(List.of(table.head()));
    untold.forEach(u -> lines.add(table.row(List.of(u.piece(), String.join("; ", u.cuts())))));
    return new Stack(lines, 0);
  }
}
