package ellwand.figures;

import ellwand.cloth.Fold;

/**
 * What one way of laying the cloth would have taken.
 *
 * @param lengthMm of the marker; 0 if there is none
 * @param clothLengthMm the same in cloth
 * @param toBuyMm length to buy
 * @param reason why there is no marker, a clause; empty if there is one
 */
public record FoldTried(
    Fold fold, double lengthMm, double clothLengthMm, double toBuyMm, String reason) {

  public boolean possible() {
    return reason.isEmpty();
  }
}
