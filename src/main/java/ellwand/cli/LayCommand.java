package ellwand.cli;

import ellwand.app.Answer;
import ellwand.app.Hands;
import ellwand.app.LaidJob;
import ellwand.app.LayRun;
import ellwand.app.PlotFormat;
import ellwand.app.ShelfRun;
import ellwand.job.Job;
import ellwand.many.JobFiles;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes the markers of a job. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Makes the markers of a job, one for each cloth: drawings, figures and a sheet to take to"
            + " the cutting table.",
    footer = {
      "",
      "Example: lay sample-markers/weir-jacket/job.yaml --effort 30s --out jacket-out",
      "Example: lay sample-markers/weir-jacket/job.yaml --also dxf,hpgl",
      "Ctrl-C keeps the best markers found so far and writes them."
    })
final class LayCommand extends RunCommand<Job> {

  @Option(
      names = "--use-remnants",
      description =
          "Use up the remnants of the job first, whole garments at a time, and buy cloth for the"
              + " rest.")
  private boolean useRemnants;

  @Option(
      names = "--also",
      paramLabel = "KIND",
      split = ",",
      description =
          "Write each marker full size for a plotter or a cutting machine too: pdf, svg, dxf,"
              + " hpgl.")
  private List<String> also = List.of();

  LayCommand() {
    super(JobFiles::job, Job::unit, "-out");
  }

  @Override
  Answer make(Job job, Unit shown, Request request, Hands hands) {
    List<PlotFormat> formats = PlotFormat.parse(also);
    LaidJob laid =
        useRemnants
            ? ShelfRun.make(job, shown, request, hands)
            : LayRun.make(job, shown, request, hands);
    return laid.also(formats);
  }
}
