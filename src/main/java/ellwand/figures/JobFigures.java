package ellwand.figures;

import java.util.List;

/**
 * All cloths of a job; money in the user's.
 *
 * @param style name of the style
 * @param garments how many garments the job cuts
 * @param cloths one for each cloth
 * @param totalCost of all cloths; 0 unless every price is known and all are in one currency
 * @param costPerGarment the same for one garment
 * @param currency may be empty
 * @param cautions sentences that concern the whole job
 */
public record JobFigures(
    String style,
    int garments,
    List<Figures> cloths,
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
    boolean known =
        cloths.stream().allMatch(c -> c.money().pricePerMetre() > 0 || c.lengths().toBuyMm() == 0)
            && cloths.stream().map(c -> c.money().currency()).distinct().count() == 1;
    double total = known ? cloths.stream().mapToDouble(c -> c.money().cost()).sum() : 0;
    return new JobFigures(
        style,
        garments,
        cloths,
        total,
        garments == 0 ? 0 : total / garments,
        known ? cloths.get(0).money().currency() : "",
        cautions);
  }
}
