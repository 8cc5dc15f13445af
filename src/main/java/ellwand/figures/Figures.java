package ellwand.figures;

import ellwand.cloth.Direction;
import ellwand.cloth.Fold;
import ellwand.lay.Marker;
import ellwand.rule.Handling;
import ellwand.rule.WorstMatch;
import java.util.List;
import java.util.Optional;

/**
 * What one marker comes to; lengths in mm, areas in square mm.
 *
 * @param lies which cloth, and how it lies
 * @param widths across the cloth
 * @param lengths along the cloth
 * @param areas how much of the cloth is used
 * @param money what it costs
 * @param onCloth what lies on the cloth, and what is left over
 * @param cautions sentences for the cutter
 * @param foldsTried what each way of laying the cloth takes, if there was more than one to try
 * @param handling how handy the marker is at the cutting table
 * @param wishes what the cutter wished of it, and what that costs
 * @param stoppedEarly the user stopped the search before its effort was spent
 */
public record Figures(
    Lying lies,
    Widths widths,
    Lengths lengths,
    Areas areas,
    Money money,
    OnCloth onCloth,
    List<String> cautions,
    List<FoldTried> foldsTried,
    Handling handling,
    Served wishes,
    boolean stoppedEarly) {

  /**
   * Which cloth, and how it lies.
   *
   * @param cloth its name
   * @param remnant which piece of it the marker lies on; empty for cloth to be bought
   * @param garments how many the marker cuts
   */
  public record Lying(
      String cloth, Optional<String> remnant, Fold fold, Direction direction, int garments) {}

  /**
   * Across the cloth.
   *
   * @param clothMm edge to edge, as bought
   * @param usableMm of the open cloth on the table, between the selvedges
   * @param neededMm the narrowest cloth, as bought, that this marker can be cut from
   */
  public record Widths(double clothMm, double usableMm, double neededMm) {}

  /**
   * Along the cloth.
   *
   * @param markerMm cut end to farthest cutting line
   * @param clothMm the same in cloth
   * @param endsMm lost at both cut ends together
   * @param shopStepMm cloth is sold in multiples of this
   * @param toBuyMm with ends and shrinkage, rounded up to the shop's step
   */
  public record Lengths(
      double markerMm, double clothMm, double endsMm, double shopStepMm, double toBuyMm) {}

  /**
   * How much of the cloth is used.
   *
   * @param utilisation wanted area over usable width times cloth length, 0 to 1
   * @param wantedMm2 what is wanted as cut: halves opened, both of a pair, no wasted twin
   * @param wasteMm2 the rest of usable width times cloth length
   */
  public record Areas(double utilisation, double wantedMm2, double wasteMm2) {}

  /**
   * What it costs.
   *
   * @param pricePerMetre 0 if unknown
   * @param cost of the length to buy; 0 if the price is unknown
   * @param currency may be empty
   */
  public record Money(double pricePerMetre, double cost, String currency) {}

  /**
   * What lies on the cloth, and what is left over.
   *
   * @param pieces each piece in each size
   * @param wastedTwins copies in a double zone whose twin nobody wants
   * @param single copies of a folded lay that lie where the cloth is opened
   * @param leftOvers the largest rectangle in each zone that has one
   * @param worstMatch how well stripes and checks match; empty if nothing is to
   */
  public record OnCloth(
      List<PieceFigures> pieces,
      List<CopyName> wastedTwins,
      List<CopyName> single,
      List<LeftOver> leftOvers,
      Optional<WorstMatch> worstMatch) {

    public OnCloth {
      pieces = List.copyOf(pieces);
      wastedTwins = List.copyOf(wastedTwins);
      single = List.copyOf(single);
      leftOvers = List.copyOf(leftOvers);
    }
  }

  public Figures {
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
}
