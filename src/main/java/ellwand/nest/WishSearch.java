package ellwand.nest;

import ellwand.cloth.Band;
import ellwand.cloth.Wish;
import ellwand.geometry.Box;
import ellwand.nest.Found.Placed;
import ellwand.nest.Section.Spared;
import ellwand.nest.SectionLayer.Asked;
import ellwand.nest.SectionLayer.Laid;
import ellwand.nest.SectionLayer.OffEnd;
import ellwand.nest.kernel.Form;
import ellwand.nest.kernel.Layout;
import ellwand.nest.kernel.Search;
import ellwand.nest.kernel.Strip;
import ellwand.rule.SmallOffEnd;
import ellwand.work.Effort;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/**
 * Trades a little length for what the cutter wishes: lays a stretch in sections that a straight cut
 * parts, garment by garment or as the pieces lie, keeps a rectangle free among them, and keeps
 * small pieces off the ends. Every marker on the way is offered; the best of them is kept.
 */
final class WishSearch {

  /** Places tried for one straight cut. */
  private static final int CUTS = 6;

  /** Distances from the ends that are tried for small pieces, as shares of what is enough. */
  private static final double[] OFF_END = {1, 0.6, 0.3};

  /** How a left-over is made longer and wider, the boldest first. */
  private static final double[][] GROWN = {
    {1.25, 1.25},
    {1.3, 1},
    {1, 1.3},
    {1.1, 1.1},
    {1.12, 1},
    {1, 1.12},
    {1.04, 1.04},
    {2, 0.6},
    {0.6, 2}
  };

  private final double gapMm;
  private final List<Wish> asked;
  private final Pleasing pleasing;
  private final SectionLayer layer;
  private final Effort effort;
  private final BooleanSupplier stopped;
  private final long startNanos = System.nanoTime();
  private long evaluations;

  /** By stretch; changed with the best marker. */
  private final Map<Integer, List<Section>> sections = new TreeMap<>();

  WishSearch(
      double gapMm,
      List<Wish> asked,
      Pleasing pleasing,
      SectionLayer layer,
      Effort effort,
      BooleanSupplier stopped) {
    this.gapMm = gapMm;
    this.asked = asked;
    this.pleasing = pleasing;
    this.layer = layer;
    this.effort = effort;
    this.stopped = stopped;
  }

  void run() {
    List<Placed> stretches = pleasing.best().stretches();
    for (int i = 0; i < stretches.size(); i++) {
      if (stretches.get(i).layout().isPresent()) {
        sections.put(i, List.of(Section.whole(stretches.get(i).layout().get())));
      }
    }
    boolean straight = asked.contains(Wish.STRAIGHT_CUTS);
    boolean together = asked.contains(Wish.GARMENTS_TOGETHER);
    double parts = (straight ? 2 : 0) + (together ? 1 : 0) + asked.size();
    double until = 0;
    for (int stretch : List.copyOf(sections.keySet())) {
      if (!divides(strip(stretch))) {
        continue;
      }
      if (straight || together) {
        until += 1.5 / parts / sections.size();
        garments(stretch, until);
      }
      if (straight) {
        until += 1.5 / parts / sections.size();
        divide(stretch, until);
      }
    }
    if (asked.contains(Wish.ONE_LEFT_OVER)) {
      until = asked.contains(Wish.SMALL_OFF_END) ? (1 + spent()) / 2 : 1;
      spare(until);
    }
    if (asked.contains(Wish.SMALL_OFF_END)) {
      offEnd();
    }
  }

  private Search whole(int stretch) {
    return pleasing.best().stretches().get(stretch).task().search().orElseThrow();
  }

  private Strip strip(int stretch) {
    return whole(stretch).strip();
  }

  private List<StretchTask.Seat> seats(int stretch) {
    return pleasing.best().stretches().get(stretch).task().seats();
  }

  /** Whether its copies may lie anywhere along it, so that parts of it can be moved. */
  private static boolean divides(Strip strip) {
    return strip.obstacles().isEmpty()
        && strip.copies().stream()
            .allMatch(forms -> forms.stream().allMatch(f -> f.alongX().step() == 0));
  }

  /** Between sections; the stretches after the first have it at their beginning. */
  private double gapMm(int stretch) {
    return stretch == 0 ? gapMm : 0;
  }

  private double lengthMm(int stretch, List<Section> laid) {
    return laid.stream().mapToDouble(Section::lengthMm).sum() + gapMm(stretch) * (laid.size() - 1);
  }

  private boolean affords(int stretch, double lengthMm) {
    Found now = pleasing.best();
    Placed placed = now.stretches().get(stretch);
    return pleasing.affords(now.clothMm() + placed.lengths() * (lengthMm - placed.lengthMm()));
  }

  /** Offers other sections for a stretch; if they are taken, all that follows builds on them. */
  private boolean offer(int stretch, List<Section> laid) {
    if (!affords(stretch, lengthMm(stretch, laid))) {
      return false;
    }
    Layout layout = Section.joined(laid, gapMm(stretch));
    boolean taken = pleasing.offer(pleasing.best().with(stretch, layout));
    if (taken) {
      sections.put(stretch, laid);
    }
    return taken;
  }

  /** Sections of whole garments; those that hold the same lie the same. */
  private void garments(int stretch, double until) {
    Map<Integer, List<Integer>> byGarment = new TreeMap<>();
    List<StretchTask.Seat> seats = seats(stretch);
    for (int i = 0; i < seats.size(); i++) {
      byGarment
          .computeIfAbsent(seats.get(i).request().wanted().garment(), g -> new ArrayList<>())
          .add(i);
    }
    List<List<Integer>> garments = List.copyOf(byGarment.values());
    List<Integer> numbers = new ArrayList<>();
    for (int groups = 2; groups <= garments.size(); groups++) {
      if (garments.size() % groups == 0 || groups <= 3) {
        numbers.add(groups);
      }
    }
    for (int k = 0; k < numbers.size() && goesOn(until); k++) {
      double share = spent() + (until - spent()) / (numbers.size() - k);
      offer(stretch, inGroups(stretch, garments, numbers.get(k), share));
    }
  }

  private List<Section> inGroups(
      int stretch, List<List<Integer>> garments, int groups, double until) {
    Strip strip = strip(stretch);
    Map<List<Form>, Integer> kinds = new IdentityHashMap<>();
    strip.copies().forEach(forms -> kinds.putIfAbsent(forms, kinds.size()));
    List<List<Integer>> seats = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      int from = g * garments.size() / groups;
      int to = (g + 1) * garments.size() / groups;
      seats.add(
          garments.subList(from, to).stream()
              .flatMap(List::stream)
              .sorted(Comparator.comparingInt(s -> kinds.get(strip.copies().get(s))))
              .toList());
    }
    Map<List<Integer>, Section> laid = new HashMap<>();
    long distinct = seats.stream().map(s -> kinds(strip, kinds, s)).distinct().count();
    List<Section> sections = new ArrayList<>();
    for (List<Integer> group : seats) {
      List<Integer> key = kinds(strip, kinds, group);
      Section alike = laid.get(key);
      if (alike == null) {
        double share = spent() + (until - spent()) / (distinct - laid.size());
        alike = lay(Asked.plain(whole(stretch), group, List.of()), share);
        laid.put(key, alike);
      }
      sections.add(alike.with(group));
    }
    return sections;
  }

  private static List<Integer> kinds(
      Strip strip, Map<List<Form>, Integer> kinds, List<Integer> seats) {
    return seats.stream().map(s -> kinds.get(strip.copies().get(s))).toList();
  }

  /** One straight cut after another, each through the longest section that can have one. */
  private void divide(int stretch, double until) {
    List<Section> whole = new ArrayList<>();
    while (goesOn(until)) {
      List<Section> now = sections.get(stretch);
      Optional<Section> longest =
          now.stream()
              .filter(s -> s.seats().size() > 1 && !whole.contains(s))
              .max(Comparator.comparingDouble(Section::lengthMm));
      if (longest.isEmpty()) {
        return;
      }
      double share = spent() + (until - spent()) / 2;
      if (!cut(stretch, longest.get(), share)) {
        whole.add(longest.get());
      }
    }
  }

  private boolean cut(int stretch, Section section, double until) {
    Strip strip = strip(stretch);
    List<Integer> order = section.byX(strip);
    List<Integer> sizes = new ArrayList<>();
    for (int low = 1; low < order.size(); low++) {
      sizes.add(low);
    }
    sizes.sort(Comparator.comparingDouble(low -> crossingMm(strip, section, order, low)));
    List<Section> now = sections.get(stretch);
    double others = lengthMm(stretch, now) - section.lengthMm();
    for (int k = 0; k < Math.min(CUTS, sizes.size()) && goesOn(until); k++) {
      double share = spent() + (until - spent()) / (Math.min(CUTS, sizes.size()) - k);
      List<Integer> low = order.subList(0, sizes.get(k));
      List<Integer> high = order.subList(sizes.get(k), order.size());
      double least =
          SectionLayer.leastMm(whole(stretch), section.seats(low))
              + SectionLayer.leastMm(whole(stretch), section.seats(high));
      if (!affords(stretch, others + least)) {
        continue;
      }
      Section first = lay(section.part(whole(stretch), low), spent() + (share - spent()) / 2);
      Section second = lay(section.part(whole(stretch), high), share);
      List<Section> changed = new ArrayList<>(now);
      int at = changed.indexOf(section);
      changed.set(at, first);
      changed.add(at + 1, second);
      if (offer(stretch, changed)) {
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

  /**
   * Makes the largest rectangle that is free now larger: a little wider or longer, pieces in its
   * way are pushed aside, and on from there.
   */
  private void spare(double until) {
    boolean better = true;
    while (better && goesOn(until)) {
      better = false;
      for (int k = 0; k < GROWN.length && !better && goesOn(until); k++) {
        double share = spent() + (until - spent()) / (GROWN.length - k);
        better = spare(GROWN[k][0], GROWN[k][1], share);
      }
    }
  }

  private boolean spare(double longer, double wider, double until) {
    Optional<FreePlace> found = FreePlace.largest(pleasing.marker());
    if (found.isEmpty()) {
      return false;
    }
    double stretchX = 0;
    for (int stretch : sections.keySet()) {
      List<Section> now = sections.get(stretch);
      double fromX = stretchX;
      for (int i = 0; i < now.size(); i++) {
        Section section = now.get(i);
        Optional<Band> band =
            section.seats().stream()
                .flatMap(seat -> seats(stretch).get(seat).bands().stream())
                .filter(b -> b.id().equals(found.get().zone()))
                .findFirst();
        Box box = found.get().box().shifted(-fromX, 0);
        if (band.isPresent() && box.centre().x() >= 0 && box.centre().x() <= section.lengthMm()) {
          Spared spared = Spared.grown(box, band.get(), gapMm, longer, wider, section.lengthMm());
          List<Section> changed = new ArrayList<>(now);
          Search whole = whole(stretch);
          OffEnd free = OffEnd.NONE;
          Asked asked =
              new Asked(whole, section.seats(), section.poses(), Optional.of(spared), free);
          changed.set(i, lay(asked, until));
          return offer(stretch, changed);
        }
        fromX += section.lengthMm() + gapMm(stretch);
      }
      stretchX += pleasing.best().stretches().get(stretch).reservedMm();
    }
    return false;
  }

  /** Lays the first and the last section anew with their small pieces off the ends. */
  private void offEnd() {
    List<Integer> stretches = List.copyOf(sections.keySet());
    for (int k = 0; k < OFF_END.length && goesOn(1); k++) {
      double share = spent() + (1 - spent()) / (OFF_END.length - k);
      double off = OFF_END[k] * SmallOffEnd.ENOUGH_MM;
      Found found = pleasing.best();
      Map<Integer, List<Section>> changed = new TreeMap<>(sections);
      int first = stretches.get(0);
      int last = stretches.get(stretches.size() - 1);
      changed.put(first, ends(first, changed.get(first), off, first == last ? off : 0, share));
      if (first != last) {
        changed.put(last, ends(last, changed.get(last), 0, off, share));
      }
      for (int stretch : List.of(first, last)) {
        found = found.with(stretch, Section.joined(changed.get(stretch), gapMm(stretch)));
      }
      if (pleasing.offer(found)) {
        sections.putAll(changed);
        return;
      }
    }
  }

  private List<Section> ends(
      int stretch, List<Section> laid, double lowMm, double highMm, double until) {
    List<Section> changed = new ArrayList<>(laid);
    int last = laid.size() - 1;
    double half = spent() + (until - spent()) / 2;
    if (last == 0 || lowMm > 0) {
      changed.set(
          0, ends(stretch, laid.get(0), lowMm, last == 0 ? highMm : 0, last == 0 ? until : half));
    }
    if (last > 0 && highMm > 0) {
      changed.set(last, ends(stretch, laid.get(last), 0, highMm, until));
    }
    return changed;
  }

  private Section ends(int stretch, Section section, double lowMm, double highMm, double until) {
    OffEnd off = new OffEnd(small(stretch), lowMm, highMm);
    return lay(
        new Asked(whole(stretch), section.seats(), section.poses(), section.spared(), off), until);
  }

  private List<Boolean> small(int stretch) {
    double mean =
        pleasing.marker().copies().stream()
            .mapToDouble(c -> c.outline().area())
            .average()
            .orElseThrow();
    return seats(stretch).stream()
        .map(s -> SmallOffEnd.small(s.request().drawn().cutting().area(), mean))
        .toList();
  }

  private Section lay(Asked asked, double until) {
    double share = Math.max(0, until - spent());
    Effort part =
        effort.repeats()
            ? Effort.ofSteps(Math.max(1, Math.round(effort.steps() * share)))
            : Effort.ofSeconds(Math.max(0.01, effort.seconds() * share));
    Laid laid = layer.lay(asked, part);
    evaluations += laid.evaluations();
    return laid.section();
  }

  private boolean goesOn(double until) {
    return !stopped.getAsBoolean() && spent() < until;
  }

  /** The part of the effort that is used up, 0 to 1 or a little more. */
  private double spent() {
    return effort.repeats()
        ? evaluations / (double) Search.STEP / effort.steps()
        : (System.nanoTime() - startNanos) / 1e9 / effort.seconds();
  }
}
