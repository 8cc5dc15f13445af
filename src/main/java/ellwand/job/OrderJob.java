package ellwand.job;

import ellwand.cloth.Cloth;
import ellwand.order.GarmentLengths;
import ellwand.order.Order;
import ellwand.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An order in several sizes and colours.
 *
 * @param title heads the report, if given
 * @param unit what results are shown in
 * @param style what the garments are; or else
 * @param lengths the marker length that each garment takes
 * @param cloths how each cloth is planned, one at least; the others cut what the first gives
 * @param currency may be empty
 */
public record OrderJob(
    Origin origin,
    Optional<String> title,
    Unit unit,
    Optional<Job> style,
    Optional<GarmentLengths> lengths,
    List<OfCloth> cloths,
    String currency) {

  public OrderJob {
    cloths = List.copyOf(cloths);
  }

  /**
   * How one cloth is planned.
   *
   * @param cloth empty where lengths are given
   * @param order the garments wanted, with this cloth's limits and costs
   * @param colours its colour by that of the garment; where it has the same name, nothing
   */
  public record OfCloth(Optional<Cloth> cloth, Order order, Map<String, String> colours) {

    public OfCloth {
      colours = Map.copyOf(colours);
    }

    /** Its name, empty if none is known. */
    public String name() {
      return cloth.map(Cloth::name).orElse("");
    }
  }
}
