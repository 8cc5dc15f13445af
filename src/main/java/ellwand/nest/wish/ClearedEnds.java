package ellwand.nest.wish;

import ellwand.nest.wish.SectionLayer.Asked;
import ellwand.nest.wish.SectionLayer.OffEnd;
import ellwand.rule.SmallOffEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lays the first and the last section anew with their small pieces off the ends. */
final class ClearedEnds {

  /** Distances that are tried, as shares of what is enough. */
  private static final double[] OFF_END = {1, 0.6, 0.3};

  private final Sectioned sectioned;
  private final SectionLayer layer;

  ClearedEnds(Sectioned sectioned, SectionLayer layer) {
    this.sectioned = sectioned;
    this.layer = layer;
  }

  void clear(double until) {
    List<Integer> stretches = sectioned.stretches();
    int first = stretches.get(0);
    int last = stretches.get(stretches.size() - 1);
    for (int k = 0; k < OFF_END.length && layer.goesOn(until); k++) {
      double share = layer.part(until, OFF_END.length - k);
      double off = OFF_END[k] * SmallOffEnd.ENOUGH_MM;
      Map<Integer, List<Section>> changed = new TreeMap<>();
      changed.put(first, cleared(first, off, first == last ? off : 0, share));
      if (first != last) {
        changed.put(last, cleared(last, 0, off, share));
      }
      if (sectioned.offer(changed)) {
        return;
      }
    }
  }

  private List<Section> cleared(int stretch, double lowMm, double highMm, double until) {
    List<Section> changed = new ArrayList<>(sectioned.of(stretch));
    int last = changed.size() - 1;
    double half = layer.part(until, 2);
    if (last == 0 || lowMm > 0) {
      double atHigh = last == 0 ? highMm : 0;
      changed.set(0, cleared(stretch, changed.get(0), lowMm, atHigh, last == 0 ? until : half));
    }
    if (last > 0 && highMm > 0) {
      changed.set(last, cleared(stretch, changed.get(last), 0, highMm, until));
    }
    return changed;
  }

  /** Laid anew; as it was if a stop comes before that. */
  private Section cleared(int stretch, Section section, double lowMm, double highMm, double until) {
    OffEnd off = new OffEnd(small(stretch), lowMm, highMm);
    Asked asked =
        new Asked(
            sectioned.whole(stretch), section.seats(), section.poses(), section.spared(), off);
    return layer.lay(asked, until).orElse(section);
  }

  private List<Boolean> small(int stretch) {
    double mean =
        sectioned.marker().copies().stream()
            .mapToDouble(c -> c.outline().area())
            .average()
            .orElseThrow();
    return sectioned.seats(stretch).stream()
        .map(s -> SmallOffEnd.small(s.placement().drawn().cutting().area(), mean))
        .toList();
  }
}
