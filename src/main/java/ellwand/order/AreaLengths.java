package ellwand.order;

import java.util.Map;
import java.util.Set;

/**
 * Markers estimated from what lies in them: the area of their garments at a usual utilisation, and
 * never shorter than their longest piece.
 *
 * @param bySize what one garment of each size is
 * @param widthMm of the cloth between its selvedges, of both plies where a marker cuts two at once
 * @param utilisation above 0, at most 1
 */
public record AreaLengths(Map<String, Garment> bySize, double widthMm, double utilisation)
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

  /** The same at another utilisation. */
  public AreaLengths at(double other) {
    return new AreaLengths(bySize, widthMm, other);
  }

  /** Of all garments of a marker. */
  public double areaMm2(SizeMix mix) {
    return mix.garments().entrySet().stream()
        .mapToDouble(entry -> entry.getValue() * bySize.get(entry.getKey()).areaMm2())
        .sum();
  }

  @Override
  public double lengthMm(SizeMix mix) {
    double longest =
        mix.garments().keySet().stream()
            .mapToDouble(size -> bySize.get(size).longestMm())
            .max()
            .orElseThrow();
    return Math.max(longest, areaMm2(mix) / (widthMm * utilisation));
  }

  @Override
  public double leastMm(String size) {
    return bySize.get(size).areaMm2() / widthMm;
  }
}
