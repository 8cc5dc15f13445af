package ellwand.rule;

import ellwand.lay.Marker;

/** A marker made ready to be looked at. */
public final class Inspection {

  private final Marker marker;

  Inspection(Marker marker) {
    this.marker = marker;
  }

  public Marker marker() {
    return marker;
  }
}
