package ellwand.trace;

import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks for a straight arrow drawn on a piece: a line with a head at one end or both. A head is two
 * strokes, or the sides of a dark triangle, that go back from the tip on either side and soon end;
 * so neither corners of lines are heads, nor darts.
 */
final class ArrowFinder {

  /** A side of a head is as long, mm. */
  private static final double LEAST_SIDE_MM = 3.5;

  private static final double MOST_SIDE_MM = 26;

  /** And so much of the arrow's length at most. */
  private static final double MOST_SHARE = 0.34;

  /** It goes back at such angles to the line, degrees. */
  private static final int LEAST_DEGREES = 15;

  /** The legs of a dart may be as near to the line between them, degrees. */
  private static final int DART_DEGREES = 8;

  private static final int MOST_DEGREES = 66;

  /** By how much both sides may differ: degrees, and the longer by the shorter. */
  private static final double UNLIKE_DEGREES = 26;

  private static final double UNLIKE_LENGTHS = 2.2;

  /** What is as dark as this share of the line is drawn with it. */
  private static final double AS_DARK = 0.45;

  /** From the line's middle to where its head can be told from it, mm, and its ends, at least. */
  private static final double BESIDE_MM = 1.2;

  private static final double APART_MM = 2.2;

  /** And beyond what of the line itself is inked. */
  private static final double CLEAR_MM = 1;

  private static final double STEP_MM = 0.5;

  /** A line's width is taken at the ends of as many parts of it. */
  private static final int WIDTHS = 12;

  /** Outside a side of the head, so far off, is bare paper, mm. */
  private static final double BARE_MM = 2.2;

  private static final double MOSTLY = 0.75;

  /** Arrows whose directions differ by less say the same, degrees. */
  private static final double SAME_DEGREES = 2;

  private final Ink ink;

  private ArrowFinder(Ink ink) {
    this.ink = ink;
  }

  /** The longest arrow on a piece, if there is any. */
  static Optional<DrawnArrow> arrow(Straightened straight, Cells cells, Patch patch) {
    Ink ink = new Ink(straight, cells, patch);
    ArrowFinder finder = new ArrowFinder(ink);
    List<DrawnArrow> found = new ArrayList<>();
    for (Strokes.Stroke stroke : Strokes.of(ink)) {
      finder.arrow(stroke).ifPresent(found::add);
    }
    if (found.isEmpty()) {
      return Optional.empty();
    }
    DrawnArrow longest = found.get(0);
    Point way = way(longest);
    boolean sure =
        found.stream()
            .allMatch(a -> Math.abs(way.cross(way(a))) <= Math.sin(Math.toRadians(SAME_DEGREES)));
    return Optional.of(new DrawnArrow(longest.from(), longest.to(), sure));
  }

  private static Point way(DrawnArrow arrow) {
    return arrow.to().minus(arrow.from()).unit();
  }

  private Optional<DrawnArrow> arrow(Strokes.Stroke stroke) {
    Point along = stroke.to().minus(stroke.from()).unit();
    double dark = AS_DARK * stroke.dark();
    Point end = tip(stroke.to(), along, dark);
    Point start = tip(stroke.from(), along.times(-1), dark);
    double longest = MOST_SHARE * start.distance(end) * ink.pixelMm();
    double apart = Math.max(APART_MM + ink.nearMm(), wide(stroke, dark) + CLEAR_MM);
    boolean atEnd = head(end, along, dark, longest, apart);
    boolean atStart = head(start, along.times(-1), dark, longest, apart);
    if (!atEnd && !atStart) {
      return Optional.empty();
    }
    Point one = ink.mm(start.x(), start.y());
    Point other = ink.mm(end.x(), end.y());
    boolean forward = atEnd && (!atStart || other.y() >= one.y());
    return Optional.of(
        forward ? new DrawnArrow(one, other, true) : new DrawnArrow(other, one, true));
  }

  /** How far to a side a line is inked, as blur widens it, mm; where another crosses it is more. */
  private double wide(Strokes.Stroke stroke, double dark) {
    Point across = stroke.to().minus(stroke.from()).unit().left();
    List<Double> wide = new ArrayList<>();
    for (int i = 1; i < WIDTHS; i++) {
      Point at = stroke.from().towards(stroke.to(), (double) i / WIDTHS);
      for (int hand = -1; hand <= 1; hand += 2) {
        double mm = 0;
        while (mm < MOST_SIDE_MM && inked(at.plus(across.times(hand * mm / ink.pixelMm())), dark)) {
          mm += STEP_MM;
        }
        wide.add(mm);
      }
    }
    wide.sort(null);
    return wide.get(wide.size() / 2);
  }

  /** Where the ink ends that a line ends in. */
  private Point tip(Point end, Point out, double dark) {
    double mm = -STEP_MM;
    while (mm < MOST_SIDE_MM && inked(end.plus(out.times((mm + STEP_MM) / ink.pixelMm())), dark)) {
      mm += STEP_MM;
    }
    return end.plus(out.times(Math.max(0, mm) / ink.pixelMm()));
  }

  private boolean inked(Point pixel, double dark) {
    return ink.near(pixel.x(), pixel.y()) >= dark;
  }

  /**
   * A side of a head.
   *
   * @param degrees to the line, from the tip back
   */
  private record Side(int degrees, double mm) {}

  private boolean head(Point tip, Point out, double dark, double longest, double apart) {
    Optional<Side> left = side(tip, out, 1, dark, apart);
    Optional<Side> right = side(tip, out, -1, dark, apart);
    if (left.isEmpty() || right.isEmpty()) {
      return false;
    }
    double longer = Math.max(left.get().mm, right.get().mm);
    double shorter = Math.min(left.get().mm, right.get().mm);
    return longer <= longest
        && longer <= UNLIKE_LENGTHS * shorter
        && Math.abs(left.get().degrees - right.get().degrees) <= UNLIKE_DEGREES
        && bareAhead(tip, out, dark);
  }

  /**
   * The longest stroke that goes back from a tip on one side, with bare paper outside of it; none
   * where one goes on.
   */
  private Optional<Side> side(Point tip, Point out, int hand, double dark, double apart) {
    Optional<Side> best = Optional.empty();
    for (int degrees = DART_DEGREES; degrees <= MOST_DEGREES; degrees += 3) {
      double turn = Math.toRadians(degrees);
      Point back = out.times(-Math.cos(turn)).plus(out.left().times(hand * Math.sin(turn)));
      Point off = out.times(Math.sin(turn)).plus(out.left().times(hand * Math.cos(turn)));
      double first = (BESIDE_MM + ink.nearMm()) / Math.sin(turn);
      double mm = first;
      int bare = 0;
      int steps = 0;
      int missed = 0;
      double end = 0;
      while (mm <= MOST_SIDE_MM + 2 && missed < 2) {
        Point at = tip.plus(back.times(mm / ink.pixelMm()));
        if (inked(at, dark)) {
          missed = 0;
          end = mm;
          steps++;
          bare += inked(at.plus(off.times(BARE_MM / ink.pixelMm())), dark) ? 0 : 1;
        } else {
          missed++;
        }
        mm += STEP_MM;
      }
      if (end > MOST_SIDE_MM) {
        return Optional.empty();
      }
      if (degrees >= LEAST_DEGREES
          && end >= LEAST_SIDE_MM
          && end * Math.sin(turn) >= apart
          && bare >= MOSTLY * steps
          && (best.isEmpty() || end > best.get().mm)) {
        best = Optional.of(new Side(degrees, end));
      }
    }
    return best;
  }

  private boolean bareAhead(Point tip, Point out, double dark) {
    int bare = 0;
    int all = 0;
    for (int degrees = -60; degrees <= 60; degrees += 20) {
      double turn = Math.toRadians(degrees);
      Point way = out.times(Math.cos(turn)).plus(out.left().times(Math.sin(turn)));
      for (double mm = 2.5; mm <= 4.5; mm += 1) {
        all++;
        bare += inked(tip.plus(way.times(mm / ink.pixelMm())), dark) ? 0 : 1;
      }
    }
    return bare >= MOSTLY * all;
  }
}
