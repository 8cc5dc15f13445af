package ellwand.cloth;

import ellwand.problem.InputException;
import java.util.Map;

/**
 * How a cloth is sold.
 *
 * @param shopStepMm length is sold in multiples of this
 * @param pricePerMetre in whatever money the user reckons in; 0 if unknown
 * @param currency a word or sign shown with money, may be empty
 * @param widthPrices what a metre costs by the width, mm, where it is sold in several
 */
public record Selling(
    double shopStepMm, double pricePerMetre, String currency, Map<Double, Double> widthPrices) {

  /** Shops that think in metres cut to 10 cm; common practice. */
  public static final double USUAL_STEP_MM = 100;

  /** Nobody buys another step of cloth for less than this, mm; floating error is far below it. */
  private static final double NOT_WORTH_A_STEP_MM = 0.01;

  /** In the usual steps, at a price that is not known. */
  public static final Selling USUAL = inSteps(USUAL_STEP_MM);

  public Selling {
    widthPrices = Map.copyOf(widthPrices);
    InputException.unless(
        shopStepMm > 0, "the shop's step of a cloth is 0 or less", "Give it more than 0");
    InputException.unless(
        pricePerMetre >= 0, "the price of a cloth is less than 0", "Give it as 0 or more");
  }

  /** At a price that is not known. */
  public static Selling inSteps(double mm) {
    return new Selling(mm, 0, "", Map.of());
  }

  /** The least that the shop sells for a length, mm; 0 for nothing. */
  public double soldMm(double neededMm) {
    double steps = Math.ceil((neededMm - NOT_WORTH_A_STEP_MM) / shopStepMm);
    return Math.max(0, steps) * shopStepMm;
  }

  public Selling at(double metrePrice, String money) {
    return new Selling(shopStepMm, metrePrice, money, widthPrices);
  }

  public Selling at(Map<Double, Double> pricesByWidth) {
    return new Selling(shopStepMm, pricePerMetre, currency, pricesByWidth);
  }

  /** In another width, at the price of that width if that is known. */
  Selling inWidth(double mm) {
    return widthPrices.isEmpty() ? this : at(widthPrices.getOrDefault(mm, 0.0), currency);
  }
}
