package ellwand.figures;

import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /** Copies with the least length of cloth that they take as rectangles. */
  private record Bound(List<Copy> copies, int rows, double lengthMm) {

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
                        marker.copies().stream().filter(c -> c.zone().equals(zone.id())).toList(),
                        zone.box().width()),
                    (a, b) -> b.lengthMm() > a.lengthMm() ? b : a));
    Bound all = stretches.values().stream().reduce(Bound.NONE, Bound::behind);
    if (all.lengthMm() < marker.lengthMm() * (1 - SLACK)) {
      return Optional.empty();
    }
    List<String> names =
        all.copies().stream()
            .sorted(Comparator.comparingDouble((Copy c) -> -box(c).width()))
            .map(Copy::piece)
            .distinct()
            .toList();
    return Optional.of(new Bottleneck(names, all.copies().size(), all.rows(), all.lengthMm()));
  }

  /** That which is longest but no longer than the copies lie, since slanted ones may interlock. */
  private static Bound longest(List<Copy> copies, double zoneMm) {
    if (copies.isEmpty()) {
      return Bound.NONE;
    }
    double from = copies.stream().mapToDouble(c -> box(c).minX()).min().orElseThrow();
    double to = copies.stream().mapToDouble(c -> box(c).maxX()).max().orElseThrow();
    return Stream.concat(oneByOne(copies, zoneMm).stream(), inRows(copies, zoneMm).stream())
        .filter(r -> r.lengthMm() <= to - from + SAME_MM)
        .max(Comparator.comparingDouble(Bound::lengthMm))
        .orElse(Bound.NONE);
  }

  /**
   * Copies of which every two are together wider than the zone. All but one of them are wider than
   * half of it; for each that might be that one, those too wide to lie beside it are known at once.
   */
  private static List<Bound> oneByOne(List<Copy> copies, double zoneMm) {
    List<Bound> rows = new ArrayList<>();
    rows.add(oneByOne(wider(copies, zoneMm / 2)));
    for (Copy narrow : copies) {
      if (2 * box(narrow).width() <= zoneMm) {
        List<Copy> row = new ArrayList<>(wider(copies, zoneMm - box(narrow).width()));
        row.add(narrow);
        rows.add(oneByOne(row));
      }
    }
    return rows;
  }

  private static Bound oneByOne(List<Copy> copies) {
    return new Bound(
        copies, copies.size(), copies.stream().mapToDouble(c -> box(c).length()).sum());
  }

  /**
   * Copies so long that on cloth of n - 1 such lengths every one of them would cross one of n - 1
   * lines across it; where that is more than such lines can hold, n lengths are needed.
   */
  private static List<Bound> inRows(List<Copy> copies, double zoneMm) {
    return copies.stream()
        .mapToDouble(c -> box(c).length())
        .distinct()
        .mapToObj(
            length -> {
              List<Copy> atLeast =
                  copies.stream().filter(c -> box(c).length() >= length - SAME_MM).toList();
              double lines = atLeast.stream().mapToDouble(c -> box(c).width()).sum() / zoneMm;
              int rows = (int) Math.ceil(lines - 1e-6);
              return new Bound(atLeast, rows, rows * length);
            })
        .toList();
  }

  private static List<Copy> wider(List<Copy> copies, double mm) {
    return copies.stream().filter(c -> box(c).width() > mm).toList();
  }

  private static Box box(Copy copy) {
    return copy.outline().box();
  }
}
