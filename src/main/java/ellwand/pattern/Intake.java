package ellwand.pattern;

import ellwand.geometry.Motion;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What a dart, pleat or tuck takes away from an edge: its second leg is brought onto the first, and
 * what lies between them is folded away under the cloth on one side.
 *
 * @param first the leg that comes first along the edge
 * @param towardsFirst whether what is folded away lies under the cloth beside the first leg; else
 *     beside the second
 */
public record Intake(String name, Kind kind, Leg first, Leg second, boolean towardsFirst) {

  /** How far the legs may differ in length, mm: by no more than a line may gape. */
  private static final double SAME_MM = 5e-7;

  /** Common practice: the mark stands 1 cm short of the point, so that the stitches hide it. */
  public static final double DRILL_SHORT_MM = 10;

  private static final double DRILL_ARM_MM = 3;

  /** How far from the edge an arrow shows the way of a fold, and how long its head is, mm. */
  private static final double ARROW_DOWN_MM = 25;

  private static final double ARROW_HEAD_MM = 6;

  /** What it is; only a dart runs to a point. */
  public enum Kind {
    DART,
    PLEAT,
    TUCK
  }

  /**
   * One of the two lines that are brought together.
   *
   * @param outer on the sewing line of the edge
   * @param inner the other end: a dart's point
   */
  public record Leg(Point outer, Point inner) {

    /** Towards the edge, length 1. */
    public Point outward() {
      return outer.minus(inner).unit();
    }

    double mm() {
      return outer.distance(inner);
    }

    Leg moved(UnaryOperator<Point> map) {
      return new Leg(map.apply(outer), map.apply(inner));
    }

    /** From the edge inward. */
    public Path line() {
      return Path.line(outer, inner);
    }
  }

  public Intake {
    if (!(first.mm() > SAME_MM && second.mm() > SAME_MM)) {
      throw InputException.of(
          name + " has a leg of no length", "Put its point farther from the edge");
    }
    if (Math.abs(first.mm() - second.mm()) > SAME_MM) {
      throw InputException.of(
          "one leg of %s is %.1f mm longer than the other"
              .formatted(name, Math.abs(first.mm() - second.mm())),
          "Draw both equally long, since they are sewn together");
    }
  }

  /** All its points in other places, by a map that keeps its two legs equal. */
  public Intake moved(UnaryOperator<Point> map) {
    return new Intake(name, kind, first.moved(map), second.moved(map), towardsFirst);
  }

  Intake named(String other) {
    return new Intake(other, kind, first, second, towardsFirst);
  }

  /** As it stands on the same edge run through the other way. */
  public Intake reversed() {
    return new Intake(name, kind, second, first, !towardsFirst);
  }

  /** Straight across its mouth, mm. */
  public double widthMm() {
    return first.outer.distance(second.outer);
  }

  /** Between the legs, degrees, 0 where they are parallel. */
  public double angleDegrees() {
    Point a = first.outward();
    Point b = second.outward();
    return Math.toDegrees(Math.atan2(Math.abs(a.cross(b)), a.dot(b)));
  }

  /** Where the cloth between the legs is folded. */
  Leg middle() {
    return new Leg(first.outer.towards(second.outer, 0.5), first.inner.towards(second.inner, 0.5));
  }

  /** Brings the second leg, and all cloth beyond it, onto the first. */
  public Motion closing() {
    Point from = second.outward();
    Point to = first.outward();
    double turn = Math.toDegrees(Math.atan2(from.cross(to), from.dot(to)));
    Motion turned = new Motion(false, turn, 0, 0);
    Point shift = first.outer.minus(turned.apply(second.outer));
    return turned.shifted(shift.x(), shift.y());
  }

  /**
   * What is drawn of it inside the piece: what is sewn, where it is folded, a dart's drill mark.
   */
  List<InnerLine> lines(Point fold) {
    List<InnerLine> lines = new ArrayList<>();
    Leg middle = middle();
    Path centre = Path.line(fold, middle.inner);
    if (kind != Kind.DART) {
      lines.add(new InnerLine(name, first.line()));
      lines.add(new InnerLine(name + ", inner fold", centre));
      lines.add(new InnerLine(name, second.line()));
      lines.addAll(arrow());
      return lines;
    }
    lines.add(
        new InnerLine(
            name,
            new Path(
                List.of(
                    new Segment.Line(first.outer, first.inner),
                    new Segment.Line(first.inner, second.outer)))));
    lines.add(new InnerLine(name + ", fold", centre));
    double shortBy = Math.min(DRILL_SHORT_MM, first.mm() / 2);
    Point drill = middle.inner.plus(middle.outward().times(shortBy));
    Point up = middle.outward().times(DRILL_ARM_MM);
    for (Point arm : List.of(up, up.left())) {
      lines.add(new InnerLine(name + ", drill mark", Path.line(drill.minus(arm), drill.plus(arm))));
    }
    return lines;
  }

  /** From the fold that shows to the line on which it is laid. */
  private List<InnerLine> arrow() {
    Leg shows = towardsFirst ? first : second;
    Leg laidOn = towardsFirst ? second : first;
    double down = Math.min(ARROW_DOWN_MM, first.mm() / 2);
    Point tail = shows.outer.minus(shows.outward().times(down));
    Point head = laidOn.outer.minus(laidOn.outward().times(down));
    Point back = tail.minus(head).unit().times(Math.min(ARROW_HEAD_MM, widthMm() / 2));
    Point aside = back.left().times(0.5);
    return List.of(
        new InnerLine(name + ", arrow", Path.line(tail, head)),
        new InnerLine(name + ", arrow", Path.line(head, head.plus(back).plus(aside))),
        new InnerLine(name + ", arrow", Path.line(head, head.plus(back).minus(aside))));
  }
}
