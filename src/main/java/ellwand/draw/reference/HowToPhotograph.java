package ellwand.draw.reference;

import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Drawing;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Paper;
import ellwand.draw.sheet.Paragraphs;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The page before the sheets: how a photo is taken, in pictures, and a square to measure. What is
 * wrong is crossed out.
 */
final class HowToPhotograph {

  private static final Ink LINE = Ink.line(Colour.INK, 0.3);
  private static final Ink DASHED = Ink.line(Colour.INK, 0.3, 2.0, 1.2);
  private static final Ink CROSS = Ink.line(Colour.INK, 0.9);
  private static final Ink DARK = Ink.area(Colour.GREY);
  private static final Ink PALE = Ink.area(Colour.PALE.tint(0.5));
  private static final Ink WHITE = LINE.filled(Colour.WHITE);
  private static final Ink BLACK = Ink.area(Colour.INK);

  /** Of a picture and of what is said under it, mm. */
  private static final double PICTURE = 46;

  private static final double WORDS = 22;
  private static final double GAP = 6;
  private static final double SQUARE = 100;

  private final Reading reading = new Reading(1);
  private final List<Item> items = new ArrayList<>();
  private final double width;

  private HowToPhotograph(double width) {
    this.width = width;
  }

  /** For pages of a paper, in its margins. */
  static Drawing page(Paper paper) {
    HowToPhotograph page = new HowToPhotograph(paper.innerWidthMm());
    Box frame = new Box(0, 0, paper.innerWidthMm(), paper.innerHeightMm());
    page.draw(frame.maxY());
    return new Drawing("How to photograph a paper piece", frame, page.items);
  }

  private void draw(double top) {
    double title = reading.points(Reading.TITLE);
    items.add(
        Item.Text.of(
                "title",
                "How to photograph a paper piece",
                new Point(0, top - title),
                title,
                Item.Anchor.START)
            .strongly());
    double half = (width - GAP) / 2;
    double first = top - title * 1.6;
    double second = first - PICTURE - WORDS;
    double right = half + GAP;
    light(new Box(0, first - PICTURE, half, first));
    ground(new Box(right, first - PICTURE, width, first));
    view(new Box(0, second - PICTURE, half, second));
    many(new Box(right, second - PICTURE, width, second));
    test(second - PICTURE - WORDS);
  }

  private void words(Box picture, String words) {
    Point at = new Point(picture.minX(), picture.minY() - 1.5);
    items.addAll(
        new Paragraphs(
                "words", "", List.of(words), Reading.TEXT, Colour.INK, picture.length(), reading)
            .items(at));
  }

  /** Even light from a window, and no flash. */
  private void light(Box box) {
    area(PALE, box);
    double y = box.minY() + 8;
    Box window = new Box(box.minX() + 4, y + 8, box.minX() + 16, y + 32);
    area(WHITE, window);
    line(LINE, window.centre().x(), window.minY(), window.centre().x(), window.maxY());
    line(LINE, window.minX(), window.centre().y(), window.maxX(), window.centre().y());
    for (int i = 0; i < 4; i++) {
      double from = window.maxY() - 4 - i * 6;
      line(DASHED, window.maxX() + 2, from, box.minX() + 46 - i * 5, y + 3);
    }
    area(BLACK, new Box(box.minX() + 22, y - 1.5, box.maxX() - 30, y));
    area(WHITE, new Box(box.minX() + 27, y, box.maxX() - 34, y + 0.8));
    double x = box.maxX() - 18;
    closed(
        BLACK,
        new Point(x, y + 30),
        new Point(x - 7, y + 15),
        new Point(x - 1, y + 16),
        new Point(x - 4, y + 4),
        new Point(x + 7, y + 20),
        new Point(x + 1, y + 19),
        new Point(x + 5, y + 30));
    cross(new Box(x - 10, y + 4, x + 10, y + 30));
    words(
        box,
        "Even light from one side or from all round, no flash and no hard shadows. Hold the"
            + " camera still.");
  }

  /** Pale paper on dark ground, not on pale. */
  private void ground(Box box) {
    double middle = box.centre().x();
    Box good = new Box(box.minX(), box.minY(), middle - 1.5, box.maxY());
    Box bad = new Box(middle + 1.5, box.minY(), box.maxX(), box.maxY());
    area(DARK, good);
    area(LINE, bad);
    for (Box ground : List.of(good, bad)) {
      piece(new Point(ground.minX() + 4, ground.minY() + 6), 0.75);
      sheet(ground.maxX() - 14, ground.minY() + 12, 0);
    }
    cross(new Box(bad.minX() + 6, bad.minY() + 5, bad.maxX() - 6, bad.maxY() - 5));
    words(
        box,
        "An even ground of quite another colour than the paper. Paper and sheets lie flat, smoothed"
            + " out, taped down where they curl, and do not touch.");
  }

  /** The camera over the middle, with all of it in view. */
  private void view(Box box) {
    area(PALE, box);
    double y = box.minY() + 6;
    double x = box.minX() + 30;
    area(BLACK, new Box(box.minX() + 6, y - 1.5, box.minX() + 56, y));
    area(WHITE, new Box(box.minX() + 14, y, box.minX() + 40, y + 0.8));
    area(BLACK, new Box(box.minX() + 42, y, box.minX() + 50, y + 0.8));
    camera(new Point(x, y + 34));
    line(DASHED, x, y + 31, box.minX() + 8, y);
    line(DASHED, x, y + 31, box.minX() + 53, y);
    camera(new Point(box.minX() + 66, y + 27));
    line(DASHED, box.minX() + 64, y + 24, x, y + 1);
    cross(new Box(box.minX() + 59, y + 20, box.minX() + 73, y + 34));
    words(
        box,
        "From above, with all of the piece, some ground round it and at least one whole sheet close"
            + " to it in view. No more slanting than 35 degrees, no nearer than needed.");
  }

  /** Sheets all round, photos that overlap. */
  private void many(Box box) {
    area(DARK, box);
    closed(
        WHITE,
        new Point(box.minX() + 14, box.minY() + 14),
        new Point(box.maxX() - 14, box.minY() + 17),
        new Point(box.maxX() - 14, box.maxY() - 17),
        new Point(box.minX() + 26, box.maxY() - 12),
        new Point(box.minX() + 14, box.maxY() - 18));
    double middle = box.centre().x();
    sheet(box.minX() + 2.5, box.minY() + 16, 0);
    sheet(middle + 7, box.maxY() - 12, 90);
    sheet(middle + 7, box.minY() + 2, 90);
    sheet(box.maxX() - 11, box.minY() + 16, 0);
    Ink frame = Ink.line(Colour.WHITE, 0.5, 2.0, 1.2);
    area(frame, new Box(box.minX() + 1.5, box.minY() + 1.5, middle + 12, box.maxY() - 1));
    area(frame, new Box(middle - 12, box.minY() + 1, box.maxX() - 1.5, box.maxY() - 1.5));
    words(
        box,
        "A large piece has sheets of different numbers on all sides. Several photos of it overlap,"
            + " and have whole sheets in common. Nothing is moved between them.");
  }

  private void test(double top) {
    Box square = new Box(0, top - SQUARE, SQUARE, top);
    area(Ink.line(Colour.INK, 0.2), square);
    double size = reading.points(Reading.VALUE);
    items.add(
        Item.Text.of("test-words", "100 mm each way", square.centre(), size, Item.Anchor.MIDDLE));
    double left = SQUARE + GAP;
    items.addAll(
        new Paragraphs(
                "words",
                "Before the first photo",
                List.of(
                    "Print this page and the sheets at 100 % ('actual size'), not fitted to the"
                        + " page.",
                    "Measure this square, and the chequered field of every sheet. What is wrong"
                        + " there is wrong in every piece.",
                    "Leave the paper of the sheets uncut: its edge shows whether they were printed"
                        + " at 100 %.",
                    "Paper that is thin or rolled up serves badly; what lies flat measures best.",
                    "To try a camera, photograph two sheets as far apart as a piece is long:"
                        + " convert --check tells how well one is measured by the other."),
                Reading.TEXT,
                Colour.INK,
                width - left,
                reading)
            .items(new Point(left, top)));
  }

  private void area(Ink ink, Box box) {
    closed(ink, Outline.of(box).points().toArray(new Point[0]));
  }

  private void closed(Ink ink, Point... points) {
    items.add(Item.Lines.closed("picture", ink, List.of(points)));
  }

  private void line(Ink ink, double x1, double y1, double x2, double y2) {
    items.add(Item.Lines.open("picture", ink, new Point(x1, y1), new Point(x2, y2)));
  }

  private void cross(Box box) {
    line(CROSS, box.minX(), box.minY(), box.maxX(), box.maxY());
    line(CROSS, box.minX(), box.maxY(), box.maxX(), box.minY());
  }

  private void piece(Point at, double scale) {
    double[][] shape = {{0, 0}, {24, 2}, {22, 22}, {17, 28}, {12, 36}, {3, 36}, {5, 20}};
    Point[] points = new Point[shape.length];
    for (int i = 0; i < points.length; i++) {
      points[i] = at.plus(new Point(shape[i][0] * scale, shape[i][1] * scale));
    }
    closed(WHITE, points);
  }

  /** A small sheet: its paper and some of its squares. */
  private void sheet(double x, double y, double turnDegrees) {
    Motion motion = new Motion(false, turnDegrees, x, y);
    closed(
        WHITE, Outline.of(new Box(0, 0, 8.4, 11.9)).moved(motion).points().toArray(new Point[0]));
    for (int row = 0; row < 5; row++) {
      for (int column = row % 2; column < 4; column += 2) {
        double left = 1 + column * 1.6;
        double low = 2.6 + row * 1.7;
        Box square = new Box(left, low, left + 1.6, low + 1.7);
        closed(BLACK, Outline.of(square).moved(motion).points().toArray(new Point[0]));
      }
    }
  }

  private void camera(Point at) {
    area(BLACK, new Box(at.x() - 6, at.y() - 2, at.x() + 6, at.y() + 3));
    area(BLACK, new Box(at.x() - 2, at.y() - 3.5, at.x() + 2, at.y() - 2));
  }
}
