package ellwand.cloth;

import ellwand.cloth.Zone.Face;
import ellwand.cloth.Zone.Side;
import java.util.List;
import java.util.Set;

/**
 * A cloth on the table before anything is placed: stretches one after another along it, each of
 * bands side by side across it.
 *
 * @param stretches in order from the cut end; each may stay empty
 */
public record LaidCloth(Fold fold, List<List<Band>> stretches) {

  public LaidCloth {
    stretches = stretches.stream().map(List::copyOf).toList();
  }

  /** How the cloth lies when folded so. */
  public static LaidCloth of(Cloth cloth, Fold fold) {
    double width = cloth.usableWidthMm();
    Band open = new Band("open", 0, width, 1, Set.of(), Face.RIGHT);
    return switch (fold) {
      case OPEN -> new LaidCloth(fold, List.of(List.of(open)));
      case LENGTHWISE ->
          new LaidCloth(
              fold,
              List.of(
                  List.of(new Band("folded", 0, width / 2, 2, Set.of(Side.LOW_Y), Face.WRONG)),
                  List.of(new Band("opened", 0, width, 1, Set.of(), Face.RIGHT))));
    };
  }

  /** Every band, stretch by stretch. */
  public List<Band> bands() {
    return stretches.stream().flatMap(List::stream).toList();
  }
}
