package ellwand.cutting;

import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Cut;
import ellwand.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A piece as it is cut, in the frame it is drawn in: x along its grain, as seen on the right side.
 *
 * @param piece where it comes from
 * @param cutting the line the blade follows
 * @param sewing the line the needle follows
 * @param notches each a short stroke from the cutting line inward
 * @param innerLines drawn inside, by name
 * @param fold the fold edge of a half piece as a stroke from end to end; empty for whole and opened
 *     pieces
 * @param marks where the marks of the piece are, by their words
 */
public record CutPiece(
    Piece piece,
    Outline cutting,
    Outline sewing,
    List<Stroke> notches,
    List<Drawn> innerLines,
    Optional<Stroke> fold,
    Map<String, Point> marks) {

  /** A piece without marks. */
  public CutPiece(
      Piece piece,
      Outline cutting,
      Outline sewing,
      List<Stroke> notches,
      List<Drawn> innerLines,
      Optional<Stroke> fold) {
    this(piece, cutting, sewing, notches, innerLines, fold, Map.of());
  }

  /** A straight mark. */
  public record Stroke(Point from, Point to) {

    public Stroke moved(Motion motion) {
      return new Stroke(motion.apply(from), motion.apply(to));
    }
  }

  /** A named line of straight stretches. */
  public record Drawn(String name, List<Point> points) {

    public Drawn moved(Motion motion) {
      return new Drawn(name, points.stream().map(motion::apply).toList());
    }
  }

  public CutPiece {
    notches = List.copyOf(notches);
    innerLines = List.copyOf(innerLines);
    marks = Map.copyOf(marks);
  }

  public String name() {
    return piece.name();
  }

  /**
   * Whether it has no hand: turned over about a line along its drawn x axis it is the same piece,
   * cutting line all along, notches and inner lines, to 0.05 mm. A shape that is the same only when
   * it is also turned end for end does not count, since its heading would be the other one.
   */
  public boolean symmetric() {
    return Symmetry.of(this);
  }

  /**
   * Where a place comes to lie when the piece is turned over onto its own outline: about the fold
   * edge of a half, else about its middle along its drawn x axis.
   */
  public Point turnedOver(Point place) {
    double middle = cutting.box().centre().y();
    return fold.map(line -> mirrored(place, line))
        .orElseGet(() -> new Point(place.x(), 2 * middle - place.y()));
  }

  /**
   * How a piece without a hand lies, as drawn, on the other ply of cloth folded along the warp:
   * degrees that its drawn x axis is turned by, counter-clockwise, right side up.
   *
   * @param turnDegrees how the copy on the upright ply is turned
   * @param flipped whether that is turned over before
   */
  public double twinTurn(double turnDegrees, boolean flipped) {
    Point axis = fold.map(line -> line.to().minus(line.from())).orElse(new Point(1, 0));
    double twice = 2 * Math.toDegrees(Math.atan2(axis.y(), axis.x()));
    return (flipped ? turnDegrees : -turnDegrees) - twice;
  }

  /** The same, which will do for these cuts, too. */
  public CutPiece andCut(List<Cut> more) {
    List<Cut> all = new ArrayList<>(piece.cuts());
    all.addAll(more);
    return new CutPiece(piece.cut(all), cutting, sewing, notches, innerLines, fold, marks);
  }

  /** All its lines in a new place. */
  public CutPiece moved(Motion motion) {
    return new CutPiece(
        piece,
        cutting.moved(motion),
        sewing.moved(motion),
        notches.stream().map(n -> n.moved(motion)).toList(),
        innerLines.stream().map(l -> l.moved(motion)).toList(),
        fold.map(f -> f.moved(motion)),
        marks(motion::apply));
  }

  /** All its lines stretched by two factors about the origin, x first. */
  CutPiece stretched(double alongX, double alongY) {
    if (alongX == 1 && alongY == 1) {
      return this;
    }
    UnaryOperator<Point> stretch = p -> new Point(p.x() * alongX, p.y() * alongY);
    UnaryOperator<Stroke> stroke = s -> new Stroke(stretch.apply(s.from()), stretch.apply(s.to()));
    return new CutPiece(
        piece,
        cutting.scaled(alongX, alongY),
        sewing.scaled(alongX, alongY),
        notches.stream().map(stroke).toList(),
        innerLines.stream()
            .map(l -> new Drawn(l.name(), l.points().stream().map(stretch).toList()))
            .toList(),
        fold.map(stroke),
        marks(stretch));
  }

  private Map<String, Point> marks(UnaryOperator<Point> moved) {
    return marks.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, e -> moved.apply(e.getValue())));
  }

  /** A half piece opened about its fold edge: one whole outline with no step at the fold. */
  public CutPiece opened() {
    Stroke line =
        fold.orElseThrow(() -> new IllegalStateException(name() + " is not a half piece"));
    List<Stroke> bothNotches = new ArrayList<>(notches);
    for (Stroke n : notches) {
      Stroke twin = new Stroke(mirrored(n.from(), line), mirrored(n.to(), line));
      // A notch on the fold is its own mirror image.
      if (twin.from().distance(n.from()) > Opening.ON_LINE_MM) {
        bothNotches.add(twin);
      }
    }
    List<Drawn> bothLines = new ArrayList<>(innerLines);
    innerLines.forEach(
        l ->
            bothLines.add(
                new Drawn(l.name(), l.points().stream().map(p -> mirrored(p, line)).toList())));
    return new CutPiece(
        piece,
        Opening.opened(cutting, line),
        Opening.opened(sewing, line),
        bothNotches,
        bothLines,
        Optional.empty(),
        marks);
  }

  private static Point mirrored(Point p, Stroke line) {
    return p.mirrored(line.from(), line.to());
  }
}
