package ellwand.nest.wish;

import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripForm;
import ellwand.nest.stretch.StretchTask;
import ellwand.nest.wish.SectionLayer.Asked;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Lays a stretch in sections of whole garments; those that hold the same lie the same. */
final class GarmentSections {

  private final Sectioned sectioned;
  private final SectionLayer layer;
  private final int stretch;
  private final Strip strip;

  /** Copies that lie in the same ways are of one kind. */
  private final Map<List<StripForm>, Integer> kinds = new IdentityHashMap<>();

  GarmentSections(Sectioned sectioned, SectionLayer layer, int stretch) {
    this.sectioned = sectioned;
    this.layer = layer;
    this.stretch = stretch;
    this.strip = sectioned.strip(stretch);
    strip.copies().forEach(forms -> kinds.putIfAbsent(forms, kinds.size()));
  }

  /** Tries two sections, then more, up to one for each garment. */
  void lay(double until) {
    List<List<Integer>> garments = garments();
    List<Integer> numbers = new ArrayList<>();
    for (int groups = 2; groups <= garments.size(); groups++) {
      if (garments.size() % groups == 0 || groups <= 3) {
        numbers.add(groups);
      }
    }
    for (int k = 0; k < numbers.size() && layer.goesOn(until); k++) {
      double share = layer.part(until, numbers.size() - k);
      inGroups(garments, numbers.get(k), share).ifPresent(laid -> sectioned.offer(stretch, laid));
    }
  }

  private List<List<Integer>> garments() {
    Map<Integer, List<Integer>> byGarment = new TreeMap<>();
    List<StretchTask.Seat> seats = sectioned.seats(stretch);
    for (int i = 0; i < seats.size(); i++) {
      byGarment
          .computeIfAbsent(seats.get(i).placement().wanted().garment(), g -> new ArrayList<>())
          .add(i);
    }
    return List.copyOf(byGarment.values());
  }

  private Optional<List<Section>> inGroups(List<List<Integer>> garments, int groups, double until) {
    List<List<Integer>> seats = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      int from = g * garments.size() / groups;
      int to = (g + 1) * garments.size() / groups;
      seats.add(
          garments.subList(from, to).stream()
              .flatMap(List::stream)
              .sorted(Comparator.comparingInt(this::kind))
              .toList());
    }
    Map<List<Integer>, Section> laid = new HashMap<>();
    int distinct = (int) seats.stream().map(this::kinds).distinct().count();
    List<Section> sections = new ArrayList<>();
    for (List<Integer> group : seats) {
      List<Integer> key = kinds(group);
      Section alike = laid.get(key);
      if (alike == null) {
        double share = layer.part(until, distinct - laid.size());
        Asked asked = Asked.plain(sectioned.whole(stretch), group, List.of());
        Optional<Section> found = layer.lay(asked, share);
        if (found.isEmpty()) {
          return Optional.empty();
        }
        alike = found.get();
        laid.put(key, alike);
      }
      sections.add(alike.with(group));
    }
    return Optional.of(sections);
  }

  private List<Integer> kinds(List<Integer> seats) {
    return seats.stream().map(this::kind).toList();
  }

  private int kind(int seat) {
    return kinds.get(strip.copies().get(seat));
  }
}
