package ellwand.app;

import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.EndToEnd;
import ellwand.order.Rows;
import ellwand.order.SizeMix;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/**
 * Markers of an order that others of it make shorter than a search did: a larger one without some
 * of its garments, or several end to end.
 */
final class MixesJoined {

  private MixesJoined() {}

  /**
   * Puts them in the place of those that are longer.
   *
   * @param nextMm where the next may begin behind a marker of a length, mm
   */
  static void shorten(
      Map<SizeMix, Marker> made, Function<SizeMix, Lay> lays, DoubleUnaryOperator nextMm) {
    // Larger ones are joined of smaller ones that are as short as they come.
    List<SizeMix> smallestFirst =
        made.keySet().stream().sorted(Comparator.comparingInt(SizeMix::count)).toList();
    for (SizeMix mix : smallestFirst) {
      Map<SizeMix, Marker> others = new LinkedHashMap<>(made);
      double now = others.remove(mix).lengthMm();
      of(mix, others, now, lays, nextMm).ifPresent(marker -> made.put(mix, marker));
    }
  }

  /**
   * The shortest row that holds a mix; empty if there is none, it is no shorter, or would break a
   * hard rule.
   */
  static Optional<Marker> of(
      SizeMix mix,
      Map<SizeMix, Marker> made,
      double shorterThanMm,
      Function<SizeMix, Lay> lays,
      DoubleUnaryOperator nextMm) {
    Map<SizeMix, Double> lengths = new LinkedHashMap<>();
    made.forEach((other, marker) -> lengths.put(other, marker.lengthMm()));
    List<Marker> row = new Rows(lengths, nextMm).markers(mix).stream().map(made::get).toList();
    return row.isEmpty() ? Optional.empty() : EndToEnd.of(lays.apply(mix), row, shorterThanMm);
  }
}
