package ellwand.cloth;

import ellwand.geometry.Box;
import ellwand.problem.InputException;
import java.util.Set;

/**
 * A part of the laid cloth with one number of plies.
 *
 * @param id short name, unique in its marker ("folded", "opened")
 * @param box where it lies: x from the cut end, y from the first cuttable line or fold edge
 * @param plies 1 or 2
 * @param foldEdges sides of the box that are fold edges
 * @param sideUp which side of the cloth is seen from above
 */
public record Zone(String id, Box box, int plies, Set<Side> foldEdges, Face sideUp) {

  /** A side of the zone's box. */
  public enum Side {
    LOW_Y,
    HIGH_Y,
    /** Its beginning along the cloth. */
    LOW_X
  }

  /** A side of the cloth. */
  public enum Face {
    RIGHT,
    WRONG
  }

  public Zone {
    foldEdges = Set.copyOf(foldEdges);
    if (plies < 1 || plies > 2 || (plies == 1 && !foldEdges.isEmpty())) {
      throw InputException.of(
          "zone " + id + (plies == 1 ? " has a fold, but one ply" : " has " + plies + " plies"),
          "Give it 2 where the cloth lies double, else 1 and no fold");
    }
  }
}
