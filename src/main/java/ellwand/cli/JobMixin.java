package ellwand.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The job that a command works on, and the folder for what comes of it. */
final class JobMixin {

  @Parameters(paramLabel = "JOB.yaml", description = "The job file.")
  private Path path;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for the results. Default: beside the job, named after it.")
  private Path out;

  Path path() {
    return path;
  }

  /**
   * The folder for results.
   *
   * @param ending of the job's name, where the user named no folder
   */
  Path folder(String ending) {
    String name = path.getFileName().toString().replaceFirst("\\.ya?ml$", "");
    return out == null ? path.resolveSibling(name + ending) : out;
  }
}
