package ellwand.file.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.file.drawn.Affine;
import ellwand.file.drawn.Arc;
import ellwand.file.drawn.DrawnLine;
import ellwand.file.drawn.Label;
import ellwand.file.drawn.LineBuilder;
import ellwand.file.drawn.PieceWords;
import ellwand.file.drawn.SafeName;
import ellwand.file.source.Json;
import ellwand.file.source.Yaml;
import ellwand.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A block that is a piece by ASTM D6673: its lines by layer, its words as {@code key: value}. */
final class PieceBlock {

  /** How far a notch's mark that is a point looks inward, mm: beyond any usual allowance. */
  private static final double MARK_MM = 60;

  private static final double DRILL_MM = 1;

  /** How the x axis of the block lies on the cloth, in the words of a job. */
  static final String GRAIN = "grain";

  private static final String INNER = "inner";

  /** Other entries of a job's piece, in braces. */
  static final String OWN = "ellwand";

  /** The number of a grade rule, written at its point. */
  private static final Pattern RULE = Pattern.compile("\\s*#\\s*(\\d{1,6})\\s*");

  /** A point that moves by a rule of a table, where it lies, mm. */
  record Ruled(int rule, Point at) {}

  private final DxfFile.Block block;
  private final double mm;
  private final Map<String, String> words = new LinkedHashMap<>();
  private final PieceNotes notes = new PieceNotes();
  private final List<Ruled> ruled = new ArrayList<>();
  private final Affine frame;
  private final List<String> materials = new ArrayList<>();
  private final List<String> quantities = new ArrayList<>();

  /**
   * @param mm one unit of the file
   */
  PieceBlock(DxfFile.Block block, double mm) {
    this.block = block;
    this.mm = mm;
    this.frame = Affine.scaled(mm, mm).after(Affine.shifted(-block.base().x(), -block.base().y()));
    for (DxfEntity entity : block.entities()) {
      if (entity.type().equals("TEXT") || entity.type().equals("MTEXT")) {
        String text = entity.text(1).orElse("");
        Point at = frame.apply(entity.place(10));
        double degrees = entity.number(50, 0);
        String[] parts = text.split(":", 2);
        Matcher rule = RULE.matcher(text);
        if (rule.matches()) {
          ruled.add(new Ruled(Integer.parseInt(rule.group(1)), at));
        } else if (parts.length == 2) {
          put(parts[0].strip().toLowerCase(Locale.ROOT), parts[1].strip(), at, degrees);
        }
      }
    }
  }

  private void put(String key, String value, Point at, double degrees) {
    if (PieceNotes.knows(key)) {
      notes.add(key, value, at, degrees);
    } else if (key.equals("material")) {
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
    return Optional.ofNullable(words.get("size")).filter(s -> !s.isEmpty()).map(SafeName::of);
  }

  int line() {
    return block.entities().get(0).line();
  }

  /** What stands in it and is neither known nor drawn, each once. */
  List<String> annotations() {
    List<String> known =
        List.of("piece name", "size", GRAIN, OWN, "category", "annotation", "fold", "style name");
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
    CurvePoints points = new CurvePoints(turnPoints(), on(Layers.CURVE_POINTS));
    List<DrawnLine> lines = new ArrayList<>();
    boolean sewn = isSewn();
    Set<DxfEntity> doubled = doubles(group, lines);
    String outline = sewn ? Layers.SEWING_LINES : Layers.BOUNDARY;
    for (DxfEntity entity : block.entities()) {
      String layer = entity.layer();
      if (Layers.REPEATED.contains(layer)) {
        leftOut.merge("curve(s) on layers 84 to 87, which repeat other lines,", 1, Integer::sum);
      } else if (DxfLines.draws(entity.type()) && !layer.equals(Layers.GRADE_REFERENCE)) {
        Label label = label(layer, sewn, group, entity, lines.size());
        // A cutting line is only measured, so that nothing is gained by curves.
        CurvePoints known = sewn && layer.equals(Layers.BOUNDARY) ? CurvePoints.NONE : points;
        DxfLines.draw(entity, new LineBuilder(lines, frame, label), known);
        named(lines);
        if (layer.equals(outline)) {
          inEdges(lines);
        }
      } else if (entity.type().equals("POINT")) {
        point(entity, doubled, group, lines);
      } else if (!List.of("TEXT", "MTEXT").contains(entity.type())) {
        leftOut.merge(entity.type(), 1, Integer::sum);
      }
    }
    LineBuilder origin = new LineBuilder(lines, Affine.NONE, mark("origin", group, line()));
    origin.move(0, 0);
    origin.line(1, 1);
    origin.end();
    points(group, outline, lines);
    if (words.containsKey(GRAIN)) {
      LineBuilder axis = new LineBuilder(lines, Affine.NONE, mark("axis", group, line()));
      axis.move(0, 0);
      axis.line(10, 0);
      axis.end();
    }
    return lines;
  }

  /** Gives the last line the name that is noted at its start. */
  private void named(List<DrawnLine> lines) {
    int last = lines.size() - 1;
    if (last < 0) {
      return;
    }
    DrawnLine line = lines.get(last);
    notes
        .lineAt(line.path().start())
        .filter(n -> line.label().kinds().contains(INNER))
        .ifPresent(
            name ->
                lines.set(
                    last, new DrawnLine(line.path(), line.closed(), line.label().named(name))));
  }

  private void inEdges(List<DrawnLine> lines) {
    int last = lines.size() - 1;
    if (last >= 0 && lines.get(last).closed() && !notes.of(PieceNotes.EDGE).isEmpty()) {
      lines.set(last, notes.inEdges(lines.get(last)));
    }
  }

  /** Marks the points that have a name or a rule, and those that every size has. */
  private void points(Label group, String outline, List<DrawnLine> lines) {
    List<Point> turns = new ArrayList<>(turnPoints().stream().map(frame::apply).toList());
    if (turns.isEmpty()) {
      lines.stream()
          .filter(
              l ->
                  outline.equals(
                      l.label().kinds().contains("sewing-line")
                          ? Layers.SEWING_LINES
                          : Layers.BOUNDARY))
          .flatMap(l -> l.path().segments().stream())
          .forEach(s -> turns.add(s.start()));
    }
    turns.forEach(
        at ->
            point(
                new Label(
                    Optional.empty(),
                    List.of("turn-point"),
                    Optional.empty(),
                    Optional.of(group),
                    line()),
                at,
                lines));
    for (PieceNotes.Note note : notes.of(PieceNotes.POINT)) {
      named(note.value(), note.at(), group, lines);
    }
    for (Map.Entry<String, Ruled> entry : ruled().entrySet()) {
      named(entry.getKey(), entry.getValue().at, group, lines);
    }
  }

  private void named(String name, Point at, Label group, List<DrawnLine> lines) {
    point(
        new Label(
            Optional.of(name), List.of("point"), Optional.empty(), Optional.of(group), line()),
        at,
        lines);
  }

  private static void point(Label label, Point at, List<DrawnLine> lines) {
    LineBuilder pen = new LineBuilder(lines, Affine.NONE, label);
    pen.move(at.x(), at.y());
    pen.line(at.x() + 1, at.y());
    pen.end();
  }

  /** Points with a grade rule, by their names. */
  Map<String, Ruled> ruled() {
    Map<String, Ruled> byName = new LinkedHashMap<>();
    for (Ruled point : ruled) {
      String name =
          notes.of(PieceNotes.POINT).stream()
              .filter(n -> n.near(point.at))
              .map(PieceNotes.Note::value)
              .findFirst()
              .orElse("point " + (byName.size() + 1));
      byName.putIfAbsent(name, point);
    }
    return byName;
  }

  /** Where lines and curves end: at turn points, and where something is noted of the outline. */
  private List<Point> turnPoints() {
    List<Point> turns = new ArrayList<>(on(Layers.TURN_POINTS));
    for (DxfEntity entity : block.entities()) {
      String text = entity.type().equals("TEXT") ? entity.text(1).orElse("") : "";
      if (RULE.matcher(text).matches() || PieceNotes.ofOutline(text)) {
        turns.add(entity.place(10));
      }
    }
    return turns;
  }

  private List<Point> on(String layer) {
    return block.entities().stream()
        .filter(e -> e.type().equals("POINT") && e.layer().equals(layer))
        .map(e -> e.place(10))
        .toList();
  }

  private void point(DxfEntity entity, Set<DxfEntity> doubled, Label group, List<DrawnLine> lines) {
    Point at = frame.apply(entity.place(10));
    if (Layers.ALL_NOTCHES.contains(entity.layer())) {
      if (!doubled.contains(entity)) {
        // A file that says which notches are double says so of all.
        String strokes = notes.of(PieceNotes.EDGE).isEmpty() ? "" : "single";
        notch(at, entity.number(50, 0), entity, strokes, group, lines);
      }
    } else if (entity.layer().equals(Layers.DRILL_HOLES)) {
      Label label =
          new Label(
              Optional.of("drill hole " + (lines.size() + 1)),
              List.of(INNER),
              Optional.empty(),
              Optional.of(group),
              entity.line());
      Arc.ellipse(new LineBuilder(lines, Affine.NONE, label), at.x(), at.y(), DRILL_MM, DRILL_MM);
    }
  }

  /** A mark for every double notch, in place of its two points. */
  private Set<DxfEntity> doubles(Label group, List<DrawnLine> lines) {
    Set<DxfEntity> doubled = Collections.newSetFromMap(new IdentityHashMap<>());
    List<DxfEntity> points = new ArrayList<>();
    block.entities().stream()
        .filter(e -> e.type().equals("POINT") && Layers.ALL_NOTCHES.contains(e.layer()))
        .forEach(points::add);
    for (PieceNotes.Note note : notes.of(PieceNotes.NOTCH)) {
      points.sort(Comparator.comparingDouble(p -> frame.apply(p.place(10)).distance(note.at())));
      if (points.size() >= 2 && note.value().equals(PieceNotes.DOUBLE)) {
        notch(note.at(), note.degrees(), points.get(0), PieceNotes.DOUBLE, group, lines);
        doubled.add(points.remove(0));
        doubled.add(points.remove(0));
      }
    }
    return doubled;
  }

  /**
   * The mark of a notch.
   *
   * @param point that says its depth
   * @param strokes single or double, or nothing where that is to be found out
   */
  private void notch(
      Point at,
      double degrees,
      DxfEntity point,
      String strokes,
      Label group,
      List<DrawnLine> lines) {
    double depth = point.number(39, 0) > 0 ? point.number(39, 0) : point.number(30, 0);
    List<String> kinds = new ArrayList<>(List.of("notch", "aimed"));
    if (depth > 0) {
      kinds.add("depth-" + depth * mm);
    }
    if (!strokes.isEmpty()) {
      kinds.add(strokes);
    }
    Label label =
        new Label(Optional.empty(), kinds, Optional.empty(), Optional.of(group), point.line());
    double inward = Math.toRadians(degrees);
    LineBuilder pen = new LineBuilder(lines, Affine.NONE, label);
    pen.move(at.x(), at.y());
    pen.line(at.x() + MARK_MM * Math.cos(inward), at.y() + MARK_MM * Math.sin(inward));
    pen.end();
  }

  private static Label mark(String kind, Label group, int line) {
    return new Label(Optional.empty(), List.of(kind), Optional.empty(), Optional.of(group), line);
  }

  private static Label label(
      String layer, boolean sewn, Label group, DxfEntity entity, int number) {
    String kind = layer.equals(Layers.BOUNDARY) ? sewn ? "cutting-line" : "" : INNER;
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
    if (words.containsKey(GRAIN)) {
      entries.put("grain", words.get(GRAIN));
    }
    Optional.ofNullable(words.get(OWN)).flatMap(PieceWords::entries).ifPresent(entries::setAll);
    for (PieceNotes.Note edge : notes.of(PieceNotes.EDGE)) {
      edge.entries().ifPresent(e -> entries.withObject("/edges").set(edge.value(), e));
    }
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of(new String(Yaml.bytes(entries), StandardCharsets.UTF_8));
  }
}
