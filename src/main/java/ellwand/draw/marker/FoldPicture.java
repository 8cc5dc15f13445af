package ellwand.draw.marker;

import ellwand.cloth.Fold;
import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The cloth seen from its cut end: its plies one above the other, as they lie on the table.
 *
 * @param widthMm of the picture
 * @param selvedges whether its edges are selvedges
 */
record FoldPicture(Fold fold, double widthMm, boolean selvedges, Reading reading) implements Block {

  /** How a marker's cloth lies; where some of it is opened later, that too, one after the other. */
  static Block of(Marker marker, double widthMm, Reading reading) {
    boolean selvedges = !ClothWords.cutAllRound(marker);
    Fold fold = ClothWords.lies(marker);
    if (fold == Fold.OPEN || ClothWords.opened(marker).isEmpty()) {
      return new FoldPicture(fold, widthMm, selvedges, reading);
    }
    double half = widthMm / 2;
    return new Block.Beside(
        new Step("First:", new FoldPicture(fold, half, selvedges, reading)),
        new Step("then:", new FoldPicture(Fold.OPEN, half, selvedges, reading)),
        half);
  }

  /** One of two pictures, with a word before it. */
  private record Step(String word, FoldPicture picture) implements Block {

    @Override
    public double heightMm() {
      return picture.heightMm();
    }

    @Override
    public List<Item> items(Point upperLeft) {
      List<Item> items = new ArrayList<>(picture.items(upperLeft));
      double y = upperLeft.y() - picture.reading.mm(7);
      items.add(
          Item.Text.of(
              "fold-word",
              word,
              new Point(upperLeft.x(), y),
              picture.reading.points(Reading.SMALL),
              Item.Anchor.START));
      return items;
    }
  }

  private static final double HEIGHT = 13;
  private static final double PLIES_APART = 3.2;
  private static final String TOGETHER = "wrong side up, right sides together";
  private static final String SHORTER = "right sides together";

  /** The right side of the cloth is drawn as a thick coloured line under or over the thin one. */
  private static final Colour RIGHT_SIDE = new Colour(0x56B4E9);

  @Override
  public double heightMm() {
    return reading.mm(HEIGHT);
  }

  @Override
  public List<Item> items(Point upperLeft) {
    Box strip =
        new Box(
            upperLeft.x() + reading.mm(10),
            upperLeft.y() - reading.mm(9),
            upperLeft.x() + widthMm - reading.mm(10),
            upperLeft.y() - reading.mm(4));
    List<Item> items = new ArrayList<>(List.of(table(strip)));
    switch (fold) {
      case OPEN -> {
        double y = strip.centre().y();
        items.addAll(ply(List.of(new Point(strip.minX(), y), new Point(strip.maxX(), y)), 1));
        items.addAll(words(strip, "selvedge", "right side up", "selvedge"));
      }
      case LENGTHWISE, STACKED -> {
        items.addAll(ply(turn(strip.maxX(), strip.minX(), strip.maxX(), strip), -1));
        items.addAll(words(strip, "fold", together(strip), "both selvedges"));
      }
      case PART -> {
        double over = strip.minX() + strip.length() * 0.4;
        items.addAll(ply(turn(strip.maxX(), strip.minX(), over, strip), -1));
        items.add(word("fold", strip.minX(), strip.maxY(), Item.Anchor.START));
        items.add(word("selvedge, wrong side up", over, strip.maxY(), Item.Anchor.MIDDLE));
        items.add(word("selvedge, right side up", strip.maxX(), strip.maxY(), Item.Anchor.END));
      }
      case DOUBLE -> {
        double meeting = strip.centre().x();
        double apart = reading.mm(0.8);
        List<Point> line = new ArrayList<>();
        line.addAll(turn(meeting, strip.maxX(), meeting + apart, strip));
        Collections.reverse(line);
        line.addAll(turn(meeting, strip.minX(), meeting - apart, strip));
        items.addAll(ply(line, -1));
        items.addAll(words(strip, "fold", "both selvedges, wrong sides up", "fold"));
      }
      case CROSSWISE -> {
        items.addAll(ply(turn(strip.maxX(), strip.minX(), strip.maxX(), strip), -1));
        items.addAll(words(strip, "fold across", TOGETHER, "both cut ends"));
      }
      case TURNED, FACE_TO_FACE -> {
        double low = strip.centre().y() - reading.mm(PLIES_APART / 2);
        double high = low + reading.mm(PLIES_APART);
        items.addAll(ply(List.of(new Point(strip.minX(), low), new Point(strip.maxX(), low)), 1));
        items.addAll(
            ply(List.of(new Point(strip.minX(), high), new Point(strip.maxX(), high)), -1));
        items.addAll(words(strip, "selvedges", TOGETHER, "selvedges"));
      }
      case TUBULAR -> {
        List<Point> line = new ArrayList<>();
        line.addAll(turn(strip.centre().x(), strip.minX(), strip.centre().x(), strip));
        List<Point> back = turn(strip.centre().x(), strip.maxX(), strip.centre().x(), strip);
        Collections.reverse(back);
        line.addAll(back);
        items.addAll(ply(line, 1));
        items.addAll(words(strip, "fold", "right side up, a tube", "fold"));
      }
    }
    return List.of(Item.Group.of("fold-picture", items));
  }

  private String together(Box strip) {
    return strip.length() < reading.mm(90) ? SHORTER : TOGETHER;
  }

  private List<Item> words(Box strip, String left, String middle, String right) {
    return List.of(
        word(left, strip.minX(), strip.maxY(), Item.Anchor.START),
        word(middle, strip.centre().x(), strip.maxY(), Item.Anchor.MIDDLE),
        word(right, strip.maxX(), strip.maxY(), Item.Anchor.END));
  }

  /** A lower ply that begins at one place, turns up round a fold and ends at another. */
  private List<Point> turn(double from, double fold, double to, Box strip) {
    double low = strip.centre().y() - reading.mm(PLIES_APART / 2);
    double radius = reading.mm(PLIES_APART) / 2;
    double outward = fold < from ? -1 : 1;
    List<Point> line = new ArrayList<>();
    line.add(new Point(from, low));
    for (int i = 0; i <= 16; i++) {
      double angle = -Math.PI / 2 + Math.PI * i / 16;
      line.add(
          new Point(
              fold - outward * radius + outward * radius * Math.cos(angle),
              low + radius + radius * Math.sin(angle)));
    }
    line.add(new Point(to, low + 2 * radius));
    return line;
  }

  /**
   * One ply as a thin line with the right side marked beside it.
   *
   * @param side 1 if the right side lies to the left of the line as it runs, -1 if to the right
   */
  private List<Item> ply(List<Point> line, int side) {
    double offset = reading.mm(0.45) * side;
    List<Point> marked = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      Point a = line.get(Math.max(0, i - 1));
      Point b = line.get(Math.min(line.size() - 1, i + 1));
      marked.add(line.get(i).plus(b.minus(a).unit().left().times(offset)));
    }
    return List.of(
        Item.Lines.open(
            "right-side", Ink.line(RIGHT_SIDE, reading.mm(0.7)), marked.toArray(Point[]::new)),
        Item.Lines.open("ply", Ink.line(Colour.INK, reading.mm(0.35)), line.toArray(Point[]::new)));
  }

  private Item table(Box strip) {
    double y = strip.minY() - reading.mm(1.2);
    return Item.Lines.open(
        "table",
        Ink.line(Colour.PALE, reading.mm(0.8)),
        new Point(strip.minX() - reading.mm(6), y),
        new Point(strip.maxX() + reading.mm(6), y));
  }

  private Item word(String words, double x, double y, Item.Anchor anchor) {
    return Item.Text.of(
        "fold-word",
        selvedges ? words : words.replace("selvedge", "edge"),
        new Point(x, y + reading.mm(0.6)),
        reading.points(Reading.SMALL),
        anchor);
  }
}
