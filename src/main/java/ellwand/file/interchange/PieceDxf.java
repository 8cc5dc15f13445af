package ellwand.file.interchange;

import static ellwand.file.dxf.DxfText.Justified.LEFT;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import ellwand.cutting.Cutter;
import ellwand.file.drawn.SafeName;
import ellwand.file.dxf.DxfText;
import ellwand.file.dxf.PlainAscii;
import ellwand.file.job.StyleWriter;
import ellwand.file.source.Json;
import ellwand.file.source.Yaml;
import ellwand.geometry.Box;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Allowance;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Writes a piece in one size as a block by the layers of ASTM D6673. */
final class PieceDxf {

  /** How far a curve may stray from the stretches that it is written as, mm. */
  private static final double FLATTENING_MM = 0.001;

  /** Half of what lies between the two points of a double notch, mm. */
  private static final double HALF_DOUBLE_MM = 3;

  private static final double SMOOTH_DEGREES = 0.1;
  private static final double CORNER_DEGREES = 10;
  private static final double WORDS_MM = 6;
  private static final double NOTES_MM = 2;

  /** Of an inner line that stands for a hole; see the reader. */
  private static final String DRILL_HOLE = "drill hole";

  private final DxfText dxf;
  private final double unit;
  private final Piece piece;
  private final Map<String, String> edges = new LinkedHashMap<>();

  /**
   * @param unit of the file, mm
   */
  PieceDxf(DxfText dxf, double unit, Piece piece) {
    this.dxf = dxf;
    this.unit = unit;
    this.piece = piece;
    Set<String> taken = new HashSet<>();
    piece.edges().forEach(e -> edges.put(e.name(), SafeName.free(plain(e.name()), taken)));
  }

  /** A name in the letters that DXF has. */
  static String plain(String name) {
    return SafeName.of(PlainAscii.of(name));
  }

  /**
   * Writes it.
   *
   * @param block its name
   * @param points its named points
   * @param rules numbers of grade rules, by the names of points
   * @param own entries of a job's piece that go with it
   */
  void write(
      String block,
      String size,
      Map<String, Point> points,
      Map<String, Integer> rules,
      ObjectNode own) {
    dxf.block(block);
    boolean sewn = piece.edges().stream().anyMatch(e -> e.allowanceMm() > 0);
    if (sewn) {
      ring(Layers.BOUNDARY, Cutter.cut(piece, 1, 1).cutting().points());
      sewing(Layers.SEWING_LINES);
    } else {
      sewing(Layers.BOUNDARY);
    }
    piece.notches().forEach(this::notch);
    piece.fold().ifPresent(fold -> mirrorLine(piece.edge(fold).line()));
    Box box =
        Box.around(piece.edges().stream().flatMap(e -> e.line().flattened(1).stream()).toList());
    grainLine(piece.grain(), box);
    piece.innerLines().forEach(this::inner);
    Set<String> taken = new HashSet<>();
    points.forEach(
        (name, at) -> {
          note(PieceNotes.POINT + ": " + SafeName.free(plain(name), taken), at);
          if (rules.containsKey(name)) {
            dxf.text(Layers.TURN_POINTS, "# " + rules.get(name), in(at), NOTES_MM / unit, 0, LEFT);
          }
        });
    ObjectNode entry = StyleWriter.entry(PieceDraft.of(piece, Map.of()), Unit.MM);
    edgeNotes(sewn);
    words(dxf, said(size, entry, own), in(box.centre()), WORDS_MM / unit);
    dxf.endBlock();
  }

  /** Lines of words under one another. */
  static void words(DxfText dxf, List<String> lines, Point at, double height) {
    for (int i = 0; i < lines.size(); i++) {
      Point place = at.plus(new Point(0, -1.5 * height * i));
      dxf.text(Layers.BOUNDARY, PlainAscii.of(lines.get(i)), place, height, 0, LEFT);
    }
  }

  private List<String> said(String size, ObjectNode entry, ObjectNode own) {
    List<String> said = new ArrayList<>();
    said.add("Piece Name: " + piece.name());
    said.add("Size: " + size);
    for (Cut cut : piece.cuts()) {
      said.add("Material: " + cut.cloth());
      said.add("Quantity: " + Quantity.of(cut));
    }
    ObjectNode further = own.deepCopy();
    for (String key : List.of("grain-tolerance", "direction")) {
      if (entry.has(key)) {
        further.set(key, entry.get(key));
      }
    }
    if (entry.path("grain").isObject()) {
      ObjectNode byCloth = further.putObject("grain");
      piece
          .cuts()
          .forEach(c -> byCloth.put(plain(c.cloth()), c.grain().orElse(piece.grain()).word()));
    }
    if (entry.has("grain")) {
      said.add("Grain: " + piece.grain().word());
    }
    if (!further.isEmpty()) {
      said.add("Ellwand: " + Yaml.line(further));
    }
    return said;
  }

  private void note(String words, Point at) {
    note(words, at, 0);
  }

  private void note(String words, Point at, double degrees) {
    dxf.text(Layers.ANNOTATION, words, in(at), NOTES_MM / unit, degrees, LEFT);
  }

  /** Every edge where it starts, with what its lines do not say. */
  private void edgeNotes(boolean sewn) {
    for (Edge edge : piece.edges()) {
      ObjectNode said = Json.object();
      if (sewn && !(edge.allowanceMm() == 0 && isFold(edge))) {
        said.set("allowance", allowance(edge.allowance()));
      }
      if (edge.turnedBack()) {
        said.put("turned-back", true);
      }
      note(
          PieceNotes.EDGE
              + ": "
              + edges.get(edge.name())
              + (said.isEmpty() ? "" : " " + Yaml.line(said)),
          edge.line().start());
    }
  }

  private boolean isFold(Edge edge) {
    return piece.fold().filter(edge.name()::equals).isPresent();
  }

  private JsonNode allowance(Allowance allowance) {
    if (allowance.mmByCloth().isEmpty()) {
      return Json.object().textNode(mm(allowance.usualMm().orElse(0)));
    }
    ObjectNode byCloth = Json.object();
    for (Cut cut : piece.cuts()) {
      allowance.in(cut.cloth()).ifPresent(mm -> byCloth.put(plain(cut.cloth()), mm(mm)));
    }
    return byCloth;
  }

  private static String mm(double mm) {
    return BigDecimal.valueOf(mm)
            .setScale(6, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString()
        + " mm";
  }

  private Point in(Point mm) {
    return mm.times(1 / unit);
  }

  /** A closed line of straight stretches; where it turns little it is taken for a curve. */
  private void ring(String layer, List<Point> points) {
    dxf.polyline(layer, points.stream().map(this::in).toList(), true);
    for (int i = 0; i < points.size(); i++) {
      Point before = points.get((i + points.size() - 1) % points.size());
      Point after = points.get((i + 1) % points.size());
      Point at = points.get(i);
      double turn = degrees(at.minus(before), after.minus(at));
      point(turn > CORNER_DEGREES ? Layers.TURN_POINTS : Layers.CURVE_POINTS, at);
    }
  }

  private static double degrees(Point in, Point out) {
    return Math.abs(Math.toDegrees(Math.atan2(in.cross(out), in.dot(out))));
  }

  private void point(String layer, Point at) {
    dxf.point(layer, in(at));
  }

  private void sewing(String layer) {
    List<Point> points = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      Optional<Segment> before = Optional.empty();
      for (Segment segment : edge.line().segments()) {
        points.addAll(marked(before, segment));
        before = Optional.of(segment);
      }
    }
    dxf.polyline(layer, points.stream().map(this::in).toList(), true);
  }

  /**
   * The points of a segment but its last, marked as turn or curve points.
   *
   * @param before what it may run on from smoothly
   */
  private List<Point> marked(Optional<Segment> before, Segment segment) {
    List<Point> line = new Path(List.of(segment)).flattened(FLATTENING_MM);
    boolean smooth =
        before.filter(Segment.Cubic.class::isInstance).isPresent()
            && segment instanceof Segment.Cubic
            && degrees(before.get().direction(1), segment.direction(0)) < SMOOTH_DEGREES;
    point(smooth ? Layers.CURVE_POINTS : Layers.TURN_POINTS, line.get(0));
    line.subList(1, line.size() - 1).forEach(p -> point(Layers.CURVE_POINTS, p));
    return line.subList(0, line.size() - 1);
  }

  /** A point on the cutting line, aimed inward; two of them where it is double. */
  private void notch(Notch notch) {
    Edge edge = piece.edge(notch.edge());
    if (notch.strokes() == 1) {
      notch(edge, notch.atMm(), notch.depthMm());
      return;
    }
    double aside = Math.min(HALF_DOUBLE_MM, toJoint(edge, notch.atMm()) / 2);
    notch(edge, notch.atMm() - aside, notch.depthMm());
    notch(edge, notch.atMm() + aside, notch.depthMm());
    Path.Tangent middle = edge.line().tangent(notch.atMm());
    note(PieceNotes.NOTCH + ": " + PieceNotes.DOUBLE, outside(edge, middle), aimed(middle));
  }

  private void notch(Edge edge, double atMm, double depthMm) {
    Path.Tangent tangent = edge.line().tangent(atMm);
    point(Layers.NOTCHES, outside(edge, tangent));
    dxf.put(39, depthMm / unit);
    dxf.put(50, aimed(tangent));
  }

  private static Point outside(Edge edge, Path.Tangent tangent) {
    return tangent.at().minus(tangent.direction().left().times(edge.allowanceMm()));
  }

  private static double aimed(Path.Tangent tangent) {
    Point inward = tangent.direction().left();
    return Math.toDegrees(Math.atan2(inward.y(), inward.x()));
  }

  /**
   * How far it is to where two lines or curves of an edge meet: both strokes lie on one of them.
   */
  private static double toJoint(Edge edge, double atMm) {
    double joint = 0;
    double least = atMm;
    for (Segment segment : edge.line().segments()) {
      joint += new Path(List.of(segment)).length();
      least = Math.min(least, Math.abs(joint - atMm));
    }
    return least;
  }

  private void mirrorLine(Path edge) {
    dxf.line(Layers.MIRROR_LINE, in(edge.start()), in(edge.end()));
  }

  /** Along the warp, through the middle. */
  private void grainLine(Grain grain, Box box) {
    double warp = Math.toRadians(-grain.drawnTurns().get(0));
    Point half = new Point(Math.cos(warp), Math.sin(warp)).times(box.length() / 4);
    dxf.line(Layers.GRAIN_LINE, in(box.centre().minus(half)), in(box.centre().plus(half)));
  }

  private void inner(InnerLine line) {
    List<Point> points = new ArrayList<>();
    if (line.name().startsWith(DRILL_HOLE)) {
      point(Layers.DRILL_HOLES, Box.around(line.line().flattened(0.01)).centre());
      return;
    }
    note(PieceNotes.LINE + ": " + plain(line.name()), line.line().start());
    List<Segment> segments = line.line().segments();
    boolean closed = line.line().start().distance(line.line().end()) < 1e-6;
    Optional<Segment> before =
        closed ? Optional.of(segments.get(segments.size() - 1)) : Optional.empty();
    for (Segment segment : segments) {
      points.addAll(marked(before, segment));
      before = Optional.of(segment);
    }
    if (!closed) {
      points.add(line.line().end());
    }
    dxf.polyline(Layers.INNER_LINES, points.stream().map(this::in).toList(), closed);
  }
}
