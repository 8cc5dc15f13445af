package ellwand.draw.piece;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.TitleBlock;
import ellwand.geometry.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pieces before and after they were altered, each size by itself. */
final class AlteredPieces implements Pictured {

  private final String title;
  private final Map<String, List<AlteredPiece>> piecesBySize;
  private final Palette palette;

  AlteredPieces(String title, Map<String, List<AlteredPiece>> piecesBySize) {
    this.title = title;
    this.piecesBySize = new LinkedHashMap<>(piecesBySize);
    this.palette =
        new Palette(
            piecesBySize.values().stream()
                .flatMap(List::stream)
                .map(AlteredPiece::name)
                .distinct()
                .toList());
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public List<String> groups() {
    return List.copyOf(piecesBySize.keySet());
  }

  @Override
  public String largest() {
    return groups().stream()
        .max(
            Comparator.comparingDouble(
                group -> piecesBySize.get(group).stream().mapToDouble(p -> p.after().area()).sum()))
        .orElseThrow();
  }

  @Override
  public boolean hasRoom(String group, Paper paper, double scale) {
    return piecesBySize.get(group).stream()
        .map(p -> p.before().box().union(p.after().box()))
        .allMatch(box -> fits(box, paper, scale));
  }

  /** Whether a piece has room on a page, top up. */
  static boolean fits(Box asDrawn, Paper paper, double scale) {
    return asDrawn.width() <= paper.innerWidthMm() * scale
        && asDrawn.length() <= paper.innerHeightMm() * scale;
  }

  @Override
  public List<Standing> standing(String group, Reading reading, int before) {
    List<Standing> standing = new ArrayList<>();
    for (AlteredPiece piece : piecesBySize.get(group)) {
      AlteredCell cell = new AlteredCell(piece, palette.fill(piece.name()), reading);
      standing.add(
          new Standing(
              "piece-" + (before + standing.size() + 1),
              piece.name(),
              Optional.empty(),
              cell.box(),
              cell::items));
    }
    return standing;
  }

  @Override
  public List<Block> head(String group, double width, Reading reading, double stated) {
    return List.of(
        new TitleBlock(
            title,
            TitleBlock.drawnAt(stated) + ", sewing lines: dashed before, full after",
            List.of(
                new TitleBlock.Cell("size", group),
                new TitleBlock.Cell(
                    "altered pieces", Integer.toString(piecesBySize.get(group).size()))),
            width,
            reading));
  }
}
