package ellwand.file.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.drawn.GradeFit;
import ellwand.file.drawn.SafeName;
import ellwand.file.drawn.SizedOutline;
import ellwand.file.dxf.DxfText;
import ellwand.file.job.StyleFile;
import ellwand.file.source.Json;
import ellwand.geometry.Box;
import ellwand.geometry.Point;
import ellwand.pattern.Cut;
import ellwand.pattern.Design;
import ellwand.pattern.Draft;
import ellwand.pattern.Edge;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.Sizes;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Writes the pieces of a style for other pattern programs: by the layers of ASTM D6673, x along the
 * drawn piece, a block for each piece and size, or one for each piece with the grade rules of its
 * points.
 *
 * <p>Layer 1 is the cutting line and layer 14 the sewing line; a style without any allowance has
 * only layer 1. A notch is a point on the cutting line, its depth in group 39 (that group is from
 * memory); a double notch is two of them. Numbers of grade rules stand at their points as {@code #
 * 7} (that form is from memory).
 */
public final class StyleDxf {

  private static final double WORDS_MM = 6;

  /** So that, with what reading adds, less is within the hundredth of a mm that is promised. */
  private static final double WORTH_SAYING_MM = 0.005;

  private final StyleFile file;
  private final Sizes sizes;
  private final DxfText dxf = new DxfText();
  private final double unit;

  /** Sizes as the file calls them. */
  private final Map<String, String> called = new LinkedHashMap<>();

  /**
   * A pattern in its sample size and the table of its grade rules.
   *
   * @param said what rules do not tell of other sizes
   */
  public record Ruled(byte[] dxf, byte[] table, List<String> said) {}

  private StyleDxf(StyleFile file, List<String> wanted) {
    this.file = file;
    this.sizes = chosen(file.design().sizes(), wanted);
    this.unit = english() ? Unit.INCH.mm() : 1;
    Set<String> taken = new HashSet<>();
    sizes.names().forEach(size -> called.put(size, SafeName.free(PieceDxf.plain(size), taken)));
  }

  private static Sizes chosen(Sizes all, List<String> wanted) {
    for (String size : wanted) {
      if (!all.names().contains(size)) {
        throw InputException.of(
            "there is no size " + size, "Use " + String.join(", ", all.names()));
      }
    }
    List<String> names =
        all.names().stream().filter(s -> wanted.isEmpty() || wanted.contains(s)).toList();
    return new Sizes(names, names.contains(all.base()) ? all.base() : names.get(0), Map.of());
  }

  private boolean english() {
    return file.design().unit() == Unit.INCH || file.design().unit() == Unit.YARD;
  }

  /**
   * The bytes of the file, every size drawn; the same style gives the same.
   *
   * @param wanted sizes; none for all
   * @throws InputException if there is no such size
   */
  public static byte[] bytes(StyleFile file, List<String> wanted) {
    return new StyleDxf(file, wanted).nested();
  }

  /**
   * The sample size alone, and a table of grade rules for the others.
   *
   * @param table its name
   * @throws InputException if there are not two sizes, or a piece has not the same edges in all
   */
  public static Ruled ruled(StyleFile file, List<String> wanted, String table) {
    return new StyleDxf(file, wanted).ruled(table);
  }

  /** What of a style the file does not hold as it is, one sentence each. */
  public static List<String> lost(StyleFile file) {
    List<String> said = new ArrayList<>(changedNames(file));
    Design design = file.design();
    List<String> lost = new ArrayList<>();
    if (design.outlined().stream()
            .anyMatch(p -> p.start().draft().isEmpty() || !p.alter().isEmpty())
        || !design.computed().isEmpty()) {
      lost.add("how pieces are made of measures, of other pieces and by alterations");
    }
    if (pieces(file).flatMap(p -> p.edges().stream()).anyMatch(StyleDxf::folded)) {
      lost.add("which lines are darts, pleats and gathers");
    }
    if (!design.seams().isEmpty()) {
      lost.add("seams");
    }
    if (!design.matches().isEmpty()
        || design.outlined().stream().anyMatch(p -> p.place().isPresent())) {
      lost.add("places in stripes and checks");
    }
    if (!design.trims().isEmpty()) {
      lost.add("trims");
    }
    if (!file.wear().isEmpty()) {
      lost.add("what it is worn for");
    }
    if (!lost.isEmpty()) {
      said.add(
          "DXF has no place for these: %s. Every piece is written as it comes out in each size."
              .formatted(String.join("; ", lost)));
    }
    return said;
  }

  private static boolean folded(Edge edge) {
    return !edge.intakes().isEmpty() || !edge.gathers().isEmpty();
  }

  private static Stream<Piece> pieces(StyleFile file) {
    return pieces(file, file.design().sizes().base()).stream();
  }

  /** Those that are cut; what others only start from is none. */
  private static List<Piece> pieces(StyleFile file, String size) {
    return file.style().pieces(size).stream().filter(p -> !p.cuts().isEmpty()).toList();
  }

  private static List<String> changedNames(StyleFile file) {
    Stream<String> ofPieces =
        pieces(file)
            .flatMap(
                p ->
                    Stream.of(
                            Stream.of(p.name()),
                            p.cuts().stream().map(Cut::cloth),
                            p.edges().stream().map(Edge::name))
                        .flatMap(s -> s));
    return Stream.concat(ofPieces, file.design().sizes().names().stream())
        .distinct()
        .filter(name -> !PieceDxf.plain(name).equals(name))
        .map(
            name ->
                name + " is written as " + PieceDxf.plain(name) + ", since DXF holds ASCII only.")
        .toList();
  }

  private byte[] nested() {
    begin();
    List<String> blocks = new ArrayList<>();
    for (String size : sizes.names()) {
      for (Piece piece : pieces(file, size)) {
        blocks.add("P" + (blocks.size() + 1));
        new PieceDxf(dxf, unit, piece)
            .write(
                blocks.get(blocks.size() - 1),
                called.get(size),
                points(piece, size),
                Map.of(),
                own(piece));
      }
    }
    return ended(blocks, Optional.empty());
  }

  private Ruled ruled(String table) {
    if (sizes.names().size() < 2) {
      throw InputException.of(
          "there is one size, which needs no grade rules", "Leave the rules out (--grade-rules)");
    }
    begin();
    List<String> blocks = new ArrayList<>();
    List<String> said = new ArrayList<>();
    said.add("Grade rules move points: in other sizes notches keep their share of the edge.");
    Map<Map<String, Point>, Integer> numbers = new LinkedHashMap<>();
    for (Piece piece : pieces(file, sizes.base())) {
      GradeFit.Fitted fitted = fitted(piece);
      if (fitted.straysMm() > WORTH_SAYING_MM) {
        said.add(
            String.format(
                Locale.ROOT,
                "%s: its outline follows the grade rules within %.2f mm.",
                piece.name(),
                Math.ceil(fitted.straysMm() * 100) / 100));
      }
      Map<String, Point> points = new LinkedHashMap<>();
      Map<String, Integer> rules = new HashMap<>();
      for (Draft.Node node : fitted.draft().nodes()) {
        node.name()
            .ifPresent(
                name -> {
                  points.put(name, node.at());
                  Map<String, Point> shifts = shifts(Optional.ofNullable(fitted.rules().get(name)));
                  numbers.putIfAbsent(shifts, numbers.size() + 1);
                  rules.put(name, numbers.get(shifts));
                });
      }
      blocks.add("P" + (blocks.size() + 1));
      new PieceDxf(dxf, unit, fitted.draft().piece())
          .write(
              blocks.get(blocks.size() - 1), called.get(sizes.base()), points, rules, own(piece));
    }
    Map<Integer, Map<String, Point>> byNumber = new LinkedHashMap<>();
    numbers.forEach((shifts, number) -> byNumber.put(number, shifts));
    RuleTable rows =
        new RuleTable(
            PieceDxf.plain(table),
            english() ? Unit.INCH : Unit.MM,
            List.copyOf(called.values()),
            called.get(sizes.base()),
            byNumber);
    return new Ruled(ended(blocks, Optional.of(rows.name())), rows.bytes(), said);
  }

  private GradeFit.Fitted fitted(Piece piece) {
    Map<String, Piece> all = new LinkedHashMap<>();
    for (String size : sizes.names()) {
      pieces(file, size).stream()
          .filter(p -> p.name().equals(piece.name()))
          .filter(p -> edges(p).equals(edges(piece)))
          .forEach(p -> all.put(size, p));
    }
    if (all.size() < sizes.names().size()) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              "it has not the same edges in every size, so that no rules lead from one to another",
              "Leave the rules out (--grade-rules): every size is then drawn"));
    }
    Map<String, SizedOutline> others = new LinkedHashMap<>();
    all.forEach(
        (size, p) -> {
          if (!size.equals(sizes.base())) {
            others.put(
                size,
                new SizedOutline(
                    PieceDraft.of(p, Map.of()).nodes(), PieceDraft.turns(p, all.values())));
          }
        });
    return GradeFit.of(
            PieceDraft.of(piece, points(piece, sizes.base())),
            PieceDraft.turns(piece, all.values()),
            sizes,
            others,
            false)
        .orElseThrow();
  }

  private static List<String> edges(Piece piece) {
    return piece.edges().stream().map(Edge::name).toList();
  }

  private Map<String, Point> shifts(Optional<GradeRule> rule) {
    Map<String, Point> shifts = new LinkedHashMap<>();
    int base = sizes.names().indexOf(sizes.base());
    for (int i = 0; i < sizes.names().size(); i++) {
      String size = sizes.names().get(i);
      int steps = i - base;
      shifts.put(
          called.get(size),
          steps == 0
              ? new Point(0, 0)
              : rule.map(r -> r.shiftMm(size, steps)).orElse(new Point(0, 0)));
    }
    return shifts;
  }

  /** The points that have a name, where the piece is cut as it is drawn. */
  private Map<String, Point> points(Piece piece, String size) {
    Map<String, Point> points = new LinkedHashMap<>();
    outlined(piece)
        .filter(p -> p.alter().isEmpty())
        .flatMap(p -> p.start().draft())
        .map(draft -> file.design().sizes().graded(draft, size))
        .ifPresent(
            draft ->
                draft.nodes().forEach(n -> n.name().ifPresent(name -> points.put(name, n.at()))));
    return points;
  }

  private Optional<Outlined> outlined(Piece piece) {
    return file.design().outlined().stream().filter(p -> p.name().equals(piece.name())).findFirst();
  }

  /** What a job's piece says that is no line, quantity or grain. */
  private ObjectNode own(Piece piece) {
    ObjectNode own = Json.object();
    outlined(piece)
        .flatMap(Outlined::value)
        .ifPresent(value -> own.set("value", Json.number(value)));
    return own;
  }

  private void begin() {
    List<Point> all = new ArrayList<>();
    pieces(file, sizes.base()).stream()
        .flatMap(p -> p.edges().stream())
        .forEach(e -> all.addAll(e.line().flattened(1)));
    dxf.header(Box.around(all));
    dxf.layers(Layers.WRITTEN);
    dxf.section("BLOCKS");
  }

  private byte[] ended(List<String> blocks, Optional<String> table) {
    dxf.endSection();
    dxf.section("ENTITIES");
    blocks.forEach(dxf::insert);
    List<String> said = new ArrayList<>();
    said.add("Style Name: " + file.design().name());
    said.add("Sample Size: " + called.get(sizes.base()));
    table.ifPresent(name -> said.add("Grade Rule Table: " + name));
    said.add("Units: " + (english() ? "ENGLISH" : "METRIC"));
    PieceDxf.words(dxf, said, new Point(0, 0), WORDS_MM / unit);
    return dxf.endSection().bytes();
  }
}
