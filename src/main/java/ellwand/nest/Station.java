package ellwand.nest;

import ellwand.cloth.Band;
import java.util.List;

/**
 * Where on the cloth and in which forms a serving can lie.
 *
 * @param stretch index of the stretch
 * @param requests the placements it makes there
 * @param lengths how many lengths of cloth the stretch takes
 * @param longestMm the length of its longest placement, turned as short as it may be
 */
record Station(int stretch, Band band, List<Request> requests, int lengths, double longestMm) {

  /** Share of a lay that pieces usually fill: "very good" begins here, Vilumsone-Nemes p. 19. */
  private static final double USUAL_FILL = 0.8;

  Station {
    requests = List.copyOf(requests);
  }

  /** What the longest placement takes in cloth, mm. */
  double longestClothMm() {
    return lengths * longestMm;
  }

  /** What the placements take in cloth when they fill the band as pieces usually do, mm. */
  double fillMm() {
    double area = requests.stream().mapToDouble(r -> r.drawn().cutting().area()).sum();
    return lengths * area / band.widthMm() / USUAL_FILL;
  }

  @Override
  public String toString() {
    return requests.get(0).form() + " in " + band.id();
  }
}
