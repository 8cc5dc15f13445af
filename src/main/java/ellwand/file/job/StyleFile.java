package ellwand.file.job;

import ellwand.file.source.Folder;
import ellwand.file.source.JobShape;
import ellwand.file.source.Sheet;
import ellwand.file.source.SheetReader;
import ellwand.file.source.Spot;
import ellwand.job.Wear;
import ellwand.pattern.Design;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The style of a job, or of a file that holds a style and no job.
 *
 * @param style drawn and cut in every size
 * @param wear what the garment is for
 */
public record StyleFile(Style style, Set<Wear> wear) {

  public Design design() {
    return style.design();
  }

  /**
   * Reads one.
   *
   * @param name that the folder knows it by
   * @throws InputException with every problem of the style
   */
  public static StyleFile read(String name, Folder from) {
    Sheet sheet = SheetReader.read(name, from);
    JobShape shape = JobShape.of(sheet);
    List<Problem> problems = new ArrayList<>(shape.problems());
    Spot root = Spot.root(sheet, problems);
    root.holds(root.node().has("style"), "the file has no style:", "Name a job or a style file");
    Optional<Style> style =
        new StyleReader(shape).read(root.get("style"), root.get("sizes"), cloths(root));
    if (!problems.isEmpty()) {
      throw new InputException(JobReader.inOrder(problems, sheet.origin().path()));
    }
    return new StyleFile(style.orElseThrow(), JobReader.wear(root.get("style").get("wear")));
  }

  /** Those of the job, or all that pieces are cut from. */
  private static Set<String> cloths(Spot root) {
    Set<String> cloths = new LinkedHashSet<>(root.get("cloths").entries().keySet());
    if (cloths.isEmpty()) {
      root.get("style")
          .get("pieces")
          .entries()
          .values()
          .forEach(piece -> cloths.addAll(piece.get("cut").entries().keySet()));
    }
    return cloths;
  }
}
