package ellwand.cutting;

import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Edge;
import ellwand.pattern.Gathers;
import ellwand.pattern.Intake;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws notches: strokes from the cutting line inward, square to the sewing line or along a leg.
 */
final class Notching {

  /** How far apart the two strokes of a double notch stand on the sewing line, mm. */
  static final double APART_MM = 6;

  private Notching() {}

  static List<CutPiece.Stroke> strokes(Piece piece, Outline cutting) {
    List<CutPiece.Stroke> strokes = new ArrayList<>();
    for (Notch notch : piece.notches()) {
      Edge edge = piece.edge(notch.edge());
      if (notch.strokes() == 1) {
        strokes.add(stroke(edge, notch.atMm(), notch.depthMm(), cutting));
        continue;
      }
      double room = Math.max(0, edge.line().length() - APART_MM);
      double first = Math.max(0, Math.min(room, notch.atMm() - APART_MM / 2));
      strokes.add(stroke(edge, first, notch.depthMm(), cutting));
      strokes.add(stroke(edge, first + APART_MM, notch.depthMm(), cutting));
    }
    for (Edge edge : piece.edges()) {
      if (edge.allowanceMm() == 0) {
        continue;
      }
      for (Gathers stretch : edge.gathers()) {
        for (Point end : List.of(stretch.from(), stretch.to())) {
          double at = edge.line().nearest(end);
          // At a corner everybody sees where they end.
          if (at > APART_MM && at < edge.line().length() - APART_MM) {
            strokes.add(stroke(edge, at, Notch.USUAL_DEPTH_MM, cutting));
          }
        }
      }
      for (Intake intake : edge.intakes()) {
        strokes.add(legStroke(edge, intake.first(), cutting));
        strokes.add(legStroke(edge, intake.second(), cutting));
      }
    }
    return strokes;
  }

  private static CutPiece.Stroke stroke(Edge edge, double atMm, double depthMm, Outline cutting) {
    Path.Tangent place = edge.line().tangent(atMm);
    return stroke(edge, place.at(), place.direction().left().times(-1), depthMm, cutting);
  }

  /** In line with the leg, so that both lie on one another when it is folded. */
  private static CutPiece.Stroke legStroke(Edge edge, Intake.Leg leg, Outline cutting) {
    return stroke(edge, leg.outer(), leg.outward(), Notch.USUAL_DEPTH_MM, cutting);
  }

  private static CutPiece.Stroke stroke(
      Edge edge, Point at, Point out, double depthMm, Outline cutting) {
    // Corners may have cut the line beside the edge short, so look for where the stroke starts.
    Point far = at.plus(out.times(2 * edge.allowanceMm() * Cutter.MITRE_LIMIT));
    List<Point> ring = new ArrayList<>(cutting.points());
    ring.add(ring.get(0));
    Point from =
        Crossing.nearest(List.of(at, far), ring, at)
            .map(Crossing::at)
            .orElse(at.plus(out.times(edge.allowanceMm())));
    double depth = Math.min(depthMm, from.distance(at));
    return new CutPiece.Stroke(from, from.minus(out.times(depth)));
  }
}
