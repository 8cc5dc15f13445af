package ellwand.nest.wish;

import ellwand.cloth.Wish;
import java.util.List;

/**
 * Trades a little length for what the cutter wishes: lays a stretch in sections that a straight cut
 * parts, garment by garment or as the pieces lie, keeps a rectangle free among them, and keeps
 * small pieces off the ends. Every marker on the way is offered; the best of them is kept.
 */
public final class WishSearch {

  private final List<Wish> asked;
  private final Sectioned sectioned;
  private final SectionLayer layer;

  public WishSearch(List<Wish> asked, Sectioned sectioned, SectionLayer layer) {
    this.asked = asked;
    this.sectioned = sectioned;
    this.layer = layer;
  }

  /** Does a part of the search, and lives through its failure. */
  @FunctionalInterface
  public interface Careful {
    void part(String name, Runnable work);
  }

  /**
   * @param careful what one wish fails by takes nothing from the others
   */
  public void run(Careful careful) {
    boolean straight = asked.contains(Wish.STRAIGHT_CUTS);
    boolean together = asked.contains(Wish.GARMENTS_TOGETHER);
    double parts = (straight ? 2 : 0) + (together ? 1 : 0) + asked.size();
    List<Integer> stretches = sectioned.stretches();
    double until = 0;
    for (int stretch : stretches) {
      if (!sectioned.divides(stretch)) {
        continue;
      }
      if (straight || together) {
        until += 1.5 / parts / stretches.size();
        double by = until;
        careful.part(
            "laying garments in sections",
            () -> new GarmentSections(sectioned, layer, stretch).lay(by));
      }
      if (straight) {
        until += 1.5 / parts / stretches.size();
        double by = until;
        careful.part(
            Wish.STRAIGHT_CUTS.words(),
            () -> new StraightDivision(sectioned, layer, stretch).divide(by));
      }
    }
    boolean offEnd = asked.contains(Wish.SMALL_OFF_END);
    if (asked.contains(Wish.ONE_LEFT_OVER)) {
      careful.part(
          Wish.ONE_LEFT_OVER.words(),
          () -> new LeftOverGrowth(sectioned, layer).grow(offEnd ? layer.part(1, 2) : 1));
    }
    if (offEnd) {
      careful.part(Wish.SMALL_OFF_END.words(), () -> new ClearedEnds(sectioned, layer).clear(1));
    }
  }
}
