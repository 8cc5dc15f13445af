package ellwand.nest.pose;

import ellwand.cloth.Band;
import ellwand.lay.Copy;
import ellwand.lay.Form;
import ellwand.lay.Heading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where on the cloth and in which forms a serving can lie.
 *
 * @param stretch index of the stretch
 * @param bands of the stretch; in which of them each placement lies is for the search to find out
 * @param placements the placements it makes there
 * @param lengths how many lengths of cloth the stretch takes
 * @param longestMm the length of its longest placement, turned as short as it may be
 * @param areaMm2 of cloth that is cut, both plies where they lie end over end
 */
public record Station(
    int stretch,
    List<Band> bands,
    List<Placement> placements,
    int lengths,
    double longestMm,
    double areaMm2) {

  /** Share of a lay that pieces usually fill: "very good" begins here, Vilumsone-Nemes p. 19. */
  private static final double USUAL_FILL = 0.8;

  public Station {
    bands = List.copyOf(bands);
    placements = List.copyOf(placements);
  }

  /** Of its figures, in which stations differ: all that lies there would take long. */
  @Override
  public int hashCode() {
    return 31 * Double.hashCode(longestMm) + Double.hashCode(areaMm2);
  }

  /**
   * Cloth that everything served on one stretch is expected to take, mm: its longest placement at
   * least, and as much as usually fills the fullest bands, or all of them together.
   */
  public static double expectedMm(Collection<Station> onStretch) {
    Map<List<Band>, Double> fills = new HashMap<>();
    Set<Band> bands = new HashSet<>();
    double area = 0;
    double expected = 0;
    for (Station station : onStretch) {
      bands.addAll(station.bands);
      area += station.areaMm2;
      fills.merge(station.bands, station.areaMm2, Double::sum);
      expected = Math.max(expected, station.lengths * station.longestMm);
    }
    for (Map.Entry<List<Band>, Double> fill : fills.entrySet()) {
      expected = Math.max(expected, fill.getValue() / widthMm(fill.getKey()) / USUAL_FILL);
    }
    return Math.max(expected, area == 0 ? 0 : area / widthMm(bands) / USUAL_FILL);
  }

  /**
   * What the placements take in cloth one behind the other, mm; infinite where one would have to
   * stand on a fold edge across, where there is room for few.
   */
  public double rowMm() {
    double row = 0;
    for (Placement placement : placements) {
      row +=
          bands.stream()
              .flatMap(band -> Pose.of(placement, band, EnumSet.allOf(Heading.class)).stream())
              .filter(pose -> pose.fixedX().isEmpty())
              .mapToDouble(pose -> pose.outline().box().length())
              .min()
              .orElse(Double.POSITIVE_INFINITY);
    }
    return lengths * row;
  }

  private static double widthMm(Collection<Band> bands) {
    return bands.stream().mapToDouble(Band::widthMm).sum();
  }

  /** Takes what serves its placements out of some copies; leaves them all where one lacks. */
  public boolean takeFrom(List<Copy> copies) {
    List<Copy> left = new ArrayList<>(copies);
    for (Placement placement : placements) {
      Optional<Copy> copy =
          left.stream()
              .filter(placement::isMadeBy)
              .filter(c -> bands.stream().anyMatch(band -> band.id().equals(c.zone())))
              .findFirst();
      if (copy.isEmpty()) {
        return false;
      }
      left.remove(copy.get());
    }
    copies.clear();
    copies.addAll(left);
    return true;
  }

  /** Whether both plies are cut and only one of them is wanted. */
  boolean wastesTwin() {
    return liesDouble()
        && placements.stream().anyMatch(r -> r.form() == Form.WHOLE || r.form() == Form.OPENED);
  }

  /** Whether the cloth lies folded for it and all that is cut is wanted. */
  public boolean folded() {
    return liesDouble() && !wastesTwin();
  }

  private boolean liesDouble() {
    return bands.stream().allMatch(band -> band.plies() == 2);
  }

  @Override
  public String toString() {
    return placements.get(0).form() + " in " + bands.stream().map(Band::id).toList();
  }
}
