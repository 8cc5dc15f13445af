package ellwand.cli;

import ellwand.app.CheckRun;
import ellwand.app.JobCheck;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks for everything that is wrong with a job or a marker. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description =
        "Reads a job and reports every problem with its place; or rebuilds the job of a marker.json"
            + " and reports every rule that the marker breaks.",
    footer = {
      "",
      "Example: check sample-markers/weir-jacket/job.yaml",
      "Example: check sample-markers/weir-jacket/marker/main.marker.json"
    })
final class CheckCommand implements Callable<Integer> {

  @Parameters(paramLabel = "JOB.yaml|X.marker.json", description = "A job, or a marker.")
  private Path path;

  @Option(
      names = "--job",
      paramLabel = "JOB.yaml",
      description = "Hold the marker against this job instead of the one that it names.")
  private Path job;

  @Mixin private ShowMixin show;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (!path.toString().endsWith(".json")) {
      JobCheck.cautions(path, show.unit()).forEach(out::println);
      out.println("Nothing wrong with " + path + ".");
      return Main.DONE;
    }
    CheckRun.Checked checked = CheckRun.marker(path, Optional.ofNullable(job));
    checked.findings().forEach(f -> out.println(f.sentence(show.unit().orElse(checked.unit()))));
    if (checked.jobChanged()) {
      spec.commandLine().getErr().println("The job has been changed since the marker was made.");
    }
    if (!checked.findings().isEmpty()) {
      return Main.RULE_BROKEN;
    }
    out.println("Every hard rule is kept.");
    return Main.DONE;
  }
}
