package ellwand.trace;

import ellwand.geometry.Path;
import java.util.List;

/**
 * What a rim was found to consist of.
 *
 * @param edges from corner to corner, counter-clockwise, each ending where the next begins; one
 *     that returns to its start where there is no corner
 * @param nicks cut into it, which the edges leave out
 */
public record RimEdges(List<Path> edges, List<Nick> nicks) {

  public RimEdges {
    edges = List.copyOf(edges);
    nicks = List.copyOf(nicks);
  }
}
