package ellwand.cli;

import ellwand.app.CheckedCamera;
import ellwand.app.ReferenceRun;
import ellwand.file.source.Folder;
import ellwand.file.source.WholeFile;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Options of {@code convert} for what comes before a photo: reference sheets, a camera's trial. */
final class ReferenceMixin {

  @Option(
      names = "--reference",
      paramLabel = "PAPER",
      description =
          "Make reference sheets for photos, OUT.pdf, to print on A4 or Letter; reads no FILE.")
  private String paper;

  @Option(
      names = "--sheets",
      paramLabel = "N",
      defaultValue = "2",
      description = "With --reference: how many that are told apart, 1 to 7. Default: 2.")
  private int sheets;

  @Option(
      names = "--check",
      description =
          "Try a camera: in photos with two reference sheets or more, measure each sheet by the"
              + " others and print how far off that is.")
  private boolean check;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** Whether something of this is asked for, in place of a style. */
  boolean asked() {
    return paper != null || check;
  }

  /**
   * Does what is asked for.
   *
   * @param out what to write, or null
   */
  int run(List<Path> files, Path out, ShowMixin show) {
    if (paper == null) {
      return checked(files, show);
    }
    if (!files.isEmpty() || check) {
      throw refused("--reference makes sheets to print and reads no files");
    }
    if (out == null || !out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw refused("--reference makes a PDF: name it, such as --out sheets.pdf");
    }
    WholeFile.write(out, ReferenceRun.pdf(paper, sheets));
    spec.commandLine()
        .getErr()
        .println("Written: " + out + "; print it at 100 %, and measure a sheet before it is used.");
    return Main.DONE;
  }

  private int checked(List<Path> files, ShowMixin show) {
    if (files.isEmpty()) {
      throw refused("--check reads photos: name one with two reference sheets in it");
    }
    CheckedCamera checked =
        CheckedCamera.of(
            files.stream().map(Path::toString).toList(), Folder.DISK, show.unit().orElse(Unit.MM));
    show.print(spec.commandLine().getOut(), checked);
    return checked.achieved() ? Main.DONE : Main.RULE_BROKEN;
  }

  private ParameterException refused(String what) {
    return new ParameterException(spec.commandLine(), what);
  }
}
