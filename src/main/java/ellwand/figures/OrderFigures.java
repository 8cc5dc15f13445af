package ellwand.figures;

import ellwand.figures.OrderCloth.OrderMarker;
import ellwand.figures.OrderCloth.SizeCost;
import ellwand.figures.OrderCloth.Sum;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a cut order comes to in all its cloths; lengths in mm, money in the user's.
 *
 * @param title of the order
 * @param cloths one at least; the first says how many garments are cut
 * @param buy all cloths and trims
 * @param trimsBySize what the trims of a garment of each size cost; empty if there are none
 * @param cautions sentences for whoever cuts
 */
public record OrderFigures(
    String title,
    String currency,
    List<OrderCloth> cloths,
    Shopping buy,
    Map<String, Double> trimsBySize,
    List<String> cautions) {

  /** One that takes no trims, of cloths that nobody buys for it. */
  public OrderFigures(
      String title, String currency, List<OrderCloth> cloths, List<String> cautions) {
    this(title, currency, cloths, Shopping.NOTHING, Map.of(), cautions);
  }

  public OrderFigures {
    cloths = List.copyOf(cloths);
    cautions = List.copyOf(cautions);
  }

  /**
   * What a garment of one size takes of all cloths.
   *
   * @param clothMm of each cloth
   * @param trims what its trims cost
   * @param cost of cloth and trims, with its part of each lay; what is cut too many of a cloth is
   *     borne by all
   */
  public record SizeTotal(
      String size, int wanted, int cut, Map<String, Double> clothMm, double trims, double cost) {}

  /** Whether its garments take trims whose price is known. */
  public boolean trimmed() {
    return trimsBySize.values().stream().anyMatch(cost -> cost > 0);
  }

  /** Garments that are cut. */
  public int garments() {
    return cloths.get(0).lays().stream().mapToInt(LayTicket::totalCut).sum();
  }

  /** Whether there is more than one cloth to tell apart. */
  public boolean several() {
    return cloths.size() > 1;
  }

  public List<LayTicket> lays() {
    return cloths.stream().flatMap(c -> c.lays().stream()).toList();
  }

  public List<OrderMarker> markers() {
    return cloths.stream().flatMap(c -> c.markers().stream()).toList();
  }

  public List<String> misses() {
    return cloths.stream()
        .flatMap(c -> c.misses().stream().map(m -> several() ? c.cloth() + ", " + m : m))
        .toList();
  }

  public Sum total() {
    return cloths.stream().map(OrderCloth::total).reduce(Sum.NOTHING, Sum::plus);
  }

  public Sum plain() {
    return cloths.stream().map(OrderCloth::plain).reduce(Sum.NOTHING, Sum::plus);
  }

  /** Whether that is estimated, at least in part. */
  public boolean plainEstimated() {
    return cloths.stream().anyMatch(OrderCloth::plainEstimated);
  }

  public int laysAtLeast() {
    return cloths.stream().mapToInt(OrderCloth::laysAtLeast).sum();
  }

  /** Whether no plan of any cloth is better. */
  public boolean proved() {
    return cloths.stream().allMatch(OrderCloth::proved);
  }

  /** Cloth by its colour, with end loss, mm: that of all cloths of the colour. */
  public Map<String, Double> clothByColour() {
    Map<String, Double> sum = new LinkedHashMap<>();
    cloths.forEach(c -> c.clothByColour().forEach((name, mm) -> sum.merge(name, mm, Double::sum)));
    return sum;
  }

  /** What to buy of all cloths, mm; empty if no cloth is known. */
  public Optional<Double> toBuyMm() {
    return cloths.stream().flatMap(c -> c.toBuyByColour().values().stream()).reduce(Double::sum);
  }

  /** Each size. */
  public List<SizeTotal> sizes() {
    return cloths.get(0).sizes().stream().map(this::garment).toList();
  }

  private SizeTotal garment(SizeCost size) {
    Map<String, Double> clothMm = new LinkedHashMap<>();
    double cost = 0;
    for (OrderCloth cloth : cloths) {
      for (SizeCost part : cloth.sizes()) {
        if (part.size().equals(size.size()) && size.cut() > 0) {
          double pieces = (double) part.cut() / size.cut();
          clothMm.put(cloth.cloth(), part.clothMm() * pieces);
          cost += part.cost() * pieces;
        }
      }
    }
    double trims = size.cut() == 0 ? 0 : trimsBySize.getOrDefault(size.size(), 0.0);
    return new SizeTotal(size.size(), size.wanted(), size.cut(), clothMm, trims, cost + trims);
  }
}
