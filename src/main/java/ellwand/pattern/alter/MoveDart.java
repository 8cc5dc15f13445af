package ellwand.pattern.alter;

import ellwand.pattern.Alteration;
import ellwand.pattern.Intake;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.units.Unit;

/**
 * A dart moved to another place: closed there, and opened here by the same angle, by pivoting round
 * its point.
 *
 * @param to a mark on the edge that it is to take from
 * @param foldedTowards a mark on the side to which it is folded from now on
 */
public record MoveDart(String dart, String to, String foldedTowards) implements Alteration {

  @Override
  public String words(Unit unit) {
    return dart + " moved to " + to;
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    Pivot pivot = Pivot.of(piece, Darts.find(piece, dart), to);
    Intake.Leg first = new Intake.Leg(pivot.first(), pivot.point());
    Intake.Leg second = new Intake.Leg(pivot.second(), pivot.point());
    Intake moved =
        new Intake(
            dart,
            Intake.Kind.DART,
            first,
            second,
            Darts.towardsFirst(pivot.piece(), foldedTowards, first, second));
    WorkEdge edge = pivot.piece().edge(pivot.edge());
    return Darts.with(pivot.piece(), edge.with(edge.edge().with(moved)));
  }
}
