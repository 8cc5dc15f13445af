package ellwand.app;

import ellwand.cloth.Flaw;
import ellwand.draw.sheet.Unprinted;
import ellwand.figures.Safety;
import ellwand.job.Job;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whatever whoever cuts a job should know, one sentence each. */
final class JobCautions {

  private JobCautions() {}

  /**
   * All that the job gives cause for.
   *
   * @param unit that lengths are shown in
   */
  static List<String> of(Job job, Unit unit) {
    List<String> cautions = new ArrayList<>(Safety.of(job.wear()));
    job.cloths().forEach(cloth -> cautions.addAll(JobLays.cautions(job, cloth, unit)));
    cautions.addAll(job.notes());
    unprinted(job).ifPresent(cautions::add);
    return cautions.stream().distinct().toList();
  }

  /** Which words of a job a PDF cannot show in full. */
  static Optional<String> unprinted(Job job) {
    return Unprinted.caution(words(job));
  }

  /** What of a job is written on drawings. */
  private static Stream<String> words(Job job) {
    Stream<String> pieces =
        job.garments().keySet().stream()
            .flatMap(size -> Stream.concat(Stream.of(size), pieces(job, size)));
    Stream<String> trims =
        job.style().design().trims().stream()
            .flatMap(trim -> Stream.of(trim.name(), trim.price().currency()));
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
    return Stream.of(
            Stream.of(job.heading(), job.style().name()),
            job.notes().stream(),
            pieces,
            trims,
            cloths,
            remnants)
        .flatMap(s -> s);
  }

  private static Stream<String> pieces(Job job, String size) {
    return job.style().pieces(size).stream().map(Piece::name);
  }
}
