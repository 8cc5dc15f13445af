package ellwand.file.job;

import ellwand.cloth.Cloth;
import ellwand.cloth.Remnant;
import ellwand.file.source.Folder;
import ellwand.file.source.JobShape;
import ellwand.file.source.Sheet;
import ellwand.file.source.SheetReader;
import ellwand.file.source.Spot;
import ellwand.job.Job;
import ellwand.job.Wear;
import ellwand.pattern.Style;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads a job file and the files it names. */
public final class JobReader {

  private JobReader() {}

  /**
   * Reads a job from disk.
   *
   * @throws InputException with every problem that could be found, in the order of the lines
   */
  public static Job read(Path path) {
    return read(path.toString(), Folder.DISK);
  }

  /**
   * Reads a job.
   *
   * @param name that the folder knows it by
   * @param from has the job and the files that it names
   * @throws InputException with every problem that could be found, in the order of the lines
   */
  public static Job read(String name, Folder from) {
    Sheet sheet = SheetReader.read(name, from);
    return read(sheet, JobShape.of(sheet));
  }

  /**
   * Reads a job that is to be laid.
   *
   * @throws InputException with every problem that could be found, in the order of the lines; also
   *     where it only says how many garments of each colour are wanted, which is no lay
   */
  public static Job toLay(String name, Folder from) {
    Sheet sheet = SheetReader.read(name, from);
    List<Problem> problems = new ArrayList<>();
    Spot order = Spot.root(sheet, problems).get("order");
    Spot colours = order.get("colours");
    colours.holds(
        !colours.present() || order.get("garments").present(),
        "what is wanted in colours is not one lay",
        "Plan it with the command order, or say what to lay, for example garments: 1");
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return read(sheet, JobShape.of(sheet));
  }

  static Job read(Sheet sheet, JobShape shape) {
    List<Problem> problems = new ArrayList<>(shape.problems());
    Spot root = Spot.root(sheet, problems);
    if (problems.isEmpty()
        && root.get("style").present()
        && !root.holds(
            root.node().has("cloths") || root.node().has("order"),
            "this is a style alone, which says nothing of cloths",
            "Name it in a job that has cloths:, as style: {file: %s}"
                .formatted(Path.of(sheet.origin().path()).getFileName()))) {
      throw new InputException(problems);
    }
    for (String section : List.of("unit", "style", "cloths")) {
      // Not in the schema, since an order with given lengths has none of them.
      root.holds(root.node().has(section), "the job has no " + section + ":", "Add it");
    }
    List<Cloth> cloths = new ClothsReader(shape).read(root.get("cloths"));
    List<Remnant> remnants =
        new RemnantsReader(shape).read(root.get("remnants"), root.get("cloths"));
    Optional<Style> style =
        new StyleReader(shape)
            .read(root.get("style"), root.get("sizes"), root.get("cloths").entries().keySet());
    Map<String, Integer> garments = new OrderReader(shape).read(root.get("order"), style);
    if (shape.problems().isEmpty() && root.get("style").present()) {
      root.get("cloths").entries().forEach((name, cloth) -> checkUsed(root, name, cloth));
    }
    if (!problems.isEmpty()) {
      throw new InputException(inOrder(problems, sheet.origin().path()));
    }
    return new Job(
        sheet.origin(),
        root.get("title").text(),
        root.get("notes").items().stream().flatMap(n -> n.text().stream()).toList(),
        wear(root.get("style").get("wear")),
        Unit.parse(root.get("unit").text().orElseThrow()),
        style.orElseThrow(),
        cloths,
        remnants,
        ClothsReader.severalBolts(root.get("cloths")),
        garments);
  }

  static Set<Wear> wear(Spot spot) {
    return spot.items().stream()
        .map(word -> Wear.valueOf(word.node().asText().toUpperCase(Locale.ROOT)))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static void checkUsed(Spot root, String name, Spot cloth) {
    cloth.holds(
        root.get("style").get("pieces").entries().values().stream()
            .anyMatch(piece -> piece.get("cut").get(name).present()),
        "no piece is cut from cloth " + name,
        "Name it in the cut: of a piece, or take it out");
  }

  static List<Problem> inOrder(List<Problem> problems, String job) {
    Comparator<Problem> jobFirst = Comparator.comparing(p -> !p.file().orElse("").equals(job));
    return problems.stream()
        .distinct()
        .sorted(jobFirst.thenComparing(p -> p.file().orElse("")).thenComparingInt(Problem::line))
        .toList();
  }
}
