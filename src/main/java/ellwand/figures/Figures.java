package ellwand.figures;

import ellwand.lay.Marker;
import ellwand.rule.Handling;
import java.util.List;
import java.util.Optional;

/**
 * What one marker comes to. Field names are those of {@code figures.json}; lengths in mm, areas in
 * square mm.
 *
 * @param cloth name of the cloth
 * @param remnant which piece of it the marker lies on; empty for cloth to be bought
 * @param fold as in a job file
 * @param direction as in a job file
 * @param garments how many the marker cuts
 * @param clothWidthMm edge to edge, as bought
 * @param usableWidthMm of the open cloth on the table, between the selvedges
 * @param widthNeededMm the narrowest cloth, as bought, that this marker can be cut from
 * @param markerLengthMm cut end to farthest cutting line
 * @param clothLengthMm the same in cloth
 * @param endsMm lost at both cut ends together
 * @param shopStepMm cloth is sold in multiples of this
 * @param lengthToBuyMm with ends and shrinkage, rounded up to the shop's step
 * @param utilisation wanted area over usable width times cloth length, 0 to 1
 * @param wantedAreaMm2 what is wanted as cut: halves opened, both of a pair, no wasted twin
 * @param wasteAreaMm2 the rest of usable width times cloth length
 * @param pricePerMetre 0 if unknown
 * @param cost of the length to buy; 0 if the price is unknown
 * @param currency may be empty
 * @param pieces each piece in each size
 * @param wastedTwins copies in a double zone whose twin nobody wants
 * @param onOpenedStretch copies of a folded lay that lie where the cloth is opened
 * @param leftOvers the largest rectangle in each zone that has one
 * @param cautions sentences for the cutter
 * @param foldsTried what each way of laying the cloth takes, if there was more than one to try
 * @param handling how handy the marker is at the cutting table
 * @param wishes what the cutter wished of it, and what that costs
 * @param stoppedEarly the user stopped the search before its effort was spent
 */
public record Figures(
    String cloth,
    String remnant,
    String fold,
    String direction,
    int garments,
    double clothWidthMm,
    double usableWidthMm,
    double widthNeededMm,
    double markerLengthMm,
    double clothLengthMm,
    double endsMm,
    double shopStepMm,
    double lengthToBuyMm,
    double utilisation,
    double wantedAreaMm2,
    double wasteAreaMm2,
    double pricePerMetre,
    double cost,
    String currency,
    List<PieceFigures> pieces,
    List<CopyName> wastedTwins,
    List<CopyName> onOpenedStretch,
    List<LeftOver> leftOvers,
    List<String> cautions,
    List<FoldTried> foldsTried,
    Handling handling,
    Served wishes,
    boolean stoppedEarly) {

  public Figures {
    pieces = List.copyOf(pieces);
    wastedTwins = List.copyOf(wastedTwins);
    onOpenedStretch = List.copyOf(onOpenedStretch);
    leftOvers = List.copyOf(leftOvers);
    cautions = List.copyOf(cautions);
    foldsTried = List.copyOf(foldsTried);
  }

  /**
   * Of a legal marker.
   *
   * @param cautions sentences that concern this cloth or its pieces
   */
  public static Figures of(Marker marker, List<String> cautions) {
    return of(marker, cautions, List.of(), Optional.empty());
  }

  /**
   * Of a legal marker, beside others that were tried.
   *
   * @param cautions sentences that concern this cloth or its pieces
   * @param foldsTried the ways of laying the cloth, this marker's among them
   * @param shortest what there would be without the cutter's wishes; empty if there are none
   */
  public static Figures of(
      Marker marker, List<String> cautions, List<FoldTried> foldsTried, Optional<Marker> shortest) {
    return new Reckoning(marker).figures(cautions, foldsTried, shortest);
  }

  /** 0 if the price is unknown. */
  public double costPerGarment() {
    return garments == 0 ? 0 : cost / garments;
  }
}
