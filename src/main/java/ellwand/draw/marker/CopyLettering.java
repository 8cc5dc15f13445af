package ellwand.draw.marker;

import ellwand.draw.piece.Labelling;
import ellwand.draw.piece.Wording;
import ellwand.draw.sheet.Reading;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.lay.Marker;
import ellwand.pattern.Edge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands on the copies of a marker: number, name, size, form and grain.
 *
 * @param joins lines along which pages are joined, across which no words stand if there is room
 */
record CopyLettering(Marker marker, List<Laid> laid, List<List<Point>> joins) {

  /** What has room on a copy: as many words as can be, inside its sewing line if that can be. */
  Labelling.Lettered on(Laid copy, Reading reading) {
    Outline cutting = copy.copy().outline();
    List<List<Point>> avoid = new ArrayList<>(joins);
    copy.cut().innerLines().forEach(line -> avoid.add(line.points()));
    List<Wording> choices = wordings(copy);
    Labelling.Lettered found =
        new Labelling(reading, copy.cut().sewing(), copy.grain(), avoid).place(choices);
    if (found.label().isPresent()) {
      return found;
    }
    List<Wording> shortest = choices.stream().filter(w -> !w.named()).toList();
    return new Labelling(reading, cutting, copy.grain(), avoid).place(shortest);
  }

  boolean manyGarments() {
    return laid.stream().flatMap(l -> l.copy().garments().stream()).distinct().count() > 1;
  }

  private boolean manySizes() {
    return laid.stream().map(l -> l.copy().size()).distinct().count() > 1;
  }

  private List<Wording> wordings(Laid copy) {
    String which = "size " + copy.copy().size() + (manyGarments() ? ", " + copy.garments() : "");
    boolean allowance =
        copy.cut().piece().edges().stream().mapToDouble(Edge::allowanceMm).sum() > 0;
    return Wording.choices(
        Integer.toString(copy.number()),
        manySizes() ? Optional.of(copy.copy().size()) : Optional.empty(),
        copy.piece(),
        List.of(which, copy.form()),
        List.of(
            marker.lay().style() + ", " + marker.lay().cloth().name(),
            allowance ? "allowance included" : "no allowance"));
  }
}
