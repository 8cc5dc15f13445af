package ellwand.figures;

import ellwand.rule.FreePlace;

/**
 * The largest rectangle along the warp that is left over in a zone.
 *
 * @param zone id of the zone
 * @param plies 1, or 2 for two such rectangles
 * @param xMm its near end, from where the marker begins: the cut end, or a fold across
 * @param yMm its near side, in the marker's frame
 * @param lengthMm along the warp
 * @param widthMm across
 */
public record LeftOver(
    String zone, int plies, double xMm, double yMm, double lengthMm, double widthMm) {

  static LeftOver of(FreePlace free) {
    return new LeftOver(
        free.zone().id(),
        free.zone().plies(),
        free.box().minX(),
        free.box().minY(),
        free.box().length(),
        free.box().width());
  }

  /** Of one ply. */
  public double areaMm2() {
    return lengthMm * widthMm;
  }
}
