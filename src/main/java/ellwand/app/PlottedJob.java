package ellwand.app;

import java.util.ArrayList;
import java.util.List;

/** A job's markers, with files for plotters and cutting machines beside the usual ones. */
record PlottedJob(LaidJob laid, List<PlottedMarker> plotted, List<PlotFormat> formats)
    implements Answer {

  @Override
  public boolean achieved() {
    return laid.achieved();
  }

  @Override
  public String text() {
    return laid.text();
  }

  @Override
  public String headline() {
    return laid.headline();
  }

  @Override
  public byte[] json() {
    return laid.json();
  }

  @Override
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>(laid.remarks());
    plotted.forEach(p -> remarks.add(p.travel()));
    return remarks;
  }

  @Override
  public List<Output> outputs() {
    List<Output> outputs = new ArrayList<>(laid.outputs());
    plotted.forEach(p -> formats.forEach(f -> outputs.add(p.output(f))));
    return outputs;
  }
}
