package ellwand.figures;

import ellwand.pattern.Sizes;
import ellwand.units.Area;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The figures of a job as plain text for people. */
public final class FiguresText {

  private static final int LINE_WIDTH = 80;

  /** Nearer to the start it is said to lie at it. */
  private static final double AT_START_MM = 0.5;

  /** The only size of a style that gives it no name, which then is not told. */
  private static final List<String> ONE_SIZE = List.of(Sizes.ONE_SIZE);

  private final Unit unit;
  private final StringBuilder text = new StringBuilder();

  private FiguresText(Unit unit) {
    this.unit = unit;
  }

  /**
   * Lines that end with a line feed; labels and numbers stand below each other.
   *
   * @param unit that lengths are shown in
   */
  public static String of(JobFigures job, Unit unit) {
    FiguresText text = new FiguresText(unit);
    text.head(job);
    job.cloths().forEach(text::cloth);
    text.trims(job.buy());
    text.cautions("", job.cautions());
    return text.text.toString();
  }

  /**
   * How good a utilisation is: 70 % is good, 80 to 85 % very good (Vilumsone-Nemes, Industrial
   * Cutting of Textile Materials, p. 19); empty below.
   */
  static String praise(double utilisation) {
    return utilisation >= 0.8 ? " (very good)" : utilisation >= 0.7 ? " (good)" : "";
  }

  private void head(JobFigures job) {
    List<String> sizes =
        job.cloths().stream()
            .flatMap(f -> f.onCloth().pieces().stream())
            .map(PieceFigures::size)
            .distinct()
            .toList();
    text.append(job.style())
        .append(sizes.equals(ONE_SIZE) ? "" : ", " + Sizes.words(sizes))
        .append(": ")
        .append(job.garments())
        .append(job.garments() == 1 ? " garment" : " garments");
    List<ToBuy> trims = job.buy().items(ToBuy.Kind.TRIM);
    if (job.totalCost() > 0) {
      text.append(trims.isEmpty() ? ", cloth for " : ", cloth and trims for ")
          .append(Buying.money(job.totalCost(), job.currency()));
      if (job.garments() > 1) {
        text.append(", ")
            .append(Buying.money(job.costPerGarment(), job.currency()))
            .append(" a garment");
      }
    } else if (job.buy().cost() > 0) {
      text.append(trims.isEmpty() ? ", cloth for " : ", cloth and trims for ")
          .append(Buying.money(job.buy().cost(), job.buy().currency()))
          .append(" without ")
          .append(String.join(", ", job.buy().unpriced()));
    }
    text.append('\n');
  }

  private void cloth(Figures f) {
    text.append('\n')
        .append(f.lies().cloth())
        .append(f.lies().remnant().map(r -> " on " + r).orElse(""))
        .append(": ")
        .append(f.lies().fold().words())
        .append(", ")
        .append(f.lies().direction().words())
        .append(f.stoppedEarly() ? ", stopped early" : "")
        .append('\n');
    Map<String, List<String>> rows = new LinkedHashMap<>();
    rows.put(
        "Length to buy",
        f.lengths().toBuyMm() == 0
            ? List.of("nothing")
            : List.of(Buying.shown(f.lengths().toBuyMm(), unit) + price(f)));
    rows.put("Marker length", List.of(length(f.lengths().markerMm())));
    if (f.lengths().clothMm() != f.lengths().markerMm()) {
      rows.put("Cloth length", List.of(length(f.lengths().clothMm())));
    }
    rows.put(
        "Cloth width",
        List.of(
            length(f.widths().clothMm())
                + "; usable "
                + length(f.widths().usableMm())
                + ", this marker needs "
                + length(f.widths().neededMm())));
    rows.put(
        "Utilisation",
        List.of(
            String.format(Locale.ROOT, "%.1f %%", 100 * f.areas().utilisation())
                + praise(f.areas().utilisation())));
    rows.put("Wasted", List.of(new Area(f.areas().wasteMm2()).show(unit)));
    rows.put(
        "Largest left-over", f.onCloth().leftOvers().stream().map(l -> leftOver(f, l)).toList());
    rows.put("Matches", f.onCloth().worstMatch().map(w -> w.words(unit)).stream().toList());
    rows.put("Wishes", WishText.lines(f, unit));
    rows.put("Pieces", pieces(f.onCloth().pieces()));
    rows.put("Spare from the second ply", names(f.onCloth().wastedTwins()));
    rows.put("Cut from one ply", names(f.onCloth().single()));
    rows.put("Ways to lay it", f.foldsTried().stream().map(this::fold).toList());
    rows.values().removeIf(List::isEmpty);
    int width = rows.keySet().stream().mapToInt(String::length).max().orElseThrow();
    rows.forEach((label, values) -> row(label, width, values));
    cautions("  ", f.cautions());
  }

  private void trims(Shopping buy) {
    List<ToBuy> trims = buy.items(ToBuy.Kind.TRIM);
    if (trims.isEmpty()) {
      return;
    }
    double cost = buy.cost(ToBuy.Kind.TRIM);
    text.append("\ntrims")
        .append(cost > 0 ? ": " + Buying.money(cost, buy.currency()) : "")
        .append('\n');
    List<String> names = trims.stream().map(t -> t.words(unit)).toList();
    int width = names.stream().mapToInt(String::length).max().orElseThrow();
    for (ToBuy trim : trims) {
      row(
          trim.words(unit),
          width,
          List.of(
              trim.amount(unit)
                  + (trim.cost() > 0
                      ? ": "
                          + Buying.money(trim.cost(), trim.currency())
                          + " at "
                          + trim.price(unit)
                      : ", price unknown")));
    }
  }

  private void row(String label, int width, List<String> values) {
    for (int i = 0; i < values.size(); i++) {
      text.append("  ")
          .append(padded(i == 0 ? label : "", width))
          .append("  ")
          .append(values.get(i))
          .append('\n');
    }
  }

  private String fold(FoldTried tried) {
    return tried.fold().words()
        + ": "
        + (tried.possible()
            ? length(tried.clothLengthMm()) + ", to buy " + length(tried.toBuyMm()) + longer(tried)
            : "not possible, " + tried.reason());
  }

  private static String longer(FoldTried tried) {
    return tried.longerBecause().isEmpty() ? "" : " (longer: " + tried.longerBecause() + ")";
  }

  private String price(Figures f) {
    if (f.money().pricePerMetre() == 0) {
      return "";
    }
    boolean yards = unit == Unit.INCH || unit == Unit.YARD;
    double each = f.money().pricePerMetre() * (yards ? Unit.YARD.mm() / Unit.M.mm() : 1);
    return ": "
        + Buying.money(f.money().cost(), f.money().currency())
        + " at "
        + Buying.money(each, f.money().currency())
        + (yards ? " a yard" : " a metre");
  }

  private String leftOver(Figures f, LeftOver left) {
    return new Length(left.lengthMm()).number(unit)
        + " x "
        + length(left.widthMm())
        + (left.plies() == 2 ? ", in both plies" : "")
        + " ("
        + left.zone()
        + (left.xMm() < AT_START_MM
            ? ", at the " + WishText.start(f)
            : ", " + length(left.xMm()) + " from the " + WishText.start(f))
        + ")";
  }

  private List<String> pieces(List<PieceFigures> pieces) {
    boolean sizes = pieces.stream().map(PieceFigures::size).distinct().count() > 1;
    List<String[]> cells = new ArrayList<>();
    for (PieceFigures p : pieces) {
      cells.add(
          new String[] {
            p.count() + " x", p.piece() + (sizes ? ", " + p.size() : ""), area(p.areaMm2()),
          });
    }
    int counts = widest(cells, 0);
    int names = widest(cells, 1);
    int areas = widest(cells, 2);
    return cells.stream()
        .map(
            c ->
                " ".repeat(counts - c[0].length())
                    + c[0]
                    + " "
                    + padded(c[1], names)
                    + "  "
                    + " ".repeat(areas - c[2].length())
                    + c[2])
        .toList();
  }

  private static int widest(List<String[]> cells, int column) {
    return cells.stream().mapToInt(c -> c[column].length()).max().orElse(0);
  }

  private static List<String> names(List<CopyName> copies) {
    boolean several = copies.stream().map(c -> c.size() + " " + c.garment()).distinct().count() > 1;
    return copies.stream()
        .collect(
            Collectors.groupingBy(
                c -> several ? c.piece() + " (" + Sizes.words(c.size()) + ")" : c.piece(),
                LinkedHashMap::new,
                Collectors.counting()))
        .entrySet()
        .stream()
        .map(e -> e.getValue() == 1 ? e.getKey() : e.getValue() + " x " + e.getKey())
        .toList();
  }

  private void cautions(String indent, List<String> cautions) {
    if (!cautions.isEmpty()) {
      text.append('\n');
      cautions.forEach(c -> wrapped(indent + "! ", c));
    }
  }

  private void wrapped(String first, String sentence) {
    StringBuilder line = new StringBuilder(first);
    for (String word : sentence.strip().split("\\s+")) {
      if (line.length() > first.length() && line.length() + word.length() > LINE_WIDTH) {
        text.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(" ".repeat(first.length()));
      }
      line.append(word).append(' ');
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  private String length(double mm) {
    return new Length(mm).show(unit);
  }

  private String area(double mm2) {
    return new Area(mm2).show(unit);
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(width - text.length());
  }
}
