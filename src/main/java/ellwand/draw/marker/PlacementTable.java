package ellwand.draw.marker;

import ellwand.cloth.Zone;
import ellwand.draw.sheet.Block;
import ellwand.draw.sheet.Reading;
import ellwand.draw.sheet.Shown;
import ellwand.draw.sheet.Table;
import ellwand.draw.sheet.Table.Column;
import ellwand.geometry.Box;
import ellwand.lay.Heading;
import ellwand.lay.Marker;
import ellwand.lay.Wanted;
import ellwand.pattern.Grain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Where each copy lies, so that it can be laid out with chalk and a tape, and what is to be cut.
 *
 * @param shown how lengths are written
 */
record PlacementTable(Marker marker, List<Laid> laid, Shown shown) {

  private static final Reading TRUE_SIZE = new Reading(1);

  /** What is shown as more than no degrees. */
  private static final double SEEN_DEGREES = 0.05;

  String cloth() {
    return marker.lay().cloth().name();
  }

  private Table places() {
    return new Table(
        List.of(
            Column.numbers(11, "", "no."),
            Column.words(32, "", "piece"),
            Column.words(14, "", "size"),
            Column.numbers(10, "gar-", "ment"),
            Column.words(31, "", "cut as"),
            Column.words(18, "top", "points"),
            Column.numbers(15, "from", ClothWords.start(marker)),
            Column.numbers(15, "", "to"),
            Column.numbers(15, "across", "from"),
            Column.numbers(15, "", "to"),
            Column.numbers(14, "grain", "line at")),
        true,
        TRUE_SIZE);
  }

  Block placesHead() {
    return places().head();
  }

  /** The copies of one zone. */
  List<Block> placesRows(Zone zone) {
    return laid.stream()
        .filter(l -> l.zone().equals(zone))
        .map(l -> places().row(cells(l)))
        .toList();
  }

  private List<String> cells(Laid copy) {
    Box box = copy.copy().outline().box();
    return List.of(
        Integer.toString(copy.number()),
        copy.piece(),
        copy.copy().size(),
        copy.copy().garments().stream()
            .map(garment -> Integer.toString(garment))
            .collect(Collectors.joining(", ")),
        copy.form(),
        top(copy, copy.cut().piece().grain()),
        shown.number(box.minX()),
        shown.number(box.maxX()),
        shown.number(box.minY()),
        shown.number(box.maxY()),
        shown.number(copy.grain().through().y()));
  }

  private static String top(Laid copy, Grain grain) {
    double turn = ((copy.copy().motion().turnDegrees() % 360) + 360) % 360;
    String top = copy.copy().heading() == Heading.UP ? "away" : "to " + copy.start();
    if (leans(copy)) {
      double lean = copy.leanDegrees();
      return String.format(
          Locale.ROOT, "%s, %.1f deg %s", top, Math.abs(lean), lean > 0 ? "left" : "right");
    }
    return grain.anywhere() && turn % 180 != 0
        ? String.format(Locale.ROOT, "%.0f deg left", turn)
        : top;
  }

  /** Whether anybody could lay it so much off its grain. */
  private static boolean leans(Laid copy) {
    return Math.abs(copy.leanDegrees()) >= SEEN_DEGREES;
  }

  /** What distances across are measured from in a zone. */
  String across(Zone zone) {
    if (zone.foldEdges().contains(Zone.Side.LOW_Y)) {
      return "across is measured from the fold";
    }
    if (!ClothWords.fromSelvedge(marker, zone)) {
      return "across is measured from the first fold";
    }
    if (marker.lay().cloth().selvedgeMm() == 0) {
      return "across is measured from the edge of the cloth at the bottom of the picture";
    }
    return "across is measured from the inner edge of the selvedge at the bottom of the picture"
        + ClothWords.borderSide(marker)
            .map(
                side ->
                    side == Zone.Side.LOW_Y ? ", the one with the border" : ", not the border's")
            .orElse("");
  }

  private static Table wanted() {
    return new Table(
        List.of(
            Column.words(45, "piece"),
            Column.words(18, "size"),
            Column.words(38, "cut"),
            Column.numbers(15, "pieces"),
            Column.words(74, "numbers in the picture")),
        false,
        TRUE_SIZE);
  }

  Block wantedHead() {
    return wanted().head();
  }

  /** Each piece in each size: how it is cut and how many there must be in the end. */
  List<Block> wantedRows() {
    Map<List<String>, List<Wanted>> groups =
        marker.lay().wanted().stream()
            .collect(
                Collectors.groupingBy(
                    w -> List.of(w.cut().name(), w.size()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    List<Block> rows = new ArrayList<>();
    for (List<Wanted> group : groups.values()) {
      Wanted one = group.get(0);
      int n = group.size();
      String how =
          switch (one.how()) {
            case WHOLE -> Integer.toString(n);
            case FOLD -> n + " on the fold or opened";
            case PAIR -> n == 1 ? "1 pair" : n + " pairs";
          };
      int pieces =
          group.stream().mapToInt(w -> w.how() == ellwand.pattern.Cut.How.PAIR ? 2 : 1).sum();
      rows.add(
          wanted()
              .row(
                  List.of(
                      one.cut().name(), one.size(), how, Integer.toString(pieces), numbers(one))));
    }
    return rows;
  }

  private String numbers(Wanted wanted) {
    return laid.stream()
        .filter(l -> l.piece().equals(wanted.cut().name()))
        .filter(l -> l.copy().size().equals(wanted.size()))
        .map(l -> Integer.toString(l.number()))
        .collect(Collectors.joining(", "));
  }

  /** How to read the places. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Lengths in "
            + shown.unitWords()
            + ", "
            + shown.rounding()
            + ", measured to the cutting line; from and to are its nearest and farthest points.");
    notes.add(
        "Lay the piece with its grain line along the cloth at the distance in the last column, then"
            + " slide it until its nearest point lies at the distance from the "
            + ClothWords.start(marker)
            + ".");
    if (laid.stream().anyMatch(PlacementTable::leans)) {
      notes.add(
          "A piece with degrees is turned so far off its grain, to the left or the right as seen"
              + " from above (1 degree is 1.7 in 100), and slid until its nearest points lie at"
              + " both distances under from.");
    }
    notes.add(
        "Tops point away from the "
            + ClothWords.start(marker)
            + " or to it. Tick each piece when it is cut.");
    return notes;
  }
}
