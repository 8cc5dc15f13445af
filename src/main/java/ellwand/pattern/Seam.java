package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

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
   * How much longer the first edges are than the others and the ease, mm, with darts, pleats and
   * tucks sewn and gathers drawn up; measured once where the same seam is there several times, left
   * and right.
   *
   * @param pieces of one size
   * @throws InputException naming every edge that is not there
   */
  public double mismatchMm(List<Piece> pieces) {
    return Sides.of(this, pieces, cloths(pieces).stream().findFirst()).mismatchMm(easeMm);
  }

  /** Both sides of one of the seams that there are. */
  private record Sides(Joined one, Joined other) {

    static Sides of(Seam seam, List<Piece> pieces, Optional<String> cloth) {
      Joined one = Joined.of(seam.one, pieces, cloth);
      Joined other = Joined.of(seam.other, pieces, cloth);
      int seams = Joined.commonDivisor(one.most(), other.most());
      return new Sides(one.among(seams), other.among(seams));
    }

    /** What is done before they are sewn together. */
    String made() {
      Set<String> made = new LinkedHashSet<>(one.made());
      made.addAll(other.made());
      return made.isEmpty() ? "" : ", with " + String.join(" and ", made);
    }

    double mismatchMm(double easeMm) {
      return one.mm() - other.mm() - easeMm;
    }
  }

  /** The cloths that both sides are cut from. */
  private List<String> cloths(List<Piece> pieces) {
    return Joined.cloths(Stream.concat(one.stream(), other.stream()).toList(), pieces);
  }

  /**
   * Says by how much the edges do not match in a size, if they do not; for each cloth that both
   * sides are cut from, where these differ.
   */
  public List<String> sentences(String size, List<Piece> pieces, Unit unit) {
    List<String> cloths = cloths(pieces);
    if (cloths.isEmpty()) {
      return sentence(Sides.of(this, pieces, Optional.empty()), unit)
          .map(s -> "size " + size + ": " + s)
          .stream()
          .toList();
    }
    Map<String, Optional<String>> byCloth = new LinkedHashMap<>();
    cloths.forEach(c -> byCloth.put(c, sentence(Sides.of(this, pieces, Optional.of(c)), unit)));
    boolean alike = byCloth.values().stream().distinct().count() == 1;
    return byCloth.entrySet().stream()
        .flatMap(
            e ->
                e.getValue().stream()
                    .map(s -> "size " + size + (alike ? "" : ", " + e.getKey()) + ": " + s))
        .distinct()
        .toList();
  }

  private Optional<String> sentence(Sides sides, Unit unit) {
    double mismatch = sides.mismatchMm(easeMm);
    if (Math.abs(mismatch) <= WORTH_SAYING_MM) {
      return Optional.empty();
    }
    return Optional.of(
        "%s is %s too %s for %s%s%s%s"
            .formatted(
                sides.one,
                shown(Math.abs(mismatch), unit),
                mismatch > 0 ? "long" : "short",
                sides.other,
                sides.made(),
                easeMm == 0 ? "" : ", counting " + shown(easeMm, unit) + " of ease",
                sides.one.layers().or(sides.other::layers).map(l -> "; " + l).orElse("")));
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
