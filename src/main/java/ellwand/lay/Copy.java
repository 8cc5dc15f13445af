package ellwand.lay;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;

/**
 * One placement in a marker.
 *
 * @param piece name of the piece
 * @param size the garment's size
 * @param garment which garment of the lay, from 1
 * @param zone id of the zone it lies in
 * @param motion how the drawn piece (opened, for {@link Form#OPENED}) comes to its place
 * @param outline its cutting line in place
 */
public record Copy(
    String piece,
    String size,
    int garment,
    Form form,
    String zone,
    Heading heading,
    Motion motion,
    Outline outline) {

  /** Moved along and across the cloth, mm. */
  public Copy shifted(double alongMm, double acrossMm) {
    return at(
        motion.shifted(alongMm, acrossMm), outline.moved(new Motion(false, 0, alongMm, acrossMm)));
  }

  /** In another place. */
  public Copy at(Motion newMotion, Outline newOutline) {
    return new Copy(piece, size, garment, form, zone, heading, newMotion, newOutline);
  }

  /** In another zone. */
  public Copy in(String newZone) {
    return new Copy(piece, size, garment, form, newZone, heading, motion, outline);
  }

  /** Said to head so. */
  public Copy heading(Heading newHeading) {
    return new Copy(piece, size, garment, form, zone, newHeading, motion, outline);
  }

  /** Cut for another garment. */
  public Copy forGarment(int other) {
    return new Copy(piece, size, other, form, zone, heading, motion, outline);
  }
}
