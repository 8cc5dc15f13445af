package ellwand.nest;

import ellwand.cloth.Band;
import ellwand.geometry.ConvexParts;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.nest.Found.Placed;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.Listener;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.Search;
import ellwand.nest.turning.Body;
import ellwand.nest.turning.Body.Place;
import ellwand.nest.turning.Turner;
import ellwand.work.Effort;
import ellwand.work.Seed;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongPredicate;
import java.util.stream.DoubleStream;

/**
 * Turns pieces off their grain, as far as they may, where that saves cloth: a search with the turns
 * that promise most, then all copies move and turn together, then they are straightened.
 */
final class Turning {

  /** What a turn must save to be worth it, mm. */
  private static final double WORTH_MM = 0.1;

  /** Share of the effort that goes to the search; the rest is for turning freely. */
  private static final double SEARCHED = 0.6;

  /** Corners that take as long to look at as a pose takes to evaluate. */
  private static final long CORNERS = 10;

  private final NoFit noFit;
  private final Effort effort;
  private final Seed seed;
  private final int threads;
  private final Stop stop;
  private final long startNanos = System.nanoTime();
  private final Map<Outline, List<double[]>> parts = new HashMap<>();

  Turning(NoFit noFit, Effort effort, Seed seed, int threads, Stop stop) {
    this.noFit = noFit;
    this.effort = effort;
    this.seed = seed;
    this.threads = threads;
    this.stop = stop;
  }

  /** Whether anything on the stretches may turn. */
  static boolean allowed(Found found) {
    return found.stretches().stream()
        .flatMap(placed -> placed.task().seats().stream())
        .anyMatch(seat -> seat.request().mostDegrees() > 0);
  }

  /** A shorter one with pieces turned; itself where turning saves nothing. */
  Found turned(Found found) {
    Found now = found;
    int copies = found.stretches().stream().mapToInt(p -> p.task().seats().size()).sum();
    double until = 0;
    for (int i = 0; i < found.stretches().size() && !stop.wanted(); i++) {
      Placed placed = now.stretches().get(i);
      if (placed.layout().isPresent()) {
        double share = placed.task().seats().size() / (double) copies;
        until += share;
        Found turned = now.with(i, turned(placed, share, until));
        now = turned.clothMm() < now.clothMm() - WORTH_MM ? turned : now;
      }
    }
    return now;
  }

  private Placed turned(Placed placed, double share, double until) {
    List<Placed> starts = List.of(placed, searched(placed, share * SEARCHED));
    Placed best = placed;
    for (Placed start : starts) {
      Placed shorter = eased(start, share, until, false);
      best = shorter.lengthMm() < best.lengthMm() ? shorter : best;
    }
    return best == placed ? placed : eased(best, share, until, true);
  }

  /** Searched on with the turns that promise most as further forms. */
  private Placed searched(Placed placed, double share) {
    StretchTask task = placed.task();
    Sides sides = Sides.of(task);
    Map<List<Way>, List<Way>> wider = new HashMap<>();
    List<List<Way>> ways = new ArrayList<>();
    for (int i = 0; i < task.seats().size(); i++) {
      Request request = task.seats().get(i).request();
      ways.add(wider.computeIfAbsent(task.ways().get(i), w -> wider(request, w, sides)));
    }
    StretchTask turning = task.with(ways, noFit);
    return turning
        .search()
        .orElseThrow()
        .run(placed.layout(), effort.part(share), seed, threads, stop, Listener.NONE)
        .layout()
        .map(layout -> placed.with(turning, layout))
        .orElse(placed);
  }

  private List<Way> wider(Request request, List<Way> ways, Sides sides) {
    List<Way> wider = new ArrayList<>(ways);
    for (Way way : ways) {
      Swing swing = Swing.of(request, way.pose());
      for (double off : swing.trials(sides)) {
        way.pose().at(request, swing.grainDegrees() + off).map(Way::anywhere).ifPresent(wider::add);
      }
    }
    return wider;
  }

  /** Moved and turned freely, until it is shorter or straighter. */
  private Placed eased(Placed placed, double share, double until, boolean straight) {
    StretchTask task = placed.task();
    Layout layout = placed.layout().orElseThrow();
    List<Swing> swings = new ArrayList<>();
    List<Body> bodies = new ArrayList<>();
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < task.seats().size(); i++) {
      Layout.Pose at = layout.poses().get(i);
      Way way = task.ways().get(i).get(at.form());
      Swing swing = Swing.of(task.seats().get(i).request(), way.pose());
      swings.add(swing);
      bodies.add(body(task, swing, way));
      places.add(swing.place(at));
    }
    task.keepOuts()
        .forEach(
            keepOut -> {
              bodies.add(Body.fixed(ConvexParts.of(flat(keepOut.outline(), new Point(0, 0)))));
              places.add(new Place(0, 0, 0));
            });
    Turner turner = new Turner(bodies, enough(share, until));
    List<Place> better = straight ? turner.straightened(places) : turner.shortened(places);
    return placed(placed, swings, better, turner.lengthMm(better));
  }

  private LongPredicate enough(double share, double until) {
    if (effort.repeats()) {
      double most = effort.steps() * share * (1 - SEARCHED) / 3 * Search.STEP * CORNERS;
      return looked -> stop.wanted() || looked > most;
    }
    long deadline = startNanos + (long) (effort.seconds() * until * 1e9);
    return looked -> stop.wanted() || System.nanoTime() > deadline;
  }

  private Body body(StretchTask task, Swing swing, Way way) {
    Band band = swing.pose().band();
    // A half on a fold that runs along the cloth has to stay on it.
    boolean acrossFree = swing.request().form() != Form.HALF || swing.pose().fixedX().isPresent();
    return new Body(
        parts.computeIfAbsent(
            swing.outline(),
            outline ->
                ConvexParts.of(
                    flat(StretchTask.grown(outline, task.gapMm()), outline.box().centre()))),
        flat(swing.outline(), swing.middle()),
        new Body.Borders(task.beforeMm(), band.lowY(), band.highY()),
        way.x().step() == 0,
        acrossFree,
        Math.toRadians(swing.leastDegrees()),
        Math.toRadians(swing.mostDegrees()));
  }

  private static double[] flat(Outline outline, Point about) {
    return outline.points().stream()
        .flatMapToDouble(p -> DoubleStream.of(p.x() - about.x(), p.y() - about.y()))
        .toArray();
  }

  /** Each copy in its own way first, and then in all those in which it could lie before. */
  private Placed placed(Placed before, List<Swing> swings, List<Place> places, double lengthMm) {
    List<List<Way>> ways = new ArrayList<>();
    List<Layout.Pose> poses = new ArrayList<>();
    for (int i = 0; i < swings.size(); i++) {
      Layout.Pose old = before.layout().orElseThrow().poses().get(i);
      List<Way> known = before.task().ways().get(i);
      Way way = swings.get(i).way(places.get(i));
      int form = old.form();
      if (!way.pose().equals(known.get(form).pose())) {
        known = new ArrayList<>(known);
        known.add(way);
        form = known.size() - 1;
      }
      ways.add(known);
      poses.add(swings.get(i).shift(places.get(i), form));
    }
    return before.with(before.task().with(ways, noFit), new Layout(poses, lengthMm));
  }
}
