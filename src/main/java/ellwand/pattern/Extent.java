package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A length that a computed piece takes: one for all sizes, one for each, or that of edges. */
public sealed interface Extent {

  /**
   * The length in a size, mm.
   *
   * @param pieces of that size, which may be measured
   * @throws InputException if there is none
   */
  double mm(String size, PieceSet pieces);

  /**
   * The length that each of a piece's copies is made for in a size.
   *
   * @param cuts what a garment needs of the piece
   * @throws InputException if there is none
   */
  default Span span(String size, PieceSet pieces, List<Cut> cuts) {
    return Span.given(mm(size, pieces));
  }

  /** The same in every size. */
  record Given(double mm) implements Extent {

    @Override
    public double mm(String size, PieceSet pieces) {
      return mm;
    }
  }

  /** One for each size. */
  record BySize(Map<String, Double> mmBySize) implements Extent {

    public BySize {
      mmBySize = Collections.unmodifiableMap(new LinkedHashMap<>(mmBySize));
    }

    @Override
    public double mm(String size, PieceSet pieces) {
      if (!mmBySize.containsKey(size)) {
        throw new InputException(
            Problem.of("no length is given for size " + size, "Give one for each size"));
      }
      return mmBySize.get(size);
    }
  }

  /** That of edges, each as piece.edge; see {@link Span}. */
  record OfEdges(List<String> edges) implements Extent {

    public OfEdges {
      edges = List.copyOf(edges);
    }

    @Override
    public double mm(String size, PieceSet pieces) {
      checkKnown(pieces);
      return Joined.of(edges, pieces.all(), Optional.empty()).mm();
    }

    @Override
    public Span span(String size, PieceSet pieces, List<Cut> cuts) {
      checkKnown(pieces);
      return Span.of(edges, pieces.all(), cuts);
    }

    /** The width of a rectangle that takes whole widths of its cloth is not known before. */
    private void checkKnown(PieceSet pieces) {
      for (Rectangle rectangle : pieces.rectangles()) {
        if (rectangle instanceof Gathered g && g.fullness().open()) {
          for (String edge : List.of(Gathered.TOP, Gathered.HEM)) {
            if (edges.stream()
                .anyMatch(e -> e.replaceFirst("^\\d+ x +", "").equals(g.name() + "." + edge))) {
              throw InputException.of(
                  "how wide " + g.name() + " is depends on its cloth",
                  "Give it one fullness, for example " + Fullness.shown(g.fullness().least()));
            }
          }
        }
      }
    }
  }
}
