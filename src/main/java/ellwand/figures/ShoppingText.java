package ellwand.figures;

import ellwand.figures.ToBuy.Kind;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A shopping list as plain text. */
public final class ShoppingText {

  private static final List<Kind> KINDS = List.of(Kind.CLOTH, Kind.TRIM);

  private ShoppingText() {}

  /**
   * Lines that end with a line feed.
   *
   * @param heading what it is for
   * @param garments how many garments that makes
   */
  public static String of(String heading, int garments, Shopping buy, Unit unit) {
    StringBuilder text = new StringBuilder();
    text.append("To buy for %s, %s\n".formatted(heading, garments(garments)));
    List<String[]> cells = new ArrayList<>();
    for (ToBuy item : buy.items()) {
      cells.add(
          new String[] {
            item.words(unit), width(item, unit), item.amount(unit), item.price(unit), cost(item)
          });
    }
    int[] widths = new int[5];
    cells.forEach(
        row -> {
          for (int i = 0; i < row.length; i++) {
            widths[i] = Math.max(widths[i], row[i].length());
          }
        });
    for (Kind kind : KINDS) {
      if (!buy.items(kind).isEmpty()) {
        text.append(kind == Kind.CLOTH ? "\nCloth\n" : "\nTrims\n");
        for (int i = 0; i < cells.size(); i++) {
          if (buy.items().get(i).kind() == kind) {
            text.append(line(cells.get(i), widths)).append('\n');
          }
        }
      }
    }
    text.append('\n');
    sums(garments, buy).forEach(sum -> text.append(sum).append('\n'));
    return text.toString();
  }

  /** What it comes to, in sentences. */
  public static List<String> sums(int garments, Shopping buy) {
    List<String> sums = new ArrayList<>();
    if (buy.items().isEmpty()) {
      sums.add("Nothing is to be bought.");
    }
    if (buy.cost() > 0) {
      boolean both = buy.cost(Kind.CLOTH) > 0 && buy.cost(Kind.TRIM) > 0;
      sums.add(
          "All together %s%s%s."
              .formatted(
                  money(buy.cost(), buy),
                  both
                      ? ": cloth %s, trims %s"
                          .formatted(
                              money(buy.cost(Kind.CLOTH), buy), money(buy.cost(Kind.TRIM), buy))
                      : "",
                  garments > 1 ? "; " + money(buy.cost() / garments, buy) + " a garment" : ""));
    }
    if (!buy.unpriced().isEmpty()) {
      sums.add("No price is given for " + String.join(", ", buy.unpriced()) + ".");
    }
    return sums;
  }

  /** How wide it is, if that is said. */
  public static String width(ToBuy item, Unit unit) {
    return item.widthMm().map(mm -> new Length(mm).show(unit) + " wide").orElse("");
  }

  /** What all of it costs, if that is known. */
  public static String cost(ToBuy item) {
    return item.cost() > 0 ? money(item.cost(), item.currency()) : "";
  }

  public static String garments(int garments) {
    return garments + (garments == 1 ? " garment" : " garments");
  }

  private static String line(String[] cells, int[] widths) {
    return "  [ ] %s  %s  %s  %s  %s"
        .formatted(
            left(cells[0], widths[0]),
            left(cells[1], widths[1]),
            right(cells[2], widths[2]),
            right(cells[3], widths[3]),
            right(cells[4], widths[4]))
        .stripTrailing();
  }

  private static String left(String text, int width) {
    return text + " ".repeat(width - text.length());
  }

  private static String right(String text, int width) {
    return " ".repeat(width - text.length()) + text;
  }

  private static String money(double amount, Shopping buy) {
    return money(amount, buy.currency());
  }

  private static String money(double amount, String currency) {
    return (String.format(Locale.ROOT, "%.2f", amount) + " " + currency).strip();
  }
}
