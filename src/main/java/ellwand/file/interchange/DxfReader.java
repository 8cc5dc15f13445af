package ellwand.file.interchange;

import ellwand.file.drawn.Affine;
import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.DrawnSizes;
import ellwand.file.drawn.DrawnText;
import ellwand.file.drawn.Label;
import ellwand.file.drawn.LineBuilder;
import ellwand.file.drawn.SafeName;
import ellwand.file.source.Source;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
import ellwand.pattern.GradeRule;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads DXF: pattern pieces by the layers of ASTM D6673, one block each, or else any drawing, whose
 * layers and blocks name what is in them.
 */
public final class DxfReader {

  private static final String HIDDEN =
      "entities that are hidden, on a layer that is off or frozen, or on the sheet for printing,";

  private static final int MOST_DRAWN = 200_000;
  private static final int DEEPEST = 50;

  /** Between pieces, which a file may put on one another, mm. */
  private static final double APART_MM = 100;

  private final String file;
  private final DxfFile dxf;
  private final double mm;
  private final Set<String> inserting = new HashSet<>();
  private final List<DrawnLine> lines = new ArrayList<>();
  private final List<DrawnText> texts = new ArrayList<>();
  private final Map<String, Integer> leftOut = new LinkedHashMap<>();
  private final List<String> said = new ArrayList<>();
  private final Optional<RuleTable> table;
  private final Map<Label, Map<String, Label>> layers = new LinkedHashMap<>();
  private int drawn;

  private DxfReader(String file, DxfFile dxf, Optional<Unit> unit, Optional<Source> table) {
    this.file = file;
    this.dxf = dxf;
    this.table = table.map(t -> RuleTable.read(t.name(), t.bytes(), said));
    this.mm = unit.map(Unit::mm).or(this::stated).orElseGet(this::assumed);
  }

  /** Whether a file is DXF, by its beginning. */
  public static boolean looksLike(byte[] bytes) {
    return DxfPairs.looksLike(bytes);
  }

  /** Whether a file is a table of grade rules, by its beginning. */
  public static boolean looksLikeRules(byte[] bytes) {
    return RuleTable.looksLike(bytes);
  }

  /**
   * Reads a file.
   *
   * @param unit that its numbers are in; if absent, what the file says, or else mm
   * @param sizes that are asked for; none for all
   * @param rules the table of its grade rules, if there is one
   * @throws InputException if it cannot be read safely and wholly
   */
  public static Drawing read(
      String file, byte[] bytes, Optional<Unit> unit, List<String> sizes, Optional<Source> rules) {
    return new DxfReader(file, DxfFile.read(file, bytes), unit, rules)
        .drawing(sizes.stream().map(SafeName::of).toList());
  }

  private Drawing drawing(List<String> wanted) {
    Label whole = new Label(Optional.empty(), List.of(), Optional.empty(), Optional.empty(), 0);
    List<PieceBlock> pieces =
        dxf.blocks().values().stream()
            .map(block -> new PieceBlock(block, mm))
            .filter(PieceBlock::isPiece)
            .toList();
    Optional<DrawnSizes> sizes = Optional.empty();
    if (pieces.isEmpty()) {
      if (!wanted.isEmpty()) {
        throw refused(
            0,
            "it is a drawing, which says no sizes",
            "Read one size by the name of its layer (--layers), and leave sizes out (--sizes)");
      }
      draw(dxf.entities(), Affine.scaled(mm, mm), whole);
    } else {
      sizes = pieces(pieces, wanted, whole);
    }
    if (table.isPresent() && pieces.stream().allMatch(p -> p.ruled().isEmpty())) {
      said.add("None of its points has the number of a grade rule: the table is not used.");
    }
    leftOut.forEach((what, count) -> said.add(count + " " + what + " left out."));
    if (lines.stream().mapToInt(l -> l.path().segments().size()).sum() > Drawing.MOST_POINTS) {
      throw refused(0, "it has more than 200,000 points", "Leave out what is no pattern");
    }
    return new Drawing(
        file,
        style("style name"),
        mm == Unit.INCH.mm() ? Unit.INCH : Unit.CM,
        0,
        lines,
        texts,
        Optional.empty(),
        said,
        sizes);
  }

  private Optional<String> style(String key) {
    return dxf.entities().stream()
        .filter(e -> e.type().equals("TEXT"))
        .map(e -> e.text(1).orElse("").split(":", 2))
        .filter(parts -> parts.length == 2)
        .filter(parts -> parts[0].strip().toLowerCase(Locale.ROOT).equals(key))
        .map(parts -> parts[1].strip())
        .filter(value -> !value.isEmpty())
        .findFirst();
  }

  /** What one unit of the file is in mm, where it says: by the pattern's words, or its header. */
  private Optional<Double> stated() {
    Optional<String> words = style("units").map(w -> w.toUpperCase(Locale.ROOT));
    if (words.isPresent()) {
      return Optional.of(words.get().startsWith("ENGLISH") ? Unit.INCH.mm() : 1.0);
    }
    return switch (dxf.header().getOrDefault("$INSUNITS", "0")) {
      case "1" -> Optional.of(Unit.INCH.mm());
      case "2" -> Optional.of(12 * Unit.INCH.mm());
      case "4" -> Optional.of(1.0);
      case "5" -> Optional.of(10.0);
      case "6" -> Optional.of(1000.0);
      default -> Optional.empty();
    };
  }

  private double assumed() {
    said.add(
        "The file does not say its unit: its numbers are taken for mm. Measure a piece, and say it"
            + " (--drawing-unit in, or cm) if it came out wrong.");
    return 1;
  }

  /** Draws the pieces of the base size, and those of every other beside. */
  private Optional<DrawnSizes> pieces(List<PieceBlock> pieces, List<String> wanted, Label whole) {
    Set<String> there = new LinkedHashSet<>();
    pieces.forEach(p -> p.size().ifPresent(there::add));
    boolean ruled = table.isPresent() && pieces.stream().anyMatch(p -> !p.ruled().isEmpty());
    if (ruled) {
      there.addAll(table.get().sizes());
    }
    List<String> sizes = wanted.isEmpty() ? List.copyOf(there) : wanted;
    for (String size : wanted) {
      if (!there.contains(size)) {
        throw refused(
            0,
            "it has no size " + size,
            there.isEmpty() ? "Leave sizes out (--sizes)" : "Use " + String.join(", ", there));
      }
    }
    Optional<String> base =
        style("sample size")
            .map(SafeName::of)
            .filter(s -> ruled || sizes.contains(s))
            .or(() -> sizes.stream().findFirst());
    lines.addAll(laid(pieces, base, true, whole));
    pieces.stream()
        .filter(p -> drawnIn(p, base))
        .forEach(
            p ->
                p.annotations()
                    .forEach(a -> said.add("%s: '%s' is left out.".formatted(p.name(), a))));
    said.add(
        pieces.stream().anyMatch(PieceBlock::isSewn)
            ? "Layer 14 has sewing lines: layer 1 is taken for the cutting line."
            : "Layer 14 has no sewing line: layer 1 is taken as the options say, or for the sewing"
                + " line.");
    if (ruled) {
      return Optional.of(ruled(pieces, base, sizes, table.get()));
    }
    if (pieces.stream().anyMatch(p -> !p.ruled().isEmpty()) && there.size() < 2) {
      said.add(
          "Its points have grade rules%s: name their table beside the drawing, and all sizes are read."
              .formatted(style("grade rule table").map(n -> " of " + n).orElse("")));
    }
    if (sizes.size() < 2) {
      return base.map(size -> new DrawnSizes(sizes, size, Map.of(), Map.of()));
    }
    Map<String, List<DrawnLine>> others = new LinkedHashMap<>();
    for (String size : sizes) {
      if (!base.get().equals(size)) {
        others.put(size, laid(pieces, Optional.of(size), false, whole));
      }
    }
    said.add(
        "The file has the sizes %s, drawn in %s; one or some can be read alone (--sizes)."
            .formatted(String.join(", ", sizes), base.get()));
    return Optional.of(new DrawnSizes(sizes, base.get(), others, Map.of()));
  }

  /** Pieces drawn in one size, whose points move by the rules of a table. */
  private DrawnSizes ruled(
      List<PieceBlock> pieces, Optional<String> base, List<String> wanted, RuleTable rows) {
    if (base.isPresent() && !base.get().equals(rows.base())) {
      throw refused(
          0,
          "its pieces are in size %s, and the grade rules count from size %s"
              .formatted(base.get(), rows.base()),
          "Give it the table that it was written with");
    }
    List<String> sizes =
        rows.sizes().stream().filter(s -> wanted.contains(s) || s.equals(rows.base())).toList();
    Map<String, Map<String, GradeRule>> rules = new LinkedHashMap<>();
    Set<String> names = new HashSet<>();
    for (PieceBlock piece : pieces) {
      Map<String, GradeRule> ofPiece = new LinkedHashMap<>();
      piece.ruled().forEach((point, at) -> ofPiece.put(point, rule(rows, piece, at.rule())));
      rules.put(SafeName.free(piece.name(), names), ofPiece);
    }
    return new DrawnSizes(sizes, rows.base(), Map.of(), rules);
  }

  private GradeRule rule(RuleTable rows, PieceBlock piece, int number) {
    Map<String, Point> shifts =
        rows.rule(number)
            .orElseThrow(
                () ->
                    refused(
                        piece.line(),
                        "%s: a point moves by rule %d, which the table of grade rules lacks"
                            .formatted(piece.name(), number),
                        "Give it the table that it was written with"));
    return new GradeRule.EachSize(shifts);
  }

  /** What has no size is there with the base. */
  private static boolean drawnIn(PieceBlock piece, Optional<String> size) {
    return piece.size().isEmpty() || piece.size().equals(size);
  }

  /** The lines of all pieces of a size, side by side. */
  private List<DrawnLine> laid(
      List<PieceBlock> pieces, Optional<String> size, boolean base, Label whole) {
    List<DrawnLine> all = new ArrayList<>();
    Label inSize = named(size, whole, 0);
    Set<String> names = new HashSet<>();
    double right = 0;
    for (PieceBlock piece : pieces) {
      if (base ? drawnIn(piece, size) : piece.size().equals(size)) {
        Label group =
            new Label(
                Optional.of(SafeName.free(piece.name(), names)),
                List.of(Label.PIECE),
                piece.entries(),
                Optional.of(inSize),
                piece.line());
        right += lay(piece, group, right, all);
      }
    }
    return all;
  }

  /** Draws a piece to the right of all before it, and says how much room it took. */
  private double lay(PieceBlock piece, Label group, double right, List<DrawnLine> all) {
    List<DrawnLine> own = at(piece.line(), piece.name(), () -> piece.lines(group, leftOut));
    List<Point> points = new ArrayList<>();
    own.forEach(l -> points.addAll(l.path().flattened(1)));
    Box box = Box.around(points);
    Motion aside = new Motion(false, 0, Math.ceil(right - box.minX()), 0);
    own.forEach(line -> all.add(line.moved(aside)));
    return Math.ceil(box.length()) + APART_MM;
  }

  private void draw(List<DxfEntity> entities, Affine frame, Label inside) {
    for (DxfEntity entity : entities) {
      if (++drawn > MOST_DRAWN) {
        throw refused(
            entity.line(),
            "it draws more than 200,000 entities, counting blocks each time they are put",
            "Leave out what is no pattern");
      }
      if (!dxf.shows(entity)) {
        leftOut.merge(HIDDEN, 1, Integer::sum);
        continue;
      }
      // Some entities are drawn from below: their x then runs the other way.
      Affine own = entity.number(230, 1) < 0 ? frame.after(Affine.scaled(-1, 1)) : frame;
      Label label = label(entity, inside);
      if (DxfLines.draws(entity.type())) {
        at(
            entity.line(),
            entity.type(),
            () -> {
              DxfLines.draw(entity, new LineBuilder(lines, own, label), CurvePoints.NONE);
              return null;
            });
      } else if (entity.type().equals("INSERT")) {
        insert(entity, own, label);
      } else if (entity.type().equals("TEXT") || entity.type().equals("MTEXT")) {
        texts.add(
            new DrawnText(
                entity.text(1).orElse("").replaceAll("\\\\P|\\s+", " ").strip(),
                own.apply(entity.place(10)),
                label));
      } else {
        leftOut.merge(entity.type(), 1, Integer::sum);
      }
    }
  }

  private Label label(DxfEntity entity, Label inside) {
    Label group =
        entity.layer().equals("0")
            ? inside
            : layers
                .computeIfAbsent(inside, i -> new LinkedHashMap<>())
                .computeIfAbsent(
                    entity.layer(), name -> named(Optional.of(name), inside, entity.line()));
    return named(Optional.empty(), group, entity.line());
  }

  private static Label named(Optional<String> name, Label inside, int line) {
    return new Label(name, List.of(), Optional.empty(), Optional.of(inside), line);
  }

  private void insert(DxfEntity entity, Affine frame, Label label) {
    String name = entity.text(2).orElse("");
    DxfFile.Block block = dxf.blocks().get(name);
    if (block == null) {
      leftOut.merge("INSERT of what is not there", 1, Integer::sum);
      return;
    }
    if (!inserting.add(name) || inserting.size() > DEEPEST) {
      throw refused(
          entity.line(),
          "block " + name + " ends up holding itself, or blocks lie more than 50 deep",
          "Put the lines in place of the block");
    }
    Point at = entity.place(10);
    Affine placed =
        frame
            .after(Affine.shifted(at.x(), at.y()))
            .after(Affine.turned(entity.number(50, 0)))
            .after(Affine.scaled(entity.number(41, 1), entity.number(42, 1)))
            .after(Affine.shifted(-block.base().x(), -block.base().y()));
    Label group = named(Optional.of(name).filter(n -> !n.startsWith("*")), label, entity.line());
    draw(block.entities(), placed, group);
    inserting.remove(name);
  }

  private <T> T at(int line, String what, java.util.function.Supplier<T> maker) {
    try {
      return maker.get();
    } catch (InputException e) {
      throw new InputException(
          e.problems().stream()
              .map(p -> Problem.of(what + ": " + p.what(), p.remedy()).at(file, line))
              .toList());
    }
  }

  private InputException refused(int line, String what, String remedy) {
    return new InputException(Problem.of(what, remedy).at(file, line));
  }
}
