package ellwand.rule;

import ellwand.lay.Marker;
import java.util.List;

/**
 * The independent check: every hard rule, asked of the outlines in place with JTS.
 *
 * <p>The marker's lay says what is demanded, its copies what was found; copies that make no sense
 * (unknown pieces, sizes, zones) become findings, never errors.
 */
public final class Check {

  private Check() {}

  /** What the marker breaks of the hard rules; empty for a legal marker. */
  public static List<Finding> of(Marker marker) {
    throw new UnsupportedOperationException("lands shortly, for " + marker.fold());
  }

  /** As {@link #of}, and what a file states about itself that is not so. */
  public static List<Finding> of(Marker marker, Stated stated) {
    throw new UnsupportedOperationException("lands shortly, for " + stated + marker.fold());
  }
}
