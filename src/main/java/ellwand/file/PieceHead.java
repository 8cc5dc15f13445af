package ellwand.file;

import ellwand.pattern.Cut;
import ellwand.pattern.Grain;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What is said of every piece, drawn or gathered.
 *
 * @param allowanceMm of edges that have none of their own; empty if it could not be read
 */
record PieceHead(List<Cut> cuts, Optional<Double> allowanceMm, Grain grain) {

  /**
   * Reads it from a piece's entry.
   *
   * @param styleAllowance of the whole style, mm
   * @param cloths that there are
   */
  static PieceHead read(Spot spot, Optional<Double> styleAllowance, Set<String> cloths) {
    return new PieceHead(
        cuts(spot.get("cut"), cloths), allowance(spot, styleAllowance), grain(spot.get("grain")));
  }

  private static List<Cut> cuts(Spot spot, Set<String> cloths) {
    List<Cut> cuts = new ArrayList<>();
    spot.entries()
        .forEach(
            (cloth, text) -> {
              if (text.holds(
                  cloths.contains(cloth),
                  "no cloth is called " + Names.shown(cloth),
                  Spelling.nearest(cloth, cloths)
                      .map(c -> "Perhaps " + c + " is meant")
                      .orElse("Add it under cloths:"))) {
                text.attempt(() -> Cut.parse(cloth, text.node().asText())).ifPresent(cuts::add);
              }
            });
    return cuts;
  }

  private static Optional<Double> allowance(Spot spot, Optional<Double> ofStyle) {
    Spot own = spot.get("allowance");
    if (own.present()) {
      return own.lengthFrom0();
    }
    spot.holds(
        ofStyle.isPresent(),
        "it is not said how wide the seam allowance is",
        "Give allowance: here or for the whole style; 0 if the outline is to be cut as drawn");
    return ofStyle;
  }

  private static Grain grain(Spot spot) {
    return spot.text().map(w -> Grain.valueOf(w.toUpperCase(Locale.ROOT))).orElse(Grain.ALONG);
  }
}
