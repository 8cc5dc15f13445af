package ellwand.cli;

import ellwand.app.PrintRun;
import ellwand.app.PrintedPages;
import ellwand.app.Printing;
import ellwand.file.job.JobReader;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints full size. */
@Command(
    name = "print",
    mixinStandardHelpOptions = true,
    description =
        "Draws the pieces full size on pages to join, on a roll, or for a projector, with squares"
            + " to measure before anything is cut.",
    footer = {
      "",
      "Example: print sample-markers/weir-jacket/job.yaml --paper A4 --out jacket.pdf",
      "Example: print sample-markers/beck-tunic/job.yaml --sizes 98,104 --paper roll:91cm",
      "Example: print sample-markers/weir-jacket/job.yaml --projector --ground dark"
    })
final class PrintCommand implements Callable<Integer> {

  @Parameters(paramLabel = "JOB.yaml", description = "The job file.")
  private Path path;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description =
          "A4, Letter, A4-Letter (A4 pages of which as much is used as Letter has room for), A3,"
              + " A0, or a roll and its width, such as roll:91cm. Default: A4.")
  private String paper;

  @Option(
      names = "--sizes",
      paramLabel = "SIZE",
      split = ",",
      description = "Sizes to print, such as 104,110. Default: those that the job orders.")
  private List<String> sizes = List.of();

  @Option(
      names = "--lines",
      paramLabel = "LINES",
      defaultValue = "both",
      description = "Lines of the pieces: sewing, cutting or both. Default: ${DEFAULT-VALUE}.")
  private String lines;

  @Option(names = "--projector", description = "One unbroken page with heavy lines.")
  private boolean projector;

  @Option(
      names = "--ground",
      paramLabel = "GROUND",
      defaultValue = "light",
      description = "Of the page for a projector: light or dark. Default: ${DEFAULT-VALUE}.")
  private String ground;

  @Option(
      names = "--out",
      paramLabel = "FILE.pdf",
      defaultValue = "pieces.pdf",
      description = "Default: ${DEFAULT-VALUE}.")
  private Path out;

  @Mixin private UnitMixin units;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    String wanted = paper == null && !projector ? "A4" : paper;
    Printing how =
        Printing.of(
            Optional.ofNullable(wanted),
            sizes.stream().map(String::strip).distinct().toList(),
            lines,
            projector,
            ground);
    Job job = JobReader.read(path);
    PrintedPages printed =
        PrintRun.pieces(job, how, UnitMixin.atTable(units.unit().orElse(job.unit())));
    WholeFile.write(out, printed.output(out.getFileName().toString()).bytes());
    PrintWriter err = spec.commandLine().getErr();
    PrintWriter results = spec.commandLine().getOut();
    results.println(printed.text());
    results.flush();
    err.println("Written: " + out);
    printed.unprinted().ifPresent(err::println);
    return Main.DONE;
  }
}
