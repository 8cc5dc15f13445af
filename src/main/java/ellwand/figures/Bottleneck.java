package ellwand.figures;

import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Pieces that keep a marker from being shorter: one that is as long as it, several of which no two
 * lie side by side, or more than one row of them can hold.
 *
 * @param pieces names, the widest first
 * @param copies how many of them there are
 * @param rows how many of them must lie one behind the other
 * @param lengthMm of that many
 */
public record Bottleneck(List<String> pieces, int copies, int rows, double lengthMm) {

  /** A marker that is longer by more than this share is not bound by its pieces. */
  private static final double SLACK = 0.06;

  private static final double SAME_MM = 0.01;

  /** A copy and the box round it. */
  private record Lying(Copy copy, Box box) {}

  /** Copies with the least length of cloth that they take as rectangles. */
  private record Bound(List<Lying> copies, int rows, double lengthMm) {

    static final Bound NONE = new Bound(List.of(), 0, 0);

    Bound behind(Bound other) {
      return new Bound(
          Stream.of(copies, other.copies).flatMap(List::stream).toList(),
          rows + other.rows,
          lengthMm + other.lengthMm);
    }
  }

  public Bottleneck {
    pieces = List.copyOf(pieces);
  }

  /** What binds the marker, if its length is nearly that of the pieces in question. */
  public static Optional<Bottleneck> of(Marker marker) {
    // Zones beside one another share their length, those behind one another add theirs.
    Map<Double, Bound> stretches = new TreeMap<>();
    marker
        .zones()
        .forEach(
            zone ->
                stretches.merge(
                    zone.box().minX(),
                    longest(
                        marker.copies().stream()
                            .filter(c -> c.zone().equals(zone.id()))
                            .map(c -> new Lying(c, c.outline().box()))
                            .toList(),
                        zone.box().width()),
                    (a, b) -> b.lengthMm() > a.lengthMm() ? b : a));
    Bound all = stretches.values().stream().reduce(Bound.NONE, Bound::behind);
    if (all.lengthMm() < marker.lengthMm() * (1 - SLACK)) {
      return Optional.empty();
    }
    List<String> names =
        all.copies().stream()
            .sorted(Comparator.comparingDouble((Lying c) -> -c.box.width()))
            .map(c -> c.copy.piece())
            .distinct()
            .toList();
    return Optional.of(new Bottleneck(names, all.copies().size(), all.rows(), all.lengthMm()));
  }

  /** That which is longest but no longer than the copies lie, since slanted ones may interlock. */
  private static Bound longest(List<Lying> copies, double zoneMm) {
    if (copies.isEmpty()) {
      return Bound.NONE;
    }
    double from = copies.stream().mapToDouble(c -> c.box.minX()).min().orElseThrow();
    double to = copies.stream().mapToDouble(c -> c.box.maxX()).max().orElseThrow();
    return Stream.concat(oneByOne(copies, zoneMm).stream(), inRows(copies, zoneMm).stream())
        .filter(r -> r.lengthMm() <= to - from + SAME_MM)
        .max(Comparator.comparingDouble(Bound::lengthMm))
        .orElse(Bound.NONE);
  }

  /**
   * Copies of which every two are together wider than the zone. All but one of them are wider than
   * half of it; for each that might be that one, those too wide to lie beside it are known at once.
   */
  private static List<Bound> oneByOne(List<Lying> copies, double zoneMm) {
    List<Bound> rows = new ArrayList<>();
    rows.add(oneByOne(wider(copies, zoneMm / 2)));
    List<Lying> longestFirst = new ArrayList<>(copies);
    longestFirst.sort(Comparator.comparingDouble(c -> -c.box.length()));
    Set<Long> widths = new HashSet<>();
    for (Lying narrow : longestFirst) {
      // Of those that are as wide as one another the longest binds most.
      if (2 * narrow.box.width() <= zoneMm && widths.add(thousandths(narrow.box.width()))) {
        List<Lying> row = new ArrayList<>(wider(copies, zoneMm - narrow.box.width()));
        row.add(narrow);
        rows.add(oneByOne(row));
      }
    }
    return rows;
  }

  private static Bound oneByOne(List<Lying> copies) {
    return new Bound(copies, copies.size(), copies.stream().mapToDouble(c -> c.box.length()).sum());
  }

  /**
   * Copies so long that on cloth of n - 1 such lengths every one of them would cross one of n - 1
   * lines across it; where that is more than such lines can hold, n lengths are needed.
   */
  private static List<Bound> inRows(List<Lying> copies, double zoneMm) {
    Map<Long, Double> lengths = new TreeMap<>();
    copies.forEach(c -> lengths.putIfAbsent(thousandths(c.box.length()), c.box.length()));
    return lengths.values().stream()
        .map(
            length -> {
              List<Lying> atLeast =
                  copies.stream().filter(c -> c.box.length() >= length - SAME_MM).toList();
              double lines = atLeast.stream().mapToDouble(c -> c.box.width()).sum() / zoneMm;
              int rows = (int) Math.ceil(lines - 1e-6);
              return new Bound(atLeast, rows, rows * length);
            })
        .toList();
  }

  private static long thousandths(double mm) {
    return Math.round(mm * 1000);
  }

  private static List<Lying> wider(List<Lying> copies, double mm) {
    return copies.stream().filter(c -> c.box.width() > mm).toList();
  }
}
