package ellwand.file.pdf;

import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.DrawnText;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What stands on the pages of a pattern and is none of its pieces: what the file itself calls an
 * artifact of its pages (ISO 32000-1, 14.8.2.2), what every page has at the same place, frames
 * along the edges of the page, squares to see whether the printer kept the size.
 */
final class Furniture {

  /** Between a frame and each edge of its page, at most; common practice. */
  private static final double MARGIN_MM = 30;

  /** Sides of test squares: 1, 2 and 4 in, 5 and 10 cm; common practice. */
  private static final List<Double> SQUARES_MM = List.of(25.4, 50.0, 50.8, 100.0, 101.6);

  private static final double SQUARE_MM = 0.3;

  /** Places on two pages that differ by less are the same, mm. */
  private static final double SAME_MM = 0.2;

  /** How far from a test square its words may stand, mm. */
  private static final double WORDS_MM = 10;

  private static final Pattern TEST_WORDS =
      Pattern.compile(
          "(?i).*\\b(test|scale|square|check|print|measures?|\\d+ ?(cm|mm|in|inch(es)?|\"))\\b.*");

  private final Set<DrawnLine> lines = Collections.newSetFromMap(new IdentityHashMap<>());
  private int marked;
  private int repeated;
  private int frames;
  private int squares;

  /** What of these pages is furniture; nothing if nothing closed would be left. */
  static Furniture of(List<Pages.Page> pages) {
    Furniture found = new Furniture();
    Map<DrawnLine, Set<Integer>> pagesOf = pagesOf(pages);
    for (Pages.Page page : pages) {
      for (DrawnLine line : page.lines()) {
        if (page.marked().contains(line)) {
          found.lines.add(line);
          found.marked++;
        } else if (pages.size() > 1 && pagesOf.get(line).size() == pages.size()) {
          found.lines.add(line);
          found.repeated++;
        } else if (isFrame(line, page)) {
          found.lines.add(line);
          found.frames++;
        } else if (isTestSquare(line, page)) {
          found.lines.add(line);
          found.squares++;
        }
      }
    }
    boolean left =
        pages.stream().flatMap(p -> p.lines().stream()).anyMatch(l -> !found.lines.contains(l));
    return left ? found : new Furniture();
  }

  /** The pages that have a line at the same place. */
  private static Map<DrawnLine, Set<Integer>> pagesOf(List<Pages.Page> pages) {
    Map<DrawnLine, Set<Integer>> pagesOf = new IdentityHashMap<>();
    SamePlaces<Set<Integer>> known = new SamePlaces<>(SAME_MM);
    for (int i = 0; i < pages.size(); i++) {
      for (DrawnLine line : pages.get(i).lines()) {
        List<Point> samples = SamePlaces.samples(line, new Point(0, 0));
        int segments = line.path().segments().size();
        Set<Integer> with = known.find(segments, samples).orElseGet(HashSet::new);
        if (with.isEmpty()) {
          known.put(segments, samples, with);
        }
        with.add(i);
        pagesOf.put(line, with);
      }
    }
    return pagesOf;
  }

  boolean holds(DrawnLine line) {
    return lines.contains(line);
  }

  /** What was left out, for its reader to judge. */
  void tell(List<String> said) {
    say(marked, "line(s) that the file itself calls page furniture", said);
    say(repeated, "line(s) that every page has at the same place", said);
    say(frames, "frame(s) along the edges of a page", said);
    say(squares, "test square(s)", said);
  }

  private static void say(int count, String what, List<String> said) {
    if (count > 0) {
      said.add(count + " " + what + " left out, which can be read, too (--page-furniture).");
    }
  }

  /** A rectangle as far from one edge of the page as from the other, around other closed lines. */
  private static boolean isFrame(DrawnLine line, Pages.Page page) {
    if (!Pages.isRectangle(line)) {
      return false;
    }
    Box box = Pages.box(line);
    double left = box.minX() - page.box().minX();
    double right = page.box().maxX() - box.maxX();
    double bottom = box.minY() - page.box().minY();
    double top = page.box().maxY() - box.maxY();
    return List.of(left, right, bottom, top).stream().allMatch(mm -> mm >= 0 && mm <= MARGIN_MM)
        && (Math.abs(left - right) < 1 || Math.abs(bottom - top) < 1)
        && page.lines().stream()
            .anyMatch(l -> l != line && l.closed() && box.contains(l.path().start()));
  }

  private static boolean isTestSquare(DrawnLine line, Pages.Page page) {
    if (!Pages.isRectangle(line)) {
      return false;
    }
    Box box = Pages.box(line);
    Box near = box.grown(WORDS_MM);
    return Math.abs(box.length() - box.width()) < SQUARE_MM
        && SQUARES_MM.stream().anyMatch(mm -> Math.abs(box.length() - mm) < SQUARE_MM)
        && page.texts().stream()
            .filter(t -> near.contains(t.at()))
            .map(DrawnText::words)
            .anyMatch(words -> TEST_WORDS.matcher(words).matches());
  }
}
