package ellwand.figures;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one cloth of a cut order comes to; lengths in mm, money in the user's.
 *
 * @param cloth its name, empty if none is known
 * @param colours its colours, each with the garments that are cut in it
 * @param lays numbered on through the cloths of an order
 * @param markers each different marker
 * @param clothByColour with end loss
 * @param toBuyByColour the same as bought: unwashed, in the shop's steps; empty if no cloth is
 *     known
 * @param sizes each size
 * @param utilisation area of what is cut over that of all cloth, end loss included; empty if
 *     unknown
 * @param total what the plan takes
 * @param laysAtLeast what no plan can undercut
 * @param proved no plan is better
 * @param plain the plain way: one size a lay
 * @param revision how the plan came about; empty if lengths were given
 * @param misses what could not be met, one sentence each
 */
public record OrderCloth(
    String cloth,
    Map<String, Integer> colours,
    List<LayTicket> lays,
    List<OrderMarker> markers,
    Map<String, Double> clothByColour,
    Map<String, Double> toBuyByColour,
    List<SizeCost> sizes,
    Optional<Double> utilisation,
    Sum total,
    int laysAtLeast,
    boolean proved,
    Sum plain,
    Optional<Revision> revision,
    List<String> misses) {

  /**
   * What a plan takes; money is 0 if nothing has a price.
   *
   * @param clothMm that is cut, end loss included
   * @param layCost for making the lays
   * @param cutCost what the cloth that is cut comes to
   * @param boughtCost for the cloth as bought, which is paid and which plans are compared by; the
   *     same as cut if no cloth is known
   */
  public record Sum(int lays, double clothMm, double layCost, double cutCost, double boughtCost) {

    static final Sum NOTHING = new Sum(0, 0, 0, 0, 0);

    /** What is to be paid. */
    public double cost() {
      return layCost + boughtCost;
    }

    Sum plus(Sum other) {
      return new Sum(
          lays + other.lays,
          clothMm + other.clothMm,
          layCost + other.layCost,
          cutCost + other.cutCost,
          boughtCost + other.boughtCost);
    }
  }

  /**
   * A different marker of the plan.
   *
   * @param name of its files, without ending
   * @param garments by size
   * @param estimatedMm length that was first planned with
   * @param figures empty if it was not made
   */
  public record OrderMarker(
      String name,
      Map<String, Integer> garments,
      double lengthMm,
      double estimatedMm,
      Optional<Figures> figures) {

    /** 0 to 1; empty if it was not made. */
    public Optional<Double> utilisation() {
      return figures.map(f -> f.areas().utilisation());
    }

    /** How far the estimate was off, as a share of the true length; positive if it was too long. */
    public double offBy() {
      return estimatedMm / lengthMm - 1;
    }
  }

  /** Whether what one size a lay takes is estimated, at least in part. */
  public boolean plainEstimated() {
    return revision.filter(r -> r.plainEstimated() > 0).isPresent();
  }

  /** What this cloth costs a garment of one size, as bought: by area, and its part of each lay. */
  public record SizeCost(String size, int wanted, int cut, double clothMm, double cost) {}

  /**
   * How true lengths changed the plan.
   *
   * @param plans how many were made
   * @param estimated the first plan, with estimated lengths
   * @param estimatedTrue the same with true lengths
   * @param estimatedFits whether its markers fit on the table in truth
   * @param changed whether another plan was kept
   * @param offBy estimated over true length of all markers that were made, less 1
   * @param markersMade how many markers were made for it
   * @param plainEstimated how many markers of one size a lay were not made: their lengths are
   *     estimated
   */
  public record Revision(
      int plans,
      Sum estimated,
      Sum estimatedTrue,
      boolean estimatedFits,
      boolean changed,
      double offBy,
      int markersMade,
      int plainEstimated) {}
}
