package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the edge that a fold line stands for. */
final class FoldFinder {

  /** How far from its edge a fold line, or the arrow that stands for it, may lie, mm. */
  private static final double BESIDE_MM = 30;

  private static final double PARALLEL_DEGREES = 2;

  private FoldFinder() {}

  /**
   * The straight edge along which a fold line lies, or beside which it lies nearest.
   *
   * @param said takes what was guessed
   */
  static Optional<Stretch> fold(Parts parts, List<Stretch> edges, List<String> said) {
    List<Path> lines = parts.inner(Role.FOLD).stream().map(DrawnLine::path).toList();
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    Optional<Stretch> fold =
        edges.stream()
            .filter(edge -> lines.stream().anyMatch(line -> isBeside(edge, line)))
            .min(
                Comparator.comparingDouble(
                    edge ->
                        lines.stream()
                            .filter(line -> isBeside(edge, line))
                            .mapToDouble(line -> off(edge, line))
                            .min()
                            .orElseThrow()));
    said.add(
        fold.map(edge -> "edge " + edge.name() + " is its fold")
            .orElse("a fold line is drawn in it, but no straight edge lies along it"));
    return fold;
  }

  private static boolean isBeside(Stretch edge, Path line) {
    Point along = line.end().minus(line.start());
    if (!edge.straight() || along.norm() == 0) {
      return false;
    }
    Point unit = edge.path().end().minus(edge.path().start()).unit();
    double sine = Math.abs(unit.cross(along.unit()));
    return sine <= Math.sin(Math.toRadians(PARALLEL_DEGREES)) && off(edge, line) <= BESIDE_MM;
  }

  private static double off(Stretch edge, Path line) {
    return new EdgeLine(edge.path(), EdgeLine.MEASURING_MM)
        .nearest(line.start().towards(line.end(), 0.5))
        .distanceMm();
  }
}
