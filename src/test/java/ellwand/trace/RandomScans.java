package ellwand.trace;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A strip in two scans as they may come, at random: straight or not, one of them upside down or
 * not, none to four crosses in what both show, by hand or along a ruler, more where only one shows
 * them; now and then the second scan is of another piece.
 *
 * @param said what it is, for whoever reads the results
 * @param foreign whether the second scan shows another piece
 */
record RandomScans(
    String said,
    ScannedTable piece,
    ScannedTable other,
    boolean foreign,
    Motion first,
    Motion second) {

  /** Scans number {@code seed}; the same for everyone. */
  static RandomScans of(long seed) {
    Random dice = new Random(seed * 31 + 7);
    boolean straight = dice.nextInt(3) == 0;
    double wide = between(dice, 110, 170);
    double high = between(dice, 340, 500);
    Outline outline =
        Outline.of(
            straight
                ? List.of(
                    new Point(0, 0), new Point(wide, 0), new Point(wide, high), new Point(0, high))
                : List.of(
                    new Point(0, 0),
                    new Point(wide - between(dice, 0, 10), between(dice, 0, 5)),
                    new Point(wide + between(dice, 0, 8), high * 0.55),
                    new Point(wide - between(dice, 0, 20), high),
                    new Point(between(dice, 0, 25), high - between(dice, 0, 10)),
                    new Point(-between(dice, 0, 8), high / 2)));
    // The first shows what lies below 275 mm, the second what lies less than 275 mm from the top.
    double from = high - 260;
    double to = 262;
    int shared = dice.nextInt(5);
    boolean ruler = dice.nextInt(3) == 0;
    double along = between(dice, from + 15, to - 15);
    List<Point> crosses = new ArrayList<>();
    for (int i = 0; i < shared; i++) {
      crosses.add(
          ruler
              ? new Point(25 + i * (wide - 50) / Math.max(1, shared - 1), along)
              : anywhere(dice, wide, from, to));
    }
    int more = dice.nextInt(3);
    for (int i = 0; i < more; i++) {
      crosses.add(new Point(25 + i * (wide - 50), between(dice, 30, 50)));
    }
    ScannedTable piece = new ScannedTable(outline, crosses);
    Motion first = new Motion(false, between(dice, -2, 2), 20, 15);
    boolean upsideDown = dice.nextBoolean();
    Motion second =
        upsideDown
            ? new Motion(false, 180 + between(dice, -2, 2), wide + 20, high + 8)
            : new Motion(false, between(dice, -1.5, 1.5), 20, 285 - high);
    boolean foreign = dice.nextInt(5) == 0;
    ScannedTable other = foreign ? another(dice, piece, wide, high) : piece;
    String said =
        String.format(
            Locale.ROOT,
            "%d %s, %d crosses%s shared, %d more%s%s",
            seed,
            straight ? "rectangle" : "strip",
            shared,
            ruler ? " along a ruler" : "",
            more,
            upsideDown ? ", one upside down" : "",
            foreign ? ", of another piece" : "");
    return new RandomScans(said, piece, other, foreign, first, second);
  }

  /** With crosses of its own, or the very same. */
  private static ScannedTable another(Random dice, ScannedTable piece, double wide, double high) {
    List<Point> crosses = new ArrayList<>(piece.crosses());
    if (dice.nextBoolean()) {
      crosses.replaceAll(c -> anywhere(dice, wide, high - 260, 262));
    }
    return new ScannedTable(
        Outline.of(
            List.of(
                new Point(-20, 0),
                new Point(wide - 30, 0),
                new Point(wide + 5, high * 0.6),
                new Point(wide - 15, high),
                new Point(12, high))),
        crosses);
  }

  private static Point anywhere(Random dice, double wide, double from, double to) {
    return new Point(between(dice, 20, wide - 20), between(dice, from + 10, to - 10));
  }

  private static double between(Random dice, double least, double most) {
    return least + dice.nextDouble() * (most - least);
  }

  /** By how much the second scan is laid wrong where the piece is farthest off, or why not. */
  String joined() {
    Straightened straight;
    try {
      straight =
          Scans.read(
              List.of("one", "other"),
              List.of(piece.scan(first), other.scan(second)),
              ScannedTable.DPI);
    } catch (InputException e) {
      return "refused: " + e.getMessage() + "|||";
    }
    ScanMapping mapping = (ScanMapping) straight.views().get(1).mapping();
    double worst = 0;
    double expected = 0;
    for (Point corner : piece.outline().points()) {
      Point laid = mapping.laid().apply(ScannedTable.inScan(second.apply(corner)));
      worst = Math.max(worst, laid.distance(ScannedTable.inScan(first.apply(corner))));
      expected = Math.max(expected, mapping.errorMm(laid));
    }
    return String.format(
        Locale.ROOT,
        "%d crosses|%.2f mm|%.2f mm%s|",
        straight.crosses().size(),
        worst,
        expected,
        foreign || worst > 2 ? " SILENT" : "");
  }
}
