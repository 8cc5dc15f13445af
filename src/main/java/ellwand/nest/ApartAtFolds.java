package ellwand.nest;

import ellwand.cloth.Band;
import ellwand.cloth.LaidCloth;
import ellwand.cloth.Ply;
import ellwand.cloth.Zone;
import ellwand.geometry.Box;
import ellwand.lay.Copy;
import ellwand.lay.Marker;
import java.util.List;
import java.util.stream.Stream;

/**
 * Parts what lies on either side of a fold line, once the cloth lies flat, by the gap between
 * pieces: on the fold both of a pair were cut from their own ply and might touch the edge.
 *
 * @param alongMm where the cloth was folded or cut across, from its cut end; at most one
 * @param acrossMm where it was folded lengthwise, from its first cuttable line
 */
record ApartAtFolds(List<Double> alongMm, List<Double> acrossMm) {

  /** What lies this near to a fold line touches it, mm. */
  private static final double TOUCHES_MM = 1e-6;

  /** The fold lines of a marker. */
  static ApartAtFolds of(Marker folded, LaidCloth laid) {
    List<Double> across =
        laid.bands().stream()
            .flatMap(band -> band.foldEdges().stream().flatMap(side -> lines(band, side)))
            .distinct()
            .toList();
    double along = folded.acrossMm();
    return new ApartAtFolds(along > 0 ? List.of(along) : List.of(), across);
  }

  private static Stream<Double> lines(Band band, Zone.Side side) {
    Ply ply = band.layers().get(0);
    return switch (side) {
      case LOW_Y -> Stream.of(ply.open(band.lowY()));
      case HIGH_Y -> Stream.of(ply.open(band.highY()));
      default -> Stream.empty();
    };
  }

  /**
   * The copies of the marker laid flat, each moved outwards; what lies across a line moves half as
   * far as what lies beyond it. Across the cloth they keep within its width if they can, along it
   * the marker becomes longer.
   */
  List<Copy> moved(List<Copy> copies, double gapMm, double widthMm) {
    // As far back as nothing needs to be moved over the first cuttable line.
    double room =
        copies.stream().mapToDouble(c -> c.outline().box().minY() + upMm(c, gapMm)).min().orElse(0);
    double over =
        copies.stream()
            .mapToDouble(c -> c.outline().box().maxY() + upMm(c, gapMm) - widthMm)
            .max()
            .orElse(0);
    double back = Math.min(Math.max(over, 0), Math.max(room, 0));
    return copies.stream()
        .map(
            c -> c.shifted(gapMm * beyond(alongMm, c.outline().box(), true), upMm(c, gapMm) - back))
        .toList();
  }

  private double upMm(Copy copy, double gapMm) {
    return gapMm * beyond(acrossMm, copy.outline().box(), false);
  }

  /** How many of the lines lie before it; half of each that it lies across. */
  private static double beyond(List<Double> lines, Box box, boolean along) {
    double low = along ? box.minX() : box.minY();
    double high = along ? box.maxX() : box.maxY();
    return lines.stream()
        .mapToDouble(at -> low >= at - TOUCHES_MM ? 1 : high <= at + TOUCHES_MM ? 0 : 0.5)
        .sum();
  }
}
