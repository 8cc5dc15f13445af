package ellwand.figures;

import java.util.List;

/**
 * All cloths of a job; money in the user's.
 *
 * @param style name of the style
 * @param garments how many garments the job cuts
 * @param cloths one for each cloth
 * @param buy all cloths and trims
 * @param totalCost of these; 0 unless every price is known and all are in one currency
 * @param costPerGarment the same for one garment
 * @param currency may be empty
 * @param cautions sentences that concern the whole job
 */
public record JobFigures(
    String style,
    int garments,
    List<Figures> cloths,
    Shopping buy,
    double totalCost,
    double costPerGarment,
    String currency,
    List<String> cautions) {

  public JobFigures {
    cloths = List.copyOf(cloths);
    cautions = List.copyOf(cautions);
  }

  /**
   * Adds up.
   *
   * @param cloths at least one, each cutting its part of the same garments
   * @param cautions sentences that concern the whole job
   */
  public static JobFigures of(String style, List<Figures> cloths, List<String> cautions) {
    int garments = cloths.stream().mapToInt(c -> c.lies().garments()).max().orElseThrow();
    return of(style, garments, cloths, cautions);
  }

  /**
   * Adds up.
   *
   * @param garments how many are cut, which several markers of one cloth may share out
   * @param cloths at least one
   * @param cautions sentences that concern the whole job
   */
  public static JobFigures of(
      String style, int garments, List<Figures> cloths, List<String> cautions) {
    return of(style, garments, cloths, List.of(), cautions);
  }

  /**
   * Adds up.
   *
   * @param trims what to buy of them
   */
  public static JobFigures of(
      String style, int garments, List<Figures> cloths, List<ToBuy> trims, List<String> cautions) {
    Shopping buy = Shopping.of(cloths, trims);
    double total = buy.known() ? buy.cost() : 0;
    return new JobFigures(
        style,
        garments,
        cloths,
        buy,
        total,
        garments == 0 ? 0 : total / garments,
        buy.known() ? buy.currency() : "",
        cautions);
  }
}
