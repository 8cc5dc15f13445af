package ellwand.figures;

import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Whether all that is wanted fits on a remnant; lengths in mm.
 *
 * @param remnant as the user named it
 * @param cloth what it is a piece of
 * @param fits whether everything does
 * @param lengthMm of the remnant
 * @param neededMm length of the shortest marker found round its flaws, on cloth that goes on beyond
 *     its end; empty if a piece is too wide for it, whatever its length
 * @param tooWide a piece that has no room across it; empty if there is none
 * @param fitting what can be cut, the most valuable first
 * @param leftOut what cannot
 */
public record Fitting(
    String remnant,
    String cloth,
    boolean fits,
    double lengthMm,
    Optional<Double> neededMm,
    Optional<TooWide> tooWide,
    List<CopyName> fitting,
    List<CopyName> leftOut) {

  /**
   * A piece that has no room across the cloth.
   *
   * @param acrossMm that it takes
   * @param widestMm that there is
   */
  public record TooWide(String piece, double acrossMm, double widestMm) {}

  public Fitting {
    fitting = List.copyOf(fitting);
    leftOut = List.copyOf(leftOut);
  }

  /** Everything fits, in so much of the length. */
  public static Fitting all(Lay lay, String remnant, double usedMm) {
    return new Fitting(
        remnant,
        lay.cloth().name(),
        true,
        lay.cloth().lengthMm(),
        Optional.of(usedMm),
        Optional.empty(),
        names(lay.wanted()),
        List.of());
  }

  /** Only what is chosen fits. */
  public static Fitting some(
      Lay lay,
      String remnant,
      Optional<Double> neededMm,
      Optional<TooWide> tooWide,
      List<Wanted> chosen) {
    List<Wanted> left = new ArrayList<>(lay.wanted());
    chosen.forEach(left::remove);
    return new Fitting(
        remnant,
        lay.cloth().name(),
        false,
        lay.cloth().lengthMm(),
        neededMm,
        tooWide,
        names(chosen),
        names(left));
  }

  /**
   * The most valuable first: those whose piece has a value, by it; then the others, by the area of
   * what is cut.
   */
  public static final Comparator<Wanted> MOST_VALUABLE_FIRST =
      Comparator.comparingDouble((Wanted w) -> -w.cut().piece().asks().value().orElse(-1.0))
          .thenComparingDouble(w -> -area(w));

  private static double area(Wanted wanted) {
    return wanted.cut().cutting().area() * (wanted.how() == Cut.How.WHOLE ? 1 : 2);
  }

  /** Both of a pair, since that is what is cut. */
  private static List<CopyName> names(List<Wanted> wanted) {
    return wanted.stream()
        .flatMap(
            w ->
                Collections.nCopies(
                    w.how() == Cut.How.PAIR ? 2 : 1,
                    new CopyName(w.cut().name(), w.size(), w.garment()))
                    .stream())
        .toList();
  }

  /** The answer in words, one sentence a line. */
  public String sentences(Unit unit) {
    if (fits) {
      return "Yes: everything lies on "
          + remnant
          + ", on "
          + show(neededMm.orElseThrow(), unit)
          + " of its "
          + show(lengthMm, unit)
          + ".";
    }
    String needs =
        neededMm
            .map(
                mm ->
                    "the shortest marker found, clear of flaws, takes "
                        + show(mm, unit)
                        + "; the remnant is "
                        + show(lengthMm, unit)
                        + " long")
            .or(() -> tooWide.map(t -> across(t, unit)))
            .orElse("a piece has no room where place: and match: put it in the repeat");
    return "No: "
        + needs
        + ".\n"
        + (fitting.isEmpty()
            ? "No piece fits."
            : "These fit, the most valuable first: " + list(fitting) + ".")
        + "\nLeft out: "
        + list(leftOut)
        + ".";
  }

  private static String across(TooWide t, Unit unit) {
    return "piece "
        + t.piece()
        + " lies "
        + show(t.acrossMm(), unit)
        + " across and the remnant has "
        + show(t.widestMm(), unit)
        + ", take a wider one or split the piece with a join";
  }

  /**
   * How many garments come out of a remnant, in words.
   *
   * @param cut 0 or more
   * @param garments in the order
   */
  public static String most(String remnant, int cut, int garments) {
    if (cut == 0) {
      return "None: not one garment was found to fit on " + remnant + ".";
    }
    String all = counted(cut) + " can be cut from " + remnant;
    if (garments == 1) {
      return all + ".";
    }
    int times = cut / garments;
    int more = cut % garments;
    String orders = times == 1 ? "the order once" : "the order " + times + " times over";
    return all
        + ": "
        + (times == 0
            ? "the smallest of the order, which takes " + garments
            : orders + (more == 0 ? "" : " and " + counted(more) + " more"))
        + ".";
  }

  private static String counted(int garments) {
    return garments == 1 ? "1 garment" : garments + " garments";
  }

  private static String list(List<CopyName> copies) {
    boolean several = copies.stream().map(CopyName::garment).distinct().count() > 1;
    Map<String, Long> counts =
        copies.stream()
            .collect(
                Collectors.groupingBy(
                    c -> c.piece() + (several ? " of garment " + c.garment() : ""),
                    LinkedHashMap::new,
                    Collectors.counting()));
    return counts.entrySet().stream()
        .map(e -> e.getValue() == 1 ? e.getKey() : e.getValue() + " x " + e.getKey())
        .collect(Collectors.joining(", "));
  }

  private static String show(double mm, Unit unit) {
    return new Length(mm).show(unit);
  }
}
