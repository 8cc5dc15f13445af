package ellwand.app;

import ellwand.draw.marker.MarkerPlot;
import ellwand.draw.plot.Plot;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.units.Length;
import ellwand.units.Unit;

/**
 * A marker that has passed the check, for a plotter or a cutting machine.
 *
 * @param name of its files
 * @param plain in the order of the copies
 * @param plot in an order of less travel
 */
record PlottedMarker(String name, Plot plain, Plot plot) {

  static PlottedMarker of(String name, Marker marker, Job job) {
    Plot plain = MarkerPlot.of(marker, job.heading());
    return new PlottedMarker(name, plain, plain.shortened());
  }

  Output output(PlotFormat format) {
    return new Output(name + ".plot." + format.word(), () -> format.bytes(plot));
  }

  /** How far pen and blade go, as a sentence. */
  String travel() {
    return "%s, for a plotter: cuts %s, and moves %s lifted (%s in the order of the pieces)."
        .formatted(name, m(plot.cutMm()), m(plot.travelMm()), m(plain.travelMm()));
  }

  private static String m(double mm) {
    return new Length(mm).show(Unit.M);
  }
}
