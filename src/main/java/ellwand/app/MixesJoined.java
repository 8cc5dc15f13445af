package ellwand.app;

import ellwand.lay.Lay;
import ellwand.lay.Marker;
import ellwand.nest.EndToEnd;
import ellwand.order.SizeMix;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Markers of an order that others of it make shorter than a search did: a larger one without some
 * of its garments, or two smaller ones end to end.
 */
final class MixesJoined {

  private final Map<SizeMix, Marker> made;
  private final Function<SizeMix, Lay> lays;

  private MixesJoined(Map<SizeMix, Marker> made, Function<SizeMix, Lay> lays) {
    this.made = made;
    this.lays = lays;
  }

  /** Puts them in the place of those that are longer. */
  static void shorten(Map<SizeMix, Marker> made, Function<SizeMix, Lay> lays) {
    MixesJoined mixes = new MixesJoined(made, lays);
    // Larger ones are joined of smaller ones that are as short as they come.
    List<SizeMix> smallestFirst =
        made.keySet().stream().sorted(Comparator.comparingInt(SizeMix::count)).toList();
    for (SizeMix mix : smallestFirst) {
      mixes.shorter(mix).ifPresent(marker -> made.put(mix, marker));
    }
  }

  private Optional<Marker> shorter(SizeMix mix) {
    double now = made.get(mix).lengthMm();
    return Stream.concat(larger(mix), pairs(mix))
        .filter(markers -> lengthMm(markers) < now)
        .sorted(Comparator.comparingDouble(MixesJoined::lengthMm))
        .flatMap(markers -> EndToEnd.of(lays.apply(mix), markers).stream())
        .filter(marker -> marker.lengthMm() < now)
        .findFirst();
  }

  private Stream<List<Marker>> larger(SizeMix mix) {
    return made.entrySet().stream()
        .filter(e -> !e.getKey().equals(mix) && holds(e.getKey(), mix))
        .map(e -> List.of(e.getValue()));
  }

  private Stream<List<Marker>> pairs(SizeMix mix) {
    List<SizeMix> smaller =
        made.keySet().stream()
            .filter(other -> other.count() < mix.count() && holds(mix, other))
            .toList();
    List<List<Marker>> pairs = new ArrayList<>();
    for (int i = 0; i < smaller.size(); i++) {
      for (SizeMix other : smaller.subList(i, smaller.size())) {
        if (together(smaller.get(i), other, mix)) {
          pairs.add(List.of(made.get(smaller.get(i)), made.get(other)));
        }
      }
    }
    return pairs.stream();
  }

  private static boolean holds(SizeMix large, SizeMix small) {
    return small.garments().entrySet().stream()
        .allMatch(e -> large.count(e.getKey()) >= e.getValue());
  }

  private static boolean together(SizeMix one, SizeMix other, SizeMix both) {
    return one.count() + other.count() == both.count()
        && both.garments().keySet().stream()
            .allMatch(size -> one.count(size) + other.count(size) == both.count(size));
  }

  private static double lengthMm(List<Marker> markers) {
    double gaps = (markers.size() - 1) * markers.get(0).lay().cloth().gapMm();
    return gaps + markers.stream().mapToDouble(Marker::lengthMm).sum();
  }
}
