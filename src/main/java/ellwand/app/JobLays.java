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
import ellwand.pattern.Design;
import ellwand.pattern.Sizes;
import ellwand.pattern.Style;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** From a job to what is to be cut from each of its cloths. */
final class JobLays {

  private static final String TOILE =
      "A block drafted from body measures is a start: sew a toile and try it on before good cloth"
          + " is cut";

  /** Cloth for clothes is not made wider, mm; our own choice. */
  private static final double WIDEST_MM = 5_000;

  /** Nobody leaves more between pieces, mm; our own choice. */
  private static final double WIDEST_GAP_MM = 100;

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
    return of(job, cloth, times, size -> cutPieces(job, size, cloth));
  }

  /** The same of pieces that are cut already, by size. */
  static Lay of(Job job, Cloth cloth, int times, Function<String, List<CutPiece>> cutPieces) {
    List<Wanted> wanted = new ArrayList<>();
    int garment = 0;
    for (Map.Entry<String, Integer> size : job.garments().entrySet()) {
      List<CutPiece> pieces = cutPieces.apply(size.getKey());
      for (int i = 0; i < times * size.getValue(); i++) {
        garment++;
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
    return Stream.concat(notes(job, cloth, unit).stream(), doubts(job, cloth, unit).stream())
        .toList();
  }

  /** How pieces cut from a cloth come about, one sentence each. */
  static List<String> notes(Job job, Cloth cloth, Unit unit) {
    List<String> notes = new ArrayList<>();
    for (String size : job.garments().keySet()) {
      job.style().panels(size, cloth.name(), panelRoomMm(cloth)).stream()
          .flatMap(panels -> panels.sentences(unit).stream())
          .forEach(notes::add);
      job.style()
          .notes(size, cloth.name(), unit)
          .forEach(s -> notes.add(inSizes(job, List.of(size)) + s));
    }
    if (job.style().design().drafted()) {
      notes.add(TOILE);
    }
    return sentences(notes);
  }

  /** What of the pieces cut from a cloth their maker may not have meant, one sentence each. */
  static List<String> doubts(Job job, Cloth cloth, Unit unit) {
    List<String> doubts = new ArrayList<>();
    Map<String, List<String>> ofPieces = new LinkedHashMap<>();
    for (String size : job.garments().keySet()) {
      job.style()
          .cautions(size, cloth.name(), unit)
          .forEach(s -> doubts.add(inSizes(job, List.of(size)) + s));
      job.style().pieces(size, cloth.name(), panelRoomMm(cloth)).stream()
          .flatMap(piece -> Cautions.of(piece, unit).stream())
          .map(Object::toString)
          .distinct()
          .forEach(c -> ofPieces.computeIfAbsent(c, said -> new ArrayList<>()).add(size));
    }
    ofPieces.forEach((caution, sizes) -> doubts.add(inSizes(job, sizes) + caution));
    doubts.addAll(seams(job, unit));
    doubts.addAll(outsize(cloth, unit));
    ungraded(job.style().design()).ifPresent(doubts::add);
    doubts.addAll(shifted(job.style()));
    return sentences(doubts);
  }

  /** What of a cloth looks like a slip of the unit. */
  private static List<String> outsize(Cloth cloth, Unit unit) {
    List<String> outsize = new ArrayList<>();
    if (cloth.widthMm() > WIDEST_MM) {
      outsize.add(
          "cloth %s is %s wide: see that the unit is right"
              .formatted(cloth.name(), new Length(cloth.widthMm()).show(unit)));
    }
    if (cloth.gapMm() > WIDEST_GAP_MM) {
      outsize.add(
          "the gap between pieces of cloth %s is %s: see that the unit is right"
              .formatted(cloth.name(), new Length(cloth.gapMm()).show(unit)));
    }
    return outsize;
  }

  private static Optional<String> ungraded(Design design) {
    Sizes sizes = design.sizes();
    boolean drawn = design.outlined().stream().anyMatch(p -> p.start().draft().isPresent());
    return sizes.names().size() > 1 && drawn && !design.sized()
        ? Optional.of(
            Sizes.words(sizes.names())
                + " are all drawn alike, as in "
                + sizes.base()
                + ": write under grade: of sizes: how points move between them")
        : Optional.empty();
  }

  private static List<String> shifted(Style style) {
    return style.shifted().stream()
        .map(
            piece ->
                ("%1$s: its grade moves every point alike, so that it is the same in %2$s: name the"
                        + " points that stay or move otherwise, or take %1$s out of grade:")
                    .formatted(piece, Sizes.words(style.sizes())))
        .toList();
  }

  private static List<String> sentences(List<String> said) {
    return said.stream().distinct().map(sentence -> sentence + ".").toList();
  }

  /** How bindings that are cut from a cloth become strips, one sentence each. */
  static List<String> bindings(Job job, Cloth cloth, Unit unit) {
    return job.garments().keySet().stream()
        .flatMap(
            size ->
                job.style().bindings(size, cloth.name()).stream()
                    .map(b -> inSizes(job, List.of(size)) + b.sentence(unit) + "."))
        .toList();
  }

  /** Nothing where it is so in all sizes that are wanted. */
  private static String inSizes(Job job, List<String> sizes) {
    return sizes.size() == job.garments().size() ? "" : Sizes.words(sizes) + ", ";
  }

  /** Which seams do not match in the sizes wanted. */
  private static List<String> seams(Job job, Unit unit) {
    Style style = job.style();
    return job.garments().keySet().stream()
        .flatMap(
            size ->
                style.seams().stream()
                    .flatMap(seam -> seam.sentences(size, style.pieces(size), unit).stream()))
        .toList();
  }

  /** How wide a panel may be: cutting lines grow after that. */
  private static double panelRoomMm(Cloth cloth) {
    return cloth.usableWidthMm() / cloth.shrinkage().growthAcross();
  }
}
