package ellwand.lay;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import java.util.List;
import java.util.OptionalInt;

/**
 * One placement in a marker.
 *
 * @param piece name of the piece
 * @param size the garment's size
 * @param garment which garment of the lay, from 1
 * @param secondGarment who gets the other of its two pieces, if that is another garment of the size
 * @param zone id of the zone it lies in
 * @param motion how the drawn piece (opened, for {@link Form#OPENED}) comes to its place
 * @param outline its cutting line in place
 */
public record Copy(
    String piece,
    String size,
    int garment,
    OptionalInt secondGarment,
    Form form,
    String zone,
    Heading heading,
    Motion motion,
    Outline outline) {

  /** All of it for one garment. */
  public Copy(
      String piece,
      String size,
      int garment,
      Form form,
      String zone,
      Heading heading,
      Motion motion,
      Outline outline) {
    this(piece, size, garment, OptionalInt.empty(), form, zone, heading, motion, outline);
  }

  /** One or two, each of which gets at least one piece of it. */
  public List<Integer> garments() {
    return secondGarment.isPresent()
        ? List.of(garment, secondGarment.getAsInt())
        : List.of(garment);
  }

  /** The same under the name that the piece has now. */
  public Copy called(String name) {
    return new Copy(name, size, garment, secondGarment, form, zone, heading, motion, outline);
  }

  /** Moved along and across the cloth, mm. */
  public Copy shifted(double alongMm, double acrossMm) {
    return at(
        motion.shifted(alongMm, acrossMm), outline.moved(new Motion(false, 0, alongMm, acrossMm)));
  }

  /** In another place. */
  public Copy at(Motion newMotion, Outline newOutline) {
    return new Copy(
        piece, size, garment, secondGarment, form, zone, heading, newMotion, newOutline);
  }

  /** In another zone. */
  public Copy in(String newZone) {
    return new Copy(piece, size, garment, secondGarment, form, newZone, heading, motion, outline);
  }

  /** Said to head so. */
  public Copy heading(Heading newHeading) {
    return new Copy(piece, size, garment, secondGarment, form, zone, newHeading, motion, outline);
  }

  /** Cut for another garment, and only for that. */
  public Copy forGarment(int other) {
    return new Copy(piece, size, other, form, zone, heading, motion, outline);
  }
}
