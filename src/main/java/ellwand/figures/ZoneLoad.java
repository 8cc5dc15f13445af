package ellwand.figures;

/**
 * All that lies in a zone, by its lower ply: places across the open cloth.
 *
 * @param period from one place of the repeat to the next that is like it, mm; 0 if all are alike
 * @param lowMm where it begins
 * @param widthMm how wide it lies; 0 if nothing does
 * @param fold of the zone, if it has one
 * @param stands whether something lies on the fold, and moves with it only
 */
record ZoneLoad(double period, double lowMm, double widthMm, double fold, boolean stands) {

  /** Beyond a line by no more than rounding, mm. */
  static final double HAIR_MM = 0.01;

  /** The first place like the one where it begins that is no nearer than a line. */
  double placeFrom(double line) {
    return period == 0 || widthMm == 0
        ? line
        : lowMm + period * Math.ceil((line - lowMm - HAIR_MM) / period);
  }

  /** How far it reaches beyond a fold; infinite if it cannot lie there. */
  double deepMm(double line) {
    if (widthMm == 0) {
      return 0;
    }
    if (stands) {
      return like(line) ? lowMm + widthMm - fold : Double.POSITIVE_INFINITY;
    }
    return placeFrom(line) + widthMm - line;
  }

  /** How far it reaches before a fold. */
  double beyondMm(double line) {
    if (widthMm == 0) {
      return 0;
    }
    if (stands) {
      return like(line) ? fold - lowMm : Double.POSITIVE_INFINITY;
    }
    double high = lowMm + widthMm;
    return period == 0
        ? widthMm
        : line - high + widthMm + period * Math.ceil((high - line - HAIR_MM) / period);
  }

  private boolean like(double line) {
    return period == 0 || Math.abs(Math.IEEEremainder(line - fold, period)) <= HAIR_MM;
  }
}
