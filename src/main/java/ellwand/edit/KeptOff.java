package ellwand.edit;

import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Region;

/** What a dragged copy is to keep off, and by how much. */
record KeptOff(Region region, Box box, double gapMm) {

  /** As the check has it: an overlap up to this share of the smaller is none. */
  private static final double OVERLAP_SHARE = 1e-6;

  static KeptOff of(Outline outline, double gapMm) {
    return new KeptOff(Region.of(outline), outline.box(), gapMm);
  }

  /** Whether a copy in place keeps off it. */
  boolean clearOf(Region copy, Box around) {
    if (!around.grown(gapMm).touches(box)) {
      return true;
    }
    if (gapMm > 0) {
      return copy.distance(region) >= gapMm - 2 * Contact.TOUCH_MM;
    }
    double smaller = Math.min(copy.area(), region.area());
    return copy.intersect(region).area() <= OVERLAP_SHARE * smaller;
  }
}
