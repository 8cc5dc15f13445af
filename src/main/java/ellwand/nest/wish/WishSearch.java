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

  public void run() {
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
        new GarmentSections(sectioned, layer, stretch).lay(until);
      }
      if (straight) {
        until += 1.5 / parts / stretches.size();
        new StraightDivision(sectioned, layer, stretch).divide(until);
      }
    }
    boolean offEnd = asked.contains(Wish.SMALL_OFF_END);
    if (asked.contains(Wish.ONE_LEFT_OVER)) {
      new LeftOverGrowth(sectioned, layer).grow(offEnd ? layer.part(1, 2) : 1);
    }
    if (offEnd) {
      new ClearedEnds(sectioned, layer).clear(1);
    }
  }
}
