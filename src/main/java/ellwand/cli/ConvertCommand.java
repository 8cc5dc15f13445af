package ellwand.cli;

import ellwand.app.ConvertRequest;
import ellwand.app.ConvertRun;
import ellwand.app.Converted;
import ellwand.app.Output;
import ellwand.app.PhotoRun;
import ellwand.app.StyleDrawing;
import ellwand.file.drawn.Asked;
import ellwand.file.drawn.PieceNames;
import ellwand.file.job.StyleFile;
import ellwand.file.pdf.Tiling;
import ellwand.file.source.Folder;
import ellwand.file.source.WholeFile;
import ellwand.problem.InputException;
import ellwand.units.Length;
import ellwand.units.Unit;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a style of drawings, and drawings of a style. */
@Command(
    mixinStandardHelpOptions = true,
    description =
        "Reads pattern pieces from SVG, DXF and PDF files, or from photos of paper pieces, into a"
            + " style file for jobs, and draws a control sheet beside it. What a file holds is told"
            + " by its content, not by its name.",
    footer = {
      "",
      "Example: convert apron.svg --allowance 1cm --out apron.yaml",
      "Then, in a job: style: {file: apron.yaml}",
      "Example: convert bag.pdf --pages 3x4 --cutting-line 1cm --out bag.yaml",
      "Example: convert --reference A4 --sheets 3 --out sheets.pdf",
      "Example: convert front.jpg --on-fold AB --allowance 1cm --out front.yaml",
      "Example: convert leg-low.png leg-high.png --dpi 300 --allowance 1cm --out leg.yaml",
      "Example: convert coat.dxf coat.rul --out coat.yaml",
      "Example: convert sample-markers/weir-jacket/job.yaml --out weir.svg"
    })
final class ConvertCommand implements Callable<Integer> {

  /** Options that say how drawings are read. */
  private static final List<String> FOR_DRAWINGS =
      List.of(
          "--allowance",
          "--cutting-line",
          "--layers",
          "--names",
          "--name",
          "--dpi",
          "--drawing-unit",
          "--pages",
          "--first-page",
          "--page-furniture");

  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      description =
          "Drawings of pattern pieces, and with one in DXF perhaps the table of its grade rules; or"
              + " a job or style.")
  private List<Path> files = List.of();

  @Option(
      names = "--out",
      paramLabel = "OUT",
      description = "What to write: a style file, OUT.yaml, or its drawing, OUT.svg or OUT.dxf.")
  private Path out;

  @Option(
      names = "--allowance",
      paramLabel = "LENGTH",
      description =
          "Of a drawing, as --sewing-line: so much is to be added. Of photos and scans, as"
              + " --cutting-line: the paper includes so much, which is taken off it, but not along"
              + " a fold.")
  private String allowance;

  @Option(
      names = "--sewing-line",
      paramLabel = "LENGTH",
      description =
          "The drawn lines, or the border of the paper, are sewing lines; so much is to be added."
              + " Default: 0, unless a cutting line is drawn as well.")
  private String sewingLine;

  @Option(
      names = "--cutting-line",
      paramLabel = "LENGTH",
      description =
          "The drawn lines, or the border of the paper, are cutting lines, which include so much.")
  private String cuttingLine;

  @Option(
      names = "--layers",
      paramLabel = "NAME",
      split = ",",
      description = "Read only these layers or groups, such as one size. Default: all.")
  private List<String> layers = List.of();

  @Option(
      names = "--sizes",
      paramLabel = "SIZE",
      split = ",",
      description =
          "Which sizes of a DXF pattern to read, or which of a style to write as DXF. Default:"
              + " all.")
  private List<String> sizes = List.of();

  @Option(
      names = "--grade-rules",
      description =
          "Write DXF in the size that is drawn, and OUT.rul beside it, the rules by which its"
              + " points move in the others. Default: every size is drawn.")
  private boolean gradeRules;

  @Option(
      names = "--names",
      paramLabel = "NAMES.yaml",
      description =
          "What pieces are called and how they are cut: pieces: {left part: {called: front, cut:"
              + " {main: pair}}, frame: {leave-out: true}}.")
  private Path names;

  @Option(
      names = "--name",
      paramLabel = "STYLE",
      description = "Name of the style. Default: the drawing's title, or the file's name.")
  private String name;

  @Option(
      names = "--dpi",
      paramLabel = "N",
      description =
          "Dots to the inch of an SVG drawing that does not say how large it is (default: 96), or"
              + " of flat scans, which need no reference sheet: several of one piece are joined by"
              + " two crosses or more, drawn on it, that two scans show.")
  private Double dpi;

  @Option(
      names = "--drawing-unit",
      paramLabel = "UNIT",
      converter = UnitMixin.UnitConverter.class,
      description = "Unit of the numbers in a DXF file. Default: what it says, or mm.")
  private Unit drawingUnit;

  @Option(
      names = "--pages",
      paramLabel = "ROWSxCOLUMNS",
      description =
          "Join the pages of a PDF that was tiled for printing, the first at the top left, row by"
              + " row. Default: each page by itself.")
  private String pages;

  @Option(
      names = "--page-furniture",
      description =
          "Read also what seems to be no part of a PDF pattern: what every page has at the same"
              + " place, frames, test squares. Default: these are left out.")
  private boolean pageFurniture;

  @Option(
      names = "--first-page",
      paramLabel = "N",
      defaultValue = "1",
      description = "With --pages: which page of the PDF is the first of the pattern. Default: 1.")
  private int firstPage;

  @Mixin private PhotoMixin photos;
  @Mixin private ReferenceMixin sheets;
  @Mixin private ShowMixin show;
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (sheets.asked()) {
      return sheets.run(files, out, show);
    }
    checkOptions();
    WholeFile.refuseUnwritable(out);
    List<String> names = files.stream().map(Path::toString).toList();
    boolean toStyle = isYaml(out);
    if (PhotoRun.isPhoto(names.get(0), Folder.DISK)) {
      return photo(names);
    }
    if (photos.asked()) {
      throw refused("--piece, --on-fold, --half and --grain go with photos; a drawing says it");
    }
    boolean drawn = toStyle || ConvertRun.isDrawing(names.get(0), Folder.DISK);
    if (!drawn && names.size() > 1) {
      throw refused("one job or style is drawn at a time");
    }
    if (files.stream().anyMatch(f -> same(f, out))) {
      throw refused("'" + out + "' is what is to be read: give --out another name");
    }
    if (drawn) {
      finish(ConvertRun.style(names, Folder.DISK, request(false)));
    } else {
      refuseWhatIsForDrawings();
      write(StyleFile.read(names.get(0), Folder.DISK), sizes);
    }
    return Main.DONE;
  }

  /** What says how a drawing is read would be lost on a job or style. */
  private void refuseWhatIsForDrawings() {
    CommandLine.ParseResult given = spec.commandLine().getParseResult();
    FOR_DRAWINGS.stream()
        .filter(given::hasMatchedOption)
        .findFirst()
        .ifPresent(
            name -> {
              throw refused(name + " is for reading drawings, and '" + files.get(0) + "' is none");
            });
    if (!sizes.isEmpty() && !StyleDrawing.isPattern(out.toString())) {
      throw refused(
          "--sizes goes with --out OUT.dxf: an SVG drawing holds all sizes by their rules");
    }
  }

  private void finish(Converted made) {
    if (isYaml(out)) {
      write(made);
    } else {
      write(made.file(), List.of());
    }
    show.print(spec.commandLine().getOut(), made);
    made.remarks().forEach(spec.commandLine().getErr()::println);
  }

  /** The control picture is written also where a photo is refused: it shows where and why. */
  private int photo(List<String> names) {
    ConvertRequest request = request(true);
    OptionalInt asked = photos.piece();
    PhotoRun run = PhotoRun.of(names, Folder.DISK, request.dotsPerInch());
    Path picture = beside("-photo.svg");
    byte[] control =
        run.control(picture.getFileName().toString(), asked, request.unit().orElse(Unit.CM))
            .bytes();
    Converted made;
    try {
      int number = run.chosen(asked);
      made = run.style(run.piece(number), number, photos.how(), request);
    } catch (InputException e) {
      WholeFile.write(picture, control);
      spec.commandLine().getErr().println("Written: " + picture + ", which shows what was seen.");
      throw e;
    }
    WholeFile.write(picture, control);
    finish(made);
    spec.commandLine()
        .getErr()
        .println("Written: " + picture + ", the photo with what was traced in it.");
    return Main.DONE;
  }

  private void write(Converted made) {
    Path control = control();
    List<Output> outputs =
        made.outputs(out.getFileName().toString(), control.getFileName().toString());
    List<byte[]> bytes = outputs.stream().map(Output::bytes).toList();
    WholeFile.write(out, bytes.get(0));
    WholeFile.write(control, bytes.get(1));
    spec.commandLine()
        .getErr()
        .println("Written: " + out + ", and " + control + " to hold against the drawing.");
  }

  private void write(StyleFile style, List<String> inSizes) {
    List<String> said = new ArrayList<>();
    List<Output> outputs =
        new StyleDrawing(style, inSizes, gradeRules).outputs(out.getFileName().toString(), said);
    List<byte[]> bytes = outputs.stream().map(Output::bytes).toList();
    List<Path> paths = outputs.stream().map(o -> out.resolveSibling(o.name())).toList();
    for (int i = 0; i < paths.size(); i++) {
      WholeFile.write(paths.get(i), bytes.get(i));
    }
    PrintWriter err = spec.commandLine().getErr();
    said.forEach(err::println);
    err.println("Written: " + paths.stream().map(Path::toString).collect(Collectors.joining(", ")));
  }

  private static boolean isYaml(Path path) {
    return path.getFileName().toString().toLowerCase(Locale.ROOT).matches(".+\\.ya?ml");
  }

  private void checkOptions() {
    if (files.isEmpty()) {
      throw refused("name a file to read, or ask for --reference A4 or Letter");
    }
    if (out == null) {
      throw refused("say what to write with --out, such as --out style.yaml");
    }
    String lower = out.getFileName().toString().toLowerCase(Locale.ROOT);
    if (!isYaml(out) && StyleDrawing.endings().stream().noneMatch(lower::endsWith)) {
      throw refused(
          "'%s' must end with .yaml, or with %s for a drawing of a style"
              .formatted(out, String.join(", ", StyleDrawing.endings())));
    }
    if (gradeRules && !StyleDrawing.isPattern(lower)) {
      throw refused("--grade-rules goes with --out OUT.dxf");
    }
    if (Stream.of(allowance, sewingLine, cuttingLine).filter(Objects::nonNull).count() > 1) {
      throw refused(
          "of --allowance, --sewing-line and --cutting-line only one can hold: the line is drawn"
              + " once");
    }
    if (firstPage < 1) {
      throw refused("--first-page takes a number from 1 up");
    }
    if (dpi != null && !(dpi >= 1 && dpi <= 100_000)) {
      throw refused("--dpi takes a number such as 72, 90 or 96");
    }
  }

  /**
   * @param photo whether the border of paper is read, which usually includes its allowance
   */
  private ConvertRequest request(boolean photo) {
    Unit bare = show.unit().orElse(Unit.CM);
    return new ConvertRequest(
        new Asked(
            length(photo ? sewingLine : either(sewingLine, allowance), bare),
            length(photo ? either(cuttingLine, allowance) : cuttingLine, bare),
            layers),
        names == null ? PieceNames.NONE : PieceNames.read(names.toString(), Folder.DISK),
        dpi == null ? OptionalDouble.empty() : OptionalDouble.of(dpi),
        Optional.ofNullable(drawingUnit),
        Optional.ofNullable(name),
        show.unit(),
        sizes,
        tiling(),
        pageFurniture);
  }

  private static String either(String said, String other) {
    return said != null ? said : other;
  }

  private Optional<Tiling> tiling() {
    try {
      return Optional.ofNullable(pages).map(text -> Tiling.parse(text, firstPage));
    } catch (InputException e) {
      throw refused(e.getMessage());
    }
  }

  private OptionalDouble length(String text, Unit bare) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    try {
      double mm = Length.parse(text, bare).mm();
      if (mm >= 0 && mm <= 1000) {
        return OptionalDouble.of(mm);
      }
    } catch (InputException e) {
      throw refused(e.getMessage());
    }
    throw refused("'" + text + "' is no seam allowance");
  }

  /** Beside the style file; under another name where that is one of the drawings. */
  private Path control() {
    Path control = beside(".svg");
    return files.stream().anyMatch(f -> same(f, control)) ? beside("-control.svg") : control;
  }

  /** A file that is called like the one that is asked for, but for its ending. */
  private Path beside(String ending) {
    String plain = out.getFileName().toString().replaceFirst("(?i)\\.(ya?ml|svg|dxf)$", "");
    return out.resolveSibling(plain + ending);
  }

  private static boolean same(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  private ParameterException refused(String what) {
    return new ParameterException(spec.commandLine(), what);
  }
}
