package ellwand.figures;

import ellwand.figures.Comparison.Row;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A comparison as a table and in sentences. */
public final class ComparisonText {

  /**
   * The least and greatest share of the area at another width that the published tables of cloth
   * needed at another width keep to (0.89 and 1.10, computed from their rows).
   */
  public static final double LEAST_AREA = 0.89;

  public static final double MOST_AREA = 1.10;

  private final Comparison comparison;
  private final Unit unit;

  private ComparisonText(Comparison comparison, Unit unit) {
    this.comparison = comparison;
    this.unit = unit;
  }

  /** Lines that end with a line feed. */
  public static String of(Comparison comparison, Unit unit) {
    ComparisonText text = new ComparisonText(comparison, unit);
    return comparison.style()
        + ", "
        + comparison.cloth()
        + "\n\n"
        + text.table()
        + "\n"
        + String.join("\n", text.sentences())
        + "\n";
  }

  /** What to buy, and why a width takes more or less than its share. */
  public static List<String> sentences(Comparison comparison, Unit unit) {
    return new ComparisonText(comparison, unit).sentences();
  }

  private String table() {
    List<String[]> cells = new ArrayList<>();
    cells.add(new String[] {"width", "lies", "cloth length", "to buy", "used", "cost", "each"});
    for (Row row : comparison.rows()) {
      FoldTried t = row.tried();
      cells.add(
          t.possible()
              ? new String[] {
                show(row.widthMm()),
                t.fold(),
                show(t.clothLengthMm()),
                Buying.shown(t.toBuyMm(), unit),
                String.format(Locale.ROOT, "%.1f %%", 100 * row.utilisation()),
                money(row.cost()),
                money(row.cost() / Math.max(1, comparison.garments()))
              }
              : new String[] {show(row.widthMm()), t.fold(), "no, " + t.reason()});
    }
    StringBuilder table = new StringBuilder();
    for (String[] row : cells) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.length; i++) {
        int column = i;
        int width =
            cells.stream()
                .filter(r -> r.length > 3)
                .mapToInt(r -> r[column].length())
                .max()
                .orElse(0);
        line.append(row[i]).append(" ".repeat(Math.max(0, width - row[i].length()) + 2));
      }
      table.append(line.toString().stripTrailing()).append('\n');
    }
    return table.toString();
  }

  private List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    Optional<Row> best = comparison.best();
    if (best.isEmpty()) {
      return List.of("No width will do.");
    }
    List<Row> each = comparison.bestOfEach();
    sentences.add(buy(best.get(), each));
    double area = median(each);
    each.forEach(row -> offBand(row, area).ifPresent(sentences::add));
    return sentences;
  }

  private String buy(Row best, List<Row> each) {
    String sentence =
        "Buy " + Buying.shown(best.tried().toBuyMm(), unit) + " of the " + show(best.widthMm());
    Optional<Row> next =
        each.stream()
            .filter(r -> r != best)
            .min(
                comparison.priced()
                    ? Comparator.comparingDouble(Row::cost)
                    : Comparator.comparingDouble(r -> area(r)));
    if (next.isEmpty()) {
      return sentence + ".";
    }
    Row other = next.get();
    return sentence
        + "; "
        + (comparison.priced()
            ? "the "
                + show(other.widthMm())
                + (other.cost() - best.cost() < 0.005
                    ? " costs the same"
                    : " costs " + money(other.cost() - best.cost()) + " more")
            : "of the "
                + show(other.widthMm())
                + " it is "
                + Buying.shown(other.tried().toBuyMm(), unit))
        + ".";
  }

  private static double area(Row row) {
    return row.tried().toBuyMm() * row.widthMm();
  }

  private static double median(List<Row> rows) {
    List<Double> areas = rows.stream().map(ComparisonText::area).sorted().toList();
    return areas.get(areas.size() / 2);
  }

  /** Why a width takes more or less cloth than its share; empty if it does not. */
  private Optional<String> offBand(Row row, double area) {
    double share = area(row) / area;
    if (share >= LEAST_AREA && share <= MOST_AREA) {
      return Optional.empty();
    }
    double exact =
        row.cloth().shrinkage().boughtLength(row.tried().clothLengthMm() + row.cloth().endsMm());
    double exactShare = exact * row.widthMm() / area;
    String what =
        "The "
            + show(row.widthMm())
            + " takes "
            + (share > 1 ? "more" : "less")
            + " cloth than the others do: ";
    if (share > 1 && exactShare <= MOST_AREA) {
      return Optional.of(what + "it is sold in steps of " + show(row.cloth().shopStepMm()) + ".");
    }
    if (share > 1 && row.longest().isPresent()) {
      Binding b = row.longest().get();
      return Optional.of(
          what
              + (b.copies() == 1
                  ? "piece " + b.piece() + " alone is " + show(b.lengthMm()) + " long."
                  : "piece "
                      + b.piece()
                      + " and others as wide do not lie side by side, "
                      + show(b.lengthMm())
                      + " in all."));
    }
    return Optional.of(
        what
            + "in its "
            + row.tried().fold()
            + " the pieces lie "
            + (share > 1 ? "less" : "more")
            + " closely, "
            + String.format(Locale.ROOT, "%.0f %%", 100 * row.utilisation())
            + " of it is used.");
  }

  private String show(double mm) {
    return new Length(mm).show(unit);
  }

  private String money(double amount) {
    return amount == 0
        ? ""
        : (String.format(Locale.ROOT, "%.2f", amount)
                + " "
                + comparison.rows().get(0).cloth().currency())
            .strip();
  }
}
