package ellwand.draw.marker;

import ellwand.cloth.Band;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.cloth.Repeat;
import ellwand.cloth.Zone;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The middles of the cloth's bars, drawn lightly, and its border. */
final class RepeatPicture {

  private static final Colour LINE = new Colour(0x9A7B4F);

  /** How far beside a bar the line stands that shows an uneven repeat, as a share of it. */
  private static final double BESIDE = 0.15;

  private final Marker marker;
  private final Reading reading;
  private final List<Box> words;

  /**
   * @param words what no line runs through
   */
  RepeatPicture(Marker marker, Reading reading, List<Box> words) {
    this.marker = marker;
    this.reading = reading;
    this.words = words;
  }

  Optional<Item> items() {
    return marker.lay().cloth().repeatLaid(marker.fold()).map(this::lines);
  }

  private Item lines(Repeat repeat) {
    Optional<LaidCloth> laid = LaidCloth.like(marker.lay().cloth(), marker.fold(), marker.zones());
    List<List<Point>> bars = new ArrayList<>();
    List<List<Point>> beside = new ArrayList<>();
    List<List<Point>> borders = new ArrayList<>();
    double selvedge = marker.lay().cloth().selvedgeMm();
    ShownCloth shown = new ShownCloth(marker);
    for (Zone zone : shown.zones()) {
      Box seen = shown.seen(zone);
      Optional<Band> band = laid.flatMap(l -> l.band(zone.id()));
      if (band.isPresent()) {
        Ply ply = band.get().layers().get(band.get().layers().size() - 1);
        bars(repeat, seen, ply, selvedge, bars);
        beside(repeat, seen, ply, selvedge, beside);
        repeat
            .borderMm()
            .map(mm -> ply.laid(mm - selvedge))
            .filter(y -> y >= seen.minY() && y <= seen.maxY())
            .ifPresent(
                y -> borders.add(List.of(new Point(seen.minX(), y), new Point(seen.maxX(), y))));
      }
    }
    return Item.Group.of(
        "repeat",
        List.of(
            new Item.Lines("bar", clear(bars), false, Ink.line(LINE, reading.mm(0.12))),
            new Item.Lines(
                "uneven",
                clear(beside),
                false,
                Ink.line(LINE, reading.mm(0.12), reading.mm(0.6), reading.mm(0.9))),
            new Item.Lines("border", clear(borders), false, Ink.line(LINE, reading.mm(0.4)))));
  }

  /** Lines along or across the cloth without what of them runs through words. */
  private List<List<Point>> clear(List<List<Point>> lines) {
    List<List<Point>> clear = new ArrayList<>();
    for (List<Point> line : lines) {
      Point from = line.get(0);
      Point to = line.get(1);
      boolean along = from.y() == to.y();
      List<Box> over =
          words.stream()
              .map(box -> along ? box : new Box(box.minY(), box.minX(), box.maxY(), box.maxX()))
              .filter(box -> between(along ? from.y() : from.x(), box.minY(), box.maxY()))
              .sorted(Comparator.comparingDouble(Box::minX))
              .toList();
      double at = along ? from.x() : from.y();
      double end = along ? to.x() : to.y();
      for (Box box : over) {
        if (box.maxX() > at && box.minX() < end) {
          addLine(clear, from, along, at, box.minX());
          at = box.maxX();
        }
      }
      addLine(clear, from, along, at, end);
    }
    return clear;
  }

  private static boolean between(double value, double low, double high) {
    return value > low && value < high;
  }

  private static void addLine(
      List<List<Point>> lines, Point on, boolean along, double from, double to) {
    if (to > from) {
      lines.add(
          along
              ? List.of(new Point(from, on.y()), new Point(to, on.y()))
              : List.of(new Point(on.x(), from), new Point(on.x(), to)));
    }
  }

  private static void bars(
      Repeat repeat, Box seen, Ply ply, double selvedge, List<List<Point>> bars) {
    double start = ply.laid(repeat.startAcrossMm() - selvedge);
    for (double y : steps(start, repeat.acrossMm(), seen.minY(), seen.maxY())) {
      bars.add(List.of(new Point(seen.minX(), y), new Point(seen.maxX(), y)));
      if (repeat.halfDrop()) {
        boolean odd = Math.rint((y - start) / repeat.acrossMm()) % 2 != 0;
        double x0 = repeat.startAlongMm() + (odd ? repeat.alongMm() / 2 : 0);
        double reach = repeat.acrossMm() / 4;
        for (double x : steps(x0, repeat.alongMm(), seen.minX(), seen.maxX())) {
          bars.add(
              List.of(
                  new Point(x, Math.max(seen.minY(), y - reach)),
                  new Point(x, Math.min(seen.maxY(), y + reach))));
        }
      }
    }
    if (!repeat.halfDrop()) {
      for (double x : steps(repeat.startAlongMm(), repeat.alongMm(), seen.minX(), seen.maxX())) {
        bars.add(List.of(new Point(x, seen.minY()), new Point(x, seen.maxY())));
      }
    }
  }

  /** A second line on the same side of each bar, where the repeat has no mirror line that way. */
  private static void beside(
      Repeat repeat, Box seen, Ply ply, double selvedge, List<List<Point>> lines) {
    if (!repeat.evenAcross()) {
      double start = ply.laid(repeat.startAcrossMm() + BESIDE * repeat.acrossMm() - selvedge);
      for (double y : steps(start, repeat.acrossMm(), seen.minY(), seen.maxY())) {
        lines.add(List.of(new Point(seen.minX(), y), new Point(seen.maxX(), y)));
      }
    }
    if (!repeat.evenAlong() && !repeat.halfDrop()) {
      double start = repeat.startAlongMm() + BESIDE * repeat.alongMm();
      for (double x : steps(start, repeat.alongMm(), seen.minX(), seen.maxX())) {
        lines.add(List.of(new Point(x, seen.minY()), new Point(x, seen.maxY())));
      }
    }
  }

  private static List<Double> steps(double start, double step, double from, double to) {
    List<Double> at = new ArrayList<>();
    if (step > 0) {
      double first = start + step * Math.ceil((from - start) / step);
      for (int i = 0; first + i * step <= to; i++) {
        at.add(first + i * step);
      }
    }
    return at;
  }
}
