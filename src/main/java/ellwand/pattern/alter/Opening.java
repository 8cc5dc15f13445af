package ellwand.pattern.alter;

import ellwand.geometry.Motion;
import ellwand.geometry.Offset;
import ellwand.geometry.Outline;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Region;
import ellwand.geometry.Segment;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Intake;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A piece cut through along straight lines and its two parts moved apart, or to one another. What
 * lies on a part goes with it: inner lines, marks, darts. The part with the fold stays where it is,
 * or else the larger one, so that the grain line does.
 *
 * @param piece before
 * @param from where the part begins that may move, counter-clockwise on the {@link Perimeter}
 * @param to where it ends
 * @param restFrom where the rest begins: {@code to}, or farther on where a stretch falls away
 * @param restTo where the rest ends: {@code from}, or before it
 * @param cut the line from {@code to} back to {@code from} through the piece
 */
record Opening(
    Workpiece piece, double from, double to, double restFrom, double restTo, List<Point> cut) {

  private static final double ON_LINE_MM = Workpiece.ON_EDGE_MM;

  /** From one place on the outline straight to another. */
  static Opening between(Workpiece piece, double from, double to) {
    Perimeter outline = new Perimeter(piece);
    return new Opening(piece, from, to, to, from, List.of(outline.at(to), outline.at(from)));
  }

  Opening {
    cut = List.copyOf(cut);
  }

  /** The piece afterwards, and what moved its part and its rest. */
  record Moved(Workpiece piece, Motion ofPart, Motion ofRest) {}

  /**
   * The piece with one part moved.
   *
   * @param motion of the part from {@code from} to {@code to}, if the rest stays
   * @throws InputException if the cut leaves the piece, or runs through its fold or a dart
   */
  Moved moved(Motion motion) {
    Perimeter outline = new Perimeter(piece);
    checkInside(piece, cut, leaves());
    Region part =
        Region.of(Outline.around(around(outline)).orElseThrow(() -> new InputException(leaves())));
    boolean stays = partStays(outline, part);
    Motion ofPart = stays ? Motion.NONE : motion;
    Motion ofRest = stays ? motion.inverse() : Motion.NONE;
    Sides sides = new Sides(part, gone(outline), outline.line(from, to), ofPart, ofRest);
    List<InnerLine> lines =
        piece.innerLines().stream().flatMap(l -> sides.moved(l).stream()).toList();
    Map<String, Point> marks = new LinkedHashMap<>();
    piece.marks().forEach((name, at) -> marks.put(name, sides.of(at).apply(at)));
    return new Moved(
        piece.with(edges(outline, ofPart, ofRest)).withInnerLines(lines).withMarks(marks),
        ofPart,
        ofRest);
  }

  private List<Point> around(Perimeter outline) {
    List<Point> ring = new ArrayList<>(outline.line(from, to));
    ring.addAll(cut);
    return ring;
  }

  /** What falls away: the mouth of a dart, from its edge to its point; empty for a mere cut. */
  private List<Point> gone(Perimeter outline) {
    List<Point> ring = new ArrayList<>();
    if (Math.abs(from - restTo) > ON_LINE_MM) {
      ring.addAll(outline.line(restTo, from));
      ring.addAll(cut.subList(1, cut.size() - 1));
    }
    return ring;
  }

  private boolean partStays(Perimeter outline, Region part) {
    if (piece.fold().isEmpty()) {
      Region whole = Region.of(Outline.of(outline.line(0, outline.length())));
      return part.area() > whole.area() / 2;
    }
    WorkEdge fold = piece.edge(piece.fold().get());
    double start = outline.place(fold.name(), 0);
    double end = start + fold.line().length();
    for (double place : List.of(from, to, restFrom, restTo)) {
      if (place > start + ON_LINE_MM && place < end - ON_LINE_MM) {
        throw new InputException(
            Problem.onEdge(
                piece.name(),
                fold.name(),
                "it is the fold, which must stay straight, and would be cut through",
                "Choose another edge, or unfold the piece first"));
      }
    }
    return within((start + end) / 2);
  }

  /** Whether a place lies on the outline of the part. */
  private boolean within(double place) {
    return from < to ? place >= from && place <= to : place >= from || place <= to;
  }

  /**
   * Looks whether straight lines, one after another, stay inside a piece and off its darts.
   *
   * @param otherwise what is wrong if they leave the piece
   * @throws InputException if they do
   */
  static void checkInside(Workpiece piece, List<Point> lines, Problem otherwise) {
    Perimeter outline = new Perimeter(piece);
    Region inside = Region.of(Outline.of(outline.line(0, outline.length())));
    for (int i = 1; i < lines.size(); i++) {
      Path line = Path.line(lines.get(i - 1), lines.get(i));
      boolean leaves = piece.edges().stream().anyMatch(e -> crosses(line, e.line()));
      if (leaves || !inside.contains(line.at(line.length() / 2))) {
        throw new InputException(otherwise);
      }
      checkDarts(piece, line);
    }
  }

  private Problem leaves() {
    return Problem.inPiece(
        piece.name(),
        "the line along which it is cut would leave the piece",
        "Choose marks between which a straight line stays inside");
  }

  private static void checkDarts(Workpiece piece, Path line) {
    for (WorkEdge edge : piece.edges()) {
      edge.edge().intakes().stream()
          .filter(i -> crosses(line, i.first()) || crosses(line, i.second()))
          .findFirst()
          .ifPresent(
              i -> {
                throw new InputException(
                    Problem.onEdge(
                        piece.name(),
                        edge.name(),
                        i.name() + " would be cut through",
                        "Cut beside it, or draw it afterwards"));
              });
    }
  }

  /**
   * Whether a straight line crosses a leg; one that begins or ends on it, or runs along it, not.
   */
  private static boolean crosses(Path straight, Intake.Leg leg) {
    Point start = straight.start();
    Point along = straight.endDirection();
    double outer = along.cross(leg.outer().minus(start));
    double inner = along.cross(leg.inner().minus(start));
    return Math.min(Math.abs(outer), Math.abs(inner)) > ON_LINE_MM && crosses(straight, leg.line());
  }

  /** Whether a straight line passes another line; touching it with an end is not passing it. */
  private static boolean crosses(Path straight, Path other) {
    return other.crossings(straight.start(), straight.end()).stream()
        .map(other::at)
        .anyMatch(
            at ->
                on(List.of(straight.start(), straight.end()), at)
                    && at.distance(straight.start()) > ON_LINE_MM
                    && at.distance(straight.end()) > ON_LINE_MM);
  }

  private static boolean on(List<Point> line, Point at) {
    for (int i = 1; i < line.size(); i++) {
      if (Offset.distance(at, line.get(i - 1), line.get(i)) <= ON_LINE_MM) {
        return true;
      }
    }
    return false;
  }

  /** In order, from where the first edge of the piece starts. */
  private List<WorkEdge> edges(Perimeter outline, Motion ofPart, Motion ofRest) {
    List<Stretch> stretches = new ArrayList<>();
    addStretches(stretches, from, to, ofPart, outline.length());
    addStretches(stretches, restFrom, restTo, ofRest, outline.length());
    stretches.sort(Comparator.comparingDouble(Stretch::from));
    List<WorkEdge> edges = new ArrayList<>();
    for (Stretch stretch : stretches) {
      for (WorkEdge edge : outline.stretch(stretch.from, stretch.to)) {
        add(edges, edge.moved(stretch.motion::apply));
      }
    }
    return edges;
  }

  private record Stretch(double from, double to, Motion motion) {}

  private static void addStretches(
      List<Stretch> to, double from, double end, Motion motion, double length) {
    if (from < end) {
      to.add(new Stretch(from, end, motion));
    } else {
      to.add(new Stretch(from, length, motion));
      to.add(new Stretch(0, end, motion));
    }
  }

  /** On from the last edge; what gapes is drawn straight across, as part of the edge it is in. */
  private static void add(List<WorkEdge> edges, WorkEdge next) {
    if (edges.isEmpty()) {
      edges.add(next);
      return;
    }
    int i = edges.size() - 1;
    WorkEdge last = edges.get(i);
    Point end = last.line().end();
    Point start = next.line().start();
    if (end.distance(start) > 1e-6) {
      last = last.then(last.plain(Path.line(end, start)));
      edges.set(i, last);
    }
    if (last.name().equals(next.name())) {
      edges.set(i, last.then(next));
    } else {
      edges.add(next);
    }
  }

  /** What lies on which part. */
  private final class Sides {

    private final Region part;
    private final Region gone;
    private final List<List<Point>> cuts;
    private final List<Point> outside;
    private final Motion ofPart;
    private final Motion ofRest;

    Sides(Region part, List<Point> gone, List<Point> outside, Motion ofPart, Motion ofRest) {
      this.part = part;
      this.gone = gone.isEmpty() ? Region.EMPTY : Region.of(Outline.of(gone));
      this.cuts = new ArrayList<>();
      for (int i = 1; i < cut.size(); i++) {
        cuts.add(cut.subList(i - 1, i + 1));
      }
      if (!gone.isEmpty()) {
        cuts.add(List.of(gone.get(0), gone.get(gone.size() - 1)));
      }
      this.outside = outside;
      this.ofPart = ofPart;
      this.ofRest = ofRest;
    }

    Motion of(Point at) {
      if (on(cut, at)) {
        return ofPart.equals(Motion.NONE) ? ofPart : ofRest;
      }
      return part.contains(at) || on(outside, at) ? ofPart : ofRest;
    }

    /** An inner line is cut as well, where a cut runs through it; what falls away is lost. */
    List<InnerLine> moved(InnerLine line) {
      Path path = line.line();
      List<Path.Place> places = new ArrayList<>();
      places.add(path.first());
      for (List<Point> straight : cuts) {
        path.crossings(straight.get(0), straight.get(1)).stream()
            .filter(c -> on(straight, path.at(c)))
            .forEach(places::add);
      }
      places.add(path.last());
      places.sort(Comparator.naturalOrder());
      List<InnerLine> parts = new ArrayList<>();
      for (int i = 1; i < places.size(); i++) {
        List<Segment> between = path.between(places.get(i - 1), places.get(i));
        if (!between.isEmpty()) {
          Path one = new Path(between);
          Point middle = one.at(one.length() / 2);
          if (!gone.contains(middle)) {
            parts.add(new InnerLine(line.name(), one.moved(of(middle))));
          }
        }
      }
      return parts;
    }
  }

  /** The name of the edge at a place, which must not be a corner, since that edge grows. */
  static String growing(Workpiece piece, double place, String mark) {
    Perimeter outline = new Perimeter(piece);
    if (outline.corner(place)) {
      throw new InputException(
          Problem.inPiece(
              piece.name(),
              mark + " lies at a corner, where nothing can be opened",
              "Move it along the edge that is to become longer"));
    }
    return outline.edge(place).name();
  }
}
