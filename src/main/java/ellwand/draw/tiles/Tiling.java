package ellwand.draw.tiles;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * How a drawing is shared out to pages. Neighbours show a strip of it both, which lies under the
 * right or lower one of them once they are joined.
 *
 * @param paper whose pages hold something
 * @param frame all of the drawing, mm
 */
public record Tiling(PrintPaper paper, Box frame) {

  /** How much of the drawing neighbours show both, mm: enough to see whether lines meet. */
  static final double OVERLAP_MM = 5;

  /** A hair of the drawing beyond a page is no reason for another. */
  private static final double HAIR_MM = 1e-6;

  /** From one page to the next, of which so much is printed, mm. */
  public static double step(double innerMm) {
    return innerMm - OVERLAP_MM;
  }

  double stepX() {
    return step(paper.innerWidthMm());
  }

  double stepY() {
    return step(paper.innerHeightMm());
  }

  /** How wide a drawing so many columns hold, mm. */
  public static double across(double innerMm, int pages) {
    return innerMm + (pages - 1) * step(innerMm);
  }

  int columns() {
    return Math.max(1, (int) Math.ceil((frame.length() - OVERLAP_MM - HAIR_MM) / stepX()));
  }

  int rows() {
    return Math.max(1, (int) Math.ceil((frame.width() - OVERLAP_MM - HAIR_MM) / stepY()));
  }

  private Point upperLeft(Tile tile) {
    return new Point(frame.minX() + tile.column() * stepX(), frame.maxY() - tile.row() * stepY());
  }

  /** The part of the drawing that a page shows. */
  Box shown(Tile tile) {
    Point corner = upperLeft(tile);
    return new Box(
        corner.x(),
        corner.y() - paper.innerHeightMm(),
        corner.x() + paper.innerWidthMm(),
        corner.y());
  }

  /** The part that is seen of it once all pages are joined. */
  Box seen(Tile tile) {
    Box shown = shown(tile);
    return new Box(
        shown.minX(),
        tile.row() == rows() - 1 ? shown.minY() : shown.minY() + OVERLAP_MM,
        tile.column() == columns() - 1 ? shown.maxX() : shown.maxX() - OVERLAP_MM,
        shown.maxY());
  }

  /** Lines along which pages are joined, and beside which the marks for that end, right across. */
  public List<List<Point>> joins() {
    List<List<Point>> joins = new ArrayList<>();
    for (int column = 1; column < columns(); column++) {
      double x = frame.minX() + column * stepX();
      for (double edge : new double[] {x - JoinMarks.HALF, x, x + JoinMarks.HALF}) {
        joins.add(List.of(new Point(edge, frame.minY()), new Point(edge, frame.maxY())));
      }
    }
    for (int row = 1; row < rows(); row++) {
      double y = frame.maxY() - row * stepY();
      for (double edge : new double[] {y - JoinMarks.HALF, y, y + JoinMarks.HALF}) {
        joins.add(List.of(new Point(frame.minX(), edge), new Point(frame.maxX(), edge)));
      }
    }
    return joins;
  }
}
