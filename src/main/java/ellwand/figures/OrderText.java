package ellwand.figures;

import ellwand.figures.OrderCloth.OrderMarker;
import ellwand.figures.OrderCloth.Revision;
import ellwand.figures.OrderCloth.Sum;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The figures of a cut order as plain text for people. */
public final class OrderText {

  /** Differences below are not told. */
  private static final double LEAST_MM = 5;

  private static final double LEAST_MONEY = 0.005;

  private final OrderFigures figures;
  private final Unit unit;

  private OrderText(OrderFigures figures, Unit unit) {
    this.figures = figures;
    this.unit = unit;
  }

  /** Lines that end with a line feed: the lays, what they come to, and how that compares. */
  public static String of(OrderFigures figures, Unit unit) {
    return new OrderText(figures, unit).text();
  }

  /** What there is to say of the plan of one cloth beside its tables. */
  public static List<String> sentences(OrderFigures figures, OrderCloth cloth, Unit unit) {
    OrderText text = new OrderText(figures, unit);
    List<String> sentences = new ArrayList<>(cloth.misses().stream().map(m -> m + ".").toList());
    bound(cloth).ifPresent(sentences::add);
    sentences.add(text.saving(cloth));
    cloth.revision().ifPresent(i -> sentences.addAll(text.improved(i)));
    sentences.addAll(text.wishes(cloth));
    return sentences;
  }

  private String text() {
    StringBuilder text = new StringBuilder();
    text.append(
        "%s: %s in %s, %s of cloth%s%s%n"
            .formatted(
                figures.title(),
                counted(figures.garments(), "garment"),
                counted(figures.total().lays(), "lay"),
                cloth(figures.total().clothMm()),
                figures.toBuyMm().map(mm -> ", " + cloth(mm) + " to buy").orElse(""),
                money(figures.total().cost(), figures.toBuyMm().isPresent() ? ", for " : " for ")));
    costs().ifPresent(line -> text.append("  ").append(line).append('\n'));
    figures.cloths().forEach(cloth -> add(text, cloth));
    trims(text);
    figures
        .cautions()
        .forEach(c -> text.append("! ").append(c.strip().replaceAll("\\s+", " ")).append('\n'));
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  /** What that is paid for, where cloth has a price and is bought. */
  private Optional<String> costs() {
    Sum total = figures.total();
    if (figures.toBuyMm().isEmpty() || total.boughtCost() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        "Of that "
            + moneyOf(total.boughtCost())
            + " for cloth as bought ("
            + moneyOf(total.cutCost())
            + " for what is cut of it)"
            + money(total.layCost(), ", lays ")
            + ".");
  }

  private void trims(StringBuilder text) {
    List<ToBuy> trims = figures.buy().items(ToBuy.Kind.TRIM);
    if (!trims.isEmpty()) {
      double cost = figures.buy().cost(ToBuy.Kind.TRIM);
      text.append("trims" + (cost > 0 ? ": " + moneyOf(cost) : "") + "\n");
      trims.forEach(
          trim ->
              text.append(
                  "  %s: %s%s\n"
                      .formatted(
                          trim.words(unit),
                          trim.amount(unit),
                          trim.cost() > 0 ? " for " + moneyOf(trim.cost()) : ", price unknown")));
    }
  }

  private String moneyOf(double amount) {
    return money(amount, "");
  }

  private void add(StringBuilder text, OrderCloth cloth) {
    if (figures.several()) {
      text.append(
          "%s: %s, %s%s%n"
              .formatted(
                  cloth.cloth(),
                  counted(cloth.total().lays(), "lay"),
                  cloth(cloth.total().clothMm()),
                  money(cloth.total().cost(), " for ")));
    }
    for (LayTicket lay : cloth.lays()) {
      text.append(
          "  Lay %d: %s; %s, %s; %s%n"
              .formatted(
                  lay.number(),
                  lay.garments().entrySet().stream()
                      .map(e -> e.getValue() + " x " + e.getKey())
                      .collect(Collectors.joining(", ")),
                  lay.marker(),
                  length(lay.lengthMm()),
                  plies(lay)));
    }
    for (Map.Entry<String, Double> colour : cloth.clothByColour().entrySet()) {
      Optional<Double> toBuy = Optional.ofNullable(cloth.toBuyByColour().get(colour.getKey()));
      text.append(
          "  %s: %s of cloth%s%n"
              .formatted(
                  colour.getKey(),
                  cloth(colour.getValue()),
                  toBuy.map(mm -> ", buy " + Buying.shown(mm, unit)).orElse("")));
    }
    cloth
        .utilisation()
        .ifPresent(
            u ->
                text.append(
                    String.format(
                        Locale.ROOT,
                        "  Utilisation %.1f %% of all cloth%s%n",
                        100 * u,
                        FiguresText.praise(u))));
    sentences(figures, cloth, unit).forEach(s -> text.append("  ").append(s).append('\n'));
  }

  private static String plies(LayTicket lay) {
    String all = lay.totalPlies() == 1 ? "1 ply" : lay.totalPlies() + " plies";
    return lay.plies().size() == 1
        ? all + " of " + lay.plies().keySet().iterator().next()
        : all
            + ": "
            + lay.plies().entrySet().stream()
                .map(e -> e.getValue() + " of " + e.getKey())
                .collect(Collectors.joining(", "));
  }

  /** What is known of better plans; nothing where just the fewest lays are proved. */
  private static Optional<String> bound(OrderCloth cloth) {
    if (cloth.proved()) {
      return Optional.of("No plan is better: this is proved.");
    }
    int lays = cloth.total().lays();
    return cloth.laysAtLeast() >= lays
        ? Optional.empty()
        : Optional.of(
            "At least %s needed; that %d are the fewest is not proved."
                .formatted(
                    counted(cloth.laysAtLeast(), "lay")
                        + (cloth.laysAtLeast() == 1 ? " is" : " are"),
                    lays));
  }

  private String saving(OrderCloth of) {
    Sum plain = of.plain();
    Sum total = of.total();
    int lays = plain.lays() - total.lays();
    double saved = plain.clothMm() - total.clothMm();
    double money = plain.cost() - total.cost();
    List<String> differences = new ArrayList<>();
    if (lays != 0) {
      differences.add(counted(Math.abs(lays), "lay") + (lays < 0 ? " more" : " fewer"));
    }
    if (Math.abs(saved) >= LEAST_MM) {
      differences.add(cloth(Math.abs(saved)) + (saved < 0 ? " more" : " less") + " cloth");
    }
    if (Math.abs(money) >= LEAST_MONEY) {
      differences.add(money(Math.abs(money), "") + (money < 0 ? " more" : " less"));
    }
    return "One size a lay would take %s and %s of cloth%s; this plan takes %s%s."
        .formatted(
            counted(plain.lays(), "lay"),
            cloth(plain.clothMm()),
            money(plain.cost(), ", "),
            differences.isEmpty() ? "the same" : inWords(differences),
            of.plainEstimated() ? estimated(of.revision().orElseThrow().plainEstimated()) : "");
  }

  private static String estimated(int markers) {
    return " (estimated: %s for one size a lay %s not made)"
        .formatted(counted(markers, "marker"), markers == 1 ? "was" : "were");
  }

  private static String inWords(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  private List<String> improved(Revision i) {
    List<String> sentences = new ArrayList<>();
    double off = 100 * Math.abs(i.offBy());
    sentences.add(
        String.format(
            Locale.ROOT,
            "Estimated marker lengths were %s (%s and %s made).",
            off < 0.05
                ? "right"
                : String.format(
                    Locale.ROOT, "%.1f %% too %s", off, i.offBy() > 0 ? "long" : "short"),
            counted(i.markersMade(), "marker"),
            counted(i.plans(), "plan")));
    Sum before = i.estimatedTrue();
    sentences.add(
        i.changed()
            ? ("The true marker lengths changed the plan: the first, of %s, would have taken %s of"
                    + " cloth%s%s.")
                .formatted(
                    counted(before.lays(), "lay"),
                    cloth(before.clothMm()),
                    money(before.cost(), ", "),
                    i.estimatedFits() ? "" : ", and some of its markers do not fit on the table")
            : "The true marker lengths left the first plan as it was.");
    return sentences;
  }

  private List<String> wishes(OrderCloth cloth) {
    List<String> sentences = new ArrayList<>();
    double priceMm = 0;
    for (OrderMarker marker : cloth.markers()) {
      for (String line : marker.figures().map(f -> WishText.figures(f, unit)).orElse(List.of())) {
        sentences.add(marker.name() + ", " + line + ".");
      }
      double each = marker.figures().map(f -> f.wishes().priceMm()).orElse(0.0);
      priceMm +=
          each
              * cloth.lays().stream()
                  .filter(lay -> lay.marker().equals(marker.name()))
                  .mapToInt(lay -> lay.lengths(lay.totalPlies()))
                  .sum();
    }
    if (!sentences.isEmpty()) {
      sentences.add(
          priceMm < LEAST_MM
              ? "These wishes take no more cloth."
              : "These wishes take "
                  + cloth(priceMm)
                  + String.format(
                      Locale.ROOT,
                      " of all cloth (%.1f %%).",
                      100 * priceMm / cloth.total().clothMm()));
    }
    return sentences;
  }

  private String length(double mm) {
    return new Length(mm).show(unit);
  }

  private String cloth(double mm) {
    return Buying.shown(mm, bulk(unit));
  }

  /** What cloth by the roll is reckoned in, beside lengths on the table. */
  public static Unit bulk(Unit unit) {
    return unit == Unit.INCH || unit == Unit.YARD ? Unit.YARD : Unit.M;
  }

  private String money(double amount, String before) {
    return amount == 0
        ? ""
        : before + (String.format(Locale.ROOT, "%.2f", amount) + " " + figures.currency()).strip();
  }

  private static String counted(int n, String noun) {
    return n + " " + noun + (n == 1 ? "" : "s");
  }
}
