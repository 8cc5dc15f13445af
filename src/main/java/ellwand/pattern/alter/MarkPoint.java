package ellwand.pattern.alter;

import ellwand.geometry.Crossings;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.Comparator;
import java.util.Optional;

/**
 * A point found by measuring.
 *
 * @param name that it gets
 */
public record MarkPoint(String name, Where where) implements Alteration {

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    return piece.marked(name, where.on(piece));
  }

  @Override
  public Optional<String> mark() {
    return Optional.of(name);
  }

  @Override
  public String words(Unit unit) {
    return where.words(unit);
  }

  /** How it is measured. */
  public sealed interface Where {

    /**
     * The place.
     *
     * @throws InputException if there is none
     */
    Point on(Workpiece piece);

    /** As it is said. */
    String words(Unit unit);
  }

  /** On an edge, from its first point as drawn. */
  public record OnEdge(String edge, Reach at) implements Where {

    @Override
    public Point on(Workpiece piece) {
      return measured(piece, piece.edge(edge), 0, at);
    }

    @Override
    public String words(Unit unit) {
      return at.words(unit) + " along " + edge;
    }
  }

  /** On an edge, from another mark on it, the way it is drawn; negative the other way. */
  public record Along(String from, String edge, Reach by) implements Where {

    @Override
    public Point on(Workpiece piece) {
      WorkEdge of = piece.edge(edge);
      return measured(piece, of, of.drawn(piece.along(edge, from)), by);
    }

    @Override
    public String words(Unit unit) {
      String words = by.words(unit);
      return words.startsWith("-")
          ? words.substring(1) + " back along " + edge + " from " + from
          : words + " along " + edge + " from " + from;
    }
  }

  private static Point measured(Workpiece piece, WorkEdge edge, double fromMm, Reach by) {
    double length = edge.line().length();
    double at = fromMm + by.mm(length);
    if (at < -Workpiece.ON_EDGE_MM || at > length + Workpiece.ON_EDGE_MM) {
      throw new InputException(
          Problem.onEdge(
              piece.name(),
              edge.name(),
              "the mark would lie %s beyond its %s; it is %s long"
                  .formatted(
                      Words.length(at < 0 ? -at : at - length, Unit.CM),
                      at < 0 ? "first point" : "last point",
                      Words.length(length, Unit.CM)),
              "Measure less, or from another point"));
    }
    return edge.line().at(edge.drawn(Math.max(0, Math.min(length, at))));
  }

  /** From a mark square to an edge, out of the piece; negative into it. */
  public record SquareTo(String from, String edge, double byMm) implements Where {

    @Override
    public Point on(Workpiece piece) {
      WorkEdge of = piece.edge(edge);
      Point start = piece.mark(from);
      Point along = of.line().tangent(of.line().nearest(start)).direction();
      return start.minus(along.left().times(byMm));
    }

    @Override
    public String words(Unit unit) {
      return "%s %s of %s, square to %s"
          .formatted(
              Words.length(Math.abs(byMm), unit), byMm < 0 ? "inside" : "outside", from, edge);
    }
  }

  /** From a mark towards another, and beyond it if need be; negative away from it. */
  public record Towards(String from, String towards, double byMm) implements Where {

    @Override
    public Point on(Workpiece piece) {
      Point start = piece.mark(from);
      return start.plus(direction(piece, from, towards).times(byMm));
    }

    @Override
    public String words(Unit unit) {
      return Words.length(byMm, unit) + " from " + from + " towards " + towards;
    }
  }

  /** A share of the way from a mark to another. */
  public record Between(String one, String other, Reach.Share at) implements Where {

    @Override
    public Point on(Workpiece piece) {
      return piece.mark(one).towards(piece.mark(other), at.mm(1));
    }

    @Override
    public String words(Unit unit) {
      return at.words(unit) + " of the way from " + one + " to " + other;
    }
  }

  /** Where the straight line through two marks meets an edge, nearest to the second. */
  public record Meets(String one, String other, String edge) implements Where {

    /** Far beyond any piece. */
    private static final double FAR_MM = 20_000;

    @Override
    public Point on(Workpiece piece) {
      Point end = piece.mark(other);
      Point along = direction(piece, one, other).times(FAR_MM);
      Path line = Path.line(end.minus(along), end.plus(along));
      return Crossings.of(line, piece.edge(edge).line()).stream()
          .map(Crossings.Meeting::at)
          .min(Comparator.comparingDouble(end::distance))
          .orElseThrow(
              () ->
                  new InputException(
                      Problem.onEdge(
                          piece.name(),
                          edge,
                          "the line through %s and %s does not meet it".formatted(one, other),
                          "Name another edge, or other marks")));
    }

    @Override
    public String words(Unit unit) {
      return "where " + one + " to " + other + " meets " + edge;
    }
  }

  /** From a mark along the grain, towards the top as drawn, and across it, to the left of that. */
  public record ByGrain(String from, double alongMm, double acrossMm) implements Where {

    @Override
    public Point on(Workpiece piece) {
      Point along = Grainwise.direction(piece);
      return piece.mark(from).plus(along.times(alongMm)).plus(along.left().times(acrossMm));
    }

    @Override
    public String words(Unit unit) {
      String up =
          Words.length(Math.abs(alongMm), unit) + (alongMm < 0 ? " down" : " up") + " the grain";
      String left =
          Words.length(Math.abs(acrossMm), unit)
              + (acrossMm < 0 ? " to the right" : " to the left");
      return (acrossMm == 0 ? up : alongMm == 0 ? left : up + " and " + left) + " of " + from;
    }
  }

  private static Point direction(Workpiece piece, String from, String towards) {
    Point way = piece.mark(towards).minus(piece.mark(from));
    if (way.norm() < Workpiece.ON_EDGE_MM) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              from + " and " + towards + " are in the same place",
              "Name two marks that are apart"));
    }
    return way.unit();
  }
}
