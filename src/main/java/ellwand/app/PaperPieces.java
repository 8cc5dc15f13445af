package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.draw.piece.PaperPiece;
import ellwand.figures.Washing;
import ellwand.geometry.Outline;
import ellwand.job.Job;
import ellwand.pattern.Cut;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The pieces of a job as paper patterns: each once, unless cloths ask for it in different shapes.
 */
final class PaperPieces {

  private PaperPieces() {}

  /**
   * @param name of the piece
   * @param larger by how much it is drawn larger for the cloth
   */
  private record Shape(String name, Outline cutting, Outline sewing, Optional<String> larger) {}

  /** Of the sizes given, size by size. */
  static List<PaperPiece> of(Job job, List<String> sizes, PaperPiece.Lines lines) {
    List<PaperPiece> pieces = new ArrayList<>();
    for (String size : sizes) {
      Map<Shape, List<String>> cuts = new LinkedHashMap<>();
      Map<Shape, CutPiece> first = new LinkedHashMap<>();
      for (Cloth cloth : job.cloths()) {
        for (CutPiece cut : JobLays.cutPieces(job, size, cloth)) {
          Shape shape = new Shape(cut.name(), cut.cutting(), cut.sewing(), Washing.largerBy(cloth));
          first.putIfAbsent(shape, cut);
          Cut how = cut.piece().cutFrom(cloth.name()).orElseThrow();
          cuts.computeIfAbsent(shape, s -> new ArrayList<>()).add(cloth.name() + ": cut " + how);
        }
      }
      first.forEach(
          (shape, cut) ->
              pieces.add(
                  new PaperPiece(
                      cut, job.style().name(), size, cuts.get(shape), shape.larger(), lines)));
    }
    return pieces;
  }
}
