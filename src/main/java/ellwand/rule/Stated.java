package ellwand.rule;

/**
 * What a marker file says of itself.
 *
 * @param markerWidthMm usable width as laid
 * @param lengthMm marker length
 * @param clothLengthMm cloth length
 * @param utilisation 0 to 1
 * @param gapMm least distance between pieces
 */
public record Stated(
    double markerWidthMm,
    double lengthMm,
    double clothLengthMm,
    double utilisation,
    double gapMm) {}
