package ellwand.draw.piece;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Outlined;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sewing lines of a piece before and after it was altered.
 *
 * @param fold the fold edge that it has afterwards
 * @param lines drawn inside it afterwards
 * @param steps what was done, in order
 */
public record AlteredPiece(
    String name,
    Outline before,
    Outline after,
    Optional<List<Point>> fold,
    List<List<Point>> lines,
    List<Done> steps) {

  private static final double FLATTENING_MM = 0.05;

  /**
   * Something that was done.
   *
   * @param mark where it is marked, if it is a mark
   */
  public record Done(String words, Optional<Point> mark) {}

  public AlteredPiece {
    lines = List.copyOf(lines);
    steps = List.copyOf(steps);
  }

  /**
   * A piece that was altered.
   *
   * @param stages the piece before its first step and after each
   * @param unit that measures are told in
   */
  public static AlteredPiece of(Outlined piece, List<Workpiece> stages, Unit unit) {
    Workpiece after = stages.get(stages.size() - 1);
    List<Done> steps = new ArrayList<>();
    for (int i = 0; i < piece.alter().size(); i++) {
      Alteration alteration = piece.alter().get(i).alteration();
      Optional<String> mark = alteration.mark();
      String words = alteration.words(stages.get(i + 1), unit);
      steps.add(
          new Done(mark.map(m -> m + ": " + words).orElse(words), mark.map(after.marks()::get)));
    }
    return new AlteredPiece(
        piece.name(),
        outline(stages.get(0)),
        outline(after),
        after.fold().map(f -> after.edge(f).line().flattened(FLATTENING_MM)),
        Stream.concat(
                after.innerLines().stream(),
                after.edges().stream().flatMap(e -> e.edge().shaped().intakeLines().stream()))
            .map(InnerLine::line)
            .map(l -> l.flattened(FLATTENING_MM))
            .toList(),
        steps);
  }

  private static Outline outline(Workpiece piece) {
    List<Point> ring = new ArrayList<>();
    for (WorkEdge edge : piece.edges()) {
      ring.addAll(edge.edge().shaped().line().flattened(FLATTENING_MM));
    }
    return Outline.of(ring);
  }
}
