package ellwand.nest.wish;

import ellwand.cloth.Band;
import ellwand.geometry.Box;
import ellwand.nest.wish.Section.Spared;
import ellwand.nest.wish.SectionLayer.Asked;
import ellwand.nest.wish.SectionLayer.OffEnd;
import ellwand.rule.FreePlace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes the largest rectangle that is free larger: a little wider or longer, pieces in its way are
 * pushed aside, and on from there.
 */
final class LeftOverGrowth {

  /** How it is made longer and wider, the boldest first. */
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

  private final Sectioned sectioned;
  private final SectionLayer layer;

  LeftOverGrowth(Sectioned sectioned, SectionLayer layer) {
    this.sectioned = sectioned;
    this.layer = layer;
  }

  void grow(double until) {
    boolean better = true;
    while (better && layer.goesOn(until)) {
      better = false;
      for (int k = 0; k < GROWN.length && !better && layer.goesOn(until); k++) {
        better = grow(GROWN[k][0], GROWN[k][1], layer.part(until, GROWN.length - k));
      }
    }
  }

  private boolean grow(double longer, double wider, double until) {
    Optional<FreePlace> found = FreePlace.largest(sectioned.marker());
    if (found.isEmpty()) {
      return false;
    }
    double stretchX = 0;
    for (int stretch : sectioned.stretches()) {
      List<Section> now = sectioned.of(stretch);
      double fromX = stretchX;
      for (int i = 0; i < now.size(); i++) {
        Section section = now.get(i);
        Optional<Band> band = band(stretch, section, found.get().zone().id());
        Box box = found.get().box().shifted(-fromX, 0);
        if (band.isPresent() && box.centre().x() >= 0 && box.centre().x() <= section.lengthMm()) {
          Spared spared =
              Spared.grown(box, band.get(), sectioned.gapMm(), longer, wider, section.lengthMm());
          Asked asked =
              new Asked(
                  sectioned.whole(stretch),
                  section.seats(),
                  section.poses(),
                  Optional.of(spared),
                  OffEnd.NONE);
          Optional<Section> laid = layer.lay(asked, until);
          if (laid.isEmpty()) {
            return false;
          }
          List<Section> changed = new ArrayList<>(now);
          changed.set(i, laid.get());
          return sectioned.offer(stretch, changed);
        }
        fromX += section.lengthMm() + sectioned.gapMm(stretch);
      }
      stretchX += sectioned.reservedMm(stretch);
    }
    return false;
  }

  private Optional<Band> band(int stretch, Section section, String zone) {
    return section.seats().stream()
        .flatMap(seat -> sectioned.seats(stretch).get(seat).bands().stream())
        .filter(b -> b.id().equals(zone))
        .findFirst();
  }
}
