package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Shrinkage;
import ellwand.cutting.Cautions;
import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.job.Job;
import ellwand.lay.Lay;
import ellwand.lay.Scope;
import ellwand.lay.Wanted;
import ellwand.pattern.Cut;
import ellwand.pattern.Style;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** From a job to what is to be cut from each of its cloths. */
final class JobLays {

  private JobLays() {}

  /** The lay of one cloth; garments are numbered from 1, sizes in the order of the job. */
  static Lay of(Job job, Cloth cloth) {
    return of(job, cloth, 1);
  }

  /** The lay of some of the job's garments, by size, or of others than it asks for. */
  static Lay of(Job job, Map<String, Integer> garments, Cloth cloth) {
    return of(job.withGarments(garments), cloth)
        .of(garments.equals(job.garments()) ? Scope.WHOLE : new Scope.Garments(garments));
  }

  /** The lay of the job's order so many times over. */
  static Lay of(Job job, Cloth cloth, int times) {
    return of(job, cloth, times, 1);
  }

  /**
   * The lay of garments whose pieces are each cut from two plies face to face. Two garments of a
   * size go by one number: what each has once is cut for both at once.
   */
  static Lay halfSets(Job job, Cloth cloth) {
    return of(job, cloth, 1, 2);
  }

  private static Lay of(Job job, Cloth cloth, int times, int together) {
    List<Wanted> wanted = new ArrayList<>();
    int garment = 0;
    for (Map.Entry<String, Integer> size : job.garments().entrySet()) {
      List<CutPiece> pieces = cutPieces(job, size.getKey(), cloth);
      for (int i = 0; i < times * size.getValue(); i++) {
        garment += i % together == 0 ? 1 : 0;
        for (CutPiece piece : pieces) {
          Cut cut = piece.piece().cutFrom(cloth.name()).orElseThrow();
          for (int n = 0; n < cut.count(); n++) {
            wanted.add(new Wanted(piece, size.getKey(), garment, cut.how()));
          }
        }
      }
    }
    return new Lay(job.style().name(), cloth, wanted, job.style().matches());
  }

  /** The pieces of one size that are cut from a cloth, with their cutting lines. */
  static List<CutPiece> cutPieces(Job job, String size, Cloth cloth) {
    Shrinkage shrinkage = cloth.shrinkage();
    return job.style().pieces(size, cloth.name(), panelRoomMm(cloth)).stream()
        .map(piece -> Cutter.cut(piece, shrinkage.growthAlong(), shrinkage.growthAcross()))
        .toList();
  }

  /** What a cutter should know about the pieces cut from a cloth, one sentence each. */
  static List<String> cautions(Job job, Cloth cloth, Unit unit) {
    List<String> cautions = new ArrayList<>();
    for (String size : job.garments().keySet()) {
      job.style().panels(size, cloth.name(), panelRoomMm(cloth)).stream()
          .flatMap(panels -> panels.sentence(unit).stream())
          .forEach(cautions::add);
      job.style().pieces(size, cloth.name(), panelRoomMm(cloth)).stream()
          .flatMap(piece -> Cautions.of(piece).stream())
          .forEach(caution -> cautions.add(caution.toString()));
    }
    cautions.addAll(seams(job, unit));
    return cautions.stream().distinct().map(sentence -> sentence + ".").toList();
  }

  /** How bindings that are cut from a cloth become strips, one sentence each. */
  static List<String> bindings(Job job, Cloth cloth, Unit unit) {
    boolean several = job.garments().size() > 1;
    return job.garments().keySet().stream()
        .flatMap(
            size ->
                job.style().bindings(size, cloth.name()).stream()
                    .map(b -> (several ? "Size " + size + ", " : "") + b.sentence(unit) + "."))
        .toList();
  }

  /** Which seams do not match in the sizes wanted. */
  private static List<String> seams(Job job, Unit unit) {
    Style style = job.style();
    return job.garments().keySet().stream()
        .flatMap(
            size ->
                style.seams().stream()
                    .flatMap(seam -> seam.sentence(size, style.pieces(size), unit).stream()))
        .toList();
  }

  /** How wide a panel may be: cutting lines grow after that. */
  private static double panelRoomMm(Cloth cloth) {
    return cloth.usableWidthMm() / cloth.shrinkage().growthAcross();
  }
}
