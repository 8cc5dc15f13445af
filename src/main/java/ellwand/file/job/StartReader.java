package ellwand.file.job;

import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Sheet;
import ellwand.file.source.Spot;
import ellwand.pattern.Design;
import ellwand.pattern.Start;
import ellwand.pattern.Style;
import ellwand.problem.Problem;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code from:}: the name of a piece, or {@code {file: block.yaml, piece: front}}. */
final class StartReader {

  /** The style of each file that was read. */
  private final Map<Sheet, Optional<Design>> blocks = new IdentityHashMap<>();

  /** What it names, or nothing if that cannot be read. */
  Optional<Start> read(Spot from) {
    if (from.node().isValueNode()) {
      return from.text().map(piece -> new Start.Copy(piece, Optional.empty()));
    }
    Optional<String> part = from.get("part").text();
    String piece = from.get("piece").text().orElseThrow();
    return from.get("file").present()
        ? blocks
            .computeIfAbsent(
                from.sheet().blocks().get(from.get("file").at()),
                sheet -> block(sheet, from.problems()))
            .filter(design -> has(from, design, piece))
            .map(
                design ->
                    new Start.OfBlock(from.get("file").text().orElseThrow(), design, piece, part))
        : Optional.of(new Start.Copy(piece, part));
  }

  private static boolean has(Spot from, Design block, String piece) {
    return from.get("piece")
        .holds(
            block.outlined().stream().anyMatch(p -> p.name().equals(piece)),
            "the block has no piece called " + Names.shown(piece),
            "Use one of "
                + String.join(", ", block.outlined().stream().map(p -> p.name()).toList()));
  }

  /** The style of a file; what is wrong with it is told where it stands there. */
  private static Optional<Design> block(Sheet sheet, List<Problem> problems) {
    JobShape shape = JobShape.of(sheet);
    problems.addAll(shape.problems());
    Spot root = Spot.root(sheet, problems);
    Set<String> cloths = new LinkedHashSet<>();
    root.get("style")
        .get("pieces")
        .entries()
        .values()
        .forEach(piece -> cloths.addAll(piece.get("cut").entries().keySet()));
    return new StyleReader(shape, true)
        .read(root.get("style"), root.get("sizes"), cloths)
        .map(Style::design);
  }
}
