package ellwand.nest.wish;

import ellwand.lay.Marker;
import ellwand.nest.kernel.Strip;
import ellwand.nest.kernel.StripSearch;
import ellwand.nest.stretch.Found;
import ellwand.nest.stretch.Found.LaidStretch;
import ellwand.nest.stretch.StretchTask;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The best marker so far as sections of its stretches; whatever is taken is built on. */
public final class Sectioned {

  private final double gapMm;
  private final Pleasing pleasing;

  /** By stretch; those on which nothing lies are left out. */
  private final Map<Integer, List<Section>> sections = new TreeMap<>();

  /**
   * Each stretch as one section.
   *
   * @param gapMm least distance between two pieces
   */
  public Sectioned(double gapMm, Pleasing pleasing) {
    this.gapMm = gapMm;
    this.pleasing = pleasing;
    List<LaidStretch> stretches = pleasing.best().stretches();
    for (int i = 0; i < stretches.size(); i++) {
      if (stretches.get(i).layout().isPresent()) {
        sections.put(i, List.of(Section.whole(stretches.get(i).layout().get())));
      }
    }
  }

  /** Stretches on which something lies, in their order. */
  List<Integer> stretches() {
    return List.copyOf(sections.keySet());
  }

  List<Section> of(int stretch) {
    return sections.get(stretch);
  }

  Marker marker() {
    return pleasing.marker();
  }

  double gapMm() {
    return gapMm;
  }

  /** Between sections; the stretches after the first have it at their beginning. */
  double gapMm(int stretch) {
    return stretch == 0 ? gapMm : 0;
  }

  private LaidStretch placed(int stretch) {
    return pleasing.best().stretches().get(stretch);
  }

  /** The search on the whole stretch. */
  StripSearch whole(int stretch) {
    return placed(stretch).task().search().orElseThrow();
  }

  Strip strip(int stretch) {
    return whole(stretch).strip();
  }

  List<StretchTask.Seat> seats(int stretch) {
    return placed(stretch).task().seats();
  }

  /** How much of the table the stretch is given, mm. */
  double reservedMm(int stretch) {
    return placed(stretch).reservedMm();
  }

  /** Whether its copies may lie anywhere along it, so that parts of it can be moved. */
  boolean divides(int stretch) {
    Strip strip = strip(stretch);
    return strip.obstacles().isEmpty()
        && strip.copies().stream()
            .allMatch(forms -> forms.stream().allMatch(f -> f.alongX().step() == 0));
  }

  double lengthMm(int stretch, List<Section> laid) {
    return laid.stream().mapToDouble(Section::lengthMm).sum() + gapMm(stretch) * (laid.size() - 1);
  }

  boolean affords(int stretch, double lengthMm) {
    LaidStretch placed = placed(stretch);
    return pleasing.affords(
        pleasing.best().clothMm() + placed.lengths() * (lengthMm - placed.lengthMm()));
  }

  /**
   * Offers other sections for a stretch.
   *
   * @return whether they were taken
   */
  boolean offer(int stretch, List<Section> laid) {
    return affords(stretch, lengthMm(stretch, laid)) && offer(Map.of(stretch, laid));
  }

  /**
   * Offers other sections for some stretches at once.
   *
   * @return whether they were taken
   */
  boolean offer(Map<Integer, List<Section>> changed) {
    Found found = pleasing.best();
    for (Map.Entry<Integer, List<Section>> one : changed.entrySet()) {
      int stretch = one.getKey();
      found = found.with(stretch, Section.joined(one.getValue(), gapMm(stretch)));
    }
    boolean taken = pleasing.offer(found);
    if (taken) {
      sections.putAll(changed);
    }
    return taken;
  }
}
