package ellwand.cli;

import ellwand.app.DrawRun;
import ellwand.draw.piece.PieceDrawing;
import ellwand.file.job.JobReader;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the pieces of a job. */
@Command(
    name = "draw",
    mixinStandardHelpOptions = true,
    description =
        "Draws the pieces with sewing and cutting lines, notches, grain, edges and labels.",
    footer = {
      "",
      "Example: draw sample-markers/weir-jacket/job.yaml --out pieces.pdf",
      "Example: draw sample-markers/weir-jacket/job.yaml --scale 1 --out full-size.pdf",
      "Example: draw sample-markers/beck-tunic/job.yaml --nested --out sizes.pdf"
    })
final class DrawCommand implements Callable<Integer> {

  @Parameters(paramLabel = "JOB.yaml", description = "The job file.")
  private Path jobPath;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      defaultValue = "pieces.svg",
      description = "A .svg, .pdf or .png file. Default: ${DEFAULT-VALUE}.")
  private Path out;

  @Option(
      names = "--scale",
      paramLabel = "N",
      description = "Draw a PDF at 1:N on one page as large as it takes. Default: to fit on A4.")
  private Double scale;

  @Option(names = "--nested", description = "Draw all sizes of each piece on one another.")
  private boolean nested;

  @Mixin private ShowMixin show;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
    if (scale != null && !(name.endsWith(".pdf") && scale > 0)) {
      throw new ParameterException(
          spec.commandLine(), "--scale takes a number above 0 and goes with a .pdf file");
    }
    Job job = JobReader.read(jobPath);
    PieceDrawing drawing = DrawRun.pieces(job, show.unit().orElse(job.unit()), nested);
    WholeFile.write(out, bytes(drawing, name));
    PrintWriter err = spec.commandLine().getErr();
    err.println("Written: " + out);
    if (!name.endsWith(".svg")) {
      DrawRun.unprinted(job).ifPresent(err::println);
    }
    return Main.DONE;
  }

  private byte[] bytes(PieceDrawing drawing, String name) {
    if (name.endsWith(".pdf")) {
      return scale == null ? drawing.pdf() : drawing.pdf(scale);
    }
    if (name.endsWith(".png")) {
      return drawing.png();
    }
    if (name.endsWith(".svg")) {
      return drawing.svg();
    }
    throw new ParameterException(
        spec.commandLine(), "'" + out + "' must end with .svg, .pdf or .png");
  }
}
