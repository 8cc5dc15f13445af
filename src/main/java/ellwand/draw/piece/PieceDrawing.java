package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Block.Stack;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Fit;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.PdfWriter;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.SvgWriter;
import ellwand.draw.sheet.Table;
import ellwand.draw.sheet.Table.Column;
import ellwand.draw.sheet.TitleBlock;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.pattern.Cut;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** The pieces of a style with all their lines, side by side, tops up; each size on its pages. */
public final class PieceDrawing {

  private static final double DOTS_PER_INCH = 200;

  /** Pictures are not made higher than this, so that any machine can show them. */
  private static final double MOST_DOTS = 20_000;

  /** Between pieces on paper, mm. */
  private static final double GAP = 4;

  private final String title;
  private final String style;
  private final Map<String, List<CutPiece>> piecesBySize;
  private final Shown shown;
  private final Palette palette;
  private final boolean nested;
  private final Map<String, String> larger;

  private PieceDrawing(
      String title,
      String style,
      Map<String, List<CutPiece>> piecesBySize,
      Shown shown,
      boolean nested,
      Map<String, String> larger) {
    this.larger = new LinkedHashMap<>(larger);
    this.nested = nested;
    this.title = title;
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
   * @param title heads every page
   * @param style its name
   * @param piecesBySize as cut, sizes in the order in which they are to be shown
   * @param unit that allowances are shown in
   */
  public static PieceDrawing of(
      String title, String style, Map<String, List<CutPiece>> piecesBySize, Unit unit) {
    return new PieceDrawing(
        title,
        style,
        new LinkedHashMap<>(piecesBySize),
        new Shown(unit).atTable(),
        false,
        Map.of());
  }

  /**
   * All sizes of each piece on one another, told apart by their dashes.
   *
   * @param title heads every page
   * @param style its name
   * @param piecesBySize as cut, from small to large
   */
  public static PieceDrawing nested(
      String title, String style, Map<String, List<CutPiece>> piecesBySize, Unit unit) {
    return new PieceDrawing(
        title, style, new LinkedHashMap<>(piecesBySize), new Shown(unit).atTable(), true, Map.of());
  }

  /**
   * The same, saying of which cloths the pieces are drawn larger than their paper pattern.
   *
   * @param byCloth by how much, in words
   */
  public PieceDrawing larger(Map<String, String> byCloth) {
    return new PieceDrawing(title, style, piecesBySize, shown, nested, byCloth);
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
    return PdfWriter.picture(
        PdfWriter.onePage(all, fit.scale()), Math.min(DOTS_PER_INCH, MOST_DOTS / inches));
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
    for (String group : groups()) {
      List<Standing> standing = standing(group, reading, drawings.size());
      double wide = Math.max(width, PieceRow.widest(standing));
      List<PieceRow> rows = PieceRow.rows(standing, wide, reading.mm(GAP));
      drawings.add(page(group, rows, wide, reading, scale));
    }
    return PdfWriter.pages(drawings, scale);
  }

  /** What begins a page of its own: each size, or all of them together. */
  private List<String> groups() {
    return nested ? List.of("") : List.copyOf(piecesBySize.keySet());
  }

  /** One scale for all pages, after the size that takes most room. */
  private Fit fit() {
    String largest =
        groups().stream()
            .max(Comparator.comparingDouble(group -> nested ? 0 : area(piecesBySize.get(group))))
            .orElseThrow();
    Map<Double, List<Standing>> byScale = new LinkedHashMap<>();
    return Fit.onPages(
        (paper, scale) -> {
          if (!nested && !hasRoom(piecesBySize.get(largest), paper, scale)) {
            return OptionalInt.empty();
          }
          Reading reading = new Reading(scale);
          List<Standing> standing =
              byScale.computeIfAbsent(scale, s -> standing(largest, reading, 0));
          if (PieceRow.widest(standing) > paper.innerWidthMm() * scale) {
            return OptionalInt.empty();
          }
          List<List<PieceRow>> pages = broken(largest, standing, paper, reading);
          boolean fits = pages.stream().allMatch(p -> fits(largest, p, paper, reading));
          return fits ? OptionalInt.of(pages.size()) : OptionalInt.empty();
        });
  }

  private static double area(List<CutPiece> cuts) {
    return cuts.stream().map(c -> c.cutting().box()).mapToDouble(b -> b.length() * b.width()).sum();
  }

  /**
   * Whether every piece has room by itself, without a word: lettering all at each scale is slow.
   */
  private static boolean hasRoom(List<CutPiece> cuts, Paper paper, double scale) {
    return cuts.stream()
        .map(c -> c.cutting().box())
        .allMatch(
            topUp ->
                topUp.width() <= paper.innerWidthMm() * scale
                    && topUp.length() <= paper.innerHeightMm() * scale);
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
    for (String group : groups()) {
      List<Standing> standing = standing(group, reading, pieces);
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
        title, new Box(0, 0, width, stack.heightMm()), stack.items(new Point(0, stack.heightMm())));
  }

  private Stack stack(
      String group, List<PieceRow> rows, double width, Reading reading, double stated) {
    List<Block> blocks = new ArrayList<>(List.of(head(group, width, reading, stated)));
    if (nested) {
      blocks.add(new SizeKey(List.copyOf(piecesBySize.keySet()), width, reading));
    }
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

  /**
   * @param before how many pieces stand on the pages before
   */
  private List<Standing> standing(String group, Reading reading, int before) {
    List<Standing> standing = new ArrayList<>();
    if (nested) {
      for (String kind : kinds()) {
        Map<String, CutPiece> bySize = inAllSizes(kind);
        Colour fill = palette.fill(bySize.values().iterator().next().name());
        NestedCell cell = new NestedCell(kind, bySize, fill, reading);
        standing.add(
            new Standing(id(before, standing), kind, Optional.empty(), cell.box(), cell::items));
      }
      return standing;
    }
    for (CutPiece cut : piecesBySize.get(group)) {
      String kind = kind(cut, piecesBySize.get(group));
      PieceCell cell = new PieceCell(cut, kind, style, group, reading, shown);
      standing.add(
          new Standing(
              id(before, standing),
              cell.title(),
              untold(cell),
              cell.box(),
              () -> cell.items(palette)));
    }
    return standing;
  }

  private static Optional<Standing.Untold> untold(PieceCell cell) {
    return cell.untold().isEmpty()
        ? Optional.empty()
        : Optional.of(new Standing.Untold(cell.name(), cell.untold()));
  }

  private static String id(int before, List<Standing> standing) {
    return "piece-" + (before + standing.size() + 1);
  }

  /** What each piece is called, in every form that it is cut in. */
  private Set<String> kinds() {
    Set<String> kinds = new LinkedHashSet<>();
    piecesBySize.values().forEach(all -> all.forEach(cut -> kinds.add(kind(cut, all))));
    return kinds;
  }

  /** The name, with the cloths it is cut from where others have the piece in another form. */
  private static String kind(CutPiece cut, List<CutPiece> all) {
    return all.stream().filter(other -> other.name().equals(cut.name())).count() == 1
        ? cut.name()
        : cut.piece().cuts().stream()
            .map(Cut::cloth)
            .collect(Collectors.joining(", ", cut.name() + " (", ")"));
  }

  private Map<String, CutPiece> inAllSizes(String kind) {
    Map<String, CutPiece> bySize = new LinkedHashMap<>();
    piecesBySize.forEach(
        (size, cuts) ->
            cuts.stream()
                .filter(c -> kind(c, cuts).equals(kind))
                .findFirst()
                .ifPresent(c -> bySize.put(size, c)));
    return bySize;
  }

  private Block head(String group, double width, Reading reading, double stated) {
    int pieces = nested ? kinds().size() : piecesBySize.get(group).size();
    List<Cell> cells = new ArrayList<>();
    cells.add(
        nested
            ? new Cell("sizes", String.join(", ", piecesBySize.keySet()))
            : new Cell("size", group));
    cells.add(new Cell("pieces", Integer.toString(pieces)));
    larger.forEach(
        (cloth, by) ->
            cells.add(new Cell(cloth + ": do not lay the paper pattern on it", "larger by " + by)));
    return new TitleBlock(
        title,
        TitleBlock.drawnAt(stated)
            + (nested ? ", cutting lines" : ", allowances in " + shown.unitWords()),
        cells,
        width,
        reading);
  }
}
