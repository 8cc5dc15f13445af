package ellwand.app;

import ellwand.cloth.Cloth;
import ellwand.cloth.Flaw;
import ellwand.draw.marker.CutSheet;
import ellwand.draw.marker.MarkerDrawing;
import ellwand.draw.sheet.Unprinted;
import ellwand.figures.Cautions;
import ellwand.figures.Figures;
import ellwand.figures.JobFigures;
import ellwand.file.marker.MarkerWriter;
import ellwand.file.source.Json;
import ellwand.file.source.WholeFile;
import ellwand.job.Job;
import ellwand.lay.Marker;
import ellwand.pattern.Piece;
import ellwand.rule.Check;
import ellwand.rule.Finding;
import ellwand.units.Unit;
import ellwand.work.Request;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes the markers of a job and writes them. */
public final class LayRun {

  private LayRun() {}

  /**
   * Markers that have passed the check, with their figures.
   *
   * @param markers one for each cloth of the job, in its order
   * @param unit that lengths are shown in
   */
  public record Made(Job job, List<Marker> markers, JobFigures figures, Unit unit) {}

  /**
   * Makes one marker for each cloth.
   *
   * @throws ellwand.problem.InputException if a piece is wider than its cloth
   * @throws IllegalStateException if a marker breaks a hard rule, which is a bug of ours
   */
  public static Made make(Job job, Unit unit, Request request) {
    List<Marker> markers = new ArrayList<>();
    List<Figures> figures = new ArrayList<>();
    for (Cloth cloth : job.cloths()) {
      Folded folded = Folded.make(Lays.of(job, cloth), unit, request);
      Marker best = folded.best(job, unit);
      markers.add(best);
      figures.add(folded.figures(best, Lays.bindings(job, cloth, unit)));
    }
    return made(job, markers, figures, unit);
  }

  /** Markers that have passed the check, with their figures. */
  static Made made(Job job, List<Marker> markers, List<Figures> figures, Unit unit) {
    List<String> cautions = new ArrayList<>(Shades.cautions(job, markers));
    cautions.addAll(cautions(job, unit));
    return new Made(
        job,
        markers,
        JobFigures.of(job.style().name(), job.garmentCount(), figures, cautions),
        unit);
  }

  /** Whatever whoever cuts should know. */
  static List<String> cautions(Job job, Unit unit) {
    List<String> cautions = new ArrayList<>(Cautions.of(job.wear()));
    job.cloths().forEach(cloth -> cautions.addAll(Lays.cautions(job, cloth, unit)));
    cautions.addAll(job.notes());
    unprinted(job).ifPresent(cautions::add);
    return cautions.stream().distinct().toList();
  }

  /** Which words of a job a PDF cannot show in full, as a sentence. */
  static Optional<String> unprinted(Job job) {
    return Unprinted.caution(words(job));
  }

  /** What of a job is written on drawings. */
  private static Stream<String> words(Job job) {
    Stream<String> pieces =
        job.garments().keySet().stream()
            .flatMap(size -> Stream.concat(Stream.of(size), pieces(job, size)));
    Stream<String> cloths =
        job.cloths().stream()
            .flatMap(
                cloth ->
                    Stream.concat(
                        Stream.of(cloth.name(), cloth.currency()),
                        cloth.flaws().stream().map(Flaw::name)));
    Stream<String> remnants =
        job.remnants().stream()
            .flatMap(r -> Stream.concat(Stream.of(r.name()), r.missing().stream().map(Flaw::name)));
    return Stream.of(Stream.of(job.style().name()), job.notes().stream(), pieces, cloths, remnants)
        .flatMap(s -> s);
  }

  private static Stream<String> pieces(Job job, String size) {
    return job.style().pieces(size).stream().map(Piece::name);
  }

  static Marker checked(Marker marker) {
    List<Finding> findings = Check.of(marker);
    if (!findings.isEmpty()) {
      throw new IllegalStateException(
          "the marker for "
              + marker.lay().cloth().name()
              + " breaks a rule: "
              + findings.get(0).sentence(Unit.MM));
    }
    return marker;
  }

  /**
   * Writes the drawings, marker files, figures and cut sheet. Nothing is written before all is
   * made.
   *
   * @return the files written
   */
  public static List<Path> write(Made made, Path folder) {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    for (int i = 0; i < made.markers().size(); i++) {
      Marker marker = made.markers().get(i);
      Figures figures = made.figures().cloths().get(i);
      String name = name(made, marker);
      MarkerDrawing drawing = MarkerDrawing.of(marker, figures, made.unit());
      files.put(folder.resolve(name + ".svg"), drawing.svg());
      files.put(folder.resolve(name + ".png"), drawing.png());
      files.put(folder.resolve(name + ".pdf"), drawing.pdf());
      files.put(folder.resolve(name + ".marker.json"), MarkerWriter.bytes(marker, made.job()));
    }
    files.put(folder.resolve("figures.json"), Json.bytes(made.figures()));
    files.put(
        folder.resolve("cut-sheet.pdf"), CutSheet.pdf(made.figures(), made.markers(), made.unit()));
    files.forEach(WholeFile::write);
    return List.copyOf(files.keySet());
  }

  /** The cloth, with the remnant where there are several pieces of it. */
  private static String name(Made made, Marker marker) {
    String cloth = marker.lay().cloth().name();
    boolean several =
        made.markers().stream().filter(m -> m.lay().cloth().name().equals(cloth)).count() > 1;
    return several
        ? cloth + marker.lay().cloth().stock().map(s -> " on " + s.name()).orElse(" to buy")
        : cloth;
  }
}
