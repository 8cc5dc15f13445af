package ellwand.draw.marker;

import ellwand.cloth.Fold;
import ellwand.cloth.Zone;
import ellwand.draw.piece.PieceLines;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Ruler;
import ellwand.draw.sheet.Shown;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is drawn round the cloth and over the pieces: fold edges, ends, words, rulers. */
record ClothSurround(ShownCloth cloth, Reading reading, Shown shown) {

  /** Room on paper for one row of words beside the cloth, mm. */
  private static final double WORDS = 3.4;

  /** How far apart words along one edge stand on paper, mm. */
  private static final double WORDS_APART = 70;

  /** Room on paper for how the cloth lies, over the far ruler, mm. */
  private static final double CAPTION = 4.5;

  /** Room on paper for words at the end of the marker, mm. */
  private static final double WORDS_AT_END = 27;

  /** The cloth with all the words and rulers round it. */
  Box box() {
    Box seen = cloth.box();
    double beside = reading.mm(WORDS + Ruler.DEPTH + 1);
    return new Box(
        seen.minX() - beside - reading.mm(2),
        seen.minY() - beside - (cloth.sideBySide() ? reading.mm(CAPTION) : 0),
        seen.maxX() + reading.mm(cloth.sideBySide() ? WORDS_AT_END : WORDS + 1.5),
        seen.maxY() + beside + reading.mm(CAPTION));
  }

  List<Item> items(PieceLines lines) {
    List<Item> items = new ArrayList<>();
    items.add(Item.Group.of("edges", edges(lines)));
    items.add(Item.Group.of("ends", ends()));
    items.addAll(rulers());
    items.add(Item.Group.of("zone-words", captions()));
    return items;
  }

  /** Fold edges, and a word along each edge of the cloth. */
  private List<Item> edges(PieceLines lines) {
    List<Item> items = new ArrayList<>();
    Box all = cloth.box();
    for (Zone zone : cloth.zones()) {
      Box box = cloth.seen(zone);
      if (zone.foldEdges().contains(Zone.Side.LOW_X)) {
        items.add(
            lines.fold(
                new Point(box.minX(), cloth.low(zone)), new Point(box.minX(), cloth.high(zone))));
      }
      for (Zone.Side side : List.of(Zone.Side.LOW_Y, Zone.Side.HIGH_Y)) {
        boolean low = side == Zone.Side.LOW_Y;
        boolean outside = low ? cloth.isNear(zone) : cloth.isFar(zone);
        double edge = low ? box.minY() : box.maxY();
        double beyond = low ? all.minY() : cloth.high(zone);
        if (zone.foldEdges().contains(side)) {
          items.add(lines.fold(new Point(box.minX(), edge), new Point(box.maxX(), edge)));
          items.addAll(along(box, low, beyond, "fold"));
        } else if (cloth.isSelvedge(zone, side) && !cloth.cutAllRound()) {
          if (outside) {
            boolean border = ClothWords.borderSide(cloth.marker()).equals(Optional.of(side));
            items.addAll(
                along(box, low, beyond, border ? "selvedge with the border" : selvedges(zone)));
          } else if (!low) {
            items.addAll(inside(box, cloth.high(zone)));
          }
        } else if (outside && cloth.marker().lay().cloth().tubular()) {
          items.addAll(along(box, low, beyond, "cut open"));
        }
      }
    }
    return items;
  }

  /**
   * Where a selvedge that is folded over lies on the cloth; told at the end of the marker, unless
   * the cloth is opened before that.
   */
  private List<Item> inside(Box box, double y) {
    double size = reading.points(7.5);
    boolean meet = cloth.marker().fold() == Fold.DOUBLE && ClothWords.besideMm(cloth.marker()) == 0;
    Item edge =
        Item.Lines.open(
            "turned-in-edge",
            Ink.line(Colour.INK, reading.mm(0.5)),
            new Point(box.minX(), y),
            new Point(box.maxX(), y));
    if (box.maxX() < cloth.box().maxX()) {
      return List.of(edge);
    }
    return List.of(
        edge,
        Item.Text.of(
            "edge-word",
            meet ? "selvedges meet" : "selvedge",
            new Point(
                cloth.box().maxX() + reading.mm(WORDS + 1), y - size * Lettering.CAPITALS / 2),
            size,
            Item.Anchor.START));
  }

  /** A word repeated along an edge, outside the cloth. */
  private List<Item> along(Box box, boolean below, double edge, String word) {
    double size = reading.points(7.5);
    int times = (int) Math.max(1, Math.round(box.length() / reading.mm(WORDS_APART)));
    if (Lettering.width(word, size) > box.length()) {
      return List.of();
    }
    double y = below ? edge - reading.mm(0.7) - size * Lettering.CAPITALS : edge + reading.mm(0.9);
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      double x = box.minX() + box.length() * (i + 0.5) / times;
      items.add(Item.Text.of("edge-word", word, new Point(x, y), size, Item.Anchor.MIDDLE));
    }
    return items;
  }

  private List<Item> ends() {
    Box all = cloth.box();
    double size = reading.points(7.5);
    double x = cloth.marker().lengthMm();
    Ink heavy = Ink.line(Colour.INK, reading.mm(0.6));
    List<Item> items = new ArrayList<>();
    boolean folded = cloth.zones().get(0).foldEdges().contains(Zone.Side.LOW_X);
    Box start = cloth.at(0);
    Box end = cloth.at(x);
    if (!folded && !cloth.cutAllRound()) {
      items.add(
          Item.Lines.open(
              "cut-end", heavy, new Point(0, start.minY()), new Point(0, start.maxY())));
    }
    items.add(
        Item.Text.of(
                "end-word",
                ClothWords.start(cloth.marker()),
                new Point(-reading.mm(0.9), start.centre().y()),
                size,
                Item.Anchor.MIDDLE)
            .turned(90));
    items.add(
        Item.Lines.open(
            "marker-end",
            Ink.line(Colour.INK, reading.mm(0.6), reading.mm(2.5), reading.mm(1.5)),
            new Point(x, end.minY()),
            new Point(x, end.maxY())));
    boolean left = all.maxX() - x > reading.mm(WORDS);
    String words = (left ? "the marker ends at " : "end of marker ") + shown.length(x);
    items.add(
        Item.Text.of(
                "end-word",
                words,
                new Point(all.maxX() + reading.mm(1) + size * Lettering.CAPITALS, end.centre().y()),
                size,
                Item.Anchor.MIDDLE)
            .turned(90));
    return items;
  }

  private List<Item> rulers() {
    Box all = cloth.box();
    double words = reading.mm(WORDS);
    Point right = new Point(1, 0);
    Point up = new Point(0, 1);
    Point down = new Point(0, -1);
    List<Item> items = new ArrayList<>();
    Point near = new Point(0, all.minY() - words);
    items.add(
        new Ruler("ruler-near", near, right, down, 0, all.maxX()).draw(reading, shown.unit()));
    for (Zone zone : cloth.zones()) {
      if (cloth.isFar(zone)) {
        Box box = cloth.seen(zone);
        Point far = new Point(0, cloth.high(zone) + words);
        items.add(
            new Ruler("ruler-far-" + items.size(), far, right, up, box.minX(), box.maxX())
                .draw(reading, shown.unit()));
      }
    }
    Point across = new Point(-words, 0);
    items.add(
        new Ruler("ruler-across", across, up, new Point(-1, 0), 0, cloth.marker().markerWidthMm())
            .draw(reading, shown.unit()));
    return items;
  }

  /** Over the far ruler, how the cloth lies in each zone. */
  private List<Item> captions() {
    List<Item> items = new ArrayList<>();
    Box all = cloth.box();
    double size = reading.points(8);
    for (Zone zone : cloth.zones()) {
      double beside = reading.mm(WORDS + Ruler.DEPTH + 0.8);
      double y = cloth.isFar(zone) ? cloth.high(zone) + beside : all.minY() - beside - size;
      Box box = cloth.seen(zone);
      if (box.minX() > 0) {
        items.add(border(box.minX(), y + size));
      }
      Point at = new Point(box.minX() + reading.mm(1), y);
      double room = box.length() - reading.mm(2);
      for (String words : List.of(ClothWords.of(zone, shown), zone.id())) {
        if (Lettering.width(words, size) <= room) {
          items.add(Item.Text.of("zone-word", words, at, size, Item.Anchor.START));
          break;
        }
      }
    }
    return items;
  }

  /** Two thin lines where the cloth is opened, unlike the end of the marker. */
  private Item border(double x, double top) {
    double beside = reading.mm(0.5);
    double low = cloth.box().minY();
    return new Item.Lines(
        "zone-border",
        List.of(
            List.of(new Point(x - beside, low), new Point(x - beside, top)),
            List.of(new Point(x + beside, low), new Point(x + beside, top))),
        false,
        Ink.line(Colour.INK, reading.mm(0.2)));
  }

  /** What ends the plies of a zone across; only one selvedge where the fold is off the middle. */
  private String selvedges(Zone zone) {
    return zone.plies() == 2 && ClothWords.offMiddleMm(cloth.marker()) == 0
        ? "both selvedges"
        : "selvedge";
  }
}
