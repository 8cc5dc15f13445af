package ellwand.nest.wish;

import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripSearch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Divides a stretch by straight cuts; what a cut would cross is laid anew on either side of it. */
final class StraightDivision {

  /** Places tried for one straight cut. */
  private static final int CUTS = 6;

  private final Sectioned sectioned;
  private final SectionLayer layer;
  private final int stretch;

  StraightDivision(Sectioned sectioned, SectionLayer layer, int stretch) {
    this.sectioned = sectioned;
    this.layer = layer;
    this.stretch = stretch;
  }

  /** One straight cut after another, each through the longest section that can have one. */
  void divide(double until) {
    List<Section> undivided = new ArrayList<>();
    while (layer.goesOn(until)) {
      Optional<Section> longest =
          sectioned.of(stretch).stream()
              .filter(s -> s.seats().size() > 1 && !undivided.contains(s))
              .max(Comparator.comparingDouble(Section::lengthMm));
      if (longest.isEmpty()) {
        return;
      }
      if (!cut(longest.get(), layer.part(until, 2))) {
        undivided.add(longest.get());
      }
    }
  }

  private boolean cut(Section section, double until) {
    Strip strip = sectioned.strip(stretch);
    StripSearch whole = sectioned.whole(stretch);
    List<Integer> order = section.byX(strip);
    List<Integer> sizes = new ArrayList<>();
    for (int low = 1; low < order.size(); low++) {
      sizes.add(low);
    }
    sizes.sort(Comparator.comparingDouble(low -> crossingMm(strip, section, order, low)));
    List<Section> now = sectioned.of(stretch);
    double others = sectioned.lengthMm(stretch, now) - section.lengthMm();
    int tries = Math.min(CUTS, sizes.size());
    for (int k = 0; k < tries && layer.goesOn(until); k++) {
      double share = layer.part(until, tries - k);
      List<Integer> low = order.subList(0, sizes.get(k));
      List<Integer> high = order.subList(sizes.get(k), order.size());
      double least =
          SectionLayer.leastMm(whole, section.seats(low))
              + SectionLayer.leastMm(whole, section.seats(high));
      if (!sectioned.affords(stretch, others + least)) {
        continue;
      }
      Optional<Section> first = layer.lay(section.part(whole, low), layer.part(share, 2));
      Optional<Section> second = layer.lay(section.part(whole, high), share);
      if (first.isEmpty() || second.isEmpty()) {
        return false;
      }
      List<Section> changed = new ArrayList<>(now);
      int at = changed.indexOf(section);
      changed.set(at, first.get());
      changed.add(at + 1, second.get());
      if (sectioned.offer(stretch, changed)) {
        return true;
      }
    }
    return false;
  }

  /** How much longer the section would be if nothing crossed the cut and nothing was laid anew. */
  private static double crossingMm(Strip strip, Section section, List<Integer> order, int low) {
    double reached =
        order.subList(0, low).stream()
            .mapToDouble(i -> section.endMm(strip, i))
            .max()
            .orElseThrow();
    double begin =
        order.subList(low, order.size()).stream()
            .mapToDouble(i -> section.beginMm(strip, i))
            .min()
            .orElseThrow();
    return Math.max(0, reached - begin);
  }
}
