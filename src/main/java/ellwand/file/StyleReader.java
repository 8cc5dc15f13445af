package ellwand.file;

import ellwand.pattern.Gathered;
import ellwand.pattern.Piece;
import ellwand.pattern.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code style:}. */
final class StyleReader {

  private static final String ONLY_SIZE = "one size";

  private final Shape shape;

  StyleReader(Shape shape) {
    this.shape = shape;
  }

  /**
   * The style, or nothing if any piece of it is wrong.
   *
   * @param cloths names that pieces may be cut from
   */
  Optional<Style> read(Spot style, Set<String> cloths) {
    if (!style.present()) {
      return Optional.empty();
    }
    int before = style.problems().size();
    Map<String, Spot> spots = usable(style.get("pieces"));
    Map<String, PieceHead> heads = heads(style, spots, cloths);
    List<Piece> drawn = new ArrayList<>();
    spots.forEach(
        (name, spot) -> {
          if (!spot.get("gathered").present()) {
            PieceReader.read(name, spot, heads.get(name)).ifPresent(drawn::add);
          }
        });
    boolean allDrawn = style.problems().size() == before && shape.holds(style);
    List<Piece> pieces = new ArrayList<>(drawn);
    List<Gathered> gathered = new ArrayList<>();
    spots.forEach(
        (name, spot) -> {
          if (spot.get("gathered").present()) {
            GatheredReader.read(
                    name, spot, heads.get(name), allDrawn ? Optional.of(pieces) : Optional.empty())
                .ifPresent(
                    g -> {
                      gathered.add(g);
                      pieces.add(g.piece());
                    });
          }
        });
    if (style.problems().size() > before || !shape.holds(style)) {
      return Optional.empty();
    }
    String size = style.get("size").text().orElse(ONLY_SIZE);
    return style.attempt(
        () ->
            new Style(
                style.get("name").text().orElseThrow(),
                Map.of(size, drawn),
                Map.of(size, gathered)));
  }

  /** The pieces that have the right shape and either an outline or a rule. */
  private Map<String, Spot> usable(Spot pieces) {
    Map<String, Spot> usable = new LinkedHashMap<>();
    pieces
        .entries()
        .forEach(
            (name, spot) -> {
              Names.check(spot, name);
              if (shape.holds(spot)
                  && spot.holds(
                      spot.get("outline").present() || spot.get("gathered").present(),
                      "it has neither outline: nor gathered:",
                      "Draw it with outline:, or let it be computed with gathered:")) {
                usable.put(name, spot);
              }
            });
    return usable;
  }

  private Map<String, PieceHead> heads(Spot style, Map<String, Spot> spots, Set<String> cloths) {
    Spot allowance = style.get("allowance");
    Optional<Double> usual = shape.holds(allowance) ? allowance.lengthFrom0() : Optional.of(0.0);
    Map<String, PieceHead> heads = new LinkedHashMap<>();
    spots.forEach((name, spot) -> heads.put(name, PieceHead.read(spot, usual, cloths)));
    return heads;
  }
}
