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

  /** The same job, its path seen from a folder. */
  void seenFrom(Path base) {
    path = base.resolve(path);
  }

  boolean namesFolder() {
    return out != null;
  }

  Path path() {
    return path;
  }

  /** The name of the job, without what its file ends with. */
  String name() {
    return path.getFileName().toString().replaceFirst("\\.ya?ml$", "");
  }

  /**
   * The folder for results.
   *
   * @param ending of the job's name, where the user named no folder
   */
  Path folder(String ending) {
    return out == null ? path.resolveSibling(name() + ending) : out;
  }
}
