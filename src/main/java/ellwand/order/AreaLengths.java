package ellwand.order;

import java.util.Map;
import java.util.Set;

/**
 * Markers estimated from what lies in them: the area of their garments at a usual utilisation, and
 * never shorter than their longest piece.
 *
 * @param bySize what one garment of each size is
 * @param usableWidthMm of the cloth
 */
public record AreaLengths(Map<String, Garment> bySize, double usableWidthMm)
    implements MarkerLengths {

  /**
   * One garment as cut.
   *
   * @param areaMm2 of all its pieces
   * @param longestMm how far its longest piece reaches along the cloth
   */
  public record Garment(double areaMm2, double longestMm) {}

  /** Between 70 %, good, and 80 %, very good (Vilumsone-Nemes, p. 19). */
  public static final double USUAL_UTILISATION = 0.75;

  public AreaLengths {
    bySize = Map.copyOf(bySize);
  }

  @Override
  public Set<String> sizes() {
    return bySize.keySet();
  }

  @Override
  public double lengthMm(SizeMix mix) {
    double area = 0;
    double longest = 0;
    for (Map.Entry<String, Integer> entry : mix.garments().entrySet()) {
      Garment garment = bySize.get(entry.getKey());
      area += entry.getValue() * garment.areaMm2();
      longest = Math.max(longest, garment.longestMm());
    }
    return Math.max(longest, area / (usableWidthMm * USUAL_UTILISATION));
  }

  @Override
  public double leastMm(String size) {
    return bySize.get(size).areaMm2() / usableWidthMm;
  }
}
