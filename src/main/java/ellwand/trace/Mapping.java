package ellwand.trace;

import ellwand.geometry.Point;

/** How places in a picture and places on the plane belong together. */
public interface Mapping {

  /** Where on the plane a pixel lies, mm; not a number where it shows nothing of it. */
  Point mmAt(Point pixel);

  /** The pixel that shows a place on the plane, also outside the picture; else not a number. */
  Point pixelAt(Point mm);

  /**
   * How far {@link #mmAt} may be off at a place on the plane, mm: two standard deviations of what
   * the sheets' points leave open, which grows where a place lies outside of them.
   */
  double errorMm(Point mm);
}
