package ellwand.cutting;

import ellwand.geometry.Motion;
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

/** Draws pieces for tests; edges are named e0, e1, ... */
final class Drawn {

  private final List<Edge> edges = new ArrayList<>();
  private final List<Notch> notches = new ArrayList<>();
  private Optional<String> fold = Optional.empty();
  private Grain grain = Grain.ALONG;
  private Point pen;

  private Drawn(Point start) {
    pen = start;
  }

  static Drawn from(double x, double y) {
    return new Drawn(new Point(x, y));
  }

  /** A polygon whose edge i runs from point i to the next. */
  static Piece polygon(double[] allowances, double... xy) {
    Drawn drawn = from(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      drawn.line(xy[i], xy[i + 1], allowances[i / 2 - 1]);
    }
    return drawn.line(xy[0], xy[1], allowances[xy.length / 2 - 1]).piece();
  }

  Drawn line(double x, double y, double allowance) {
    return edge(new Segment.Line(pen, new Point(x, y)), allowance, false);
  }

  Drawn hem(double x, double y, double allowance) {
    return edge(new Segment.Line(pen, new Point(x, y)), allowance, true);
  }

  Drawn fold(double x, double y) {
    fold = Optional.of("e" + edges.size());
    return line(x, y, 0);
  }

  Drawn curve(
      double c1x, double c1y, double c2x, double c2y, double x, double y, double allowance) {
    return edge(
        new Segment.Cubic(pen, new Point(c1x, c1y), new Point(c2x, c2y), new Point(x, y)),
        allowance,
        false);
  }

  private Drawn edge(Segment segment, double allowance, boolean turnedBack) {
    return edge(new Path(List.of(segment)), allowance, turnedBack);
  }

  Drawn edge(Path line, double allowance, boolean turnedBack) {
    edges.add(new Edge("e" + edges.size(), line, allowance, turnedBack));
    pen = line.end();
    return this;
  }

  Drawn notch(int edge, double atMm, int strokes, double depthMm) {
    notches.add(new Notch("e" + edge, atMm, strokes, depthMm));
    return this;
  }

  Drawn grain(Grain g) {
    grain = g;
    return this;
  }

  Piece piece() {
    Cut cut = new Cut("main", 1, fold.isPresent() ? Cut.How.FOLD : Cut.How.WHOLE);
    return new Piece("front", edges, fold, grain, notches, List.<InnerLine>of(), List.of(cut));
  }

  /** The same piece as seen from the wrong side. */
  static Piece turnedOver(Piece piece) {
    Motion over = new Motion(true, 0, 0, 0);
    List<Edge> edges = new ArrayList<>();
    for (Edge e : piece.edges()) {
      edges.add(
          0, new Edge(e.name(), e.line().moved(over).reversed(), e.allowanceMm(), e.turnedBack()));
    }
    return new Piece(
        piece.name(), edges, piece.fold(), piece.grain(), List.of(), List.of(), piece.cuts());
  }

  static Outline cutting(Piece piece) {
    return Cutter.cut(piece, 1, 1).cutting();
  }

  /** Points from x, y, x, y, ... */
  static List<Point> points(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return points;
  }
}
