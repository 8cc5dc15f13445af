package ellwand.file;

import ellwand.pattern.Cut;
import ellwand.pattern.Draft;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads one piece with an outline. */
final class PieceReader {

  private final Shape shape;
  private final Optional<Double> styleAllowance;
  private final Set<String> cloths;

  /**
   * A reader for the pieces of one style.
   *
   * @param styleAllowance of every edge for which nothing else is said, mm
   */
  PieceReader(Shape shape, Optional<Double> styleAllowance, Set<String> cloths) {
    this.shape = shape;
    this.styleAllowance = styleAllowance;
    this.cloths = cloths;
  }

  Optional<Piece> read(String name, Spot spot) {
    Names.check(spot, name);
    if (!shape.holds(spot)) {
      return Optional.empty();
    }
    int before = spot.problems().size();
    List<Cut> cuts = cuts(spot.get("cut"));
    Optional<Double> allowance = allowance(spot);
    List<Draft.Stretch> stretches = stretches(spot.get("edges"));
    List<Notch> notches = notches(spot.get("notches"));
    List<InnerLine> innerLines = innerLines(spot.get("lines"));
    List<Draft.Node> nodes = LineReader.nodes(spot.get("outline"));
    if (spot.problems().size() > before) {
      return Optional.empty();
    }
    Draft draft =
        new Draft(
            name,
            nodes,
            stretches,
            allowance.orElseThrow(),
            spot.get("fold").text(),
            grain(spot),
            notches,
            innerLines,
            cuts);
    return spot.attempt(draft::piece);
  }

  private static Grain grain(Spot spot) {
    return spot.get("grain")
        .text()
        .map(word -> Grain.valueOf(word.toUpperCase(Locale.ROOT)))
        .orElse(Grain.ALONG);
  }

  private Optional<Double> allowance(Spot spot) {
    Spot own = spot.get("allowance");
    if (own.present()) {
      return own.lengthFrom0();
    }
    spot.holds(
        styleAllowance.isPresent(),
        "it is not said how wide the seam allowance is",
        "Give allowance: here or for the whole style; 0 if the outline is to be cut as drawn");
    return styleAllowance;
  }

  private List<Cut> cuts(Spot spot) {
    List<Cut> cuts = new ArrayList<>();
    spot.entries()
        .forEach(
            (cloth, text) -> {
              if (text.holds(
                  cloths.contains(cloth),
                  "no cloth is called " + cloth,
                  Spelling.nearest(cloth, cloths)
                      .map(c -> "Perhaps " + c + " is meant")
                      .orElse("Add it under cloths:"))) {
                text.attempt(() -> Cut.parse(cloth, text.node().asText())).ifPresent(cuts::add);
              }
            });
    return cuts;
  }

  private static List<Draft.Stretch> stretches(Spot spot) {
    List<Draft.Stretch> stretches = new ArrayList<>();
    spot.entries()
        .forEach(
            (name, edge) -> {
              Names.check(edge, name);
              Optional<Double> allowance = edge.get("allowance").lengthFrom0();
              stretches.add(
                  new Draft.Stretch(
                      name,
                      edge.get("from").text().orElseThrow(),
                      edge.get("to").text().orElseThrow(),
                      allowance.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                      edge.get("turned-back").text().filter("true"::equals).isPresent()));
            });
    return stretches;
  }

  private static List<Notch> notches(Spot spot) {
    List<Notch> notches = new ArrayList<>();
    for (Spot notch : spot.items()) {
      Optional<Double> at = notch.get("at").lengthFrom0();
      Spot depthSpot = notch.get("depth");
      Optional<Double> depth =
          depthSpot.present() ? depthSpot.lengthAbove0() : Optional.of(Notch.USUAL_DEPTH_MM);
      int strokes = notch.get("double").text().filter("true"::equals).isPresent() ? 2 : 1;
      if (at.isPresent() && depth.isPresent()) {
        notches.add(
            new Notch(notch.get("edge").text().orElseThrow(), at.get(), strokes, depth.get()));
      }
    }
    return notches;
  }

  private static List<InnerLine> innerLines(Spot spot) {
    List<InnerLine> lines = new ArrayList<>();
    spot.entries()
        .forEach(
            (name, line) -> {
              Names.check(line, name);
              boolean closed = line.get("closed").text().filter("true"::equals).isPresent();
              line.attempt(() -> LineReader.path(line.get("path"), closed))
                  .ifPresent(path -> lines.add(new InnerLine(name, path)));
            });
    return lines;
  }
}
