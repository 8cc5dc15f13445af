package ellwand.draw.piece;

import ellwand.cutting.CutPiece;
import ellwand.cutting.Cutter;
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

/** Drafts pieces for tests. */
public final class Drafting {

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
  public static Drafting of(String name, double x, double y) {
    return new Drafting(name, new Point(x, y));
  }

  public static Drafting rectangle(String name, double length, double width, double allowance) {
    return of(name, 0, 0)
        .line("near side", allowance, length, 0)
        .line("top", allowance, length, width)
        .line("far side", allowance, 0, width)
        .line("bottom", allowance, 0, 0);
  }

  public Drafting line(String edge, double allowance, double x, double y) {
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

  public Drafting fold(String edge, double x, double y) {
    fold = edge;
    return line(edge, 0, x, y);
  }

  public Drafting notch(String edge, double at, int strokes) {
    notches.add(new Notch(edge, at, strokes, Notch.USUAL_DEPTH_MM));
    return this;
  }

  Drafting inner(String line, double x1, double y1, double x2, double y2) {
    innerLines.add(new InnerLine(line, Path.line(new Point(x1, y1), new Point(x2, y2))));
    return this;
  }

  public Drafting grain(Grain other) {
    grain = other;
    return this;
  }

  public CutPiece cut(String cloth, String how) {
    Piece piece =
        new Piece(
            name,
            edges,
            Optional.ofNullable(fold),
            grain,
            notches,
            innerLines,
            List.of(Cut.parse(cloth, how)));
    return Cutter.cut(piece, 1, 1);
  }
}
