package ellwand.pattern.alter;

import ellwand.geometry.Point;
import ellwand.pattern.Intake;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.List;

/** What steps that draw, move or close darts and pleats have in common. */
final class Darts {

  private Darts() {}

  /** A dart and the edge that it takes from. */
  record Found(WorkEdge edge, Intake dart) {}

  /**
   * Finds a dart.
   *
   * @throws InputException if there is none of that name
   */
  static Found find(Workpiece piece, String name) {
    for (WorkEdge edge : piece.edges()) {
      for (Intake intake : edge.edge().intakes()) {
        if (intake.name().equals(name) && intake.kind() == Intake.Kind.DART) {
          return new Found(edge, intake);
        }
      }
    }
    List<String> darts =
        piece.edges().stream()
            .flatMap(e -> e.edge().intakes().stream())
            .filter(i -> i.kind() == Intake.Kind.DART)
            .map(Intake::name)
            .toList();
    throw new InputException(
        Problem.inPiece(
            piece.name(),
            "it has no dart called " + name,
            darts.isEmpty()
                ? "Draw it first: {dart: " + name + ", on: .., at: .., width: .., depth: ..}"
                : "Use one of " + String.join(", ", darts)));
  }

  /**
   * Whether a mark lies on the side of the first of two legs.
   *
   * @throws InputException if it lies on neither side
   */
  static boolean towardsFirst(Workpiece piece, String mark, Intake.Leg first, Intake.Leg second) {
    Point middle = first.outer().towards(second.outer(), 0.5);
    Point along = second.outer().minus(first.outer()).unit();
    double side = along.dot(piece.mark(mark).minus(middle));
    if (Math.abs(side) <= first.outer().distance(second.outer()) / 2) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              "mark " + mark + " lies on neither side of it, so it cannot be folded towards it",
              "Name a mark that lies to one side"));
    }
    return side < 0;
  }

  /** The piece with an edge in the place of the one of its name. */
  static Workpiece with(Workpiece piece, WorkEdge edge) {
    return piece.with(
        piece.edges().stream().map(e -> e.name().equals(edge.name()) ? edge : e).toList());
  }
}
