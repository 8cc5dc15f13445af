package ellwand.cli;

import ellwand.app.CheckRun;
import ellwand.app.LaidJob;
import ellwand.app.LayRun;
import ellwand.app.Output;
import ellwand.app.PlotFormat;
import ellwand.app.PrintRun;
import ellwand.app.PrintedPages;
import ellwand.app.Printing;
import ellwand.app.RebuiltMarker;
import ellwand.file.job.JobReader;
import ellwand.file.source.Folder;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import ellwand.many.JobFiles;
import ellwand.many.MarkerCraft;
import ellwand.many.OwnCores;
import ellwand.many.Workshop;
import ellwand.units.Unit;
import ellwand.work.Request;
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
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Prints full size. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Draws pieces or markers full size on pages to join, on a roll, or for a projector, with"
            + " squares to measure before anything is cut; or a marker for a plotter.",
    footer = {
      "",
      "Example: print sample-markers/weir-jacket/job.yaml --paper A4 --out jacket.pdf",
      "Example: print sample-markers/beck-tunic/job.yaml --sizes 98,104 --paper roll:91cm",
      "Example: print sample-markers/weir-jacket/job.yaml --projector --ground dark",
      "Example: print sample-markers/weir-jacket/job.yaml --of marker --paper A0",
      "Example: print sample-markers/weir-jacket/marker/main.marker.json --out main.hpgl"
    })
final class PrintCommand implements Callable<Integer> {

  /** What is printed. */
  enum What {
    PIECES,
    MARKER
  }

  @Parameters(paramLabel = "JOB.yaml|X.marker.json", description = "A job, or a marker.")
  private Path path;

  @Option(
      names = "--of",
      paramLabel = "WHAT",
      description = "Of a job: its pieces, or its markers, which are made first. Default: pieces.")
  private What what;

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
      description = "Sizes of the pieces, such as 104,110. Default: those that the job orders.")
  private List<String> sizes = List.of();

  @Option(
      names = "--lines",
      paramLabel = "LINES",
      description = "Lines of the pieces: sewing, cutting or both. Default: both.")
  private String lines;

  @Option(names = "--projector", description = "The pieces on one unbroken page, lines heavy.")
  private boolean projector;

  @Option(
      names = "--ground",
      paramLabel = "GROUND",
      defaultValue = "light",
      description = "Of the page for a projector: light or dark. Default: ${DEFAULT-VALUE}.")
  private String ground;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "A .pdf; of one marker also a .svg, .dxf or .hpgl for a plotter or a cutting machine."
              + " Default: pieces.pdf or marker.pdf.")
  private Path out;

  @Mixin private SearchMixin search;
  @Mixin private UnitMixin units;
  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    boolean made = path.toString().endsWith(".json");
    boolean marker = made || what == What.MARKER;
    if (out == null) {
      out = Path.of(marker ? "marker.pdf" : "pieces.pdf");
    }
    refuseMismatch(made, marker);
    WholeFile.refuseUnwritable(out);
    if (!marker) {
      return pieces();
    }
    Optional<PlotFormat> plot = plotFormat();
    Printing how = printing();
    if (made) {
      RebuiltMarker rebuilt =
          CheckRun.rebuilt(path.toString(), Folder.DISK, Optional.empty(), units.unit());
      if (!rebuilt.checked().achieved()) {
        spec.commandLine().getErr().println(rebuilt.checked().text());
        spec.commandLine().getErr().println("Nothing was printed.");
        return Main.RULE_BROKEN;
      }
      LaidJob laid = rebuilt.laid();
      return write(laid, plot, how, UnitMixin.atTable(rebuilt.checked().unit()));
    }
    JobFiles.Read<Job> read = JobFiles.job(path.toString(), Folder.DISK);
    Job job = read.what();
    if (plot.isPresent() && job.cloths().size() > 1) {
      throw refused(
          "the job has a marker for each of its %d cloths: write all of them with lay --also %s"
              .formatted(job.cloths().size(), plot.get().word()));
    }
    Unit shown = UnitMixin.atTable(units.unit().orElse(job.unit()));
    Job fitting = plot.isEmpty() ? fitting(job, how, shown) : job;
    Request request = search.request(main.stop());
    LaidJob laid;
    try (Console console = Console.open(spec.commandLine().getErr(), request.effort(), shown);
        Workshop workshop = new OwnCores(new MarkerCraft(read), search.cores())) {
      laid =
          LayRun.make(fitting, shown, request.with(console), read.hands(workshop, search.seeds()));
    }
    return write(laid, plot, how, shown);
  }

  private Job fitting(Job job, Printing how, Unit unit) {
    Job fitting = PrintRun.fitting(job, how.paper().orElseThrow(), unit);
    PrintRun.leftOut(job, fitting, how.paper().orElseThrow(), unit)
        .forEach(spec.commandLine().getErr()::println);
    return fitting;
  }

  private Integer pieces() {
    Printing how = printing();
    Job job = JobReader.read(path);
    Unit shown = UnitMixin.atTable(units.unit().orElse(job.unit()));
    return write(PrintRun.pieces(job, how, shown));
  }

  private Printing printing() {
    String wanted = paper == null && !projector ? "A4" : paper;
    return Printing.of(
        Optional.ofNullable(wanted),
        sizes.stream().map(String::strip).distinct().toList(),
        lines == null ? "both" : lines,
        projector,
        ground);
  }

  /** The format for a plotter that the file's name ends with; none for pages. */
  private Optional<PlotFormat> plotFormat() {
    return lowerName().endsWith(".pdf")
        ? Optional.empty()
        : Optional.of(PlotFormat.parse(lowerName().substring(lowerName().lastIndexOf('.') + 1)));
  }

  private String lowerName() {
    return out.getFileName().toString().toLowerCase(Locale.ROOT);
  }

  private void refuseMismatch(boolean made, boolean marker) {
    if (made && what == What.PIECES) {
      throw refused("a marker.json holds no pieces to print: name its job");
    }
    if (marker && (projector || lines != null || !sizes.isEmpty())) {
      throw refused("--sizes, --lines and --projector go with pieces, not with a marker");
    }
    if (!marker && !lowerName().endsWith(".pdf")) {
      throw refused("'" + out + "' must end with .pdf");
    }
    if (marker && paper != null && !lowerName().endsWith(".pdf")) {
      throw refused("--paper goes with a .pdf file");
    }
  }

  private Integer write(LaidJob laid, Optional<PlotFormat> plot, Printing how, Unit shown) {
    if (plot.isEmpty()) {
      return write(PrintRun.markers(laid, how, shown));
    }
    return write(laid.plotted(plot.get(), out.getFileName().toString()));
  }

  private Integer write(PrintedPages printed) {
    PrintWriter results = spec.commandLine().getOut();
    int code = write(printed.output(out.getFileName().toString()));
    results.println(printed.text());
    results.flush();
    printed.unprinted().ifPresent(spec.commandLine().getErr()::println);
    return code;
  }

  private Integer write(Output output) {
    WholeFile.write(out, output.bytes());
    spec.commandLine().getErr().println("Written: " + out);
    return Main.DONE;
  }

  private ParameterException refused(String why) {
    return new ParameterException(spec.commandLine(), why);
  }
}
