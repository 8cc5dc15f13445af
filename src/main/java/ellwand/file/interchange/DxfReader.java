package ellwand.file.interchange;

import ellwand.file.drawn.Affine;
import ellwand.file.drawn.Drawing;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.DrawnText;
import ellwand.file.drawn.Label;
import ellwand.file.drawn.LineBuilder;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Point;
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
  private final Map<Label, Map<String, Label>> layers = new LinkedHashMap<>();
  private int drawn;

  private DxfReader(String file, DxfFile dxf, Optional<Unit> unit) {
    this.file = file;
    this.dxf = dxf;
    this.mm = unit.map(Unit::mm).or(this::stated).orElseGet(this::assumed);
  }

  /** Whether a file is DXF, by its beginning. */
  public static boolean looksLike(byte[] bytes) {
    return DxfPairs.looksLike(bytes);
  }

  /**
   * Reads a file.
   *
   * @param unit that its numbers are in; if absent, what the file says, or else mm
   * @param layers that are asked for; without one of the sizes in it, its sample size is read
   * @throws InputException if it cannot be read safely and wholly
   */
  public static Drawing read(String file, byte[] bytes, Optional<Unit> unit, List<String> layers) {
    return new DxfReader(file, DxfFile.read(file, bytes), unit).drawing(layers);
  }

  private Drawing drawing(List<String> layers) {
    Label whole = new Label(Optional.empty(), List.of(), Optional.empty(), Optional.empty(), 0);
    List<PieceBlock> pieces =
        dxf.blocks().values().stream()
            .map(block -> new PieceBlock(block, mm))
            .filter(PieceBlock::isPiece)
            .toList();
    if (pieces.isEmpty()) {
      draw(dxf.entities(), Affine.scaled(mm, mm), whole);
    } else {
      pieces(pieces, layers, whole);
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
        said);
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
        "The file does not say its unit: its numbers are taken for mm. Measure a piece, and use"
            + " --drawing-unit in, or cm, if it came out wrong.");
    return 1;
  }

  private void pieces(List<PieceBlock> pieces, List<String> layers, Label whole) {
    Set<String> sizes = new LinkedHashSet<>();
    pieces.forEach(p -> p.size().ifPresent(sizes::add));
    Optional<String> only = Optional.empty();
    if (sizes.size() > 1 && layers.stream().noneMatch(sizes::contains)) {
      only = style("sample size").filter(sizes::contains).or(() -> sizes.stream().findFirst());
      said.add(
          "The file has the sizes %s; %s is read. Use --layers for another."
              .formatted(String.join(", ", sizes), only.orElseThrow()));
    }
    Map<String, Label> bySize = new LinkedHashMap<>();
    double right = 0;
    boolean cutting = false;
    for (PieceBlock piece : pieces) {
      if (only.isPresent() && !piece.size().equals(only)) {
        continue;
      }
      Label size =
          bySize.computeIfAbsent(piece.size().orElse(""), s -> named(piece.size(), whole, 0));
      Label group =
          new Label(
              Optional.of(piece.name()),
              List.of(Label.PIECE),
              piece.entries(),
              Optional.of(size),
              piece.line());
      right += lay(piece, group, right);
      cutting |= piece.isSewn();
      for (String annotation : piece.annotations()) {
        said.add("%s: '%s' is left out.".formatted(piece.name(), annotation));
      }
    }
    said.add(
        cutting
            ? "Layer 14 has sewing lines: layer 1 is taken for the cutting line."
            : "Layer 14 has no sewing line: layer 1 is taken as the options say, or for the sewing"
                + " line.");
  }

  /** Draws a piece to the right of all before it, and says how much room it took. */
  private double lay(PieceBlock piece, Label group, double right) {
    List<DrawnLine> own = at(piece.line(), piece.name(), () -> piece.lines(group, leftOut));
    List<Point> all = new ArrayList<>();
    own.forEach(l -> all.addAll(l.path().flattened(1)));
    Box box = Box.around(all);
    Motion aside = new Motion(false, 0, Math.ceil(right - box.minX()), 0);
    own.forEach(line -> lines.add(line.moved(aside)));
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
