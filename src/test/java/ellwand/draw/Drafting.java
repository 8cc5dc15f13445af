package ellwand.draw;

import ellwand.cutting.CutPiece;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Drafts pieces for tests, with a plain mitred cutting line that needs no other package. */
final class Drafting {

  private final String name;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Notch> notches = new ArrayList<>();
  private final List<InnerLine> innerLines = new ArrayList<>();
  private Point at;
  private String fold;
  private Grain grain = Grain.ALONG;

  private Drafting(String name, Point start) {
    this.name = name;
    this.at = start;
  }

  /** A piece that begins at a place and goes round counter-clockwise, mm. */
  static Drafting of(String name, double x, double y) {
    return new Drafting(name, new Point(x, y));
  }

  static Drafting rectangle(String name, double length, double width, double allowance) {
    return of(name, 0, 0)
        .line("near side", allowance, length, 0)
        .line("top", allowance, length, width)
        .line("far side", allowance, 0, width)
        .line("bottom", allowance, 0, 0);
  }

  Drafting line(String edge, double allowance, double x, double y) {
    Point to = new Point(x, y);
    edges.add(new Edge(edge, Path.line(at, to), allowance, false));
    at = to;
    return this;
  }

  Drafting curve(
      String edge,
      double allowance,
      double x1,
      double y1,
      double x2,
      double y2,
      double x,
      double y) {
    Point to = new Point(x, y);
    Segment.Cubic cubic = new Segment.Cubic(at, new Point(x1, y1), new Point(x2, y2), to);
    edges.add(new Edge(edge, new Path(List.of(cubic)), allowance, false));
    at = to;
    return this;
  }

  Drafting fold(String edge, double x, double y) {
    fold = edge;
    return line(edge, 0, x, y);
  }

  Drafting notch(String edge, double at, int strokes) {
    notches.add(new Notch(edge, at, strokes, Notch.USUAL_DEPTH_MM));
    return this;
  }

  Drafting inner(String line, double x1, double y1, double x2, double y2) {
    innerLines.add(new InnerLine(line, Path.line(new Point(x1, y1), new Point(x2, y2))));
    return this;
  }

  Drafting grain(Grain other) {
    grain = other;
    return this;
  }

  CutPiece cut(String cloth, String how) {
    Piece piece =
        new Piece(
            name,
            edges,
            Optional.ofNullable(fold),
            grain,
            notches,
            innerLines,
            List.of(Cut.parse(cloth, how)));
    List<Point> sewing = new ArrayList<>();
    List<Double> allowances = new ArrayList<>();
    for (Edge edge : edges) {
      List<Point> line = edge.line().flattened(0.5);
      for (int i = 0; i < line.size() - 1; i++) {
        sewing.add(line.get(i));
        allowances.add(edge.allowanceMm());
      }
    }
    return new CutPiece(
        piece,
        Outline.of(mitred(sewing, allowances)),
        Outline.of(sewing),
        strokes(piece),
        piece.innerLines().stream()
            .map(l -> new CutPiece.Drawn(l.name(), l.line().flattened(0.5)))
            .toList(),
        Optional.ofNullable(fold)
            .map(piece::edge)
            .map(e -> new CutPiece.Stroke(e.line().start(), e.line().end())));
  }

  private static List<Point> mitred(List<Point> ring, List<Double> allowances) {
    List<Point> outside = new ArrayList<>();
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      Point before = ring.get(i).minus(ring.get((i + n - 1) % n)).unit();
      Point after = ring.get((i + 1) % n).minus(ring.get(i)).unit();
      Point p = ring.get(i).minus(before.left().times(allowances.get((i + n - 1) % n)));
      Point q = ring.get(i).minus(after.left().times(allowances.get(i)));
      double turn = before.cross(after);
      outside.add(Math.abs(turn) < 1e-6 ? q : p.plus(before.times(q.minus(p).cross(after) / turn)));
    }
    return outside;
  }

  private static List<CutPiece.Stroke> strokes(Piece piece) {
    List<CutPiece.Stroke> strokes = new ArrayList<>();
    for (Notch notch : piece.notches()) {
      Edge edge = piece.edge(notch.edge());
      for (int i = 0; i < notch.strokes(); i++) {
        Path.Mark mark = edge.line().mark(notch.atMm() + 6 * i);
        Point inward = mark.direction().left();
        Point foot = mark.at().minus(inward.times(edge.allowanceMm()));
        strokes.add(new CutPiece.Stroke(foot, foot.plus(inward.times(notch.depthMm()))));
      }
    }
    return strokes;
  }
}
