package ellwand.app;

import ellwand.figures.Comparison;
import ellwand.figures.ComparisonText;
import ellwand.file.job.JobReader;
import ellwand.job.Job;
import ellwand.units.Unit;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Seed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** One garment compared in the widths of the table of cloth needed at another width. */
final class Comparing {

  /** 36, 45, 54 and 60 in, mm: columns of the table. */
  static final List<Double> WIDTHS = List.of(914.4, 1143.0, 1371.6, 1524.0);

  private Comparing() {}

  /**
   * @param folder for the job's file
   * @param pieces their entries, a line each, without allowance
   * @param cloth entries of the cloth besides its width and gap
   */
  static Comparison compared(Path folder, String pieces, String cloth, long steps)
      throws IOException {
    return compared(folder, pieces, "gap: 1 mm, " + cloth, WIDTHS, steps);
  }

  /** The same in any widths, mm, and with any gap. */
  static Comparison compared(
      Path folder, String pieces, String cloth, List<Double> widthsMm, long steps)
      throws IOException {
    Path path = folder.resolve("job.yaml");
    Files.writeString(
        path,
        "ellwand: 1\nunit: cm\nstyle:\n  name: trial\n  size: \"1\"\n  allowance: 0\n  pieces:\n"
            + pieces
            + "cloths:\n  main: {width: 91.44, "
            + cloth
            + "}\norder:\n  garments: 1\n");
    Job job = JobReader.read(path);
    Request request = Request.of(Effort.ofSteps(steps), new Seed(1)).onThreads(2);
    return CompareRun.of(job, Optional.empty()).make(widthsMm, Unit.CM, request).comparison();
  }

  /** The sentences that say why a width takes more than its share of cloth. */
  static List<String> reasons(Comparison comparison) {
    return ComparisonText.sentences(comparison, Unit.CM).stream()
        .filter(s -> s.contains("takes more than its share"))
        .toList();
  }
}
