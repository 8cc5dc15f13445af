package ellwand.desk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.app.DrawRun;
import ellwand.app.LaidJob;
import ellwand.app.Output;
import ellwand.app.PlotFormat;
import ellwand.app.PrintRun;
import ellwand.app.Printing;
import ellwand.app.TableRun;
import ellwand.file.source.Json;
import ellwand.file.source.Names;
import ellwand.job.Job;
import ellwand.lay.Marker;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything of a job that can be printed or sent to a machine, made when it is asked for. */
final class Prints {

  private Prints() {}

  /** What of the job's markers there is: of each that can be cut, of all together once all can. */
  private static List<Output> laid(OpenJob job) {
    Job read = job.job();
    List<Marker> markers = job.markers();
    if (markers.size() == read.cloths().size()) {
      return outputs(read, markers);
    }
    List<Output> outputs = new ArrayList<>();
    for (Marker marker : markers) {
      outputs(read, List.of(marker)).stream()
          .filter(o -> o.name().startsWith(marker.lay().cloth().name() + "."))
          .forEach(outputs::add);
    }
    return outputs;
  }

  private static List<Output> outputs(Job job, List<Marker> markers) {
    return TableRun.laid(job, markers, job.unit())
        .also(List.of(PlotFormat.DXF, PlotFormat.HPGL))
        .outputs();
  }

  /** The names of what of the job's markers there is, and of the cloths that cannot be cut yet. */
  static ObjectNode files(OpenJob job) {
    ObjectNode json = Json.object();
    ArrayNode files = json.putArray("files");
    laid(job).forEach(output -> files.add(output.name()));
    ArrayNode missing = json.putArray("missing");
    job.tables().stream().filter(t -> !t.canBeCut()).forEach(t -> missing.add(t.cloth()));
    return json;
  }

  /** Altered pieces before and after. */
  static Output before(OpenJob job, String size) {
    Job read = job.job();
    return DrawRun.before(read, read.unit(), List.of(size), Optional.empty()).output("altered.svg");
  }

  /**
   * What a page asks for: a file of the job's markers or of its order, or else the pieces or the
   * marker of a cloth full size.
   */
  static Output asked(OpenJob job, Context request) {
    String file = request.queryParam("file");
    if (file == null) {
      return fullSize(job, request);
    }
    return named(request.queryParam("order") == null ? laid(job) : job.order().outputs(), file);
  }

  /** The pieces, or the marker of a cloth, full size on paper. */
  private static Output fullSize(OpenJob job, Context request) {
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
      String cloth = Desk.word(request.queryParam("cloth"));
      LaidJob laid = TableRun.laid(read, List.of(job.table(cloth).legal()), read.unit());
      return PrintRun.markers(laid, how, read.unit()).output(cloth + ".pdf");
    }
    return PrintRun.pieces(read, how, read.unit()).output("pieces.pdf");
  }

  /**
   * One of several.
   *
   * @throws Declined if there is none of that name
   */
  private static Output named(List<Output> outputs, String name) {
    return outputs.stream()
        .filter(o -> o.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                Declined.notThere(
                    "there is no file " + Names.shown(name), "Choose one of the list"));
  }
}
