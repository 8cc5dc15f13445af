package ellwand.desk;

import ellwand.app.DrawRun;
import ellwand.app.LaidJob;
import ellwand.app.Output;
import ellwand.app.PlotFormat;
import ellwand.app.PrintRun;
import ellwand.app.Printing;
import ellwand.app.TableRun;
import ellwand.file.source.Names;
import ellwand.job.Job;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** Everything of a job that can be printed or sent to a machine, made when it is asked for. */
final class Prints {

  private Prints() {}

  /** What of the job's markers there is. */
  static List<Output> laid(OpenJob job) {
    return TableRun.laid(job.job(), job.markers(), job.job().unit())
        .also(List.of(PlotFormat.DXF, PlotFormat.HPGL))
        .outputs();
  }

  /** Altered pieces before and after. */
  static Output before(OpenJob job, String size) {
    Job read = job.job();
    return DrawRun.before(read, read.unit(), List.of(size), Optional.empty()).output("altered.svg");
  }

  /**
   * What a page asks for: a file of the job's markers or of its order, or else the pieces or the
   * markers full size.
   */
  static Output asked(OpenJob job, Context request) {
    String file = request.queryParam("file");
    if (file == null) {
      return fullSize(job, request);
    }
    return named(request.queryParam("order") == null ? laid(job) : job.order().outputs(), file);
  }

  /** The pieces, or the markers, full size on paper. */
  static Output fullSize(OpenJob job, Context request) {
    Job read = job.job();
    boolean projector = request.queryParam("projector") != null;
    Printing how =
        Printing.of(
            Optional.ofNullable(request.queryParam("paper")).filter(p -> !p.isBlank()),
            request.queryParams("size"),
            Optional.ofNullable(request.queryParam("lines")).orElse("both"),
            projector,
            Optional.ofNullable(request.queryParam("ground")).orElse("light"));
    if ("marker".equals(request.queryParam("of"))) {
      LaidJob laid = TableRun.laid(read, job.markers(), read.unit());
      return PrintRun.markers(laid, how, read.unit()).output("markers.pdf");
    }
    return PrintRun.pieces(read, how, read.unit()).output("pieces.pdf");
  }

  /**
   * One of several.
   *
   * @throws Declined if there is none of that name
   */
  static Output named(List<Output> outputs, String name) {
    return outputs.stream()
        .filter(o -> o.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                Declined.notThere(
                    "there is no file " + Names.shown(name), "Choose one of the list"));
  }
}
