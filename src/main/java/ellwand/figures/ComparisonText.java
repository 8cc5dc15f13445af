package ellwand.figures;

import ellwand.cloth.Cloth;
import ellwand.figures.Comparison.WidthTried;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A comparison as a table and in sentences. */
public final class ComparisonText {

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

  /** What to buy, and why a width takes more than its share. */
  public static List<String> sentences(Comparison comparison, Unit unit) {
    return new ComparisonText(comparison, unit).sentences();
  }

  private String table() {
    boolean several = comparison.garments() > 1;
    List<String[]> cells = new ArrayList<>();
    cells.add(
        new String[] {
          "width", "laid", "cloth length", "to buy", "used", "cost", several ? "a garment" : ""
        });
    for (WidthTried row : comparison.rows()) {
      FoldTried t = row.tried();
      cells.add(
          t.possible()
              ? new String[] {
                show(row.widthMm()),
                t.fold().words(),
                show(t.clothLengthMm()),
                Buying.shown(t.toBuyMm(), unit),
                String.format(Locale.ROOT, "%.1f %%", 100 * row.utilisation()),
                money(row.cost()),
                several ? money(row.cost() / comparison.garments()) : ""
              }
              : new String[] {
                show(row.widthMm()), t.fold().words(), "not possible, " + t.reason()
              });
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
    List<WidthTried> ranked = comparison.ranked();
    if (ranked.isEmpty()) {
      return List.of("No width will do.");
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        buy(ranked.get(0), ranked.size() > 1 ? Optional.of(ranked.get(1)) : Optional.empty()));
    Washing.compared(ranked.get(0).cloth()).ifPresent(sentences::add);
    unpriced().ifPresent(sentences::add);
    onePrice().ifPresent(sentences::add);
    if (comparison.rows().get(0).cloth().wishes().any()) {
      sentences.add(
          "The cutter's wishes are left aside here, so that only the width makes a difference.");
    }
    sentences.addAll(new Surplus(comparison, unit).sentences());
    return sentences;
  }

  private String buy(WidthTried best, Optional<WidthTried> next) {
    String sentence =
        "Buy "
            + Buying.shown(best.tried().toBuyMm(), unit)
            + " of the "
            + show(best.widthMm())
            + " cloth";
    long ways = comparison.rows().stream().filter(r -> r.widthMm() == best.widthMm()).count();
    if (ways > 1) {
      List<String> folds = new ArrayList<>();
      folds.add(best.tried().fold().words());
      comparison.asGood(best).stream()
          .filter(row -> row != best)
          .forEach(row -> folds.add(row.tried().fold().words()));
      sentence +=
          folds.size() == ways ? ", however it is laid" : ", laid " + Surplus.lyingIn(folds);
    }
    return sentence + next.map(other -> "; " + beside(best, other)).orElse("") + ".";
  }

  private String beside(WidthTried best, WidthTried other) {
    if (!comparison.priced()) {
      return "of the "
          + show(other.widthMm())
          + " cloth it would be "
          + Buying.shown(other.tried().toBuyMm(), unit);
    }
    double more = other.cost() - best.cost();
    return "the "
        + show(other.widthMm())
        + " cloth"
        + (more < 0.005 ? " costs the same" : " costs " + money(more) + " more");
  }

  /** Which widths could not be judged by their cost. */
  private Optional<String> unpriced() {
    List<String> widths =
        comparison.bestOfEach().stream()
            .filter(r -> comparison.priced() && r.cost() == 0)
            .map(r -> show(r.widthMm()))
            .toList();
    return widths.isEmpty()
        ? Optional.empty()
        : Optional.of("No price is known for the " + String.join(", ", widths) + " cloth.");
  }

  /** A wider cloth seldom costs the same by the metre. */
  private Optional<String> onePrice() {
    Cloth cloth = comparison.rows().get(0).cloth();
    return comparison.priced()
            && cloth.widthPrices().isEmpty()
            && comparison.bestOfEach().size() > 1
        ? Optional.of(
            "Every width is reckoned at the same price by length; write what each costs under"
                + " prices: of the cloth.")
        : Optional.empty();
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
