package ellwand.file;

import ellwand.cloth.Cloth;
import ellwand.order.GarmentLengths;
import ellwand.order.Order;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.Optional;

/**
 * An order in several sizes and colours.
 *
 * @param path the file as the user gave it
 * @param title heads the report, if given
 * @param unit what results are shown in
 * @param style what the garments are, and from which of its cloths; or else
 * @param lengths the marker length that each garment takes
 * @param currency may be empty
 */
public record OrderJob(
    Path path,
    Optional<String> title,
    Unit unit,
    Order order,
    Optional<Garments> style,
    Optional<GarmentLengths> lengths,
    String currency) {

  /** A job with the cloth that is planned. */
  public record Garments(Job job, Cloth cloth) {}
}
