package ellwand.figures;

import ellwand.cloth.Cloth;
import ellwand.cloth.Shrinkage;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is to be done, and not to be done, because a cloth shrinks; in sentences. */
public final class Washing {

  private Washing() {}

  /**
   * For whoever has the cloth on the table.
   *
   * @param pieces that are cut from it
   */
  public static Optional<String> atTable(Cloth cloth, Collection<Piece> pieces) {
    return first(cloth)
        ? Optional.of(
            "Wash the cloth before it is laid; it is bought unwashed, and drawn here as it is after"
                + " the wash.")
        : larger(cloth, pieces);
  }

  /**
   * For whoever buys it.
   *
   * @param pieces that are cut from it
   * @param toBuyMm length to buy, mm; 0 where several lengths are told elsewhere
   */
  public static Optional<String> bought(
      Cloth cloth, Collection<Piece> pieces, double toBuyMm, Unit unit) {
    return first(cloth)
        ? Optional.of(
            "%s: wash it before it is cut, it loses %s; buy %s unwashed."
                .formatted(
                    cloth.name(),
                    both(cloth.shrinkage().along(), cloth.shrinkage().across()),
                    toBuyMm > 0 ? Buying.shown(toBuyMm, unit) : "the length to buy"))
        : larger(cloth, pieces).map(s -> cloth.name() + ": " + lower(s));
  }

  /**
   * For whoever compares what to buy in several widths, if the cloth is washed before it is cut.
   */
  static Optional<String> compared(Cloth cloth) {
    return first(cloth)
        ? Optional.of(
            "Widths and lengths to buy are those of unwashed cloth: it loses %s when it is washed, before it is cut."
                .formatted(both(cloth.shrinkage().along(), cloth.shrinkage().across())))
        : Optional.empty();
  }

  /**
   * For whoever takes a remnant off the shelf.
   *
   * @param cloth what it is a piece of, as bought
   */
  public static Optional<String> remnant(String name, Cloth cloth) {
    return first(cloth)
        ? Optional.of(
            name
                + " is taken as washed: it is laid as large as it was measured, and what it loses"
                + " in a first wash is not allowed for.")
        : Optional.empty();
  }

  /** By how much pieces are drawn larger than their pattern, if they are: a caption. */
  public static Optional<String> largerBy(Cloth cloth) {
    Shrinkage s = cloth.shrinkage();
    return s.growthAlong() > 1 || s.growthAcross() > 1
        ? Optional.of(both(s.growthAlong() - 1, s.growthAcross() - 1))
        : Optional.empty();
  }

  private static Optional<String> larger(Cloth cloth, Collection<Piece> pieces) {
    return largerBy(cloth)
        .map(
            by ->
                "Every piece is drawn larger by "
                    + by
                    + otherwise(cloth.shrinkage(), pieces)
                    + ", since the cloth shrinks once it is cut: do not lay the paper pattern on"
                    + " it.");
  }

  /** Which pieces are larger by as much both ways, since nobody knows how they will lie. */
  private static String otherwise(Shrinkage s, Collection<Piece> pieces) {
    List<String> names =
        pieces.stream()
            .filter(p -> !p.grain().onlyAlong() && !p.grain().onlyAcross())
            .map(Piece::name)
            .distinct()
            .toList();
    return names.isEmpty() || s.growthAlong() == s.growthAcross()
        ? ""
        : " (%s by %s both ways)"
            .formatted(
                String.join(", ", names), percent(Math.max(s.growthAlong(), s.growthAcross()) - 1));
  }

  private static boolean first(Cloth cloth) {
    Shrinkage s = cloth.shrinkage();
    return s.when() == Shrinkage.When.BEFORE_CUTTING && (s.along() > 0 || s.across() > 0);
  }

  private static String both(double along, double across) {
    return percent(along) + " along and " + percent(across) + " across";
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f", 100 * share).replaceAll("\\.0$", "") + " %";
  }

  private static String lower(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }
}
