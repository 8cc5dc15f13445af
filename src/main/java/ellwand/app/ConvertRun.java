package ellwand.app;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.FoundPiece;
import ellwand.file.drawn.FoundStyle;
import ellwand.file.drawn.PieceFinder;
import ellwand.file.drawn.PiecesInSizes;
import ellwand.file.interchange.DxfReader;
import ellwand.file.pdf.PdfReader;
import ellwand.file.source.Folder;
import ellwand.file.source.Source;
import ellwand.file.source.Tree;
import ellwand.file.svg.SvgReader;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a style of drawings. */
public final class ConvertRun {

  private static final int MOST_BYTES = 50_000_000;

  private ConvertRun() {}

  /** Whether a file is a drawing, by its content; else it may be a job or a style. */
  public static boolean isDrawing(String file, Folder from) {
    byte[] bytes = from.read(file, MOST_BYTES);
    return SvgReader.looksLike(bytes) || DxfReader.looksLike(bytes) || PdfReader.looksLike(bytes);
  }

  /**
   * Reads drawings, whatever their names end with.
   *
   * @param files their paths, or names for them; one may be a table of grade rules
   * @throws InputException if one cannot be read safely, or nothing closed is in it
   */
  public static Converted style(List<String> files, Folder from, ConvertRequest request) {
    List<Source> tables =
        files.stream()
            .filter(file -> DxfReader.looksLikeRules(from.read(file, MOST_BYTES)))
            .map(file -> new Source(file, from.read(file, MOST_BYTES), ""))
            .toList();
    if (tables.size() > 1 || tables.size() == files.size()) {
      throw new InputException(
          Problem.of(
                  "a table of grade rules goes with the DXF pattern that it was written for",
                  "Name the pattern first, and one table")
              .at(tables.get(tables.size() - 1).name(), 0));
    }
    refuseUnused(files, from, request);
    Optional<Source> rules = tables.stream().findFirst();
    return style(
        files.stream()
            .filter(file -> tables.stream().noneMatch(t -> t.name().equals(file)))
            .map(file -> read(file, from, request, rules))
            .toList(),
        request);
  }

  /** What is said of files of a kind that none of them is would be lost. */
  private static void refuseUnused(List<String> files, Folder from, ConvertRequest request) {
    boolean paged = request.tiling().isPresent() || request.furniture();
    if (paged && files.stream().noneMatch(f -> PdfReader.looksLike(from.read(f, MOST_BYTES)))) {
      throw InputException.of(
          "only a PDF has pages", "Leave out what is said of pages (--pages, --page-furniture)");
    }
    boolean unit = request.drawingUnit().isPresent();
    if (unit && files.stream().noneMatch(f -> DxfReader.looksLike(from.read(f, MOST_BYTES)))) {
      throw InputException.of(
          "only a DXF file is told the unit of its numbers (--drawing-unit)",
          "For an SVG drawing without a size say how many dots there are to an inch (--dpi)");
    }
  }

  /** Of drawings as read. */
  static Converted style(List<Drawing> drawings, ConvertRequest request) {
    Drawing first = drawings.get(0);
    List<Optional<ObjectNode>> words = drawings.stream().map(ConvertRun::words).toList();
    Unit unit =
        request
            .unit()
            .or(() -> words.get(0).map(w -> Unit.parse(w.path("unit").asText())))
            .orElse(first.unit());
    FoundStyle found = new FoundStyle(request.names(), unit);
    List<String> said = new ArrayList<>();
    for (int i = 0; i < drawings.size(); i++) {
      Drawing drawing = drawings.get(i);
      said.addAll(drawing.said());
      List<FoundPiece> pieces = PieceFinder.find(drawing, request.asked(), said);
      found.add(drawing, PiecesInSizes.graded(drawing, pieces, request.asked()), words.get(i));
    }
    String called = request.styleName().or(first::title).orElseGet(() -> plainName(first.file()));
    return new Converted(found.style(called), found.found(), request.asked(), said);
  }

  private static Drawing read(
      String file, Folder from, ConvertRequest request, Optional<Source> rules) {
    byte[] bytes = from.read(file, MOST_BYTES);
    if (!request.sizes().isEmpty() && !DxfReader.looksLike(bytes)) {
      throw new InputException(
          Problem.of(
                  "sizes are told apart in DXF patterns only",
                  "Read one size by the name of its layer or group (--layers)")
              .at(file, 0));
    }
    if (SvgReader.looksLike(bytes)) {
      return SvgReader.read(file, bytes, request.dotsPerInch());
    }
    if (DxfReader.looksLike(bytes)) {
      return DxfReader.read(file, bytes, request.drawingUnit(), request.sizes(), rules);
    }
    if (PdfReader.looksLike(bytes)) {
      return PdfReader.read(file, bytes, request.tiling(), request.furniture());
    }
    throw new InputException(
        Problem.of(
                bytes.length == 0 ? "the file is empty" : "this is no drawing that can be read",
                "Name an SVG, DXF or PDF file, or photos in JPEG or PNG, and no others with them")
            .at(file, 0));
  }

  /** What a drawing says of a whole style, where it does. */
  private static Optional<ObjectNode> words(Drawing drawing) {
    return drawing
        .words()
        .map(text -> new Source(drawing.file(), text.getBytes(StandardCharsets.UTF_8), text))
        .map(source -> (ObjectNode) Tree.ofYaml(source).root());
  }

  static String plainName(String file) {
    String name = Path.of(file).getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
