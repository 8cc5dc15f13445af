package ellwand.cloth;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * A flaw where it bars the laid cloth.
 *
 * @param zone id of the zone
 * @param flaw name of the flaw
 * @param outline in the marker's frame, inside the zone, mm
 */
public record KeepOut(String zone, String flaw, Outline outline) {

  /** What rounding leaves of a flaw beyond its zone is none: a share of the flaw's area. */
  private static final double SLIVER = 1e-7;

  /**
   * What each ply of a band bars: a fold brings a flaw in either half to the same place.
   *
   * @param acrossMm how far from its cut end the cloth is folded or cut across; 0 if it is not
   * @param fromX where the band begins along the laid cloth, mm
   * @param toX where it ends
   */
  public static List<KeepOut> of(
      Cloth cloth, Band band, double acrossMm, double fromX, double toX) {
    if (!(fromX < toX)) {
      return List.of();
    }
    Region zone = Region.of(new Box(fromX, band.lowY(), toX, band.highY()));
    List<KeepOut> keepOuts = new ArrayList<>();
    for (Ply ply : band.layers()) {
      for (Flaw flaw : cloth.flawsAllRound()) {
        Outline outline = ply.laid(cloth.fromFirstCuttable(flaw.outline()), acrossMm);
        for (Outline part : Region.of(outline).intersect(zone).shells()) {
          if (part.area() > SLIVER * outline.area()) {
            keepOuts.add(new KeepOut(band.id(), flaw.name(), part));
          }
        }
      }
    }
    return keepOuts;
  }
}
