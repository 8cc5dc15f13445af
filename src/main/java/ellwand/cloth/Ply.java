package ellwand.cloth;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;

/**
 * One ply of a zone, unfolded: where on the open cloth, right side up, a place of the laid cloth
 * is. Across, both are counted from the first cuttable line; along, from the cut end.
 *
 * @param openMm the place across the open cloth that lies at y = 0 of the laid one
 * @param mirrored y runs against the open cloth's
 * @param beyond along the cloth, x = 0 of the laid cloth is where it was folded or cut across; else
 *     it is the cut end
 * @param backwards x runs against the open cloth's
 */
public record Ply(double openMm, boolean mirrored, boolean beyond, boolean backwards) {

  /** The open cloth as it is. */
  static final Ply OPEN = new Ply(0, false);

  /** A ply of cloth that is not folded across. */
  Ply(double openMm, boolean mirrored) {
    this(openMm, mirrored, false, false);
  }

  /** Across the open cloth, for a place across the laid one. */
  public double open(double laidY) {
    return mirrored ? openMm - laidY : openMm + laidY;
  }

  /** Across the laid cloth, for a place across the open one. */
  public double laid(double openY) {
    return mirrored ? openMm - openY : openY - openMm;
  }

  /**
   * An outline on the laid cloth as it lies on the open cloth.
   *
   * @param acrossMm how far from its cut end the cloth is folded or cut across; 0 if it is not
   */
  public Outline open(Outline laid, double acrossMm) {
    return laid.moved(opening(acrossMm));
  }

  /** What brings a place on the laid cloth to the open cloth; see {@link #open}. */
  public Motion opening(double acrossMm) {
    return motion(beyond ? acrossMm : 0, openMm);
  }

  /** An outline on the open cloth as it lies on the laid cloth; see {@link #open}. */
  public Outline laid(Outline open, double acrossMm) {
    double x = beyond ? acrossMm : 0;
    return open.moved(motion(backwards ? x : -x, mirrored ? openMm : -openMm));
  }

  private Motion motion(double x, double y) {
    return new Motion(mirrored != backwards, backwards ? 180 : 0, x, y);
  }
}
