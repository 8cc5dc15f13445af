package ellwand.cloth;

import ellwand.cloth.Zone.Face;
import ellwand.cloth.Zone.Side;
import java.util.List;
import java.util.Optional;
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

  /** How the cloth lies when folded so; one with flaws or a repeat lies in one stretch. */
  public static LaidCloth of(Cloth cloth, Fold fold) {
    double width = cloth.usableWidthMm();
    List<List<Band>> stretches =
        switch (fold) {
          case OPEN -> List.of(List.of(open("open", width)));
          case LENGTHWISE ->
              List.of(List.of(folded(width, cloth.foldLineMm())), List.of(open("opened", width)));
        };
    // Where flaws and bars lie on a second stretch would hang on how long the first becomes.
    boolean plain = cloth.flaws().isEmpty() && cloth.repeat().isEmpty();
    return new LaidCloth(fold, plain ? stretches : stretches.subList(0, 1));
  }

  private static Band open(String id, double width) {
    return new Band(id, 0, width, List.of(Ply.OPEN), Set.of(), Face.RIGHT);
  }

  /** What lies beside the double zone where the fold is off the middle is not used. */
  private static Band folded(double width, double foldAt) {
    return new Band(
        "folded",
        0,
        Math.min(foldAt, width - foldAt),
        List.of(new Ply(foldAt, true), new Ply(foldAt, false)),
        Set.of(Side.LOW_Y),
        Face.WRONG);
  }

  /** The band of that name, if there is one. */
  public Optional<Band> band(String id) {
    return bands().stream().filter(b -> b.id().equals(id)).findFirst();
  }

  /** Every band, stretch by stretch. */
  public List<Band> bands() {
    return stretches.stream().flatMap(List::stream).toList();
  }
}
