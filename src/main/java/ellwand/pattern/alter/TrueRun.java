package ellwand.pattern.alter;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Alteration;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Lets an edge run on smoothly into one of another piece across the seam between them: its end is
 * bent so that both make 180 degrees with the seam together.
 *
 * @param edge the one that gives
 * @param across the edge beside it that is sewn
 * @param to what it runs on into
 * @param otherAcross the edge beside that which is sewn to {@code across}
 */
public record TrueRun(String edge, String across, OtherEdge to, String otherAcross)
    implements Alteration {

  /** A greater bend is no truing, degrees. */
  private static final double MOST_DEGREES = 45;

  @Override
  public Set<String> needs() {
    return to.needs();
  }

  @Override
  public String words(Unit unit) {
    return edge + " runs on into " + to;
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    Workpiece other = to.owner(piece, others);
    double bend = Math.PI - angle(piece, edge, across) - angle(other, to.edge(), otherAcross);
    if (Math.abs(Math.toDegrees(bend)) > MOST_DEGREES) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              edge,
              "it meets %s at a corner of %.0f degrees"
                  .formatted(to, Math.toDegrees(Math.abs(bend))),
              "See that these two are meant, or redraw one of them"));
    }
    boolean atEnd = endsAt(piece, edge, across);
    WorkEdge own = piece.edge(edge);
    // A wider angle turns what leaves the corner to the right, and what arrives there to the left.
    WorkEdge bent =
        own.along(atEnd ? bent(own.line().reversed(), bend).reversed() : bent(own.line(), -bend));
    List<WorkEdge> all = new ArrayList<>(piece.edges());
    all.set(piece.index(edge), bent);
    return piece.with(all);
  }

  /** Whether an edge ends, counter-clockwise, where another begins. */
  private static boolean endsAt(Workpiece piece, String edge, String seam) {
    if (piece.beside(edge, 1).name().equals(seam)) {
      return true;
    }
    if (piece.beside(edge, -1).name().equals(seam)) {
      return false;
    }
    throw new InputException(
        Problem.onEdge(
            piece.name(),
            edge,
            "it does not meet edge " + seam,
            "Name the edge beside it that is sewn with across:"));
  }

  /** The angle inside a piece between two edges that meet, radians. */
  private static double angle(Workpiece piece, String edge, String seam) {
    Path own = piece.edge(edge).line();
    Path beside = piece.edge(seam).line();
    Point out = endsAt(piece, edge, seam) ? beside.startDirection() : own.startDirection();
    Point back = (endsAt(piece, edge, seam) ? own.endDirection() : beside.endDirection()).times(-1);
    double turn = Math.atan2(out.cross(back), out.dot(back));
    return turn < 0 ? turn + 2 * Math.PI : turn;
  }

  /** A line of which the beginning is turned to the left by an angle. */
  private static Path bent(Path line, double turn) {
    List<Segment> segments = new ArrayList<>(line.segments());
    Segment first = segments.get(0);
    Point way = first.direction(0);
    Point turned = way.times(Math.cos(turn)).plus(way.left().times(Math.sin(turn)));
    double handle =
        first instanceof Segment.Cubic c && c.control1().distance(c.start()) > 1e-6
            ? c.control1().distance(c.start())
            : first.start().distance(first.end()) / 3;
    Point control = first.start().plus(turned.times(handle));
    segments.set(
        0,
        first instanceof Segment.Cubic c
            ? new Segment.Cubic(c.start(), control, c.control2(), c.end())
            : new Segment.Cubic(
                first.start(), control, first.end().towards(first.start(), 1.0 / 3), first.end()));
    return new Path(segments);
  }
}
