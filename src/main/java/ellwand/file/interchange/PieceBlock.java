package ellwand.file.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.drawn.Affine;
import ellwand.file.drawn.Arc;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.Label;
import ellwand.file.drawn.LineBuilder;
import ellwand.file.drawn.SafeName;
import ellwand.file.source.Json;
import ellwand.file.source.Yaml;
import ellwand.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A block that is a piece by ASTM D6673: its lines by layer, its words as {@code key: value}. */
final class PieceBlock {

  /** How far a notch's mark that is a point looks inward, mm: beyond any usual allowance. */
  private static final double MARK_MM = 60;

  private static final double DRILL_MM = 1;

  private final DxfFile.Block block;
  private final double mm;
  private final Map<String, String> words = new LinkedHashMap<>();
  private final List<String> materials = new ArrayList<>();
  private final List<String> quantities = new ArrayList<>();

  /**
   * @param mm one unit of the file
   */
  PieceBlock(DxfFile.Block block, double mm) {
    this.block = block;
    this.mm = mm;
    for (DxfEntity entity : block.entities()) {
      if (entity.type().equals("TEXT") || entity.type().equals("MTEXT")) {
        String[] parts = entity.text(1).orElse("").split(":", 2);
        if (parts.length == 2) {
          put(parts[0].strip().toLowerCase(Locale.ROOT), parts[1].strip());
        }
      }
    }
  }

  private void put(String key, String value) {
    if (key.equals("material")) {
      materials.add(value);
    } else if (key.equals("quantity")) {
      quantities.add(value);
    } else {
      words.putIfAbsent(key, value);
    }
  }

  /** Whether it is a piece. */
  boolean isPiece() {
    return words.containsKey("piece name") && has(Layers.BOUNDARY);
  }

  private boolean has(String layer) {
    return block.entities().stream()
        .anyMatch(e -> e.layer().equals(layer) && DxfLines.draws(e.type()));
  }

  /** Whether its sewing line is drawn beside its boundary. */
  boolean isSewn() {
    return has(Layers.SEWING_LINES);
  }

  String name() {
    return words.get("piece name");
  }

  Optional<String> size() {
    return Optional.ofNullable(words.get("size")).filter(s -> !s.isEmpty());
  }

  int line() {
    return block.entities().get(0).line();
  }

  /** What stands in it and is neither known nor drawn, each once. */
  List<String> annotations() {
    List<String> known =
        List.of("piece name", "size", "grain", "category", "annotation", "fold", "style name");
    List<String> left = new ArrayList<>();
    words.forEach(
        (key, value) -> {
          if (!known.contains(key) || key.equals("annotation") && !value.isEmpty()) {
            left.add(key + ": " + value);
          }
        });
    return left;
  }

  /**
   * Its lines, in mm.
   *
   * @param group that they get as theirs
   * @param leftOut takes what is not drawn, by kind
   */
  List<DrawnLine> lines(Label group, Map<String, Integer> leftOut) {
    CurvePoints points = new CurvePoints(on(Layers.TURN_POINTS), on(Layers.CURVE_POINTS));
    Affine frame =
        Affine.scaled(mm, mm).after(Affine.shifted(-block.base().x(), -block.base().y()));
    List<DrawnLine> lines = new ArrayList<>();
    boolean sewn = isSewn();
    for (DxfEntity entity : block.entities()) {
      String layer = entity.layer();
      if (Layers.REPEATED.contains(layer)) {
        leftOut.merge("curve(s) on layers 84 to 87, which repeat other lines,", 1, Integer::sum);
      } else if (DxfLines.draws(entity.type()) && !layer.equals(Layers.GRADE_REFERENCE)) {
        Label label = label(layer, sewn, group, entity, lines.size());
        // A cutting line is only measured, so that nothing is gained by curves.
        CurvePoints known = sewn && layer.equals(Layers.BOUNDARY) ? CurvePoints.NONE : points;
        DxfLines.draw(entity, new LineBuilder(lines, frame, label), known);
      } else if (entity.type().equals("POINT")) {
        point(entity, frame, group, lines);
      } else if (!List.of("TEXT", "MTEXT").contains(entity.type())) {
        leftOut.merge(entity.type(), 1, Integer::sum);
      }
    }
    LineBuilder origin = new LineBuilder(lines, Affine.NONE, mark("origin", group, line()));
    origin.move(0, 0);
    origin.line(1, 1);
    origin.end();
    if (words.containsKey("grain")) {
      LineBuilder axis = new LineBuilder(lines, Affine.NONE, mark("axis", group, line()));
      axis.move(0, 0);
      axis.line(10, 0);
      axis.end();
    }
    return lines;
  }

  private List<Point> on(String layer) {
    return block.entities().stream()
        .filter(e -> e.type().equals("POINT") && e.layer().equals(layer))
        .map(e -> e.place(10))
        .toList();
  }

  private void point(DxfEntity entity, Affine frame, Label group, List<DrawnLine> lines) {
    Point at = frame.apply(entity.place(10));
    if (Layers.ALL_NOTCHES.contains(entity.layer())) {
      double depth = entity.number(39, 0) > 0 ? entity.number(39, 0) : entity.number(30, 0);
      List<String> kinds = new ArrayList<>(List.of("notch", "aimed"));
      if (depth > 0) {
        kinds.add("depth-" + depth * mm);
      }
      Label label =
          new Label(Optional.empty(), kinds, Optional.empty(), Optional.of(group), entity.line());
      double inward = Math.toRadians(entity.number(50, 0));
      LineBuilder pen = new LineBuilder(lines, Affine.NONE, label);
      pen.move(at.x(), at.y());
      pen.line(at.x() + MARK_MM * Math.cos(inward), at.y() + MARK_MM * Math.sin(inward));
      pen.end();
    } else if (entity.layer().equals(Layers.DRILL_HOLES)) {
      Label label =
          new Label(
              Optional.of("drill hole " + (lines.size() + 1)),
              List.of("inner"),
              Optional.empty(),
              Optional.of(group),
              entity.line());
      Arc.ellipse(new LineBuilder(lines, Affine.NONE, label), at.x(), at.y(), DRILL_MM, DRILL_MM);
    }
  }

  private static Label mark(String kind, Label group, int line) {
    return new Label(Optional.empty(), List.of(kind), Optional.empty(), Optional.of(group), line);
  }

  private static Label label(
      String layer, boolean sewn, Label group, DxfEntity entity, int number) {
    String kind = layer.equals(Layers.BOUNDARY) ? sewn ? "cutting-line" : "" : "inner";
    Optional<String> name =
        layer.equals(Layers.CUT_OUTS) ? Optional.of("cut-out " + (number + 1)) : Optional.empty();
    return new Label(
        name,
        List.of(Layers.KINDS.getOrDefault(layer, kind)).stream().filter(k -> !k.isEmpty()).toList(),
        Optional.empty(),
        Optional.of(group),
        entity.line());
  }

  /** Its words as entries of a job's piece. */
  Optional<String> entries() {
    ObjectNode entries = Json.object();
    boolean onFold = has(Layers.MIRROR_LINE);
    for (int i = 0; i < Math.max(materials.size(), quantities.size()); i++) {
      String cloth =
          i < materials.size() && !materials.get(i).isEmpty()
              ? SafeName.of(materials.get(i))
              : i == 0 ? "main" : "cloth " + (i + 1);
      String cut = Quantity.cut(i < quantities.size() ? quantities.get(i) : "1", onFold);
      if (cut.matches("\\d+")) {
        entries.withObject("/cut").put(cloth, Integer.parseInt(cut));
      } else {
        entries.withObject("/cut").put(cloth, cut);
      }
    }
    if (words.containsKey("grain")) {
      entries.put("grain", words.get("grain"));
    }
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of(new String(Yaml.bytes(entries), StandardCharsets.UTF_8));
  }
}
