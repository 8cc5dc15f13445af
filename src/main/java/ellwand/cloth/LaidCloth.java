package ellwand.cloth;

import ellwand.cloth.Zone.Face;
import ellwand.cloth.Zone.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;

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
   * How the cloth lies when folded so; a lengthwise fold lies as near the middle as may be.
   *
   * @throws IllegalArgumentException if the fold has a border to choose
   */
  public static LaidCloth of(Cloth cloth, Fold fold) {
    if (fold.hasBorder()) {
      throw new IllegalArgumentException("a " + fold.words() + " needs its border");
    }
    return lying(cloth, fold, cloth.nearestMirrorMm(cloth.usableWidthMm() / 2));
  }

  /**
   * How the cloth lies when it is folded lengthwise at a line.
   *
   * @param lineMm from the first cuttable line; see {@link #canFold}
   */
  public static LaidCloth of(Cloth cloth, Fold fold, double lineMm) {
    if (!canFold(cloth, fold, lineMm)) {
      throw new IllegalArgumentException("no " + fold.words() + " lies at " + lineMm);
    }
    return lying(cloth, fold, lineMm);
  }

  /**
   * Whether the cloth can lie in a lengthwise, part or double fold with its first fold at a line:
   * on mirror lines of its repeat, and with something to cut on each side.
   *
   * @param lineMm from the first cuttable line; of a part or double fold this is how wide the
   *     usable part of the first double zone is
   */
  public static boolean canFold(Cloth cloth, Fold fold, double lineMm) {
    if (!(lineMm > 0 && cloth.mirrorsAt(lineMm))) {
      return false;
    }
    return fold.alongMiddle()
        ? lineMm < cloth.usableWidthMm()
        : lineMm < mostBorderMm(cloth, fold)
            && (fold == Fold.PART || secondFoldMm(cloth, lineMm) < cloth.usableWidthMm());
  }

  /** Where the second fold of a double fold lies, so that the selvedges meet or nearly do. */
  private static double secondFoldMm(Cloth cloth, double firstMm) {
    return cloth.mirrorFromMm(cloth.usableWidthMm() / 2 + firstMm + cloth.selvedgeMm());
  }

  private static LaidCloth lying(Cloth cloth, Fold fold, double lineMm) {
    double width = cloth.usableWidthMm();
    double selvedge = cloth.selvedgeMm();
    Ply whole = new Ply(0, false, fold.doublesLength(), false);
    List<Band> opened = List.of(new Band("opened", 0, width, List.of(whole), Set.of(), Face.RIGHT));
    List<List<Band>> stretches =
        switch (fold) {
          case OPEN -> List.of(List.of(single("open", 0, width, 0)));
          case LENGTHWISE -> List.of(List.of(lengthwise(width, lineMm)), opened);
          case STACKED -> List.of(List.of(lengthwise(width, lineMm)));
          case PART ->
              // The edge that is turned in covers its selvedge's width beside the double zone.
              List.of(
                  List.of(
                      doubled("folded", 0, lineMm, lineMm, Side.LOW_Y),
                      single("single", lineMm + selvedge, width - lineMm, lineMm)),
                  opened);
          case DOUBLE -> {
            double second = secondFoldMm(cloth, lineMm) - lineMm;
            yield List.of(
                List.of(
                    doubled("first fold", 0, lineMm, lineMm, Side.LOW_Y),
                    doubled(
                        "second fold",
                        second - (width - lineMm - second),
                        second,
                        lineMm,
                        Side.HIGH_Y)),
                opened);
          }
          case CROSSWISE ->
              List.of(
                  List.of(
                      endOverEnd("folded", 0, width, new Ply(0, false, true, true), Side.LOW_X)),
                  opened);
          case TURNED -> List.of(List.of(turned(width, lineMm)), opened);
          case FACE_TO_FACE -> List.of(List.of(endOverEnd("double", 0, width, Ply.OPEN)));
          case TUBULAR -> List.of(List.of(tube(width)), opened);
        };
    return new LaidCloth(fold, stretches);
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
    if (!fold.hasBorder() && !fold.alongMiddle()) {
      return Optional.of(of(cloth, fold));
    }
    OptionalDouble folded =
        zones.stream()
            .filter(z -> z.foldEdges().equals(Set.of(Side.LOW_Y)))
            .mapToDouble(z -> z.box().maxY())
            .findFirst();
    if (fold.alongMiddle()) {
      return folded.isEmpty()
          ? Optional.of(of(cloth, fold))
          : lengthwise(cloth, fold, folded.getAsDouble());
    }
    // Where nothing lies folded it does not matter how far it might be.
    double border = folded.orElseGet(() -> cloth.nearestMirrorMm(mostBorderMm(cloth, fold) / 2));
    return canFold(cloth, fold, border)
        ? Optional.of(of(cloth, fold, cloth.nearestMirrorMm(border)))
        : Optional.empty();
  }

  /**
   * Folded lengthwise so that the narrower side has a width; empty if it cannot.
   *
   * @param fold one along the middle
   */
  public static Optional<LaidCloth> lengthwise(Cloth cloth, Fold fold, double widthMm) {
    return DoubleStream.of(widthMm, cloth.usableWidthMm() - widthMm)
        .filter(line -> canFold(cloth, fold, line))
        .mapToObj(line -> of(cloth, fold, cloth.nearestMirrorMm(line)))
        .findFirst();
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
  private static Band endOverEnd(
      String id, double lowY, double highY, Ply upper, Side... foldEdges) {
    Ply lower = new Ply(0, false, true, false);
    return new Band(id, lowY, highY, List.of(upper, lower), Set.of(foldEdges), Face.WRONG);
  }

  /**
   * The upper length is turned round in its plane and over: in all, over its own length, which
   * leaves its heading.
   *
   * @param mirrorMm the line that lies on itself then
   */
  private static Band turned(double width, double mirrorMm) {
    return endOverEnd(
        "double",
        Math.max(0, 2 * mirrorMm - width),
        Math.min(width, 2 * mirrorMm),
        new Ply(2 * mirrorMm, true));
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

  /** The same without what is wider than its cloth may lie; empty if nothing is left. */
  public Optional<LaidCloth> within(Cloth cloth) {
    List<List<Band>> narrow =
        stretches.stream()
            .takeWhile(bands -> bands.stream().allMatch(b -> b.highY() <= cloth.withinMm()))
            .toList();
    return narrow.isEmpty() ? Optional.empty() : Optional.of(new LaidCloth(fold, narrow));
  }

  /** Every band, stretch by stretch. */
  public List<Band> bands() {
    return stretches.stream().flatMap(List::stream).toList();
  }
}
