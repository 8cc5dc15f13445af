package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Edges that are sewn together.
 *
 * @param one as piece.edge, one after another along the seam
 * @param other what they are sewn to
 * @param easeMm how much longer the first are meant to be; negative if shorter
 */
public record Seam(List<String> one, List<String> other, double easeMm) {

  /** Cut edges are true to 1 mm at best (Vilumsone-Nemes, p. 210): less is not worth a word. */
  static final double WORTH_SAYING_MM = 1;

  public Seam {
    one = List.copyOf(one);
    other = List.copyOf(other);
  }

  /**
   * How much longer the first edges are than the others and the ease, mm; measured once where every
   * edge is there twice, left and right.
   *
   * @param pieces of one size
   * @throws InputException naming every edge that is not there
   */
  public double mismatchMm(List<Piece> pieces) {
    return differenceMm(pieces) - easeMm;
  }

  private double differenceMm(List<Piece> pieces) {
    double whole = Joined.lengthMm(one, pieces) - Joined.lengthMm(other, pieces);
    return Joined.allTwice(one, pieces) && Joined.allTwice(other, pieces) ? whole / 2 : whole;
  }

  /** Says by how much the edges do not match in a size, if they do not. */
  public Optional<String> sentence(String size, List<Piece> pieces, Unit unit) {
    double mismatch = mismatchMm(pieces);
    if (Math.abs(mismatch) <= WORTH_SAYING_MM) {
      return Optional.empty();
    }
    return Optional.of(
        "size %s: %s is %s too %s for %s%s"
            .formatted(
                size,
                String.join(" + ", one),
                shown(Math.abs(mismatch), unit),
                mismatch > 0 ? "long" : "short",
                String.join(" + ", other),
                easeMm == 0 ? "" : ", counting " + shown(easeMm, unit) + " of ease"));
  }

  /** Finer than lengths of cloth are shown. */
  private static String shown(double mm, Unit unit) {
    return switch (unit) {
      case MM -> String.format(Locale.ROOT, "%.1f mm", mm);
      case CM, M -> String.format(Locale.ROOT, "%.2f cm", mm / Unit.CM.mm());
      case INCH, YARD -> String.format(Locale.ROOT, "%.2f in", mm / Unit.INCH.mm());
    };
  }
}
