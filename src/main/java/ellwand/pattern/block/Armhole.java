package ellwand.pattern.block;

import ellwand.pattern.Notch;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;

/**
 * The front or back half of an armhole.
 *
 * @param mm as it is sewn
 * @param notches {@link Notch#atMm} measured from the underarm up
 */
record Armhole(double mm, List<Notch> notches) {

  Armhole {
    notches = List.copyOf(notches);
  }

  /** That of these edges, from the underarm up. */
  static Armhole of(List<PieceEdge> edges, Others others) {
    double mm = 0;
    List<Notch> notches = new ArrayList<>();
    for (PieceEdge named : edges) {
      WorkEdge edge = edge(named, others.piece(named.piece()));
      boolean up = edge.line().end().x() > edge.line().start().x();
      double before = mm;
      edge.notches().stream()
          .map(n -> at(n, before + (up ? n.atMm() : edge.line().length() - n.atMm())))
          .forEach(notches::add);
      mm += edge.edge().sewnMm();
    }
    return new Armhole(mm, notches);
  }

  /** Those that a cap line of this length can have, too. */
  List<Notch> notchesUpTo(double capMm) {
    return notches.stream().filter(n -> n.atMm() <= capMm).toList();
  }

  private static WorkEdge edge(PieceEdge named, Workpiece piece) {
    List<String> names = piece.edges().stream().map(WorkEdge::name).toList();
    InputException.unless(
        names.contains(named.edge()),
        named.piece() + " has no edge called " + named.edge(),
        "Use one of " + String.join(", ", names));
    return piece.edge(named.edge());
  }

  private static Notch at(Notch notch, double mm) {
    return new Notch(notch.edge(), mm, notch.strokes(), notch.depthMm());
  }
}
