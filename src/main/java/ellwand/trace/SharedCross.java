package ellwand.trace;

import ellwand.geometry.Point;

/**
 * A cross drawn on a piece that two scans or more show.
 *
 * @param at where it lies, mm
 * @param offMm how far apart two of them show it at most, once they are joined
 */
public record SharedCross(Point at, double offMm) {}
