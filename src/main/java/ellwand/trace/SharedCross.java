package ellwand.trace;

import ellwand.geometry.Point;

/**
 * A cross drawn on a piece that two scans show.
 *
 * @param at where it lies, mm
 * @param offMm how far apart both show it, once they are joined
 */
public record SharedCross(Point at, double offMm) {}
