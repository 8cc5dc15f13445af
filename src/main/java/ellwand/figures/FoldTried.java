package ellwand.figures;

import ellwand.cloth.Fold;

/**
 * What one way of laying the cloth would have taken.
 *
 * @param lengthMm of the marker; 0 if there is none
 * @param clothLengthMm the same in cloth
 * @param toBuyMm length to buy
 * @param reason why there is no marker, a clause; empty if there is one
 * @param longerBecause why open cloth takes more than another way, a clause; empty if it does not
 */
public record FoldTried(
    Fold fold,
    double lengthMm,
    double clothLengthMm,
    double toBuyMm,
    String reason,
    String longerBecause) {

  /** One that needs no reason for its length. */
  public FoldTried(
      Fold fold, double lengthMm, double clothLengthMm, double toBuyMm, String reason) {
    this(fold, lengthMm, clothLengthMm, toBuyMm, reason, "");
  }

  public boolean possible() {
    return reason.isEmpty();
  }
}
