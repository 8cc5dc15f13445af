package ellwand.draw.marker;

import ellwand.cutting.CutPiece;
import ellwand.draw.piece.Labelling;
import ellwand.draw.piece.PieceLines;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.figures.Figures;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Form;
import ellwand.lay.Lay;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cloth with its copies, true to size in the marker's own frame. */
final class MarkerPicture {

  private static final double RING = 2.4;

  private final Marker marker;
  private final List<Laid> laid;
  private final Palette palette;
  private final Reading reading;
  private final PieceLines lines;
  private final CopyLettering labels;
  private final ClothPicture cloth;
  private final ClothSurround surround;
  private final WishPicture wishes;
  private List<Item> items;

  MarkerPicture(
      Marker marker,
      Figures figures,
      List<Laid> laid,
      Palette palette,
      Reading reading,
      Shown shown) {
    this.marker = marker;
    this.laid = laid;
    this.palette = palette;
    this.reading = reading;
    this.lines = new PieceLines(reading);
    this.labels = new CopyLettering(marker, laid, List.of());
    ShownCloth seen = new ShownCloth(marker);
    this.cloth = new ClothPicture(seen, reading, shown);
    this.surround = new ClothSurround(seen, reading, shown);
    this.wishes = new WishPicture(seen, figures, reading, shown);
  }

  Box box() {
    Box box = surround.box();
    return new Box(box.minX(), box.minY() - wishes.belowMm(), box.maxX(), box.maxY());
  }

  /** The cloth alone. */
  Box cloth() {
    return cloth.cloth().box();
  }

  Reading reading() {
    return reading;
  }

  /** Made once. */
  List<Item> items() {
    if (items == null) {
      items = List.copyOf(made());
    }
    return items;
  }

  private List<Item> made() {
    List<Item> items = new ArrayList<>();
    items.add(cloth.item());
    items.addAll(wishes.under());
    List<List<Item>> lettering = laid.stream().map(this::lettering).toList();
    OutsideNumbers outside = outside(lettering);
    List<Item> copies = copies(lettering, outside);
    new KeepOutPicture(marker, outside, reading).items().ifPresent(items::add);
    items.add(Item.Group.of("copies", copies));
    // Over the fills, which would hide it, but too light to disturb the lines.
    List<Box> words = Item.texts(copies).map(Item.Text::box).toList();
    new RepeatPicture(marker, reading, words).items().ifPresent(items::add);
    items.addAll(surround.items(lines));
    items.addAll(wishes.over(surround.box().minY()));
    return items;
  }

  /** Numbers outside come last, since they keep off the words inside. */
  private OutsideNumbers outside(List<List<Item>> lettering) {
    List<Outline> occupied = new ArrayList<>();
    laid.forEach(l -> occupied.add(l.copy().outline()));
    marker.keepOuts().forEach(k -> occupied.add(k.outline()));
    occupied.addAll(wishes.occupied());
    List<Box> words = lettering.stream().flatMap(Item::texts).map(Item.Text::box).toList();
    return new OutsideNumbers(occupied, words, reading);
  }

  private List<Item> copies(List<List<Item>> lettering, OutsideNumbers outside) {
    List<Item> copies = new ArrayList<>();
    for (int i = 0; i < laid.size(); i++) {
      boolean lettered = Item.texts(lettering.get(i)).findAny().isPresent();
      List<Item> number = lettered ? List.of() : outside.number(laid.get(i));
      copies.add(copy(laid.get(i), lettering.get(i), number));
    }
    return copies;
  }

  private Item copy(Laid copy, List<Item> lettering, List<Item> number) {
    List<Item> items = new ArrayList<>();
    CutPiece inPlace = copy.cut();
    // What is drawn as cutting line is what was checked, not what was worked out again here.
    Outline cutting = copy.copy().outline();
    Optional<CutPiece.Stroke> fold =
        copy.copy().form() == Form.HALF ? inPlace.fold() : Optional.empty();
    items.addAll(lines.cutting(cutting, fold, palette.fill(copy.piece())));
    items.addAll(palette.hatching(copy.piece(), cutting.points(), reading));
    items.addAll(lines.inside(inPlace));
    if (marker.lay().cloth().repeat().isPresent()) {
      copy.marks().forEach(at -> items.add(ring(at)));
    }
    items.addAll(lettering);
    items.addAll(number);
    return new Item.Group(
        "copy-" + copy.number(),
        "copy piece-" + (palette.index(copy.piece()) + 1),
        Optional.of(copy.title(marker.lay().style(), labels.manyGarments())),
        Optional.of(copy.number()),
        items);
  }

  /** Round a place that asks for its place in the repeat. */
  private Item ring(Point at) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double angle = 2 * Math.PI * i / 24;
      points.add(at.plus(new Point(Math.cos(angle), Math.sin(angle)).times(reading.mm(RING / 2))));
    }
    return Item.Lines.closed("mark", Ink.line(Colour.INK, reading.mm(0.3)), points);
  }

  private List<Item> lettering(Laid copy) {
    Labelling.Lettered found = labels.on(copy, reading);
    List<Item> items =
        new ArrayList<>(
            lines.arrow(
                found.arrow(), Laid.oneHeaded(Lay.direction(marker.lay().cloth(), copy.cut()))));
    found
        .label()
        .ifPresent(
            label -> {
              items.add(label.ground(palette.fill(copy.piece()), reading));
              items.addAll(label.items(reading));
            });
    return items;
  }
}
