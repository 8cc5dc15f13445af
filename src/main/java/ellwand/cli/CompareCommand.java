package ellwand.cli;

import ellwand.app.CompareRun;
import ellwand.cloth.Cloth;
import ellwand.figures.Comparison;
import ellwand.figures.ComparisonText;
import ellwand.file.figures.ComparisonWriter;
import ellwand.file.job.JobReader;
import ellwand.job.Job;
import ellwand.units.Length;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Compares widths and ways of laying. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description =
        "Lays one cloth of a job in several widths and in every way in which it may lie: a table, a"
            + " chart, and what to buy.",
    footer = {
      "",
      "The effort is for all widths together and shared out evenly.",
      "",
      "Example: compare sample-markers/weir-jacket/job.yaml --widths 90cm,115cm,140cm",
      "Exit code 1: no width will do."
    })
final class CompareCommand implements Callable<Integer> {

  @Option(
      names = "--widths",
      paramLabel = "WIDTH",
      split = ",",
      description =
          "Widths as bought, such as 90cm,115cm. Default: that of the job and those it has prices"
              + " for, or 90, 115, 140 and 150 cm where it has none.")
  private List<String> widths = List.of();

  @Option(names = "--cloth", paramLabel = "NAME", description = "Default: the job's first cloth.")
  private String clothName;

  @Mixin private JobMixin file;
  @Mixin private SearchMixin search;
  @Mixin private ShowMixin show;
  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Job job = JobReader.read(file.path());
    Unit unit = show.unit().orElse(job.unit());
    Cloth cloth = CompareRun.cloth(job, Optional.ofNullable(clothName));
    List<Double> asked =
        widths.isEmpty()
            ? CompareRun.usualWidths(cloth)
            : widths.stream().map(text -> width(text, job.unit(), cloth)).distinct().toList();
    Request request = search.request(main.stop());
    PrintWriter err = spec.commandLine().getErr();
    Comparison comparison;
    try (Console console = Console.open(err, request.effort(), unit)) {
      comparison = CompareRun.make(job, cloth, asked, unit, request.with(console));
    }
    Path folder = file.folder("-compare");
    CompareRun.write(comparison, unit, folder)
        .forEach(written -> err.println("Written: " + written));
    show.print(
        spec.commandLine().getOut(),
        () -> ComparisonWriter.bytes(comparison),
        () -> ComparisonText.of(comparison, unit));
    return comparison.possible() ? Main.DONE : Main.RULE_BROKEN;
  }

  private double width(String text, Unit bare, Cloth cloth) {
    try {
      double mm = Length.parse(text, bare).mm();
      cloth.wide(mm);
      return mm;
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), "--widths: " + e.getMessage(), e);
    }
  }
}
