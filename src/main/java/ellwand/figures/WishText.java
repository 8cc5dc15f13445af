package ellwand.figures;

import ellwand.cloth.Fold;
import ellwand.cloth.Wish;
import ellwand.rule.Handling;
import ellwand.rule.SmallOffEnd;
import ellwand.units.Area;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What became of the cutter's wishes, for people. */
public final class WishText {

  private static final double NOTHING_MM = 1e-6;
  private static final double LEAST_SHOWN_MM = 0.5;

  private final Unit unit;

  private WishText(Unit unit) {
    this.unit = unit;
  }

  /** One line for each wish and one for their price; none if nothing is wished. */
  public static List<String> lines(Figures figures, Unit unit) {
    List<String> lines = new ArrayList<>(figures(figures, unit));
    if (!lines.isEmpty()) {
      lines.add("price: " + new WishText(unit).price(figures.wishes(), figures.money().currency()));
    }
    return lines;
  }

  /** What serving them takes. */
  static String price(Served served, String currency, Unit unit) {
    return new WishText(unit).price(served, currency);
  }

  /** One line for each wish. */
  static List<String> figures(Figures figures, Unit unit) {
    WishText text = new WishText(unit);
    Served served = figures.wishes();
    List<String> lines = new ArrayList<>();
    for (Wish wish : Wish.values()) {
      if (served.asked().contains(wish)) {
        String with = text.figure(wish, figures.handling());
        String without = text.figure(wish, served.without());
        lines.add(
            wish.words()
                + ": "
                + with
                + (wish == Wish.STRAIGHT_CUTS ? text.places(figures) : "")
                + (with.equals(without)
                    ? "; the same without the wishes"
                    : "; without the wishes: " + without));
      }
    }
    return lines;
  }

  private String figure(Wish wish, Handling h) {
    return switch (wish) {
      case GARMENTS_TOGETHER ->
          "pieces lie "
              + length(h.garmentSpreadMm())
              + " from the middle of their garment on average";
      case ONE_LEFT_OVER ->
          String.format(
              Locale.ROOT,
              "the largest left-over, %s, is %.0f %% of all that is left over",
              new Area(h.largestLeftOverMm2()).show(unit),
              100 * h.largestShare());
      case STRAIGHT_CUTS ->
          h.straightCuts() == 0
              ? "none, one stretch of " + length(h.stretchMm())
              : h.straightCuts()
                  + " across, stretches of "
                  + length(h.stretchMm())
                  + " on average, the longest "
                  + length(h.longestStretchMm());
      case SMALL_OFF_END -> small(h);
    };
  }

  private String small(Handling h) {
    if (h.smallPieces() == 0) {
      return "no piece is small";
    }
    String small = h.smallPieces() + (h.smallPieces() == 1 ? " small piece" : " small pieces");
    String within = " within " + length(SmallOffEnd.ENOUGH_MM) + " of an end";
    return h.smallNearEnd() == 0
        ? "none of " + small + " lies" + within
        : h.smallNearEnd()
            + " of "
            + small
            + (h.smallNearEnd() == 1 ? " lies" : " lie")
            + within
            + ", "
            + length(h.smallTooNearMm())
            + " too near altogether";
  }

  private String places(Figures f) {
    return f.handling().straightCuts() == 0
        ? ""
        : f.handling().straightCutsAtMm().stream()
            .map(mm -> new Length(mm).number(unit))
            .collect(
                Collectors.joining(", ", ", at ", " " + unit.symbol() + " from the " + start(f)));
  }

  /** What a marker begins at: on cloth that is folded across, the fold. */
  static String start(Figures f) {
    return f.lies().fold() == Fold.CROSSWISE ? "fold" : "cut end";
  }

  private String price(Served served, String currency) {
    if (served.priceMm() < NOTHING_MM) {
      return "none, the marker is as short as without them";
    }
    String cloth =
        (served.priceMm() < LEAST_SHOWN_MM
                ? "hardly any cloth ("
                : length(served.priceMm()) + " of cloth (")
            + String.format(
                Locale.ROOT, "%.1f %%", 100 * served.priceMm() / served.clothLengthWithoutMm())
            + ")";
    if (served.priceToBuyMm() < NOTHING_MM) {
      return cloth + ", nothing more to buy";
    }
    return cloth
        + ", "
        + length(served.priceToBuyMm())
        + " more to buy"
        + (served.price() == 0
            ? ""
            : ": " + String.format(Locale.ROOT, "%.2f %s", served.price(), currency).strip());
  }

  private String length(double mm) {
    return new Length(mm).show(unit);
  }
}
