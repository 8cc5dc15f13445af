package ellwand.figures;

import ellwand.figures.Comparison.WidthTried;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Why a width takes more cloth than its share: the shop's step, the ends, the fold, a piece. */
record Surplus(Comparison comparison, Unit unit) {

  /** One sentence for each width that does. */
  List<String> sentences() {
    return comparison.lavish().stream()
        .map(
            row ->
                "The "
                    + show(row.widthMm())
                    + " cloth takes more than its share of cloth: "
                    + why(row)
                    + ".")
        .toList();
  }

  private String why(WidthTried row) {
    if (keepsShare(row, Surplus::exactMm)) {
      return "it is sold in steps of "
          + Buying.shown(row.cloth().shopStepMm(), unit)
          + ", and "
          + Buying.shown(exactMm(row), unit)
          + " would do";
    }
    if (keepsShare(row, r -> r.tried().clothLengthMm())) {
      return "what is added for the ends"
          + (row.cloth().repeat().isPresent() ? " and the repeat" : "")
          + " is the same length in every width";
    }
    if (foldIsWhy(row)) {
      FoldTried other = row.unasked().orElseThrow();
      return "it is "
          + laid(row.tried().fold().words())
          + ", where "
          + pieces(row)
          + "; "
          + laid(other.fold().words())
          + " "
          + Buying.shown(other.toBuyMm(), unit)
          + " would do";
    }
    return pieces(row);
  }

  /** Whether another fold brings it back to its share. */
  private boolean foldIsWhy(WidthTried row) {
    double least = least(WidthTried::areaMm2);
    return row.unasked()
        .filter(other -> other.toBuyMm() * row.widthMm() <= Comparison.MOST_AREA * least)
        .isPresent();
  }

  private boolean keepsShare(WidthTried row, ToDoubleFunction<WidthTried> lengthMm) {
    return lengthMm.applyAsDouble(row) * row.widthMm()
        <= Comparison.MOST_AREA * least(r -> lengthMm.applyAsDouble(r) * r.widthMm());
  }

  private double least(ToDoubleFunction<WidthTried> area) {
    return comparison.bestOfEach().stream().mapToDouble(area).min().orElseThrow();
  }

  /** What would be bought if the shop cut any length. */
  private static double exactMm(WidthTried row) {
    return Buying.exactMm(row.cloth(), row.tried().clothLengthMm());
  }

  private String pieces(WidthTried row) {
    if (row.longest().isEmpty()) {
      return "the pieces lie less close together, "
          + String.format(Locale.ROOT, "%.0f %%", 100 * row.utilisation())
          + " of it is used";
    }
    Bottleneck b = row.longest().get();
    String length = show(b.lengthMm());
    if (b.copies() == 1) {
      return "piece " + b.pieces().get(0) + " alone is " + length + " long";
    }
    String names =
        (b.pieces().size() == 1 ? "piece " : "the pieces ") + String.join(", ", b.pieces());
    if (b.rows() == b.copies()) {
      return "no two of "
          + names
          + " lie side by side, one behind the other they are "
          + length
          + " long";
    }
    return b.rows() == 1
        ? names + " are " + length + " long"
        : "not all of "
            + names
            + " lie side by side, in "
            + b.rows()
            + " rows they are "
            + length
            + " long";
  }

  /** How cloth lies, in words that follow on. */
  static String laid(String fold) {
    return "laid " + lying(fold);
  }

  private static String lying(String fold) {
    return fold.endsWith("fold") ? "in a " + fold : fold;
  }

  /** Ways of lying to choose from. */
  static String lyingIn(List<String> folds) {
    int last = folds.size() - 1;
    String first = folds.stream().limit(last).map(Surplus::lying).collect(Collectors.joining(", "));
    return (last == 0 ? "" : first + " or ") + lying(folds.get(last));
  }

  private String show(double mm) {
    return new Length(mm).show(unit);
  }
}
