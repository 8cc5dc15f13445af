package ellwand.file.pdf;

import ellwand.file.drawn.DrawnLine;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Tells how pages lie that each draw all of a line and clip what runs beyond them: by the lines
 * that they have in common.
 */
final class SharedLines {

  /** Shorter lines tell too little, mm. */
  private static final double LEAST_MM = 100;

  /** Shapes are alike, and shifts the same, within this, mm. */
  private static final double SAME_MM = 0.2;

  /** The longest lines of a page tell enough. */
  private static final int MOST_TELLING = 300;

  /** A shape that stands at more places tells nothing. */
  private static final int MOST_ALIKE = 20;

  /** Where a line begins that is drawn on a page. */
  private record Start(Point at, boolean beyond) {}

  /** By how long lines it is told that a page is to be shifted so. */
  private record Vote(Point shift, double mm) {}

  /** By page: its lines that may tell how it lies. */
  private final List<List<DrawnLine>> telling;

  private final List<Pages.Page> pages;
  private final Map<Integer, Point> shifts = new LinkedHashMap<>();
  private final SamePlaces<List<Start>> starts = new SamePlaces<>(SAME_MM);

  private SharedLines(List<Pages.Page> pages, List<List<DrawnLine>> telling) {
    this.pages = pages;
    this.telling = telling;
  }

  /**
   * Pages that hang together by what they share: the number of each, and how far it is to be
   * shifted to lie beside the first of them. What shares nothing is alone.
   *
   * @param furniture which tells nothing
   */
  static List<Map<Integer, Point>> groups(List<Pages.Page> pages, Furniture furniture) {
    List<List<DrawnLine>> telling = pages.stream().map(p -> telling(p, furniture)).toList();
    SortedSet<Integer> left = new TreeSet<>(IntStream.range(0, pages.size()).boxed().toList());
    List<Map<Integer, Point>> groups = new ArrayList<>();
    while (!left.isEmpty()) {
      SharedLines group = new SharedLines(pages, telling);
      group.put(left.first(), new Point(0, 0));
      left.removeAll(group.shifts.keySet());
      while (group.grows(left)) {
        left.removeAll(group.shifts.keySet());
      }
      groups.add(group.shifts);
    }
    return groups;
  }

  private boolean grows(SortedSet<Integer> left) {
    int before = shifts.size();
    for (int number : left) {
      shift(number).ifPresent(shift -> put(number, shift));
    }
    return shifts.size() > before;
  }

  private static List<DrawnLine> telling(Pages.Page page, Furniture furniture) {
    return page.lines().stream()
        .filter(line -> !furniture.holds(line) && line.path().length() >= LEAST_MM)
        .sorted(Comparator.comparingDouble(line -> -line.path().length()))
        .limit(MOST_TELLING)
        .toList();
  }

  private static List<Point> shape(DrawnLine line) {
    return SamePlaces.samples(line, line.path().start());
  }

  private static int segments(DrawnLine line) {
    return line.path().segments().size();
  }

  /** Whether a page draws more of a line than it shows. */
  private static boolean runsBeyond(DrawnLine line, Pages.Page page) {
    Box paper = page.box().grown(SAME_MM);
    return line.path().segments().stream().anyMatch(s -> !paper.contains(s.start()));
  }

  private void put(int number, Point shift) {
    shifts.put(number, shift);
    for (DrawnLine line : telling.get(number)) {
      List<Point> shape = shape(line);
      Optional<List<Start>> known = starts.find(segments(line), shape);
      List<Start> alike = known.orElseGet(ArrayList::new);
      if (known.isEmpty()) {
        starts.put(segments(line), shape, alike);
      }
      Point at = line.path().start().plus(shift);
      if (alike.stream().noneMatch(s -> s.at.distance(at) <= SAME_MM)) {
        alike.add(new Start(at, runsBeyond(line, pages.get(number))));
      }
    }
  }

  /** How far a page is to be shifted, if one place agrees with more of its lines than others. */
  private Optional<Point> shift(int number) {
    List<Vote> votes = new ArrayList<>();
    for (DrawnLine line : telling.get(number)) {
      List<Start> alike = starts.find(segments(line), shape(line)).orElse(List.of());
      if (alike.size() <= MOST_ALIKE) {
        boolean beyond = runsBeyond(line, pages.get(number));
        alike.stream()
            .filter(start -> beyond || start.beyond)
            .map(start -> start.at.minus(line.path().start()))
            // What stands at the same place of two pages is none of the pattern's.
            .filter(shift -> shift.norm() > LEAST_MM / 2)
            .forEach(shift -> vote(votes, new Vote(shift, line.path().length())));
      }
    }
    votes.sort((a, b) -> Double.compare(b.mm, a.mm));
    boolean clear = votes.size() == 1 || votes.size() > 1 && votes.get(0).mm > votes.get(1).mm;
    return clear ? Optional.of(votes.get(0).shift) : Optional.empty();
  }

  private static void vote(List<Vote> votes, Vote more) {
    for (int i = 0; i < votes.size(); i++) {
      Vote vote = votes.get(i);
      if (vote.shift.distance(more.shift) <= SAME_MM) {
        votes.set(i, new Vote(vote.shift, vote.mm + more.mm));
        return;
      }
    }
    votes.add(more);
  }
}
