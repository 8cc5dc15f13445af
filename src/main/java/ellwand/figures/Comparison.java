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
public record Comparison(String style, String cloth, int garments, List<Row> rows) {

  /**
   * One width and one way of laying.
   *
   * @param cloth in that width
   * @param tried what it takes, or why it cannot be
   * @param utilisation 0 to 1; 0 if it cannot be
   * @param cost 0 if the price is unknown
   * @param longest names and lengths that keep the length from being less, for people
   */
  public record Row(
      Cloth cloth, FoldTried tried, double utilisation, double cost, Optional<Binding> longest) {

    public double widthMm() {
      return cloth.widthMm();
    }
  }

  public Comparison {
    rows = List.copyOf(rows);
  }

  public boolean possible() {
    return rows.stream().anyMatch(r -> r.tried().possible());
  }

  /** Whether every width that works has a price. */
  public boolean priced() {
    return rows.stream().filter(r -> r.tried().possible()).allMatch(r -> r.cost() > 0);
  }

  /** The best way of laying of each width that works, widths as asked for. */
  public List<Row> bestOfEach() {
    return rows.stream()
        .map(Row::widthMm)
        .distinct()
        .flatMap(
            width ->
                rows.stream()
                    .filter(r -> r.widthMm() == width && r.tried().possible())
                    .min(Comparator.comparingDouble(r -> r.tried().clothLengthMm()))
                    .stream())
        .toList();
  }

  /** The cheapest; where a price is unknown, the one that takes the smallest area. */
  public Optional<Row> best() {
    Comparator<Row> cheap =
        priced()
            ? Comparator.comparingDouble(Row::cost)
            : Comparator.comparingDouble(r -> r.tried().toBuyMm() * r.widthMm());
    return bestOfEach().stream().min(cheap);
  }
}
