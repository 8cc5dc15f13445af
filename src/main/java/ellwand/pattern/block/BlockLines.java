package ellwand.pattern.block;

import ellwand.pattern.Draft;
import ellwand.pattern.Notch;
import java.util.List;
import java.util.Optional;

/**
 * What drafting a block brings to paper.
 *
 * @param nodes see {@link Draft}
 * @param edges all of the outline
 * @param fold the edge at which it opens where it is cut on the fold
 * @param notches measured from the edge's first point as drawn
 */
record BlockLines(
    List<Draft.Node> nodes,
    List<Draft.NamedEdge> edges,
    Optional<String> fold,
    List<Notch> notches) {

  BlockLines {
    nodes = List.copyOf(nodes);
    edges = List.copyOf(edges);
    notches = List.copyOf(notches);
  }
}
