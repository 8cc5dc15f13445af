package ellwand.lay;

import ellwand.cloth.Repeat;
import ellwand.cutting.CutPiece;
import ellwand.geometry.Point;
import ellwand.pattern.Cut.How;
import ellwand.pattern.Edge;
import ellwand.pattern.Mark;
import ellwand.pattern.Match;
import java.util.DoubleSummaryStatistics;

/**
 * How two pieces are sewn together at matched marks, and so how bars along the cloth go on from one
 * to the other.
 *
 * <p>Laid flat side by side, their edges face each other. Where both are drawn with that edge to
 * the same side, as fronts and backs are, the left of the one joins the right of the other: one of
 * the two is turned over, and counts the other way across. What is drawn to the left of a seam and
 * what is drawn to its right join as drawn.
 *
 * <p>Bars beside a seam go on as if there was none if both marks lie at the same place of the
 * repeat, counted the same way across the cloth: what the one has of a bar outward of its mark the
 * other has inward. A seam that leans across the bars, the same way on both pieces, has them meet
 * at an angle, and they do so all along it only if both marks lie as far from the middle of a bar,
 * each counted its own way.
 *
 * @param sameHand pieces of the same hand join; else one as drawn and one turned over
 * @param atAnAngle bars meet at an angle, so that they have to look the same from either side
 */
public record Joining(boolean sameHand, boolean atAnAngle) {

  /** Edges that face less to the side than this (6 degrees) lie across the cloth. */
  private static final double FACING = 0.1;

  /**
   * How they are sewn. Bars meet at an angle where the seam reaches across half a repeat or more; a
   * seam that leans less runs beside one bar.
   *
   * @param one the piece that the match names first
   * @param other the one it names then
   */
  public static Joining of(Match match, Wanted one, Wanted other, Repeat repeat) {
    if (one.how() == How.WHOLE && other.how() == How.WHOLE) {
      // No other hand is cut of either, so that they lie on one another if not side by side.
      return new Joining(true, false);
    }
    Point outward = outward(one.cut(), match.mark());
    Point otherOutward = outward(other.cut(), match.otherMark());
    boolean toOneSide =
        outward.y() * otherOutward.y() > 0
            && Math.min(Math.abs(outward.y()), Math.abs(otherOutward.y())) > FACING;
    double crossed =
        Math.min(acrossMm(one.cut(), match.mark()), acrossMm(other.cut(), match.otherMark()));
    return new Joining(
        !toOneSide, outward.x() * otherOutward.x() > 0 && crossed >= repeat.acrossMm() / 2);
  }

  private static Point outward(CutPiece cut, String words) {
    Mark mark = mark(cut, words);
    // Edges run counter-clockwise, so that what lies outside is on their right.
    return cut.piece().edge(mark.edge()).line().tangent(mark.atMm()).direction().left().times(-1);
  }

  /** How far across the cloth the edge of a mark reaches, mm. */
  private static double acrossMm(CutPiece cut, String words) {
    Edge edge = cut.piece().edge(mark(cut, words).edge());
    DoubleSummaryStatistics across =
        edge.line().flattened(1).stream().mapToDouble(Point::y).summaryStatistics();
    return across.getMax() - across.getMin();
  }

  private static Mark mark(CutPiece cut, String words) {
    return cut.piece().asks().marks().stream()
        .filter(m -> m.words().equals(words))
        .findFirst()
        .orElseThrow();
  }
}
