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

  /**
   * How the cloth lies when folded so; one with a repeat lies in one stretch.
   *
   * @throws IllegalArgumentException if the fold has a border to choose
   */
  public static LaidCloth of(Cloth cloth, Fold fold) {
    if (fold.hasBorder()) {
      throw new IllegalArgumentException("a " + fold.words() + " needs its border");
    }
    return of(cloth, fold, 0);
  }

  /**
   * How the cloth lies when folded so.
   *
   * @param borderMm how wide the usable part of the first double zone is, above 0 and below {@link
   *     #mostBorderMm}; of no account where the fold has no border
   */
  public static LaidCloth of(Cloth cloth, Fold fold, double borderMm) {
    if (fold.hasBorder() && !(borderMm > 0 && borderMm < mostBorderMm(cloth, fold))) {
      throw new IllegalArgumentException("no " + fold.words() + " has a border at " + borderMm);
    }
    double width = cloth.usableWidthMm();
    double selvedge = cloth.selvedgeMm();
    Ply whole = new Ply(0, false, fold.doublesLength(), false);
    List<Band> opened = List.of(new Band("opened", 0, width, List.of(whole), Set.of(), Face.RIGHT));
    List<List<Band>> stretches =
        switch (fold) {
          case OPEN -> List.of(List.of(single("open", 0, width, 0)));
          case LENGTHWISE -> List.of(List.of(lengthwise(width, cloth.foldLineMm())), opened);
          case PART ->
              // The edge that is turned in covers its selvedge's width beside the double zone.
              List.of(
                  List.of(
                      doubled("folded", 0, borderMm, borderMm, Side.LOW_Y),
                      single("single", borderMm + selvedge, width - borderMm, borderMm)),
                  opened);
          case DOUBLE ->
              List.of(
                  List.of(
                      doubled("first fold", 0, borderMm, borderMm, Side.LOW_Y),
                      doubled(
                          "second fold",
                          borderMm + 2 * selvedge,
                          width / 2 + selvedge,
                          borderMm,
                          Side.HIGH_Y)),
                  opened);
          case CROSSWISE ->
              List.of(
                  List.of(endOverEnd("folded", width, new Ply(0, false, true, true), Side.LOW_X)),
                  opened);
          case TURNED ->
              // Turned round in its plane and over: in all, over its own length.
              List.of(List.of(endOverEnd("double", width, new Ply(width, true))), opened);
          case FACE_TO_FACE -> List.of(List.of(endOverEnd("double", width, Ply.OPEN)));
          case TUBULAR -> List.of(List.of(tube(width)), opened);
        };
    // Where bars lie on a second stretch would hang on how long the first becomes.
    return new LaidCloth(fold, cloth.repeat().isEmpty() ? stretches : stretches.subList(0, 1));
  }

  /** What lies beside the double zone where the fold is off the middle is not used. */
  private static Band lengthwise(double width, double foldMm) {
    return doubled("folded", 0, Math.min(foldMm, width - foldMm), foldMm, Side.LOW_Y);
  }

  /** The band of that name, if there is one. */
  public Optional<Band> band(String id) {
    return bands().stream().filter(b -> b.id().equals(id)).findFirst();
  }

  /** The cloth as it must lie if it has the zones of a marker; empty if it cannot. */
  public static Optional<LaidCloth> like(Cloth cloth, Fold fold, List<Zone> zones) {
    if (!fold.hasBorder()) {
      return Optional.of(of(cloth, fold));
    }
    double most = mostBorderMm(cloth, fold);
    // Where nothing lies folded it does not matter how far it might be.
    double border =
        zones.stream()
            .filter(z -> z.foldEdges().equals(Set.of(Side.LOW_Y)))
            .mapToDouble(z -> z.box().maxY())
            .findFirst()
            .orElse(most / 2);
    return border > 0 && border < most ? Optional.of(of(cloth, fold, border)) : Optional.empty();
  }

  /**
   * How far from its cut end a cloth with these zones is folded or cut across, mm; 0 if it is not.
   */
  public static double acrossMm(Fold fold, List<Zone> zones) {
    return zones.stream()
        .filter(z -> fold.doublesLength() && z.plies() == 2)
        .mapToDouble(z -> z.box().maxX())
        .max()
        .orElse(0);
  }

  /** How far a border must lie below, mm. */
  public static double mostBorderMm(Cloth cloth, Fold fold) {
    double width = cloth.usableWidthMm();
    return fold == Fold.PART ? (width - cloth.selvedgeMm()) / 2 : width / 2 - cloth.selvedgeMm();
  }

  /**
   * @param openMm the place across the open cloth that lies at y = 0
   */
  private static Band single(String id, double lowY, double highY, double openMm) {
    return new Band(id, lowY, highY, List.of(new Ply(openMm, false)), Set.of(), Face.RIGHT);
  }

  /**
   * @param foldMm the place across the open cloth that lies at y = 0; the upper ply runs back from
   *     the fold edge
   */
  private static Band doubled(String id, double lowY, double highY, double foldMm, Side foldEdge) {
    double upper = foldEdge == Side.LOW_Y ? foldMm : foldMm + 2 * highY;
    return new Band(
        id,
        lowY,
        highY,
        List.of(new Ply(upper, true), new Ply(foldMm, false)),
        Set.of(foldEdge),
        Face.WRONG);
  }

  /** The first length of the cloth over the next, on which it lies right sides together. */
  private static Band endOverEnd(String id, double width, Ply upper, Side... foldEdges) {
    Ply lower = new Ply(0, false, true, false);
    return new Band(id, 0, width, List.of(upper, lower), Set.of(foldEdges), Face.WRONG);
  }

  private static Band tube(double roundMm) {
    return new Band(
        "tube",
        0,
        roundMm / 2,
        List.of(Ply.OPEN, new Ply(roundMm, true)),
        Set.of(Side.LOW_Y, Side.HIGH_Y),
        Face.RIGHT);
  }

  /** How many lengths of cloth a stretch takes: two where its plies lie end over end. */
  public int lengths(int stretch) {
    return fold.doublesLength() && stretches.get(stretch).get(0).plies() == 2 ? 2 : 1;
  }

  /** Every band, stretch by stretch. */
  public List<Band> bands() {
    return stretches.stream().flatMap(List::stream).toList();
  }
}
