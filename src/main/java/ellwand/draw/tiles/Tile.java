package ellwand.draw.tiles;

/**
 * The place of a page among those that are joined, as on a chessboard.
 *
 * @param row from 0, from the top
 * @param column from 0, from the left
 */
public record Tile(int row, int column) {

  /** A1 is the upper left one, B1 is under it; after row Z comes AA. */
  public String name() {
    return rowName(row) + (column + 1);
  }

  static String rowName(int row) {
    String last = Character.toString('A' + row % 26);
    return row < 26 ? last : rowName(row / 26 - 1) + last;
  }

  Tile right() {
    return new Tile(row, column + 1);
  }

  Tile below() {
    return new Tile(row + 1, column);
  }
}
