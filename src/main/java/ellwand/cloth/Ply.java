package ellwand.cloth;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;

/**
 * One ply of a zone, unfolded: where on the open cloth, right side up, a place of the laid cloth
 * is. Both are counted across from the first cuttable line; the place along the cloth is the same.
 *
 * @param openMm the place across the open cloth that lies at y = 0 of the laid one
 * @param mirrored the ply lies wrong side up, so that y runs against the open cloth's
 */
public record Ply(double openMm, boolean mirrored) {

  /** The open cloth as it is. */
  static final Ply OPEN = new Ply(0, false);

  /** Across the open cloth, for a place across the laid one. */
  public double open(double laidY) {
    return mirrored ? openMm - laidY : openMm + laidY;
  }

  /** Across the laid cloth, for a place across the open one. */
  public double laid(double openY) {
    return mirrored ? openMm - openY : openY - openMm;
  }

  /** An outline on the laid cloth as it lies on the open cloth. */
  public Outline open(Outline laid) {
    return laid.moved(new Motion(mirrored, 0, 0, openMm));
  }

  /** An outline on the open cloth as it lies on the laid cloth. */
  public Outline laid(Outline open) {
    return open.moved(new Motion(mirrored, 0, 0, mirrored ? openMm : -openMm));
  }
}
