package ellwand.cloth;

import ellwand.geometry.Box;
import java.util.List;
import java.util.Set;

/**
 * A zone whose place along the cloth is still open.
 *
 * @param id short name, unique in its cloth ("folded", "opened")
 * @param lowY where it begins across the cloth, mm
 * @param highY where it ends, mm
 * @param layers its plies, 1 or 2, the upper one first
 * @param foldEdges its sides that are fold edges
 * @param sideUp which side of the cloth is seen from above
 */
public record Band(
    String id,
    double lowY,
    double highY,
    List<Ply> layers,
    Set<Zone.Side> foldEdges,
    Zone.Face sideUp) {

  public Band {
    layers = List.copyOf(layers);
    foldEdges = Set.copyOf(foldEdges);
  }

  /** 1 or 2. */
  public int plies() {
    return layers.size();
  }

  public double widthMm() {
    return highY - lowY;
  }

  /** The zone it becomes between two places along the cloth, mm. */
  public Zone zone(double fromX, double toX) {
    return new Zone(id, new Box(fromX, lowY, toX, highY), plies(), foldEdges, sideUp);
  }
}
