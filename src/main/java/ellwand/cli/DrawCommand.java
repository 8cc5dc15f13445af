package ellwand.cli;

import ellwand.app.DrawRun;
import ellwand.app.DrawnPieces;
import ellwand.file.job.JobReader;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import ellwand.units.Unit;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
    mixinStandardHelpOptions = true,
    description =
        "Draws the pieces with sewing and cutting lines, notches, grain, edges and labels.",
    footer = {
      "",
      "Example: draw sample-markers/weir-jacket/job.yaml --out pieces.pdf",
      "Example: draw sample-markers/weir-jacket/job.yaml --scale 1 --out full-size.pdf",
      "Example: draw sample-markers/beck-tunic/job.yaml --sizes 98,104 --out two-sizes.pdf",
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
      description =
          "Draw a PDF at 1:N, each size on one page as large as it takes. Default: to fit on A4.")
  private Double scale;

  @Option(
      names = "--sizes",
      paramLabel = "SIZE",
      split = ",",
      description =
          "Sizes to draw, such as 104,110. Default: those that the job orders; with --nested, all.")
  private List<String> sizes = List.of();

  @Option(names = "--nested", description = "Draw all sizes of each piece on one another.")
  private boolean nested;

  @Option(
      names = "--before",
      description = "Draw the altered pieces before (dashed) and after, with their marks.")
  private boolean before;

  @Option(
      names = "--lengths",
      description = "Write at each edge how long it is when sewn, in place of its allowance.")
  private boolean lengths;

  @Mixin private UnitMixin units;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    String name = out.getFileName().toString();
    String lower = name.toLowerCase(Locale.ROOT);
    if (scale != null && !(lower.endsWith(".pdf") && scale > 0)) {
      throw refused("--scale takes a number above 0 and goes with a .pdf file");
    }
    if (DrawnPieces.endings().stream().noneMatch(lower::endsWith)) {
      throw refused("'" + out + "' must end with " + String.join(", ", DrawnPieces.endings()));
    }
    if (nested && before) {
      throw refused("--nested and --before do not go together");
    }
    if (lengths && (nested || before)) {
      throw refused("--lengths goes neither with --nested nor with --before");
    }
    WholeFile.refuseUnwritable(out);
    Job job = JobReader.read(jobPath);
    Unit unit = UnitMixin.atTable(units.unit().orElse(job.unit()));
    List<String> asked = sizes.stream().map(String::strip).distinct().toList();
    DrawnPieces drawn =
        before
            ? DrawRun.before(job, unit, asked, Optional.ofNullable(scale))
            : lengths
                ? DrawRun.lengths(job, unit, asked, Optional.ofNullable(scale))
                : DrawRun.make(job, unit, nested, asked, Optional.ofNullable(scale));
    WholeFile.write(out, drawn.output(name).bytes());
    PrintWriter err = spec.commandLine().getErr();
    err.println("Written: " + out);
    if (!lower.endsWith(".svg")) {
      drawn.unprinted().ifPresent(err::println);
    }
    return Main.DONE;
  }

  private ParameterException refused(String what) {
    return new ParameterException(spec.commandLine(), what);
  }
}
