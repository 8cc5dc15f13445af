package ellwand.file.pdf;

import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.DrawnText;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lays pages beside one another: joined at their frames, or apart. */
final class Pages {

  /** Frames of two pages that differ by less are the same, mm. */
  private static final double SAME_MM = 0.5;

  /** A frame takes at least this share of its page each way. */
  private static final double FRAME_SHARE = 0.6;

  private static final double APART_MM = 50;

  /** Lines whose places differ by less are one line drawn twice, mm. */
  private static final double TWICE_MM = 0.2;

  /**
   * A page as read.
   *
   * @param box of the paper, mm
   * @param marked those of its lines that the file calls furniture
   */
  record Page(Box box, List<DrawnLine> lines, List<DrawnText> texts, Set<DrawnLine> marked) {

    private Page without(Optional<Box> frame) {
      return new Page(
          box,
          lines.stream()
              .filter(l -> !isLike(l, box) && frame.filter(f -> isLike(l, f)).isEmpty())
              .toList(),
          texts,
          marked);
    }
  }

  private final List<DrawnLine> lines = new ArrayList<>();
  private final List<DrawnText> texts = new ArrayList<>();
  private final SamePlaces<DrawnLine> known = new SamePlaces<>(TWICE_MM);
  private final SamePlaces<DrawnText> written = new SamePlaces<>(SAME_MM);
  private final Furniture furniture;

  /**
   * @param furniture what is to be left out of them
   */
  Pages(Furniture furniture) {
    this.furniture = furniture;
  }

  List<DrawnLine> lines() {
    return lines;
  }

  List<DrawnText> texts() {
    return texts;
  }

  /** Pages that have nothing to do with one another. */
  void apart(List<Page> pages) {
    double right = 0;
    for (Page page : pages) {
      put(page.without(Optional.empty()), new Motion(false, 0, right - page.box.minX(), 0));
      right += page.box.length() + APART_MM;
    }
  }

  /**
   * Pages of one pattern, joined at the frame that all of them have, by the lines that they share,
   * or at their edges.
   *
   * @param said takes how they were joined
   */
  void joined(List<Page> pages, Tiling tiling, List<String> said) {
    Optional<Box> frame = frame(pages);
    if (frame.isEmpty() && pages.size() > 1 && joinedByLines(pages, said)) {
      return;
    }
    double width = frame.map(Box::length).orElse(pages.get(0).box.length());
    double height = frame.map(Box::width).orElse(pages.get(0).box.width());
    said.add(
        String.format(
            Locale.ROOT,
            "%d pages are joined at %s, %.1f x %.1f mm each.",
            pages.size(),
            frame.isPresent() ? "the frame that each has" : "their edges, since they have no frame",
            width,
            height));
    for (int i = 0; i < pages.size(); i++) {
      Page page = pages.get(i);
      Box own = frame.flatMap(f -> likeIn(page, f)).orElse(page.box);
      int column = i % tiling.columns();
      int row = i / tiling.columns();
      put(
          page.without(Optional.of(own)),
          new Motion(false, 0, column * width - own.minX(), -row * height - own.minY()));
    }
  }

  /** Whether pages that share lines were joined by these; those that share none lie apart. */
  private boolean joinedByLines(List<Page> pages, List<String> said) {
    List<Map<Integer, Point>> groups = SharedLines.groups(pages, furniture);
    if (groups.size() == pages.size()) {
      return false;
    }
    double right = 0;
    int alone = 0;
    for (Map<Integer, Point> group : groups) {
      Box all =
          group.entrySet().stream()
              .map(e -> pages.get(e.getKey()).box.shifted(e.getValue().x(), e.getValue().y()))
              .reduce(Box::union)
              .orElseThrow();
      double beside = right - all.minX();
      group.forEach(
          (number, shift) ->
              put(pages.get(number), new Motion(false, 0, shift.x() + beside, shift.y())));
      right += all.length() + APART_MM;
      alone += group.size() == 1 ? 1 : 0;
    }
    said.add(
        pages.size()
            + " pages are joined by the lines that they share"
            + (alone == 0
                ? "."
                : ", but for %d that %s none and %s apart."
                    .formatted(
                        alone, alone == 1 ? "shares" : "share", alone == 1 ? "lies" : "lie")));
    return true;
  }

  /** What was drawn at the same place already, as by pages that clip one drawing, is left out. */
  private void put(Page page, Motion motion) {
    for (DrawnLine line : page.lines) {
      DrawnLine moved = line.moved(motion);
      List<Point> samples = SamePlaces.samples(moved, new Point(0, 0));
      int segments = moved.path().segments().size();
      if (!furniture.holds(line) && known.find(segments, samples).isEmpty()) {
        known.put(segments, samples, moved);
        lines.add(moved);
      }
    }
    for (DrawnText text : page.texts) {
      DrawnText moved = new DrawnText(text.words(), motion.apply(text.at()), text.label());
      List<Point> at = List.of(moved.at());
      if (written.find(moved.words(), at).isEmpty()) {
        written.put(moved.words(), at, moved);
        texts.add(moved);
      }
    }
  }

  /** The largest rectangle that stands on every page in the same size. */
  private static Optional<Box> frame(List<Page> pages) {
    return rectangles(pages.get(0)).stream()
        .filter(box -> pages.stream().allMatch(page -> likeIn(page, box).isPresent()))
        .max(Comparator.comparingDouble(Box::area));
  }

  private static Optional<Box> likeIn(Page page, Box frame) {
    return rectangles(page).stream()
        .filter(
            box ->
                Math.abs(box.length() - frame.length()) < SAME_MM
                    && Math.abs(box.width() - frame.width()) < SAME_MM)
        .findFirst();
  }

  private static List<Box> rectangles(Page page) {
    return page.lines.stream()
        .filter(Pages::isRectangle)
        .map(Pages::box)
        .filter(
            box ->
                // What runs beyond the paper is a piece that many pages show a part of.
                page.box.grown(SAME_MM).contains(new Point(box.minX(), box.minY()))
                    && page.box.grown(SAME_MM).contains(new Point(box.maxX(), box.maxY()))
                    && box.length() >= FRAME_SHARE * page.box.length()
                    && box.width() >= FRAME_SHARE * page.box.width())
        .toList();
  }

  private static boolean isLike(DrawnLine line, Box box) {
    if (!isRectangle(line)) {
      return false;
    }
    Box own = box(line);
    return Math.abs(own.minX() - box.minX()) < SAME_MM
        && Math.abs(own.maxX() - box.maxX()) < SAME_MM
        && Math.abs(own.minY() - box.minY()) < SAME_MM
        && Math.abs(own.maxY() - box.maxY()) < SAME_MM;
  }

  static boolean isRectangle(DrawnLine line) {
    return line.closed()
        && line.path().segments().size() == 4
        && line.path().segments().stream().allMatch(Pages::isUpright);
  }

  private static boolean isUpright(Segment segment) {
    Point along = segment.end().minus(segment.start());
    return segment instanceof Segment.Line
        && Math.min(Math.abs(along.x()), Math.abs(along.y())) < SAME_MM;
  }

  static Box box(DrawnLine line) {
    return Box.around(line.path().segments().stream().map(Segment::start).toList());
  }
}
