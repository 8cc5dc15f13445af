package ellwand.file.drawn;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a drawing is to be understood where it does not say so itself.
 *
 * @param allowanceMm that the drawn lines lack; the outlines are sewing lines
 * @param cuttingLineMm that the drawn lines include; the outlines are cutting lines
 * @param layers or groups to be read; none for all
 */
public record Asked(OptionalDouble allowanceMm, OptionalDouble cuttingLineMm, List<String> layers) {

  public static final Asked NOTHING =
      new Asked(OptionalDouble.empty(), OptionalDouble.empty(), List.of());

  public Asked {
    layers = List.copyOf(layers);
  }
}
