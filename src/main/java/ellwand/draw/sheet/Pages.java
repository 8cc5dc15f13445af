package ellwand.draw.sheet;

import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fills upright A4 pages with blocks, from the top down, at true size. */
public final class Pages {

  /** Kept at the foot of each page for its number, mm. */
  public static final double FOOT = 8;

  /** Of headings, points. */
  private static final double HEADING = 12;

  /** Room that a heading keeps under it: a table's head and a row or two, mm. */
  public static final double KEPT = 25;

  private static final double WIDTH = Paper.A4.innerWidthMm();
  private static final double HEIGHT = Paper.A4.innerHeightMm() - FOOT;

  /** So many sentences always have room on one page. */
  private static final int SENTENCES_TOGETHER = 12;

  private final String title;
  private final List<List<Item>> pages = new ArrayList<>();
  private double used = Double.POSITIVE_INFINITY;

  public Pages(String title) {
    this.title = title;
  }

  public static double widthMm() {
    return WIDTH;
  }

  /** A block that stays whole. */
  public void add(Block block) {
    add(block, 0);
  }

  /**
   * A block that stays whole.
   *
   * @param keptMm room that must be left under it, so that a heading never ends a page
   */
  public void add(Block block, double keptMm) {
    if (used > 0 && used + block.heightMm() + keptMm > HEIGHT) {
      turn();
    }
    place(block);
  }

  /** A table; its head comes again on every page. */
  public void add(Block head, List<Block> rows) {
    if (rows.isEmpty()) {
      return;
    }
    add(head, rows.get(0).heightMm());
    for (Block row : rows) {
      if (used + row.heightMm() > HEIGHT) {
        turn();
        place(head);
      }
      place(row);
    }
  }

  /** Leaves some of the page white, unless it has just begun. */
  public void space(double mm) {
    used = used > 0 ? used + mm : used;
  }

  private void turn() {
    pages.add(new ArrayList<>());
    used = 0;
  }

  private void place(Block block) {
    pages.get(pages.size() - 1).addAll(block.items(new Point(0, HEIGHT - used)));
    used += block.heightMm();
  }

  public List<Drawing> drawings() {
    return pages.stream().map(p -> new Drawing(title, new Box(0, 0, WIDTH, HEIGHT), p)).toList();
  }

  /** The line at the foot of a page. */
  public static Drawing foot(String title, int page, int pages, Paper paper) {
    double size = new Reading(1).points(Reading.SMALL);
    double width = paper.innerWidthMm();
    String number = "page " + page + " of " + pages;
    String about = Lettering.shortened(title, size, width - Lettering.width(number, size) - size);
    return new Drawing(
        title,
        new Box(0, 0, width, FOOT),
        List.of(
            Item.Text.of("foot", about, new Point(0, 1), size, Item.Anchor.START).in(Colour.GREY),
            Item.Text.of("foot", number, new Point(width, 1), size, Item.Anchor.END)
                .in(Colour.GREY)));
  }

  /** Sentences, perhaps under a small heading, over as many pages as they need. */
  public void add(String heading, List<String> sentences) {
    for (int from = 0; from < sentences.size(); from += SENTENCES_TOGETHER) {
      int to = Math.min(sentences.size(), from + SENTENCES_TOGETHER);
      sentences(from == 0 ? heading : "", sentences.subList(from, to)).ifPresent(this::add);
    }
  }

  /** Puts a heading over what follows, with room for a table's head and a row or two under it. */
  public void head(String words) {
    add(heading(words, HEADING), KEPT);
  }

  /** A heading over what follows. */
  public static Block heading(String words, double points) {
    Reading reading = new Reading(1);
    String fitting = Lettering.shortened(words, reading.points(points), WIDTH * 0.95);
    return new Paragraphs("heading", fitting, List.of(), points, Colour.INK, WIDTH, reading);
  }

  /** Sentences, perhaps under a small heading. */
  public static Optional<Block> sentences(String heading, List<String> sentences) {
    return sentences.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Paragraphs(
                "note", heading, sentences, Reading.TEXT, Colour.INK, WIDTH, new Reading(1)));
  }
}
