package ellwand.file.job;

import ellwand.file.source.JobShape;
import ellwand.file.source.Names;
import ellwand.file.source.Sheet;
import ellwand.file.source.Spot;
import ellwand.pattern.Design;
import ellwand.pattern.Start;
import ellwand.pattern.Style;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** Reads {@code from:}: the name of a piece, or {@code {file: block.yaml, piece: front}}. */
final class StartReader {

  private StartReader() {}

  /** What it names, or nothing if that cannot be read. */
  static Optional<Start> read(Spot from) {
    if (from.node().isValueNode()) {
      return from.text().map(piece -> new Start.Copy(piece, Optional.empty()));
    }
    Optional<String> part = from.get("part").text();
    String piece = from.get("piece").text().orElseThrow();
    return from.get("file").present()
        ? block(from.get("file"))
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
  private static Optional<Design> block(Spot file) {
    Sheet sheet = file.sheet().blocks().get(file.at());
    JobShape shape = JobShape.of(sheet);
    file.problems().addAll(shape.problems());
    Spot root = Spot.root(sheet, file.problems());
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
