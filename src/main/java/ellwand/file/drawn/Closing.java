package ellwand.file.drawn;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Closes what is meant to be closed: lines that end a hair from their start, and lines in parts.
 */
final class Closing {

  /** What counts as a hair, mm: half of what a cut edge is true to at best. */
  static final double HAIR_MM = 0.5;

  /** Gaps below this are rounding and nobody's concern, mm. */
  private static final double WORTH_SAYING_MM = 0.01;

  private final List<DrawnLine> whole = new ArrayList<>();
  private final List<DrawnLine> open = new ArrayList<>();
  private final List<DrawnLine> folds = new ArrayList<>();
  private final List<DrawnLine> used = new ArrayList<>();
  private final List<String> said;

  private Closing(List<String> said) {
    this.said = said;
  }

  /**
   * The lines of a drawing, closed where they are meant to be.
   *
   * @param said takes a sentence for every gap that was closed
   */
  static List<DrawnLine> of(List<DrawnLine> lines, List<String> said) {
    Closing closing = new Closing(said);
    lines.forEach(closing::sort);
    closing.chain(List.of());
    closing.chain(closing.folds);
    closing.whole.addAll(closing.open);
    return closing.whole;
  }

  private void sort(DrawnLine line) {
    double gap = line.path().start().distance(line.path().end());
    if (line.closed()) {
      whole.add(line);
    } else if (gap <= HAIR_MM && line.path().length() > 20 * HAIR_MM) {
      tell(line, gap);
      whole.add(closed(line));
    } else if (line.label().role().filter(Closing::partsOfNothing).isPresent()) {
      whole.add(line);
      if (line.label().role().filter(Role.FOLD::equals).isPresent()) {
        folds.add(line);
      }
    } else {
      open.add(line);
    }
  }

  /** What stays by itself, though it may touch other lines. */
  private static boolean partsOfNothing(Role role) {
    return role != Role.SEWING && role != Role.CUTTING;
  }

  private void tell(DrawnLine line, double gap) {
    if (gap >= WORTH_SAYING_MM) {
      said.add(
          String.format(
              Locale.ROOT,
              "%s was open by %.2f mm and has been closed.",
              line.label().name().map(n -> "Line " + n).orElse("A line"),
              gap));
    }
  }

  private static DrawnLine closed(DrawnLine line) {
    List<Segment> segments = new ArrayList<>(line.path().segments());
    int last = segments.size() - 1;
    segments.set(last, endingAt(line.path().start(), segments.get(last)));
    return new DrawnLine(new Path(segments), true, line.label(), line.parts());
  }

  /** The same stretch with its end moved by a hair. */
  static Segment endingAt(Point end, Segment segment) {
    return segment instanceof Segment.Cubic c
        ? new Segment.Cubic(c.start(), c.control1(), c.control2(), end)
        : new Segment.Line(segment.start(), end);
  }

  /**
   * Puts together open lines of which each end meets just one other and that come back round.
   *
   * @param folds lines that may close a ring, and stay themselves: where a piece lies on a fold its
   *     outline is often drawn but for that edge
   */
  private void chain(List<DrawnLine> folds) {
    List<DrawnLine> all = new ArrayList<>(open);
    all.addAll(folds);
    LineEnds ends = new LineEnds(all);
    Set<DrawnLine> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (DrawnLine first : List.copyOf(open)) {
      if (seen.add(first)) {
        List<DrawnLine> run = new ArrayList<>(List.of(first));
        boolean closed = follow(run, ends);
        // What leads from one line to a loose end is part of no ring either.
        seen.addAll(run);
        if (closed) {
          joined(run);
        }
      }
    }
    Set<DrawnLine> gone = Collections.newSetFromMap(new IdentityHashMap<>());
    gone.addAll(used);
    open.removeIf(gone::contains);
  }

  /** Puts to a line those that follow it, and says whether they come back to its start. */
  private static boolean follow(List<DrawnLine> run, LineEnds ends) {
    DrawnLine first = run.get(0);
    Set<DrawnLine> passed = Collections.newSetFromMap(new IdentityHashMap<>());
    passed.add(first);
    DrawnLine last = first;
    Point end = first.path().end();
    while (run.size() == 1 || end.distance(first.path().start()) > HAIR_MM) {
      Optional<DrawnLine> next = ends.onlyOther(last, end);
      // Lines shorter than a gap may lead to and fro between each other.
      if (next.isEmpty() || !passed.add(next.get())) {
        return false;
      }
      last = next.get();
      run.add(last);
      end = LineEnds.near(last.path().start(), end) ? last.path().end() : last.path().start();
    }
    return ends.onlyOther(first, first.path().start()).filter(last::equals).isPresent();
  }

  private void joined(List<DrawnLine> ring) {
    List<Segment> segments = new ArrayList<>();
    List<Optional<String>> parts = new ArrayList<>();
    double widest = 0;
    Point start = ring.get(0).path().start();
    Point at = start;
    for (DrawnLine part : ring) {
      boolean forward = part == ring.get(0) || LineEnds.near(part.path().start(), at);
      Path path = forward ? part.path() : part.path().reversed();
      widest = Math.max(widest, path.start().distance(at));
      for (Segment segment : path.segments()) {
        Segment joined = segment.start().equals(at) ? segment : startingAt(at, segment);
        segments.add(joined);
        parts.add(part.label().pieceName());
        at = joined.end();
      }
    }
    widest = Math.max(widest, at.distance(start));
    segments.set(segments.size() - 1, endingAt(start, segments.get(segments.size() - 1)));
    used.addAll(ring);
    DrawnLine whole =
        new DrawnLine(new Path(segments), true, common(ring), Collections.unmodifiableList(parts));
    tell(whole, widest);
    this.whole.add(whole);
  }

  private static Segment startingAt(Point start, Segment segment) {
    return endingAt(start, segment.reversed()).reversed();
  }

  /** The innermost group that all parts lie in. */
  private static Label common(List<DrawnLine> parts) {
    return parts.get(0).label().chain().stream()
        .skip(1)
        .filter(l -> parts.stream().allMatch(p -> p.label().chain().contains(l)))
        .findFirst()
        .orElse(Label.NONE);
  }
}
