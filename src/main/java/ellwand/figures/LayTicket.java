package ellwand.figures;

import ellwand.order.Spreading;
import java.util.Map;

/**
 * What the cutters of one lay need to know; lengths in mm.
 *
 * @param number from 1
 * @param cloth name of the cloth, empty if none is known
 * @param marker name of the marker
 * @param garments in the marker, by size
 * @param spreading how the plies lie on one another
 * @param plies by colour, in the sequence in which they are spread
 * @param cut garments by colour, then size
 * @param lengthMm of the marker
 * @param clothMm by colour, with end loss
 * @param endLossMm of all plies together
 */
public record LayTicket(
    int number,
    String cloth,
    String marker,
    Map<String, Integer> garments,
    Spreading spreading,
    Map<String, Integer> plies,
    Map<String, Map<String, Integer>> cut,
    double lengthMm,
    Map<String, Double> clothMm,
    double endLossMm) {

  /** The marker has one of each pair, and two garments of a size go in one bundle. */
  public boolean halfSets() {
    return spreading.halfSets();
  }

  /** How many lengths of cloth so many plies are: folded, one is two. */
  public int lengths(int plies) {
    return plies / spreading.pliesTogether() * spreading.lengthsTogether();
  }

  public int totalPlies() {
    return plies.values().stream().mapToInt(Integer::intValue).sum();
  }

  public int totalCut() {
    return cut.values().stream()
        .flatMap(m -> m.values().stream())
        .mapToInt(Integer::intValue)
        .sum();
  }

  public double totalClothMm() {
    return clothMm.values().stream().mapToDouble(Double::doubleValue).sum();
  }
}
