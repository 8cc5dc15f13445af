package ellwand.nest.swing;

import ellwand.cloth.Band;
import ellwand.cloth.KeepOut;
import ellwand.geometry.ConvexParts;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.pose.Pose;
import ellwand.nest.pose.Way;
import ellwand.nest.stretch.Found.LaidStretch;
import ellwand.nest.stretch.StretchTask;
import ellwand.nest.turning.Body;
import ellwand.nest.turning.Body.Posture;
import ellwand.nest.turning.Turner;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongPredicate;
import java.util.stream.DoubleStream;

/**
 * The layout of a stretch with its copies free to move and turn.
 *
 * @param swings one for each copy
 * @param bodies the copies, then the flaws
 * @param places one for each body
 */
record Loose(List<Swing> swings, List<Body> bodies, List<Posture> places, double lengthMm) {

  /**
   * @param parts of outlines about the middle of their copy, to be used again and added to
   */
  static Loose of(LaidStretch placed, Map<Outline, List<double[]>> parts) {
    StretchTask task = placed.task();
    Layout layout = placed.layout().orElseThrow();
    List<Swing> swings = new ArrayList<>();
    List<Body> bodies = new ArrayList<>();
    List<Posture> places = new ArrayList<>();
    for (int i = 0; i < task.seats().size(); i++) {
      Layout.StripPose at = layout.poses().get(i);
      Way way = task.ways().get(i).get(at.form());
      Swing swing = Swing.of(task.seats().get(i).placement(), way.pose());
      swings.add(swing);
      bodies.add(body(task, swing, parts));
      places.add(swing.place(at));
    }
    for (KeepOut keepOut : task.keepOuts()) {
      bodies.add(Body.fixed(ConvexParts.of(flat(keepOut.outline(), new Point(0, 0)))));
      places.add(new Posture(0, 0, 0));
    }
    return new Loose(swings, bodies, places, layout.length());
  }

  private static Body body(StretchTask task, Swing swing, Map<Outline, List<double[]>> parts) {
    Pose pose = swing.pose();
    Band band = pose.band();
    boolean onFold = swing.placement().form() == Form.HALF;
    return new Body(
        parts(StretchTask.grown(swing.outline(), task.gapMm()), swing.middle(), parts),
        parts(swing.outline(), swing.middle(), parts),
        flat(swing.outline(), swing.middle()),
        new Body.Walls(task.beforeMm(), band.lowY(), band.highY()),
        pose.fixedX().isEmpty(),
        !onFold || pose.fixedX().isPresent(),
        Math.toRadians(swing.leastDegrees()),
        Math.toRadians(swing.mostDegrees()));
  }

  private static List<double[]> parts(
      Outline outline, Point about, Map<Outline, List<double[]>> known) {
    return known.computeIfAbsent(outline, o -> ConvexParts.of(flat(o, about)));
  }

  private static double[] flat(Outline outline, Point about) {
    return outline.points().stream()
        .flatMapToDouble(p -> DoubleStream.of(p.x() - about.x(), p.y() - about.y()))
        .toArray();
  }

  /** As short as it becomes by moving and turning. */
  Loose shortened(LongPredicate enough) {
    Turner turner = new Turner(bodies, enough);
    return at(turner.shortened(places), turner);
  }

  /** As near to the grain as may be, and longer by no more than a hair. */
  Loose straightened(LongPredicate enough) {
    Turner turner = new Turner(bodies, enough);
    return at(turner.straightened(places), turner);
  }

  private Loose at(List<Posture> better, Turner turner) {
    return new Loose(swings, bodies, better, turner.lengthMm(better));
  }

  /**
   * As a layout again: a copy that is turned may lie so as well as on grain.
   *
   * @param onGrain the stretch with its copies on grain
   */
  LaidStretch placed(LaidStretch onGrain, NoFit noFit) {
    List<List<Way>> ways = new ArrayList<>();
    List<Layout.StripPose> poses = new ArrayList<>();
    for (int i = 0; i < swings.size(); i++) {
      List<Way> known = onGrain.task().ways().get(i);
      Way way = swings.get(i).way(places.get(i));
      int form = known.indexOf(way);
      if (form < 0) {
        form = known.size();
        known = new ArrayList<>(known);
        known.add(way);
      }
      ways.add(known);
      poses.add(swings.get(i).shift(places.get(i), form));
    }
    return onGrain.with(onGrain.task().with(ways, noFit), new Layout(poses, lengthMm));
  }
}
