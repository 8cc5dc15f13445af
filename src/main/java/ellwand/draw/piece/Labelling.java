package ellwand.draw.piece;

import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room inside one piece for its words and its grain arrow, so that neither crosses the other
 * nor the outline.
 */
public final class Labelling {

  /** Sizes on paper, mm. */
  private static final double CLEAR = 0.9;

  private static final double GRID = 1.5;
  private static final int MOST_PLACES = 40;
  private static final double ARROW_STEP = 0.5;
  private static final double ARROW_HALF_WIDTH = 1.0;
  private static final double SLIM_HALF_WIDTH = 0.3;
  private static final double SHORTEST_ARROW = 6;
  private static final double LONGEST_ARROW = 28;
  private static final double ARROW_ACROSS = 9;

  private final Reading reading;
  private final Room room;
  private final GrainLine grain;
  private final List<List<Point>> innerLines;

  /** Where the line is well inside. */
  private final List<Station> stations;

  /**
   * A place on the grain line.
   *
   * @param along distance from {@link GrainLine#through}
   * @param room that an arrow takes there
   */
  private record Station(double along, Box room) {}

  public Labelling(Reading reading, Outline inside, GrainLine grain, List<List<Point>> innerLines) {
    this.reading = reading;
    this.room = new Room(inside);
    this.grain = grain;
    this.innerLines = innerLines;
    this.stations = stations(ARROW_HALF_WIDTH);
  }

  private List<Station> stations(double halfWidth) {
    double reach = room.box().length() + room.box().width();
    double step = reading.mm(ARROW_STEP);
    List<Station> inside = new ArrayList<>();
    for (double s = -Math.floor(reach / step) * step; s <= reach; s += step) {
      Box at = around(at(s), halfWidth);
      if (room.holds(at)) {
        inside.add(new Station(s, at));
      }
    }
    return inside;
  }

  private Box around(Point at, double halfWidth) {
    return new Box(at.x(), at.y(), at.x(), at.y()).grown(reading.mm(halfWidth));
  }

  /**
   * What is drawn.
   *
   * @param label words, if there was room for any
   * @param arrow from tail to head, if there was room
   */
  public record Lettered(Optional<Label> label, Optional<Arrow> arrow) {}

  /** The stretch of the grain line that is drawn. */
  record Arrow(Point tail, Point head) {}

  /**
   * The first of the wordings for which there is room, and the longest arrow beside it. Fewer words
   * are better than words across an inner line, and that is better than no arrow.
   */
  public Lettered place(List<Wording> choices) {
    List<Wording> named = choices.stream().filter(Wording::named).toList();
    return first(named, SHORTEST_ARROW, true)
        .or(() -> first(choices, SHORTEST_ARROW, false))
        .or(() -> first(choices, 0, false))
        .map(label -> new Lettered(Optional.of(label), anyArrow(Optional.of(label))))
        .orElseGet(() -> new Lettered(Optional.empty(), anyArrow(Optional.empty())));
  }

  /** The arrow, nearer to the outline than looks well where the piece is narrow. */
  private Optional<Arrow> anyArrow(Optional<Label> label) {
    return arrow(label, stations).or(() -> arrow(label, stations(SLIM_HALF_WIDTH)));
  }

  /** The same arrow grown along the grain to both sides, as far as it stays clear of all else. */
  Arrow grown(Arrow arrow, Optional<Label> label, double longestMm) {
    Point along = arrow.head().minus(arrow.tail()).unit();
    double step = reading.mm(ARROW_STEP);
    Point tail = arrow.tail();
    Point head = arrow.head();
    boolean grows = true;
    while (grows && tail.distance(head) < longestMm) {
      Point farther = head.plus(along.times(step));
      Point back = tail.minus(along.times(step));
      boolean ahead = clear(farther, label);
      boolean behind = clear(back, label);
      head = ahead ? farther : head;
      tail = behind ? back : tail;
      grows = ahead || behind;
    }
    return new Arrow(tail, head);
  }

  private boolean clear(Point at, Optional<Label> label) {
    Box box = around(at, 3 * ARROW_HALF_WIDTH);
    return room.holds(box) && label.filter(l -> l.box().touches(box)).isEmpty();
  }

  /**
   * A short arrow that runs out of the piece on both sides, as on a strip cut on the bias: clear of
   * the label if it can be.
   */
  Arrow across(Optional<Label> label) {
    Point half = grain.towards().times(reading.mm(ARROW_ACROSS) / 2);
    Point best = grain.through();
    double most = 0;
    for (Point at : label.isPresent() ? centres(0, 0) : List.<Point>of()) {
      Box box = around(at.plus(half), 0).union(around(at.minus(half), 0));
      double away = at.distance(label.get().box().centre());
      if (room.holds(around(at, SLIM_HALF_WIDTH))
          && !box.touches(label.get().box().grown(reading.mm(CLEAR)))
          && (most == 0 || away < most)) {
        best = at;
        most = away;
      }
    }
    return new Arrow(best.minus(half), best.plus(half));
  }

  private Optional<Label> first(
      List<Wording> choices, double shortestArrow, boolean clearOfInnerLines) {
    return choices.stream()
        .flatMap(w -> best(w, reading.mm(shortestArrow), clearOfInnerLines).stream())
        .findFirst();
  }

  private Optional<Label> best(Wording wording, double shortestArrow, boolean clearOfInnerLines) {
    double width = wording.width(reading);
    double height = wording.height(reading);
    Label best = null;
    double bestWorth = Double.NEGATIVE_INFINITY;
    for (boolean upended : new boolean[] {false, true}) {
      double dx = (upended ? height : width) / 2;
      double dy = (upended ? width : height) / 2;
      for (Point centre : centres(dx, dy)) {
        Box box = new Box(centre.x() - dx, centre.y() - dy, centre.x() + dx, centre.y() + dy);
        Label label = new Label(wording, box, upended);
        double away = away(label);
        if (reading.mm(LONGEST_ARROW) - away < bestWorth) {
          // Not even with the longest arrow.
          continue;
        }
        Box clear = box.grown(reading.mm(CLEAR));
        if (!room.holds(clear) || clearOfInnerLines && isOnInnerLine(clear)) {
          continue;
        }
        double arrow =
            arrow(Optional.of(label), stations).map(a -> a.tail().distance(a.head())).orElse(0.0);
        double worth = arrow - away;
        if (arrow >= shortestArrow && worth > bestWorth) {
          best = label;
          bestWorth = worth;
        }
      }
      if (best != null) {
        return Optional.of(best);
      }
    }
    return Optional.empty();
  }

  private boolean isOnInnerLine(Box box) {
    return innerLines.stream().anyMatch(l -> Room.crosses(l, box));
  }

  private double away(Label label) {
    Point centre = label.box().centre();
    return 0.4 * (centre.distance(room.box().centre()) + centre.distance(grain.through()));
  }

  private List<Point> centres(double dx, double dy) {
    Box box = room.box();
    double clear = reading.mm(CLEAR) + 1e-6;
    List<Point> centres = new ArrayList<>();
    for (double x : spread(box.minX() + clear + dx, box.maxX() - clear - dx)) {
      for (double y : spread(box.minY() + clear + dy, box.maxY() - clear - dy)) {
        centres.add(new Point(x, y));
      }
    }
    return centres;
  }

  /** Places from one to another, both included; none if there is no way between. */
  private double[] spread(double from, double to) {
    if (to < from) {
      return new double[0];
    }
    int steps = (int) Math.max(1, Math.min(MOST_PLACES, Math.ceil((to - from) / reading.mm(GRID))));
    double[] places = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      places[i] = from + (to - from) * i / steps;
    }
    return places;
  }

  /** The longest free stretch of the grain line, not longer than looks well. */
  private Optional<Arrow> arrow(Optional<Label> label, List<Station> stations) {
    Optional<Box> taken = label.map(l -> l.box().grown(reading.mm(CLEAR)));
    double step = reading.mm(ARROW_STEP);
    double from = Double.NaN;
    double last = Double.NaN;
    double bestFrom = 0;
    double bestTo = 0;
    for (Station station : stations) {
      if (taken.isPresent() && taken.get().touches(station.room())) {
        continue;
      }
      double s = station.along();
      if (!(s - last <= step * 1.5)) {
        from = s;
      }
      last = s;
      if (last - from > bestTo - bestFrom) {
        bestFrom = from;
        bestTo = last;
      }
    }
    double length = Math.min(bestTo - bestFrom, reading.mm(LONGEST_ARROW));
    if (length < reading.mm(SHORTEST_ARROW)) {
      return Optional.empty();
    }
    double middle = (bestFrom + bestTo) / 2;
    return Optional.of(new Arrow(at(middle - length / 2), at(middle + length / 2)));
  }

  private Point at(double along) {
    return grain.through().plus(grain.towards().times(along));
  }
}
