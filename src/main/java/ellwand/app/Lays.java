package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.file.Job;
import ellwand.lay.Lay;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** From a job to what is to be cut from each of its cloths. */
final class Lays {

  private Lays() {}

  /** The lay of one cloth; garments are numbered from 1, sizes in the order of the job. */
  static Lay of(Job job, Cloth cloth) {
    List<Wanted> wanted = new ArrayList<>();
    int garment = 0;
    for (Map.Entry<String, Integer> size : job.garments().entrySet()) {
      List<CutPiece> pieces = cutPieces(job, size.getKey(), cloth);
      for (int i = 0; i < size.getValue(); i++) {
        garment++;
        for (CutPiece piece : pieces) {
          Cut cut = piece.piece().cutFrom(cloth.name()).orElseThrow();
          for (int n = 0; n < cut.count(); n++) {
            wanted.add(new Wanted(piece, size.getKey(), garment, cut.how()));
          }
        }
      }
    }
    return new Lay(job.style().name(), cloth, wanted);
  }

  /** The pieces of one size that are cut from a cloth, with their cutting lines. */
  static List<CutPiece> cutPieces(Job job, String size, Cloth cloth) {
    List<CutPiece> pieces = new ArrayList<>();
    for (Piece piece : job.style().pieces(size)) {
      if (piece.cutFrom(cloth.name()).isPresent()) {
        pieces.add(
            Cutter.cut(piece, cloth.shrinkage().growthAlong(), cloth.shrinkage().growthAcross()));
      }
    }
    return pieces;
  }
}
