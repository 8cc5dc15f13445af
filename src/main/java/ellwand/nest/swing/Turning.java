package ellwand.nest.swing;

import ellwand.geometry.Outline;
import ellwand.nest.kernel.Listener;
import ellwand.nest.kernel.NoFit;
import ellwand.nest.kernel.StripSearch;
import ellwand.nest.pose.Placement;
import ellwand.nest.pose.Way;
import ellwand.nest.stretch.Found;
import ellwand.nest.stretch.Found.LaidStretch;
import ellwand.nest.stretch.StretchTask;
import ellwand.work.Effort;
import ellwand.work.Request;
import ellwand.work.Spending;
import ellwand.work.Stop;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongPredicate;

/**
 * Turns pieces off their grain, as far as they may, where that saves cloth: a search with the turns
 * that promise most, then all copies move and turn together, then they are straightened.
 */
public final class Turning {

  /** What a turn must save to be worth it, mm. */
  private static final double WORTH_MM = 0.1;

  /** Share of the effort that goes to the search; the rest is for turning freely. */
  private static final double SEARCHED = 0.6;

  /** Share of the effort that is kept for straightening. */
  private static final double STRAIGHTENED = 0.15;

  /** Corners that take as long to look at as a pose takes to evaluate. */
  private static final long CORNERS = 10;

  private final NoFit noFit;
  private final Request request;
  private final Spending spending;
  private final Map<Outline, List<double[]>> parts = new HashMap<>();

  /** Ready to begin; time runs from here. */
  public Turning(NoFit noFit, Request request) {
    this.noFit = noFit;
    this.request = request;
    this.spending = new Spending(request.effort());
  }

  /** Whether anything on the stretches may turn. */
  public static boolean allowed(Found found) {
    return found.stretches().stream()
        .flatMap(placed -> placed.task().seats().stream())
        .anyMatch(seat -> seat.placement().mostDegrees() > 0);
  }

  /** A shorter one with pieces turned; itself where turning saves nothing. */
  public Found turned(Found found) {
    Found now = found;
    int copies = found.stretches().stream().mapToInt(p -> p.task().seats().size()).sum();
    double until = 0;
    for (int i = 0; i < found.stretches().size() && !request.stop().wanted(); i++) {
      LaidStretch placed = now.stretches().get(i);
      if (placed.layout().isPresent()) {
        double share = placed.task().seats().size() / (double) copies;
        until += share;
        Found turned = now.with(i, turned(placed, share, until));
        now = turned.clothMm() < now.clothMm() - WORTH_MM ? turned : now;
      }
    }
    return now;
  }

  private LaidStretch turned(LaidStretch placed, double share, double until) {
    LaidStretch searched = searched(placed, share * SEARCHED);
    double last = until - share * STRAIGHTENED;
    // Else the first would take all the time that is left for both.
    double half = last - share * (1 - SEARCHED - STRAIGHTENED) / 2;
    Loose other = Loose.of(searched, parts).shortened(enough(share, half));
    Loose best = Loose.of(placed, parts).shortened(enough(share, last));
    best = other.lengthMm() < best.lengthMm() ? other : best;
    return best.lengthMm() < placed.lengthMm() - WORTH_MM
        ? best.straightened(enough(share, until)).placed(placed, noFit)
        : placed;
  }

  /** Searched on with the turns that promise most as further forms. */
  private LaidStretch searched(LaidStretch placed, double share) {
    StretchTask task = placed.task();
    Sides sides = Sides.of(task);
    Map<List<Way>, List<Way>> wider = new HashMap<>();
    List<List<Way>> ways = new ArrayList<>();
    for (int i = 0; i < task.seats().size(); i++) {
      Placement placement = task.seats().get(i).placement();
      ways.add(wider.computeIfAbsent(task.ways().get(i), w -> wider(placement, w, sides)));
    }
    StretchTask turning = task.with(ways, noFit);
    return turning
        .search()
        .orElseThrow()
        .run(placed.layout(), request.part(share), Listener.NONE)
        .layout()
        .map(layout -> placed.with(turning, layout))
        .orElse(placed);
  }

  private List<Way> wider(Placement placement, List<Way> ways, Sides sides) {
    List<Way> wider = new ArrayList<>(ways);
    for (Way way : ways) {
      Swing swing = Swing.of(placement, way.pose());
      for (double off : swing.trials(sides)) {
        way.pose()
            .at(placement, swing.grainDegrees() + off)
            .map(Way::anywhere)
            .ifPresent(wider::add);
      }
    }
    return wider;
  }

  private LongPredicate enough(double share, double until) {
    Stop stop = request.stop();
    Effort effort = request.effort();
    if (effort.repeats()) {
      double most = effort.steps() * share * (1 - SEARCHED) / 3 * StripSearch.STEP * CORNERS;
      return looked -> stop.wanted() || looked > most;
    }
    return looked -> stop.wanted() || spending.spent() > until;
  }
}
