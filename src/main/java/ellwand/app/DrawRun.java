package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.draw.piece.PieceDrawing;
import ellwand.job.Job;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws the pieces of a job. */
public final class DrawRun {

  private DrawRun() {}

  /**
   * Every piece in every size that the style has, each once, as cut from the first cloth it needs.
   *
   * @param nested all sizes of a piece on one another instead of side by side
   * @param scale mm of piece for one mm of paper in a PDF; where absent, to fit on A4
   */
  public static DrawnPieces make(Job job, Unit unit, boolean nested, Optional<Double> scale) {
    Map<String, List<CutPiece>> bySize = new LinkedHashMap<>();
    for (String size : job.style().sizes()) {
      Map<String, CutPiece> byName = new LinkedHashMap<>();
      for (Cloth cloth : job.cloths()) {
        JobLays.cutPieces(job, size, cloth).forEach(p -> byName.putIfAbsent(p.name(), p));
      }
      bySize.put(size, new ArrayList<>(byName.values()));
    }
    String style = job.style().name();
    return new DrawnPieces(
        job,
        nested ? PieceDrawing.nested(style, bySize, unit) : PieceDrawing.of(style, bySize, unit),
        scale);
  }
}
