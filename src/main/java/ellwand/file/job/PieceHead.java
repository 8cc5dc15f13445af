package ellwand.file.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.source.Names;
import ellwand.file.source.Spelling;
import ellwand.file.source.Spot;
import ellwand.pattern.Allowance;
import ellwand.pattern.Cut;
import ellwand.pattern.Grain;
import ellwand.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is said of every piece, drawn or gathered.
 *
 * @param allowance of edges that have none of their own; empty if it could not be read
 * @param cloths that there are
 */
record PieceHead(List<Cut> cuts, Optional<Allowance> allowance, Grain grain, Set<String> cloths) {

  /**
   * Reads it from a piece's entry.
   *
   * @param styleAllowance of the whole style
   * @param cloths that there are
   */
  static PieceHead read(Spot spot, Optional<Allowance> styleAllowance, Set<String> cloths) {
    Grain grain =
        spot.get("grain").node() instanceof ObjectNode
            ? own(spot, Grain.ALONG)
            : own(spot, grain(spot.get("grain")));
    List<Cut> cuts = cuts(spot, cloths);
    return new PieceHead(cuts, allowance(spot, styleAllowance, cuts, cloths), grain, cloths);
  }

  private static List<Cut> cuts(Spot piece, Set<String> cloths) {
    Spot grain = piece.get("grain");
    boolean byCloth = grain.node() instanceof ObjectNode;
    List<Cut> cuts = new ArrayList<>();
    piece
        .get("cut")
        .entries()
        .forEach(
            (cloth, text) -> {
              if (text.holds(
                  cloths.contains(cloth),
                  "no cloth is called " + Names.shown(cloth),
                  Spelling.nearest(cloth, cloths)
                      .map(c -> "Perhaps " + c + " is meant")
                      .orElse("Add it under cloths:"))) {
                Spot own = grain.get(cloth);
                text.attempt(() -> Cut.parse(cloth, text.node().asText()))
                    .map(cut -> byCloth && own.present() ? cut.on(own(piece, grain(own))) : cut)
                    .ifPresent(cuts::add);
              }
            });
    if (byCloth) {
      grain
          .entries()
          .forEach(
              (cloth, own) ->
                  own.holds(
                      piece.get("cut").get(cloth).present(),
                      "the piece is not cut from " + Names.shown(cloth),
                      "Name a cloth that stands under cut:"));
    }
    return cuts;
  }

  private static Optional<Allowance> allowance(
      Spot spot, Optional<Allowance> ofStyle, List<Cut> cuts, Set<String> cloths) {
    Spot said = spot.get("allowance");
    Optional<Allowance> own =
        said.present() ? AllowanceReader.read(said, cloths) : Optional.empty();
    if (said.present() && own.isEmpty()) {
      return own;
    }
    if (ofAnotherPiece(spot.get("from"))) {
      return own.or(() -> ofStyle);
    }
    Optional<Allowance> all = own.map(a -> ofStyle.map(a::or).orElse(a)).or(() -> ofStyle);
    List<String> without =
        cuts.stream()
            .map(Cut::cloth)
            .filter(cloth -> all.filter(a -> a.in(cloth).isPresent()).isEmpty())
            .toList();
    boolean whole =
        spot.holds(
            all.isPresent() && without.isEmpty(),
            "it is not said how wide the seam allowance is"
                + (all.isEmpty() ? "" : " in " + String.join(", ", without)),
            "Give allowance: here or for the whole style; 0 if the outline is to be cut as drawn");
    return whole ? all : Optional.empty();
  }

  /** An edge's own allowance, nothing if it has none or it is wrong. */
  Optional<Allowance> own(Spot spot) {
    return spot.present() ? AllowanceReader.read(spot, cloths) : Optional.empty();
  }

  /** Whether it is a copy, which has the allowances of that piece. */
  private static boolean ofAnotherPiece(Spot from) {
    return from.present() && !from.get("file").present();
  }

  private static Grain grain(Spot spot) {
    return spot.text().flatMap(text -> spot.attempt(() -> named(text))).orElse(Grain.ALONG);
  }

  private static Grain named(String text) {
    Optional<Grain> named = Grain.NAMED.stream().filter(g -> g.word().equals(text)).findFirst();
    return named.orElseGet(
        () ->
            Degrees.angle(text)
                .map(Grain::at)
                .orElseThrow(
                    () ->
                        InputException.of(
                            "grain: cannot be '" + Names.shown(text) + "'",
                            "Use along, across, either, bias, any or an angle like 30 deg")));
  }

  /** What the piece says of its grain and heading instead of its cloth. */
  private static Grain own(Spot piece, Grain grain) {
    Spot spot = piece.get("grain-tolerance");
    Optional<Double> tolerance = spot.text().flatMap(t -> spot.attempt(() -> Degrees.parse(t)));
    return grain.with(
        tolerance.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        piece
            .get("direction")
            .text()
            .map(w -> w.equals("any way") ? Grain.Heads.ANY_WAY : Grain.Heads.ONE_WAY));
  }
}
