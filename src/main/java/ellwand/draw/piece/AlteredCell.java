package ellwand.draw.piece;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Paragraphs;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * One piece before and after, top up: dashed what it was, full what it is, its marks numbered, and
 * under it what was done.
 */
final class AlteredCell {

  private static final Motion TOP_UP = new Motion(false, 90, 0, 0);

  /** Widths and lengths on paper, mm. */
  private static final double THIN = 0.25;

  private static final double HEAVY = 0.5;
  private static final double CROSS = 0.35;
  private static final double ARM = 1.2;
  private static final double NARROWEST = 58;

  private final AlteredPiece piece;
  private final Colour fill;
  private final Reading reading;
  private final Outline before;
  private final Outline after;

  AlteredCell(AlteredPiece piece, Colour fill, Reading reading) {
    this.piece = piece;
    this.fill = fill;
    this.reading = reading;
    this.before = piece.before().moved(TOP_UP);
    this.after = piece.after().moved(TOP_UP);
  }

  private Box lines() {
    Box both = before.box().union(after.box());
    for (AlteredPiece.Done done : piece.steps()) {
      if (done.mark().isPresent()) {
        both = both.union(Box.around(List.of(TOP_UP.apply(done.mark().get()))));
      }
    }
    return both.grown(reading.mm(3));
  }

  private double width() {
    return Math.max(lines().length(), reading.mm(NARROWEST));
  }

  private Block words() {
    List<Block> lines = new ArrayList<>();
    lines.add(paragraph(piece.name(), List.of()));
    for (int i = 0; i < piece.steps().size(); i++) {
      lines.add(paragraph("", List.of(i + 1 + ". " + piece.steps().get(i).words())));
    }
    return new Block.Stack(lines, 0);
  }

  private Block paragraph(String heading, List<String> sentences) {
    return new Paragraphs("step", heading, sentences, Reading.SMALL, Colour.INK, width(), reading);
  }

  /** Everything drawn, the words under it included. */
  Box box() {
    Box lines = lines();
    return new Box(
        lines.minX(),
        lines.minY() - reading.mm(2) - words().heightMm(),
        lines.minX() + width(),
        lines.maxY());
  }

  List<Item> items() {
    List<Item> items = new ArrayList<>();
    items.add(Item.Lines.closed("outline", Ink.area(fill.tint(0.6)), after.points()));
    items.add(
        Item.Lines.closed(
            "before",
            Ink.line(Colour.INK, reading.mm(THIN), reading.mm(1.6), reading.mm(1.0)),
            before.points()));
    if (!piece.lines().isEmpty()) {
      items.add(
          new Item.Lines(
              "inner-line",
              piece.lines().stream().map(AlteredCell::topUp).toList(),
              false,
              Ink.line(Colour.GREY, reading.mm(THIN), reading.mm(4), reading.mm(0.8))));
    }
    items.add(Item.Lines.closed("after", Ink.line(Colour.INK, reading.mm(HEAVY)), after.points()));
    piece
        .fold()
        .map(AlteredCell::topUp)
        .ifPresent(f -> items.add(new PieceLines(reading).fold(f.get(0), f.get(f.size() - 1))));
    items.addAll(marks());
    Box lines = lines();
    items.addAll(words().items(new Point(lines.minX(), lines.minY() - reading.mm(2))));
    return items;
  }

  private static List<Point> topUp(List<Point> line) {
    return line.stream().map(TOP_UP::apply).toList();
  }

  /** A cross at each mark, and its number beside it where it is clear of the others. */
  private List<Item> marks() {
    List<Item> items = new ArrayList<>();
    List<Box> taken = new ArrayList<>();
    double size = reading.points(Reading.SMALL);
    double arm = reading.mm(ARM);
    for (int i = 0; i < piece.steps().size(); i++) {
      if (piece.steps().get(i).mark().isEmpty()) {
        continue;
      }
      Point at = TOP_UP.apply(piece.steps().get(i).mark().get());
      String number = Integer.toString(i + 1);
      Box words = clear(at, Lettering.width(number, size), size, taken);
      taken.add(words);
      items.add(
          new Item.Lines(
              "mark",
              List.of(
                  List.of(at.plus(new Point(-arm, -arm)), at.plus(new Point(arm, arm))),
                  List.of(at.plus(new Point(-arm, arm)), at.plus(new Point(arm, -arm)))),
              false,
              Ink.line(Colour.INK, reading.mm(HEAVY))));
      items.add(
          Item.Lines.closed("mark-ground", Ink.area(Colour.WHITE), Outline.of(words).points()));
      items.add(
          Item.Text.of(
                  "mark-number",
                  number,
                  new Point(words.centre().x(), words.centre().y() - size * Lettering.CAPITALS / 2),
                  size,
                  Item.Anchor.MIDDLE)
              .strongly());
    }
    return items;
  }

  private Box clear(Point at, double width, double height, List<Box> taken) {
    Box first = null;
    for (int round = 0; round < 3; round++) {
      double away = reading.mm(3.2 + 2.5 * round);
      for (int turn = 0; turn < 8; turn++) {
        double angle = Math.PI / 4 * (turn + 0.5);
        Point middle = at.plus(new Point(Math.cos(angle), Math.sin(angle)).times(away));
        Box box =
            new Box(
                middle.x() - width / 2 - height * 0.1,
                middle.y() - height * 0.45,
                middle.x() + width / 2 + height * 0.1,
                middle.y() + height * 0.45);
        first = first == null ? box : first;
        if (taken.stream().noneMatch(t -> t.touches(box))
            && !Room.crosses(ring(after), box)
            && !Room.crosses(ring(before), box)) {
          return box;
        }
      }
    }
    return first;
  }

  private static List<Point> ring(Outline outline) {
    List<Point> ring = new ArrayList<>(outline.points());
    ring.add(ring.get(0));
    return ring;
  }
}
