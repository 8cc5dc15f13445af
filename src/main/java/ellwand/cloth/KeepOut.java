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

  /** Farther than any table is long, mm. */
  private static final double FAR_MM = 1e6;

  /**
   * What each ply of the laid cloth bars: a fold brings a flaw in either half to the same place.
   */
  public static List<KeepOut> of(Cloth cloth, LaidCloth laid) {
    List<KeepOut> keepOuts = new ArrayList<>();
    for (Band band : laid.bands()) {
      Region zone = Region.of(new Box(0, band.lowY(), FAR_MM, band.highY()));
      for (Ply ply : band.layers()) {
        for (Flaw flaw : cloth.flaws()) {
          Outline outline = ply.laid(cloth.fromFirstCuttable(flaw.outline()));
          for (Outline part : Region.of(outline).intersect(zone).shells()) {
            if (part.area() > SLIVER * outline.area()) {
              keepOuts.add(new KeepOut(band.id(), flaw.name(), part));
            }
          }
        }
      }
    }
    return keepOuts;
  }
}
