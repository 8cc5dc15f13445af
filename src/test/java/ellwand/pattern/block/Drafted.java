package ellwand.pattern.block;

import ellwand.geometry.Point;
import ellwand.pattern.Body;
import ellwand.pattern.Cut;
import ellwand.pattern.Design;
import ellwand.pattern.Finish;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.Sizes;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Blocks drafted for one body; cm in, mm out. */
final class Drafted {

  private static final String SIZE = "mine";

  private final Map<String, Double> bodyMm = new LinkedHashMap<>();
  private final Map<String, Double> easeMm = new LinkedHashMap<>();
  private final List<Outlined> pieces = new ArrayList<>();

  /** A measure of the body. */
  Drafted of(String measure, double cm) {
    bodyMm.put(measure, 10 * cm);
    return this;
  }

  Drafted easier(String measure, double cm) {
    easeMm.put(measure, 10 * cm);
    return this;
  }

  /** One of its blocks as a piece. */
  Drafted with(String piece, Block block) {
    boolean fold = !(block instanceof Sleeve || block instanceof Trousers);
    Cut cut = new Cut("calico", 1, fold ? Cut.How.FOLD : Cut.How.PAIR);
    pieces.add(
        new Outlined(
            piece,
            new FromBody(block, easeMm),
            List.of(),
            Finish.cut(List.of(cut)),
            Optional.empty(),
            Optional.empty()));
    return this;
  }

  /** This block as the only piece. */
  Drafted only(String piece, Block block) {
    pieces.clear();
    return with(piece, block);
  }

  private Design design() {
    return new Design(
        "toile",
        Unit.CM,
        new Sizes(List.of(SIZE), SIZE, Map.of(), new Body(Map.of(SIZE, bodyMm))),
        pieces,
        List.of(),
        List.of(),
        List.of());
  }

  Piece piece(String name) {
    return design().in(SIZE).drawn().stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** A named point. */
  Point point(String piece, String name) {
    return design().making(SIZE).piece(piece).mark(name);
  }

  double lengthMm(String piece, String edge) {
    return piece(piece).edge(edge).line().length();
  }
}
