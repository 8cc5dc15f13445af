package ellwand.trace;

import ellwand.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * A paper piece found in a straightened picture.
 *
 * @param number from 1, the largest first
 * @param rim its border
 * @param edges what it consists of
 * @param arrow that is drawn on it
 * @param errorMm how far off a place of it may be where that is worst, two standard deviations, mm:
 *     what the sheets leave open, blur, and how far the drawn edges lie from what was traced
 * @param worst where that is
 * @param doubts why it cannot be relied on, with what to do; none if it can
 */
public record TracedPaper(
    int number,
    Rim rim,
    RimEdges edges,
    Optional<DrawnArrow> arrow,
    double errorMm,
    Point worst,
    List<Doubt> doubts) {

  public TracedPaper {
    doubts = List.copyOf(doubts);
  }

  /**
   * Why a piece cannot be relied on.
   *
   * @param at where in the picture, mm
   * @param remedy what to do
   */
  public record Doubt(String what, Point at, String remedy) {}
}
