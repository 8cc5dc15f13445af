package ellwand.nest.swing;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Heading;
import ellwand.nest.kernel.Layout;
import ellwand.nest.pose.Placement;
import ellwand.nest.pose.Pose;
import ellwand.nest.pose.Turns;
import ellwand.nest.pose.Way;
import ellwand.nest.turning.Body.Posture;
import ellwand.pattern.Grain;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How far a copy may turn about the grain on which it lies.
 *
 * @param pose one of its poses, on grain or off
 * @param grainDegrees the turn that is on grain
 * @param outline its cutting line so turned
 * @param leastDegrees how far it may turn clockwise from there, 0 or less
 * @param mostDegrees how far counter-clockwise, 0 or more
 */
record Swing(
    Placement placement,
    Pose pose,
    double grainDegrees,
    Outline outline,
    double leastDegrees,
    double mostDegrees) {

  /** Moves a corner a metre from the middle by less than 1e-5 mm. */
  private static final double ROUNDED_DEGREES = 1e-6;

  static Swing of(Placement placement, Pose pose) {
    Grain grain = placement.wanted().cut().piece().grain();
    boolean flipped = pose.motion().flipped();
    double turn = pose.motion().turnDegrees();
    double onGrain = grain.nearest(turn, flipped);
    double most = placement.mostDegrees();
    // A piece that turns must not come to head the other way by it.
    double least = Heading.ofTurn(onGrain - most, flipped) == pose.heading() ? -most : 0;
    most = Heading.ofTurn(onGrain + most, flipped) == pose.heading() ? most : 0;
    Outline outline =
        turn == onGrain
            ? pose.outline()
            : placement.drawn().cutting().moved(new Motion(flipped, onGrain, 0, 0));
    return new Swing(placement, pose, onGrain, outline, least, most);
  }

  /** About which it turns, in the frame of the outline. */
  Point middle() {
    return outline.box().centre();
  }

  private double offDegrees() {
    return Math.IEEEremainder(pose.motion().turnDegrees() - grainDegrees, 360);
  }

  /** Where the middle is when the pose is laid so. */
  Posture place(Layout.StripPose at) {
    Point middle = new Motion(false, offDegrees(), at.x(), at.y()).apply(middle());
    return new Posture(middle.x(), middle.y(), Math.toRadians(offDegrees()));
  }

  /** The turn at a place, degrees off the grain, without what conversion adds to it. */
  private double offDegrees(Posture place) {
    double off = Math.rint(Math.toDegrees(place.turn()) / ROUNDED_DEGREES) * ROUNDED_DEGREES;
    return Math.max(leastDegrees, Math.min(mostDegrees, off));
  }

  /** The way to lie so; where, is up to {@link #shift}. */
  Way way(Posture place) {
    double off = offDegrees(place);
    if (off == offDegrees()) {
      return Way.anywhere(pose);
    }
    Motion motion = new Motion(pose.motion().flipped(), grainDegrees + off, 0, 0);
    Outline turned = placement.drawn().cutting().moved(motion);
    return Way.anywhere(pose.turned(motion, turned));
  }

  /** The shift that brings the middle to its place. */
  Layout.StripPose shift(Posture place, int form) {
    Point middle = new Motion(false, offDegrees(place), 0, 0).apply(middle());
    return new Layout.StripPose(form, place.x() - middle.x(), place.y() - middle.y());
  }

  /**
   * Turns off grain worth a trial from afar, degrees from the grain: those at which a side lies
   * along or across the cloth, so that the piece is narrowest or shortest, or along a side of
   * another piece or flaw, and the farthest.
   */
  List<Double> trials(Sides sides) {
    List<Double> trials = new ArrayList<>();
    Stream.concat(
            Stream.of(
                Turns.flattest(outline, leastDegrees, mostDegrees, true),
                Turns.flattest(outline, leastDegrees, mostDegrees, false)),
            Stream.concat(
                sides.flush(outline, leastDegrees, mostDegrees).stream(),
                Stream.of(leastDegrees, mostDegrees)))
        .filter(off -> Math.abs(off) > Sides.SAME_DEGREES)
        .filter(off -> trials.stream().noneMatch(t -> Math.abs(t - off) < Sides.SAME_DEGREES))
        .forEach(trials::add);
    return trials;
  }
}
