package ellwand.file.interchange;

import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
import ellwand.file.dxf.DxfText;
import ellwand.file.dxf.PlainAscii;
import ellwand.file.job.StyleFile;
import ellwand.geometry.Box;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes the pieces of a style for other pattern programs: by the layers of ASTM D6673, a block for
 * each piece and size, x along the drawn piece.
 *
 * <p>Layer 1 is the cutting line and layer 14 the sewing line; a style without any allowance has
 * only layer 1. A notch is a point on the cutting line, its depth in group 39 (that group is from
 * memory); a double notch is two of them.
 */
public final class StyleDxf {

  /** How far a curve may stray from the stretches that it is written as, mm. */
  private static final double FLATTENING_MM = 0.002;

  /** Half of what lies between the two points of a double notch, mm. */
  private static final double HALF_DOUBLE_MM = 3;

  private static final double SMOOTH_DEGREES = 0.1;
  private static final double CORNER_DEGREES = 10;
  private static final double WORDS_MM = 6;

  /** Of an inner line that stands for a hole; see the reader. */
  private static final String DRILL_HOLE = "drill hole";

  private final StyleFile file;
  private final DxfText dxf = new DxfText();
  private final double unit;

  private StyleDxf(StyleFile file) {
    this.file = file;
    this.unit = english() ? Unit.INCH.mm() : 1;
  }

  private boolean english() {
    return file.design().unit() == Unit.INCH || file.design().unit() == Unit.YARD;
  }

  /** The bytes of the file; the same style gives the same. */
  public static byte[] bytes(StyleFile file) {
    return new StyleDxf(file).bytes();
  }

  /** Names that were changed because DXF holds ASCII only, each with what became of it. */
  public static List<String> changedNames(StyleFile file) {
    return file.style().pieces(file.design().sizes().base()).stream()
        .flatMap(p -> Stream.concat(Stream.of(p.name()), p.cuts().stream().map(Cut::cloth)))
        .distinct()
        .filter(name -> !PlainAscii.of(name).equals(name))
        .map(
            name ->
                name + " is written as " + PlainAscii.of(name) + ", since DXF holds ASCII only.")
        .toList();
  }

  private byte[] bytes() {
    List<String> sizes = file.design().sizes().names();
    List<Point> all = new ArrayList<>();
    file.style().pieces(file.design().sizes().base()).stream()
        .flatMap(p -> p.edges().stream())
        .forEach(e -> all.addAll(e.line().flattened(1)));
    dxf.header(Box.around(all));
    dxf.layers(Layers.WRITTEN);
    dxf.section("BLOCKS");
    List<String> blocks = new ArrayList<>();
    for (String size : sizes) {
      for (Piece piece : file.style().pieces(size)) {
        String block = "P" + (blocks.size() + 1);
        blocks.add(block);
        block(block, piece, size);
      }
    }
    dxf.endSection();
    dxf.section("ENTITIES");
    blocks.forEach(dxf::insert);
    words(
        List.of(
            "Style Name: " + file.design().name(),
            "Sample Size: " + file.design().sizes().base(),
            "Units: " + (english() ? "ENGLISH" : "METRIC")),
        new Point(0, 0),
        Layers.BOUNDARY);
    return dxf.endSection().bytes();
  }

  private void words(List<String> lines, Point at, String layer) {
    double height = WORDS_MM / unit;
    for (int i = 0; i < lines.size(); i++) {
      dxf.text(
          layer,
          PlainAscii.of(lines.get(i)),
          at.plus(new Point(0, -1.5 * height * i)),
          height,
          0,
          DxfText.Justified.LEFT);
    }
  }

  private void block(String name, Piece piece, String size) {
    dxf.block(name);
    boolean sewn = piece.edges().stream().anyMatch(e -> e.allowanceMm() > 0);
    if (sewn) {
      CutPiece cut = Cutter.cut(piece, 1, 1);
      ring(Layers.BOUNDARY, cut.cutting().points());
      sewing(Layers.SEWING_LINES, piece);
    } else {
      sewing(Layers.BOUNDARY, piece);
    }
    piece.notches().forEach(notch -> notch(piece, notch));
    piece.fold().ifPresent(fold -> mirrorLine(piece.edge(fold).line()));
    Box box =
        Box.around(piece.edges().stream().flatMap(e -> e.line().flattened(1).stream()).toList());
    grainLine(piece.grain(), box);
    piece.innerLines().forEach(this::inner);
    words(said(piece, size), in(box.centre()), Layers.BOUNDARY);
    dxf.endBlock();
  }

  private static List<String> said(Piece piece, String size) {
    List<String> said = new ArrayList<>();
    said.add("Piece Name: " + piece.name());
    said.add("Size: " + size);
    for (Cut cut : piece.cuts()) {
      said.add("Material: " + cut.cloth());
      said.add("Quantity: " + Quantity.of(cut));
    }
    if (!piece.grain().word().equals(Grain.ALONG.word())) {
      said.add("Grain: " + piece.grain().word());
    }
    return said;
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

  private void sewing(String layer, Piece piece) {
    List<Segment> segments =
        piece.edges().stream().flatMap((Edge e) -> e.line().segments().stream()).toList();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      Segment before = segments.get((i + segments.size() - 1) % segments.size());
      points.addAll(marked(before, segments.get(i)));
    }
    dxf.polyline(layer, points.stream().map(this::in).toList(), true);
  }

  /** The points of a segment but its last, marked as turn or curve points. */
  private List<Point> marked(Segment before, Segment segment) {
    List<Point> line = new Path(List.of(segment)).flattened(FLATTENING_MM);
    boolean smooth =
        before instanceof Segment.Cubic
            && segment instanceof Segment.Cubic
            && degrees(before.direction(1), segment.direction(0)) < SMOOTH_DEGREES;
    point(smooth ? Layers.CURVE_POINTS : Layers.TURN_POINTS, line.get(0));
    line.subList(1, line.size() - 1).forEach(p -> point(Layers.CURVE_POINTS, p));
    return line.subList(0, line.size() - 1);
  }

  private void notch(Piece piece, Notch notch) {
    Edge edge = piece.edge(notch.edge());
    double aside =
        notch.strokes() == 1 ? 0 : Math.min(HALF_DOUBLE_MM, toJoint(edge, notch.atMm()) / 2);
    for (double at :
        notch.strokes() == 1
            ? new double[] {notch.atMm()}
            : new double[] {notch.atMm() - aside, notch.atMm() + aside}) {
      Path.Tangent tangent = edge.line().tangent(at);
      Point inward = tangent.direction().left();
      point(Layers.NOTCHES, tangent.at().minus(inward.times(edge.allowanceMm())));
      dxf.put(39, notch.depthMm() / unit);
      dxf.put(50, Math.toDegrees(Math.atan2(inward.y(), inward.x())));
    }
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
    List<Segment> segments = line.line().segments();
    boolean closed = line.line().start().distance(line.line().end()) < 1e-6;
    for (int i = 0; i < segments.size(); i++) {
      points.addAll(
          marked(segments.get((i + segments.size() - 1) % segments.size()), segments.get(i)));
    }
    if (!closed) {
      points.add(line.line().end());
    }
    dxf.polyline(Layers.INNER_LINES, points.stream().map(this::in).toList(), closed);
  }
}
