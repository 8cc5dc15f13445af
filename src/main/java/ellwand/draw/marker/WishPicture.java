package ellwand.draw.marker;

import ellwand.cloth.Wish;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.figures.Figures;
import ellwand.figures.LeftOver;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the cutter wished for, where it is to be seen: straight cuts and the large left-over. That
 * of a remnant is always drawn, since it goes back on the shelf.
 */
record WishPicture(ShownCloth cloth, Figures figures, Reading reading, Shown shown) {

  private static final Colour LINE = new Colour(0xA03020);
  private static final Colour FREE = new Colour(0xF3EDE0);

  /** Room on paper for a row of words under the picture, mm. */
  private static final double WORDS = 4.5;

  private static final double LETTERS = 7.5;

  private boolean asked(Wish wish) {
    return figures.wishes().asked().contains(wish);
  }

  private Optional<LeftOver> leftOver() {
    return asked(Wish.ONE_LEFT_OVER) || figures.lies().remnant().isPresent()
        ? figures.onCloth().leftOvers().stream()
            .max(Comparator.comparingDouble(left -> left.plies() * left.areaMm2()))
        : Optional.empty();
  }

  private static Box box(LeftOver left) {
    return new Box(
        left.xMm(), left.yMm(), left.xMm() + left.lengthMm(), left.yMm() + left.widthMm());
  }

  /** Where nothing else should be written. */
  List<Outline> occupied() {
    return leftOver().map(left -> Outline.of(box(left))).stream().toList();
  }

  private List<Double> cuts() {
    return asked(Wish.STRAIGHT_CUTS) ? figures.handling().straightCutsAtMm() : List.of();
  }

  /** Room for words under the picture, mm; 0 if there are none. */
  double belowMm() {
    return cuts().isEmpty() ? 0 : reading.mm(WORDS);
  }

  /** The large left-over, to lie under the pieces. */
  List<Item> under() {
    return leftOver().map(this::free).stream().toList();
  }

  private Item free(LeftOver left) {
    Box box = box(left);
    List<Item> items = new ArrayList<>();
    items.add(
        Item.Lines.closed(
            "left-over",
            Ink.line(LINE, reading.mm(0.35), reading.mm(0.5), reading.mm(0.9)).filled(FREE),
            Outline.of(box).points()));
    String size = shown.number(left.lengthMm()) + " x " + shown.length(left.widthMm());
    double letters = reading.points(LETTERS);
    for (String words : List.of("left over, " + size, "left over", size)) {
      boolean along = Lettering.width(words, letters) <= 0.95 * box.length();
      if (along && letters <= box.width() || across(words, letters, box)) {
        double drop = letters * Lettering.CAPITALS / 2;
        Point middle = box.centre();
        Point at = along ? middle.plus(new Point(0, -drop)) : middle.plus(new Point(drop, 0));
        items.add(
            Item.Text.of("left-over-word", words, at, letters, Item.Anchor.MIDDLE)
                .turned(along ? 0 : 90)
                .in(LINE));
        break;
      }
    }
    return Item.Group.of("left-overs", items);
  }

  private static boolean across(String words, double letters, Box box) {
    return Lettering.width(words, letters) <= 0.95 * box.width() && letters <= box.length();
  }

  /**
   * Straight cuts over everything, each with its place.
   *
   * @param lowY where the room for words begins, downwards
   */
  List<Item> over(double lowY) {
    List<Item> items = new ArrayList<>();
    double size = reading.points(LETTERS);
    double taken = Double.NEGATIVE_INFINITY;
    for (double x : cuts()) {
      items.add(
          Item.Lines.open(
              "straight-cut",
              Ink.line(LINE, reading.mm(0.6), reading.mm(1.2), reading.mm(0.8)),
              new Point(x, cloth.at(x).minY()),
              new Point(x, cloth.at(x).maxY())));
      for (String words : List.of("cut across at " + shown.length(x), shown.number(x))) {
        double half = Lettering.width(words, size) / 2;
        if (x - half > taken) {
          Point at = new Point(x, lowY - reading.mm(1) - size);
          items.add(
              Item.Text.of("straight-cut-word", words, at, size, Item.Anchor.MIDDLE).in(LINE));
          taken = x + half + reading.mm(1.5);
          break;
        }
      }
    }
    return items.isEmpty() ? List.of() : List.of(Item.Group.of("straight-cuts", items));
  }
}
