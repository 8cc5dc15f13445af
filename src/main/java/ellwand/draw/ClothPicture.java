package ellwand.draw;

import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cloth under the pieces: zones, selvedges, fold edges, cut end, rulers. */
final class ClothPicture {

  /** Room on paper for one row of words beside the cloth, mm. */
  private static final double WORDS = 3.4;

  /** How far apart words along one edge stand on paper, mm. */
  private static final double WORDS_APART = 70;

  private static final double HATCH = 1.6;
  private static final double CAPTION = 4.5;
  private static final Colour CLOTH = new Colour(0xFBFAF6);

  private final Marker marker;
  private final Reading reading;
  private final Shown shown;
  private final double selvedge;

  ClothPicture(Marker marker, Reading reading, Shown shown) {
    this.marker = marker;
    this.reading = reading;
    this.shown = shown;
    this.selvedge = marker.lay().cloth().selvedgeMm();
  }

  /** The cloth that is seen, selvedges included. */
  private Box cloth() {
    Box box = marker.zones().get(0).box();
    for (Zone zone : marker.zones()) {
      Box b = zone.box();
      box =
          box.union(
              new Box(
                  b.minX(),
                  isSelvedge(zone, Zone.Side.LOW_Y) ? b.minY() - selvedge : b.minY(),
                  Math.max(b.minX(), Math.min(b.maxX(), end())),
                  isSelvedge(zone, Zone.Side.HIGH_Y) ? b.maxY() + selvedge : b.maxY()));
    }
    return new Box(box.minX(), box.minY(), Math.min(box.maxX(), end()), box.maxY());
  }

  private double end() {
    return end(marker);
  }

  /**
   * How far the cloth is shown, mm: to the marker's end, some of it even when nothing lies on it,
   * and all of a remnant.
   */
  static double end(Marker marker) {
    double length = marker.lay().cloth().lengthMm();
    return length < Double.POSITIVE_INFINITY ? length : Math.max(marker.lengthMm(), 100);
  }

  /** The cloth with all the words and rulers round it. */
  Box box() {
    Box cloth = cloth();
    double beside = reading.mm(WORDS + Ruler.DEPTH + 1);
    return new Box(
        cloth.minX() - beside - reading.mm(2),
        cloth.minY() - beside,
        cloth.maxX() + reading.mm(WORDS + 1.5),
        cloth.maxY() + beside + reading.mm(CAPTION));
  }

  private List<Zone> zones() {
    return marker.zones().stream().filter(z -> z.box().minX() < end() - 1e-6).toList();
  }

  private Box seen(Zone zone) {
    Box b = zone.box();
    return new Box(b.minX(), b.minY(), Math.min(b.maxX(), end()), b.maxY());
  }

  /** A side is a selvedge unless it is a fold edge or another zone lies against it. */
  private boolean isSelvedge(Zone zone, Zone.Side side) {
    Box box = zone.box();
    double y = side == Zone.Side.LOW_Y ? box.minY() : box.maxY();
    return !zone.foldEdges().contains(side)
        && marker.zones().stream()
            .filter(z -> z != zone)
            .map(Zone::box)
            .noneMatch(
                b ->
                    b.minX() < box.maxX()
                        && box.minX() < b.maxX()
                        && Math.abs((side == Zone.Side.LOW_Y ? b.maxY() : b.minY()) - y) < 0.5);
  }

  /** What lies under the pieces. */
  Item under() {
    List<Item> items = new ArrayList<>();
    for (Zone zone : zones()) {
      List<Item> parts = new ArrayList<>();
      Box box = seen(zone);
      parts.add(
          Item.Lines.closed(
              "cloth",
              Ink.line(Colour.GREY, reading.mm(0.25)).filled(CLOTH),
              Outline.of(box).points()));
      for (Zone.Side side : Zone.Side.values()) {
        if (isSelvedge(zone, side) && selvedge > 0) {
          parts.addAll(hatched(strip(box, side)));
        }
      }
      items.add(
          new Item.Group(
              "zone-" + (items.size() + 1),
              "zone",
              Optional.of(ClothWords.of(zone, shown)),
              parts));
    }
    return Item.Group.of("cloth", items);
  }

  /** A remnant without selvedges. */
  private boolean cutAllRound() {
    return selvedge == 0 && marker.lay().cloth().stock().isPresent();
  }

  private Box strip(Box box, Zone.Side side) {
    return side == Zone.Side.LOW_Y
        ? new Box(box.minX(), box.minY() - selvedge, box.maxX(), box.minY())
        : new Box(box.minX(), box.maxY(), box.maxX(), box.maxY() + selvedge);
  }

  private List<Item> hatched(Box strip) {
    List<List<Point>> lines = new ArrayList<>();
    double step = reading.mm(HATCH);
    for (double x = strip.minX(); x + strip.width() <= strip.maxX(); x += step) {
      lines.add(List.of(new Point(x, strip.minY()), new Point(x + strip.width(), strip.maxY())));
    }
    return List.of(
        Item.Lines.closed(
            "selvedge",
            Ink.line(Colour.GREY, reading.mm(0.25)).filled(Colour.WHITE),
            Outline.of(strip).points()),
        new Item.Lines("selvedge-hatching", lines, false, Ink.line(Colour.GREY, reading.mm(0.12))));
  }

  /** What lies over the pieces and round the cloth. */
  List<Item> over(PieceLines lines) {
    List<Item> items = new ArrayList<>();
    items.add(Item.Group.of("edges", edges(lines)));
    items.add(Item.Group.of("ends", ends()));
    items.addAll(rulers());
    items.add(Item.Group.of("zone-words", captions()));
    return items;
  }

  private List<Item> edges(PieceLines lines) {
    List<Item> items = new ArrayList<>();
    Box cloth = cloth();
    for (Zone zone : zones()) {
      Box box = seen(zone);
      for (Zone.Side side : Zone.Side.values()) {
        boolean low = side == Zone.Side.LOW_Y;
        double edge = low ? box.minY() : box.maxY();
        boolean outer =
            low ? edge < cloth.minY() + selvedge + 1 : edge > cloth.maxY() - selvedge - 1;
        if (zone.foldEdges().contains(side)) {
          items.add(lines.fold(new Point(box.minX(), edge), new Point(box.maxX(), edge)));
          items.addAll(along(box, low, low ? cloth.minY() : edge, "fold"));
        } else if (isSelvedge(zone, side) && !cutAllRound()) {
          double beyond = outer ? (low ? cloth.minY() : cloth.maxY()) : edge + selvedge;
          items.addAll(along(box, low, beyond, zone.plies() == 2 ? "both selvedges" : "selvedge"));
        }
      }
    }
    return items;
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
    Box cloth = cloth();
    double size = reading.points(7.5);
    double x = marker.lengthMm();
    Ink heavy = Ink.line(Colour.INK, reading.mm(0.6));
    List<Item> items = new ArrayList<>();
    Zone first = zones().get(0);
    Zone last = zones().get(zones().size() - 1);
    items.add(
        Item.Lines.open("cut-end", heavy, new Point(0, low(first)), new Point(0, high(first))));
    items.add(
        Item.Text.of(
                "end-word",
                "cut end",
                new Point(-reading.mm(0.9), (low(first) + high(first)) / 2),
                size,
                Item.Anchor.MIDDLE)
            .turned(90));
    items.add(
        Item.Lines.open(
            "marker-end",
            Ink.line(Colour.INK, reading.mm(0.6), reading.mm(2.5), reading.mm(1.5)),
            new Point(x, low(last)),
            new Point(x, high(last))));
    String words = "end of marker " + shown.length(x);
    items.add(
        Item.Text.of(
                "end-word",
                words,
                new Point(
                    cloth.maxX() + reading.mm(1) + size * Lettering.CAPITALS,
                    (low(last) + high(last)) / 2),
                size,
                Item.Anchor.MIDDLE)
            .turned(90));
    return items;
  }

  private double low(Zone zone) {
    return zone.box().minY() - (isSelvedge(zone, Zone.Side.LOW_Y) ? selvedge : 0);
  }

  private double high(Zone zone) {
    return zone.box().maxY() + (isSelvedge(zone, Zone.Side.HIGH_Y) ? selvedge : 0);
  }

  private List<Item> rulers() {
    Box cloth = cloth();
    double words = reading.mm(WORDS);
    Point right = new Point(1, 0);
    Point up = new Point(0, 1);
    Point down = new Point(0, -1);
    List<Item> items = new ArrayList<>();
    Point near = new Point(0, cloth.minY() - words);
    items.add(new Ruler("ruler-near", near, right, down, 0, cloth.maxX()).draw(reading, unit()));
    for (Zone zone : zones()) {
      if (isFar(zone)) {
        Box box = seen(zone);
        Point far = new Point(0, high(zone) + words);
        items.add(
            new Ruler("ruler-far-" + items.size(), far, right, up, box.minX(), box.maxX())
                .draw(reading, unit()));
      }
    }
    Point across = new Point(-words, 0);
    items.add(
        new Ruler("ruler-across", across, up, new Point(-1, 0), 0, marker.markerWidthMm())
            .draw(reading, unit()));
    return items;
  }

  private Unit unit() {
    return shown.unit();
  }

  /** Whether no other zone lies beyond this one across the cloth. */
  private boolean isFar(Zone zone) {
    return zones().stream()
        .noneMatch(
            z ->
                z.box().minY() > zone.box().minY()
                    && z.box().minX() < zone.box().maxX()
                    && zone.box().minX() < z.box().maxX());
  }

  /** Over the far ruler, how the cloth lies in each zone. */
  private List<Item> captions() {
    List<Item> items = new ArrayList<>();
    Box cloth = cloth();
    double size = reading.points(8);
    for (Zone zone : zones()) {
      double y = (isFar(zone) ? high(zone) : cloth.maxY()) + reading.mm(WORDS + Ruler.DEPTH + 0.8);
      Box box = seen(zone);
      if (box.minX() > 0) {
        items.add(
            Item.Lines.open(
                "zone-border",
                Ink.line(Colour.INK, reading.mm(0.6), reading.mm(2.5), reading.mm(1.5)),
                new Point(box.minX(), cloth.minY()),
                new Point(box.minX(), y + size)));
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
}
