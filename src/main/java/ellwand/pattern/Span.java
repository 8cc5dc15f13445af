package ellwand.pattern;

import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The finished length that one computed piece is made for. Where edges are joined and there are as
 * many of each as of the piece, or a multiple, each piece joins its share of them; where not, each
 * is made for all of them.
 *
 * @param mm that each one is made for
 * @param shares what all of them join, by cloth; empty where the length was given
 */
public record Span(double mm, List<Share> shares) {

  /** Edges are cut true to 1 mm at best (Vilumsone-Nemes, p. 210). */
  private static final double SAME_MM = 1;

  /**
   * The pieces of one garment that are cut from one cloth, and what they are sewn to.
   *
   * @param pieces how many there are
   */
  record Share(String cloth, int pieces, Joined joined) {

    double eachMm() {
      return joined.sharedBy(pieces) ? joined.mm() / pieces : joined.mm();
    }
  }

  public Span {
    shares = List.copyOf(shares);
  }

  /** A length that was given, for each one. */
  static Span given(double mm) {
    return new Span(mm, List.of());
  }

  /**
   * That of edges.
   *
   * @param cuts what a garment needs of the piece; where cloths differ the first counts
   * @throws ellwand.problem.InputException naming every edge that is not there
   */
  static Span of(List<String> edges, List<Piece> pieces, List<Cut> cuts) {
    List<Share> shares = new ArrayList<>();
    for (Cut cut : cuts) {
      shares.add(
          new Share(cut.cloth(), cut.pieces(), Joined.of(edges, pieces, Optional.of(cut.cloth()))));
    }
    return new Span(shares.get(0).eachMm(), shares);
  }

  /**
   * What is worth a look: that all of them together come to another length than asked for, or that
   * it was only assumed how often an edge is sewn.
   *
   * @param name of the piece
   * @param fullness how much wider one is than what it is made for
   */
  Optional<String> caution(String name, String cloth, double fullness, Unit unit) {
    return share(cloth)
        .flatMap(
            s ->
                Math.abs(s.pieces * mm - s.joined.mm()) > SAME_MM
                    ? Optional.of(otherwise(name, s, fullness, unit))
                    : s.joined
                        .layers()
                        .map(layers -> sentence(name, s, unit) + ", as often as cut; " + layers));
  }

  /** What one of several is sewn to, where that is as asked for and nothing to look at. */
  Optional<String> note(String name, String cloth, double fullness, Unit unit) {
    return caution(name, cloth, fullness, unit).isPresent()
        ? Optional.empty()
        : share(cloth).filter(s -> s.pieces > 1).map(s -> sentence(name, s, unit));
  }

  private Optional<Share> share(String cloth) {
    return shares.stream().filter(s -> s.cloth.equals(cloth)).findFirst();
  }

  private static String sentence(String name, Share share, Unit unit) {
    return "%s: %s joins %s, %s"
        .formatted(
            name,
            share.pieces == 1 ? "it" : "each of " + share.pieces,
            share.joined.among(share.pieces),
            show(share.joined.mm() / share.pieces, unit));
  }

  private String otherwise(String name, Share share, double fullness, Unit unit) {
    double together = share.pieces * mm;
    String comesTo =
        fullness == 1
            ? show(Math.abs(together - share.joined.mm()), unit)
                + (together > share.joined.mm() ? " too long" : " too short")
            : "a fullness of %s in place of %s"
                .formatted(number(together * fullness / share.joined.mm()), number(fullness));
    return "%s: %d cut from %s are %s in all for the %s of %s, %s; cut another number, or say how often each edge is sewn, for example 2 x %s"
        .formatted(
            name,
            share.pieces,
            share.cloth,
            show(together * fullness, unit),
            show(share.joined.mm(), unit),
            share.joined,
            comesTo,
            share.joined.parts().get(0).edge());
  }

  private static String number(double fullness) {
    return String.format(Locale.ROOT, "%.2f", fullness).replaceAll("\\.?0+$", "");
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }
}
