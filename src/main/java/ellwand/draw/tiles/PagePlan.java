package ellwand.draw.tiles;

import ellwand.draw.sheet.Item;
import ellwand.geometry.Box;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Which pages of a drawing have something on them, row by row, and where two of them are joined
 * since something runs on from one to the other.
 */
public record PagePlan(Tiling tiling, List<Tile> tiles, List<Join> joins) {

  /**
   * Two neighbours.
   *
   * @param number stands on both, from 1
   * @param first the left or upper one
   */
  record Join(int number, Tile first, Tile second) {

    boolean isSideBySide() {
      return first.row() == second.row();
    }
  }

  public PagePlan {
    tiles = List.copyOf(tiles);
    joins = List.copyOf(joins);
  }

  /** More are a mistake in a number, or nothing that anybody joins. */
  private static final long MOST_PAGES = 5_000;

  /**
   * @throws InputException if there would be too many pages
   */
  public static PagePlan of(Tiling tiling, List<Item> items) {
    long most = (long) tiling.rows() * tiling.columns();
    InputException.unless(
        most <= MOST_PAGES,
        "it would take up to " + most + " pages of " + tiling.paper().name(),
        "See that the lengths are right, or take larger paper or a roll");
    Inked inked = new Inked(items);
    Set<Tile> used = new LinkedHashSet<>();
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        Tile tile = new Tile(row, column);
        if (inked.touches(tiling.seen(tile))) {
          used.add(tile);
        }
      }
    }
    List<Join> joins = new ArrayList<>();
    for (Tile tile : used) {
      Box seen = tiling.seen(tile);
      Box right = new Box(seen.maxX(), seen.minY(), seen.maxX(), seen.maxY());
      Box below = new Box(seen.minX(), seen.minY(), seen.maxX(), seen.minY());
      if (used.contains(tile.right()) && inked.touches(thick(right))) {
        joins.add(new Join(joins.size() + 1, tile, tile.right()));
      }
      if (used.contains(tile.below()) && inked.touches(thick(below))) {
        joins.add(new Join(joins.size() + 1, tile, tile.below()));
      }
    }
    return new PagePlan(tiling, new ArrayList<>(used), joins);
  }

  /** Nothing intersects a box without area. */
  private static Box thick(Box line) {
    return line.grown(0.01);
  }
}
