package ellwand.app;

import ellwand.draw.marker.ComparisonChart;
import ellwand.draw.marker.CutSheet;
import ellwand.draw.order.BundleLabels;
import ellwand.draw.order.OrderSheet;
import ellwand.file.figures.OrderWriter;
import ellwand.file.interchange.StyleDxf;
import ellwand.file.job.StyleFile;
import ellwand.file.marker.MarkerWriter;
import ellwand.file.source.WholeFile;
import ellwand.file.svg.StyleSvg;
import ellwand.job.Job;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * One kind of file that can be made of something. All kinds are listed here: a new one is a line
 * here and its writer.
 *
 * @param ending of the file's name, or all of the name where a run gives one such file
 */
record Format<T>(String ending, Function<T, byte[]> writer) {

  private static final Format<LaidMarker> PNG = new Format<>(".png", m -> m.drawing().png());

  /** Of each marker of a job. */
  static final List<Format<LaidMarker>> MARKER =
      List.of(
          new Format<>(".svg", m -> m.drawing().svg()),
          PNG,
          new Format<>(".pdf", m -> m.drawing().pdf()),
          new Format<>(".marker.json", m -> MarkerWriter.bytes(m.marker(), m.job())));

  /** Of each marker of an order: they are many, and who wants a picture has two others. */
  static final List<Format<LaidMarker>> ORDERED_MARKER =
      MARKER.stream().filter(format -> format != PNG).toList();

  /** Of all markers of a job together. */
  static final List<Format<LaidJob>> JOB =
      List.of(
          new Format<>("figures.json", LaidJob::json),
          new Format<>(
              "cut-sheet.pdf",
              j -> CutSheet.pdf(j.job().heading(), j.figures(), j.markers(), j.unit())),
          new Format<>("shopping-list.pdf", j -> j.shopping().pdf()),
          new Format<>("shopping-list.txt", j -> j.shopping().text()));

  /** Of an order. */
  static final List<Format<PlannedOrder>> ORDER =
      List.of(
          new Format<>("order.json", PlannedOrder::json),
          new Format<>("cut-tickets.csv", o -> OrderWriter.csv(o.figures())),
          new Format<>("order.pdf", o -> OrderSheet.pdf(o.figures(), o.unit())),
          new Format<>("bundle-labels.pdf", o -> BundleLabels.pdf(o.figures())));

  /** Of an order of a style, whose cloths are known. */
  static final List<Format<PlannedOrder>> STYLED_ORDER =
      List.of(
          new Format<>("shopping-list.pdf", o -> o.shopping().pdf()),
          new Format<>("shopping-list.txt", o -> o.shopping().text()));

  /** Of widths compared. */
  static final List<Format<ComparedWidths>> COMPARISON =
      List.of(
          new Format<>("compare.txt", c -> c.text().getBytes(StandardCharsets.UTF_8)),
          new Format<>("compare.svg", c -> ComparisonChart.svg(c.comparison(), c.unit())),
          new Format<>("compare.json", ComparedWidths::json));

  /** Of the pieces of a job. */
  static final List<Format<DrawnPieces>> PIECES =
      List.of(
          new Format<>(".svg", p -> p.drawing().svg()),
          new Format<>(".pdf", DrawnPieces::pdf),
          new Format<>(".png", p -> p.drawing().png()));

  /** Of a style, for other programs. */
  static final List<Format<StyleFile>> STYLE =
      List.of(
          new Format<>(".svg", StyleSvg::bytes),
          new Format<>(".dxf", s -> StyleDxf.bytes(s, List.of())));

  /**
   * The file of each format.
   *
   * @param name that the endings are put to
   */
  static <T> List<Output> outputs(List<Format<T>> formats, String name, T what) {
    return formats.stream()
        .map(f -> new Output(name + f.ending, () -> f.writer.apply(what)))
        .toList();
  }

  /**
   * Refuses a job whose files would get the same name, where capitals make no difference, or one
   * that no file can have here.
   *
   * @param markers names of all that may be made
   * @param once formats of which there is one file
   * @throws InputException which says what to call otherwise
   */
  static void refuseClashes(Job job, List<String> markers, List<? extends Format<?>> once) {
    Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    once.forEach(format -> names.add(format.ending()));
    for (String marker : markers) {
      for (Format<LaidMarker> format : MARKER) {
        if (!WholeFile.canBeCalled(marker + format.ending)) {
          throw new InputException(
              Problem.of(
                      "no file can be called " + marker + format.ending + " in this locale",
                      "Set a locale with UTF-8, such as LC_ALL=C.UTF-8, or give cloth "
                          + marker
                          + " a name of plain letters")
                  .at(job.origin().path(), 0));
        }
        if (!names.add(marker + format.ending)) {
          throw new InputException(
              Problem.of(
                      "two files would be called " + marker + format.ending,
                      "Give cloth " + marker + " another name")
                  .at(job.origin().path(), 0));
        }
      }
    }
  }
}
