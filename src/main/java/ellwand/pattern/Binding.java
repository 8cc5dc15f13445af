package ellwand.pattern;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bias strip for binding edges, computed from its length: cut as one continuous strip from a
 * square, or as strips on the bias that are joined along the thread, at 45 degrees to the strip.
 *
 * @param length of all the strip of one, joined, with what its ends need, more than 0
 * @param widthMm cut width, more than 0
 * @param cutAs how it is cut
 * @param longestMm longest single strip, between its joins; of no account for a square
 * @param joinMm seam allowance of a join
 * @param wholeMm a square's side is a whole multiple of this: 1 in or 1 cm
 * @param cuts for how many bindings, by cloth
 */
public record Binding(
    String name,
    Span length,
    double widthMm,
    CutAs cutAs,
    double longestMm,
    double joinMm,
    double wholeMm,
    List<Cut> cuts) {

  /**
   * A strip folded once to each side of the edge is cut four times its finished width
   * (sewaquilt.com, bias tape).
   */
  private static final double SINGLE = 4;

  /** One that is folded in half first is cut six times its finished width; common practice. */
  private static final double DOUBLED = 6;

  /** Longest single strip unless said, mm: our own choice. */
  public static final double USUAL_LONGEST_MM = 600;

  /** Allowance of a join unless said, mm: our own choice. */
  public static final double USUAL_JOIN_MM = 6;

  /** How a binding is cut. */
  public enum CutAs {
    STRIPS,
    SQUARE
  }

  private static final double SAME_MM = 1e-6;

  /** One of so many mm. */
  public Binding(
      String name,
      double lengthMm,
      double widthMm,
      CutAs cutAs,
      double longestMm,
      double joinMm,
      double wholeMm,
      List<Cut> cuts) {
    this(name, Span.given(lengthMm), widthMm, cutAs, longestMm, joinMm, wholeMm, cuts);
  }

  public Binding {
    cuts = List.copyOf(cuts);
    if (!(length.mm() > 0 && widthMm > 0)) {
      throw new InputException(
          Problem.inPiece(
              name, "a binding is longer and wider than 0", "Give its length: and width:"));
    }
    if (!(longestMm > 0 && joinMm >= 0)) {
      throw new InputException(
          Problem.inPiece(
              name,
              "its strips have no length, or their joins less than no allowance",
              "Write longest: above 0 and join: as 0 or more"));
    }
    if (cuts.stream().anyMatch(c -> c.how() != Cut.How.WHOLE)) {
      throw new InputException(
          Problem.inPiece(
              name,
              "a binding is cut neither in pairs nor on the fold",
              "Write how many under cut:, for example 1"));
    }
  }

  /**
   * Cut width of a binding.
   *
   * @param finishedMm as it shows on one side
   * @param doubled whether it is folded in half first
   */
  public static double cutWidthMm(double finishedMm, boolean doubled) {
    return finishedMm * (doubled ? DOUBLED : SINGLE);
  }

  /** What squares are rounded up to where people reckon in a unit: 1 in or 1 cm. */
  public static double wholeMm(Unit unit) {
    return unit == Unit.INCH || unit == Unit.YARD ? Unit.INCH.mm() : Unit.CM.mm();
  }

  /**
   * Side of the square that a continuous strip is cut from: the root of length times width, rounded
   * up to a whole multiple. 250 in of 2 in strip take 23 in (sewaquilt.com). Joins are ignored, as
   * there.
   */
  public static double squareSideMm(double lengthMm, double widthMm, double wholeMm) {
    return Math.ceil(Math.sqrt(lengthMm * widthMm) / wholeMm - SAME_MM) * wholeMm;
  }

  /**
   * Length of the continuous strip from a piece of cloth: area by width. A 12 in square gives 72 in
   * of 2 in strip (sewaquilt.com).
   */
  public static double stripLengthMm(double areaMm2, double widthMm) {
    return areaMm2 / widthMm;
  }

  /** The fewest strips of equal length; 1 for a square. */
  public int pieces() {
    return cutAs == CutAs.SQUARE ? 1 : (int) Math.ceil(length.mm() / longestMm - SAME_MM);
  }

  /** What is cut, on the sewing line. */
  public Piece piece() {
    List<Cut> all =
        cuts.stream().map(c -> new Cut(c.cloth(), c.count() * pieces(), c.how())).toList();
    return cutAs == CutAs.SQUARE ? square(all) : strip(all);
  }

  /** What the cutter cannot see from the piece: how wide the strip is, and how it comes about. */
  public String sentence(Unit unit) {
    if (cutAs == CutAs.SQUARE) {
      double side = squareSideMm(length.mm(), widthMm, wholeMm);
      return "%s: cut the square of %s from corner to corner, sew the halves to a slanted band, and cut that round and round %s wide: about %s of strip, of which %s are wanted"
          .formatted(
              name,
              show(side, unit),
              show(widthMm, unit),
              show(stripLengthMm(side * side, widthMm), unit),
              show(length.mm(), unit));
    }
    return pieces() == 1
        ? "%s: one strip %s wide on the bias, %s long"
            .formatted(name, show(widthMm, unit), show(length.mm(), unit))
        : "%s: %d strips %s wide on the bias, joined at their slanted ends, allowance %s, to %s in all"
            .formatted(
                name, pieces(), show(widthMm, unit), show(joinMm, unit), show(length.mm(), unit));
  }

  /** What its maker should look at before it is cut from a cloth. */
  Optional<String> caution(String cloth, Unit unit) {
    return length.caution(name, cloth, 1, unit);
  }

  /** What each of several is sewn to. */
  Optional<String> note(String cloth, Unit unit) {
    return length.note(name, cloth, 1, unit);
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }

  private Piece square(List<Cut> all) {
    double side = squareSideMm(length.mm(), widthMm, wholeMm);
    return outlined(
        List.of(new Point(0, 0), new Point(side, 0), new Point(side, side), new Point(0, side)),
        List.of(0.0, 0.0, 0.0, 0.0),
        Grain.EITHER,
        all);
  }

  /** Slanted ends lie along the thread when the strip lies at 45 degrees. */
  private Piece strip(List<Cut> all) {
    double each = length.mm() / pieces();
    return outlined(
        List.of(
            new Point(0, 0),
            new Point(each, 0),
            new Point(each + widthMm, widthMm),
            new Point(widthMm, widthMm)),
        List.of(0.0, joinMm, 0.0, joinMm),
        Grain.BIAS,
        all);
  }

  private Piece outlined(List<Point> corners, List<Double> allowances, Grain grain, List<Cut> all) {
    List<String> names = List.of("long edge", "end", "other long edge", "other end");
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point next = corners.get((i + 1) % corners.size());
      edges.add(new Edge(names.get(i), Path.line(corners.get(i), next), allowances.get(i), false));
    }
    return new Piece(name, edges, Optional.empty(), grain, List.of(), List.of(), all);
  }
}
