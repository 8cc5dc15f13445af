package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.TitleBlock;
import ellwand.draw.sheet.TitleBlock.Cell;
import ellwand.pattern.Cut;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Pieces as they are cut, each size by itself or all sizes on one another. */
final class CutPieces implements Pictured {

  private final String title;
  private final String style;
  private final Map<String, List<CutPiece>> piecesBySize;
  private final Shown shown;
  private final Palette palette;
  private final boolean nested;
  private final Map<String, String> remarks;
  private final boolean lengths;

  /** The same at every scale, and slow to find. */
  private final Map<CutPiece, GrainLine> grains = new IdentityHashMap<>();

  /**
   * @param lengths whether it says how long edges are when sewn, and not their allowances
   */
  CutPieces(
      String title,
      String style,
      Map<String, List<CutPiece>> piecesBySize,
      Unit unit,
      boolean nested,
      boolean lengths,
      Map<String, String> remarks) {
    this.title = title;
    this.style = style;
    this.piecesBySize = new LinkedHashMap<>(piecesBySize);
    this.shown = new Shown(unit).atTable();
    this.nested = nested;
    this.lengths = lengths;
    this.remarks = new LinkedHashMap<>(remarks);
    this.palette =
        new Palette(
            piecesBySize.values().stream()
                .flatMap(List::stream)
                .map(CutPiece::name)
                .distinct()
                .toList());
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public List<String> groups() {
    return nested ? List.of("") : List.copyOf(piecesBySize.keySet());
  }

  @Override
  public String largest() {
    return groups().stream()
        .max(Comparator.comparingDouble(group -> nested ? 0 : area(piecesBySize.get(group))))
        .orElseThrow();
  }

  private static double area(List<CutPiece> cuts) {
    return cuts.stream().map(c -> c.cutting().box()).mapToDouble(b -> b.length() * b.width()).sum();
  }

  @Override
  public boolean hasRoom(String group, Paper paper, double scale) {
    if (nested) {
      return true;
    }
    return piecesBySize.get(group).stream()
        .map(c -> c.cutting().box())
        .allMatch(topUp -> AlteredPieces.fits(topUp, paper, scale));
  }

  @Override
  public List<Standing> standing(String group, Reading reading, int before) {
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
      GrainLine grain = grains.computeIfAbsent(cut, GrainLine::of);
      PieceCell cell = new PieceCell(cut, grain, kind, style, group, reading, shown, lengths);
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

  @Override
  public List<Block> head(String group, double width, Reading reading, double stated) {
    int pieces = nested ? kinds().size() : piecesBySize.get(group).size();
    List<Cell> cells = new ArrayList<>();
    cells.add(
        nested
            ? new Cell("sizes", String.join(", ", piecesBySize.keySet()))
            : new Cell("size", group));
    cells.add(new Cell("pieces", Integer.toString(pieces)));
    remarks.forEach((about, remark) -> cells.add(new Cell(about, remark)));
    Block title =
        new TitleBlock(
            this.title,
            TitleBlock.drawnAt(stated)
                + (nested
                    ? ", cutting lines"
                    : (lengths ? ", sewn lengths in " : ", allowances in ") + shown.unitWords()),
            cells,
            width,
            reading);
    return nested
        ? List.of(title, new SizeKey(List.copyOf(piecesBySize.keySet()), width, reading))
        : List.of(title);
  }
}
