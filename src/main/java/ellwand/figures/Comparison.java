package ellwand.figures;

import ellwand.cloth.Cloth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One cloth's lay in several widths and ways of laying.
 *
 * @param rows width by width as asked for, fold by fold as tried
 */
public record Comparison(String style, String cloth, int garments, List<WidthTried> rows) {

  /**
   * From how many times the least area on a width is said to take more than its share. Our own
   * measure, after the published tables of cloth needed at another width: in their rows no width
   * takes more than 1.10 times the area at 36 in (nor less than 0.89 times, computed).
   */
  public static final double MOST_AREA = 1.10;

  /**
   * One width and one way of laying.
   *
   * @param cloth in that width
   * @param tried what it takes, or why it cannot be
   * @param utilisation 0 to 1; 0 if it cannot be
   * @param cost 0 if the price is unknown
   * @param longest the pieces that keep the length from being less, if any do
   * @param unasked the best of the ways of laying that were not asked for; tried only to find out
   *     whether the fold is why a width takes more than its share
   */
  public record WidthTried(
      Cloth cloth,
      FoldTried tried,
      double utilisation,
      double cost,
      Optional<Bottleneck> longest,
      Optional<FoldTried> unasked) {

    public double widthMm() {
      return cloth.widthMm();
    }

    /** Of what is bought. */
    public double areaMm2() {
      return tried.toBuyMm() * widthMm();
    }

    public WidthTried withUnasked(FoldTried way) {
      return new WidthTried(cloth, tried, utilisation, cost, longest, Optional.of(way));
    }
  }

  public Comparison {
    rows = List.copyOf(rows);
  }

  /** The same with other rows. */
  public Comparison with(List<WidthTried> others) {
    return new Comparison(style, cloth, garments, others);
  }

  public boolean possible() {
    return rows.stream().anyMatch(r -> r.tried().possible());
  }

  /** Whether a width that works has a price. */
  public boolean priced() {
    return rows.stream().anyMatch(r -> r.cost() > 0);
  }

  /**
   * The best way of laying of each width that works, widths as asked for: the one that takes least
   * cloth, the first of those that differ by less than 1 mm.
   */
  public List<WidthTried> bestOfEach() {
    return rows.stream()
        .map(WidthTried::widthMm)
        .distinct()
        .flatMap(
            width ->
                rows.stream()
                    .filter(r -> r.widthMm() == width && r.tried().possible())
                    .min(Comparator.comparingLong(r -> Math.round(r.tried().clothLengthMm())))
                    .stream())
        .toList();
  }

  /** The ways of laying a width for which no more is bought than for the best of them. */
  public List<WidthTried> asGood(WidthTried best) {
    return rows.stream()
        .filter(r -> r.widthMm() == best.widthMm() && r.tried().possible())
        .filter(r -> r.tried().toBuyMm() <= best.tried().toBuyMm())
        .toList();
  }

  /**
   * The best of each width, cheapest first and those without a price left out; where no price is
   * known, least area first.
   */
  public List<WidthTried> ranked() {
    return bestOfEach().stream()
        .filter(r -> r.cost() > 0 || !priced())
        .sorted(Comparator.comparingDouble(priced() ? WidthTried::cost : WidthTried::areaMm2))
        .toList();
  }

  /** The best of each width that takes more of the cloth's area than its share. */
  public List<WidthTried> lavish() {
    double least = bestOfEach().stream().mapToDouble(WidthTried::areaMm2).min().orElse(0);
    return bestOfEach().stream().filter(r -> r.areaMm2() > MOST_AREA * least).toList();
  }
}
