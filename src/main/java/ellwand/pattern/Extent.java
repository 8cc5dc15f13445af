package ellwand.pattern;

import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A length that a computed piece takes: one for all sizes, one for each, or that of edges. */
public sealed interface Extent {

  /**
   * The length in a size, mm.
   *
   * @param pieces of that size, which may be measured
   * @throws InputException if there is none
   */
  double mm(String size, PieceSet pieces);

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

  /** That of edges, each as piece.edge; see {@link Joined}. */
  record OfEdges(List<String> edges) implements Extent {

    public OfEdges {
      edges = List.copyOf(edges);
    }

    @Override
    public double mm(String size, PieceSet pieces) {
      return Joined.lengthMm(edges, pieces.all());
    }
  }
}
