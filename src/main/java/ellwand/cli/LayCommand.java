package ellwand.cli;

import ellwand.app.LayRun;
import ellwand.app.ShelfRun;
import ellwand.figures.FiguresText;
import ellwand.file.job.JobReader;
import ellwand.file.source.Json;
import ellwand.job.Job;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Makes the markers of a job. */
@Command(
    name = "lay",
    mixinStandardHelpOptions = true,
    description =
        "Makes the markers of a job, one for each cloth: drawings, figures and a sheet to take to"
            + " the cutting table.",
    footer = {
      "",
      "Example: lay sample-markers/weir-jacket/job.yaml --effort 30s --out jacket-out",
      "Ctrl-C keeps the best markers found so far and writes them."
    })
final class LayCommand implements Callable<Integer> {

  @Option(
      names = "--use-remnants",
      description =
          "Use up the remnants of the job first, whole garments at a time, and buy cloth for the"
              + " rest.")
  private boolean useRemnants;

  @Mixin private JobMixin file;
  @Mixin private SearchMixin search;
  @Mixin private ShowMixin show;
  @ParentCommand private Main main;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Job job = JobReader.read(file.path());
    Unit unit = show.unit().orElse(job.unit());
    Request request = search.request(main.stop());
    PrintWriter err = spec.commandLine().getErr();
    LayRun.Made made;
    try (Console console = Console.open(err, request.effort(), unit)) {
      made =
          useRemnants
              ? ShelfRun.make(job, unit, request.with(console))
              : LayRun.make(job, unit, request.with(console));
    }
    LayRun.write(made, file.folder("-out")).forEach(written -> err.println("Written: " + written));
    show.print(
        spec.commandLine().getOut(),
        () -> Json.bytes(made.figures()),
        () -> FiguresText.of(made.figures(), unit));
    return Main.DONE;
  }
}
