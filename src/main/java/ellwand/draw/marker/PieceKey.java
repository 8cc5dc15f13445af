package ellwand.draw.marker;

import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Colour;
import ellwand.draw.sheet.Ink;
import ellwand.draw.sheet.Item;
import ellwand.draw.sheet.Lettering;
import ellwand.draw.sheet.Palette;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Box;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Sizes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Which colour and which numbers are which piece, in columns.
 *
 * @param numbers of each kind of piece, see {@link #numbers}
 */
record PieceKey(Map<String, String> numbers, Palette palette, double widthMm, Reading reading)
    implements Block {

  private static final double ROW = 4.8;
  private static final double SWATCH = 3.6;
  private static final double COLUMN = 45;

  /** More would leave no room for the marker. */
  private static final int MOST_ROWS = 12;

  private int columns() {
    double longest =
        palette.kinds().stream()
            .mapToDouble(
                k -> Lettering.width(k + ": " + numbers.get(k), reading.points(Reading.TEXT)))
            .max()
            .orElse(0);
    double column = Math.max(reading.mm(COLUMN), longest + reading.mm(SWATCH + 5));
    return Math.max(1, (int) (widthMm / column));
  }

  private int rows() {
    return Math.min(MOST_ROWS, (palette.kinds().size() + columns() - 1) / columns());
  }

  /** As many kinds as there is room for, with room to say how many more there are. */
  private List<String> kinds() {
    int room = MOST_ROWS * columns();
    List<String> all = palette.kinds();
    return all.size() <= room ? all : all.subList(0, room - 1);
  }

  @Override
  public double heightMm() {
    return rows() * reading.mm(ROW);
  }

  @Override
  public List<Item> items(Point upperLeft) {
    List<Item> items = new ArrayList<>();
    double column = widthMm / columns();
    double size = reading.points(Reading.TEXT);
    int more = palette.kinds().size() - kinds().size();
    if (more > 0) {
      double x = upperLeft.x() + (columns() - 1) * column;
      double y = upperLeft.y() - reading.mm(ROW) * (rows() - 1) - reading.mm(SWATCH) * 0.84;
      String words = "and " + more + " more kinds of pieces";
      items.add(Item.Text.of("key", words, new Point(x, y), size, Item.Anchor.START));
    }
    for (String kind : kinds()) {
      int index = palette.index(kind);
      double x = upperLeft.x() + index / rows() * column;
      double y = upperLeft.y() - reading.mm(ROW) * (index % rows());
      double side = reading.mm(SWATCH);
      Box swatch = new Box(x, y - side, x + side, y);
      items.add(
          Item.Lines.closed(
              "swatch",
              Ink.line(Colour.INK, reading.mm(0.25)).filled(palette.fill(kind)),
              Outline.of(swatch).points()));
      items.addAll(palette.hatching(kind, Outline.of(swatch).points(), reading));
      double room = column - side - reading.mm(4);
      String which = ": " + numbers.get(kind);
      double forName = Math.max(room / 3, room - Lettering.width(which, size));
      String words = Lettering.shortened(kind, size, forName) + which;
      items.add(
          Item.Text.of(
              "key",
              Lettering.shortened(words, size, room),
              new Point(x + side + reading.mm(1.5), y - side * 0.84),
              size,
              Item.Anchor.START));
    }
    return List.of(Item.Group.of("key", items));
  }

  /** The numbers of each kind of piece, told by size where there are several. */
  static Map<String, String> numbers(List<Laid> laid) {
    boolean manySizes = laid.stream().map(l -> l.copy().size()).distinct().count() > 1;
    Map<String, Map<String, List<Laid>>> bySize =
        laid.stream()
            .collect(
                Collectors.groupingBy(
                    Laid::piece,
                    Collectors.groupingBy(
                        l -> l.copy().size(), LinkedHashMap::new, Collectors.toList())));
    Map<String, String> numbers = new HashMap<>();
    bySize.forEach(
        (kind, sizes) ->
            numbers.put(
                kind,
                sizes.entrySet().stream()
                    .map(e -> listed(e.getValue()) + (manySizes ? inSize(e.getKey()) : ""))
                    .collect(Collectors.joining("; "))));
    return numbers;
  }

  private static String listed(List<Laid> copies) {
    return copies.stream().map(l -> Integer.toString(l.number())).collect(Collectors.joining(", "));
  }

  private static String inSize(String size) {
    return " (" + Sizes.words(size) + ")";
  }
}
