package ellwand.pattern.alter;

import ellwand.geometry.Motion;
import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Intake;
import ellwand.pattern.Others;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.problem.Problem;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Pleats or tucks: the piece is cut along straight lines with the grain, or across it where that is
 * squarer to the edge, and opened in parallel for what is folded away. The finished edge stays as
 * long as it was.
 *
 * @param edge from which they run
 * @param number how many, 1 or more
 * @param depthMm how deep each lies folded: a knife pleat or tuck takes twice that of cloth, a box
 *     or inverted pleat four times
 * @param at the first of them; if empty they are shared out evenly, or lie about the middle
 * @param spacingMm from one to the next, on the finished edge; empty where they are shared out
 * @param longMm how far from the edge they are folded or sewn; empty for all the way
 * @param foldedTowards a mark on the side to which each knife pleat or tuck is folded
 */
public record Pleats(
    Kind kind,
    String edge,
    int number,
    double depthMm,
    Optional<Reach> at,
    Optional<Double> spacingMm,
    Optional<Double> longMm,
    Optional<String> foldedTowards)
    implements Alteration {

  private static final int MOST = 200;

  /** How they are folded. */
  public enum Kind {
    KNIFE,
    BOX,
    INVERTED,
    TUCK
  }

  public Pleats {
    String what = kind == Kind.TUCK ? "tucks" : "pleats";
    InputException.unless(
        number >= 1 && number <= MOST,
        number + " " + what + " cannot be folded",
        "Write 1 to " + MOST);
    InputException.unless(
        at.isEmpty() || number == 1 || spacingMm.isPresent(),
        "it is not said how far from the first the next lies",
        "Give spacing:, or leave at: out to share them out evenly");
    boolean oneWay = kind == Kind.KNIFE || kind == Kind.TUCK;
    InputException.unless(
        foldedTowards.isPresent() == oneWay,
        oneWay
            ? "it is not said to which side they are folded"
            : "a box or inverted pleat is folded to both sides",
        oneWay ? "Give folded towards: with a mark" : "Take folded towards: out");
    InputException.unless(
        kind != Kind.TUCK || longMm.isPresent(),
        "it is not said how far the tucks are sewn",
        "Give long:, for example long: 8 cm");
  }

  @Override
  public String words(Unit unit) {
    String each =
        switch (kind) {
          case KNIFE -> "knife pleat";
          case BOX -> "box pleat";
          case INVERTED -> "inverted pleat";
          case TUCK -> "tuck";
        };
    return "%d %s%s %s deep on %s"
        .formatted(number, each, number == 1 ? "" : "s", Words.length(depthMm, unit), edge);
  }

  @Override
  public Workpiece on(Workpiece piece, Others others) {
    WorkEdge of = piece.edge(edge);
    Point inward = inward(piece, of.line());
    Workpiece pleated = piece;
    List<String> places = new ArrayList<>();
    for (double mm : places(piece, of)) {
      Point place = of.line().at(mm);
      Point aside = inward.left().times(depthMm);
      List<Point> cuts =
          kind == Kind.BOX
              ? List.of(beside(piece, of, place.plus(aside)), beside(piece, of, place.minus(aside)))
              : List.of(place);
      for (Point cut : cuts) {
        places.add("pleat " + places.size() + "\n");
        pleated = pleated.marked(places.get(places.size() - 1), cut);
      }
    }
    int before = (int) of.edge().intakes().stream().filter(i -> i.kind() == made()).count();
    for (int i = 0; i < places.size(); i++) {
      int nth = before + 1 + (kind == Kind.BOX ? i / 2 : i);
      String name = (kind == Kind.TUCK ? "tuck " : "pleat ") + nth;
      pleated = folded(pleated, name, places.get(i), inward, i);
    }
    Map<String, Point> marks = new LinkedHashMap<>(pleated.marks());
    marks.keySet().retainAll(piece.marks().keySet());
    return pleated.withMarks(marks);
  }

  private Intake.Kind made() {
    return kind == Kind.TUCK ? Intake.Kind.TUCK : Intake.Kind.PLEAT;
  }

  /** Along the edge, counter-clockwise. */
  private List<Double> places(Workpiece piece, WorkEdge of) {
    double length = of.line().length();
    double step = spacingMm.orElse(length / (number + 1));
    double first = at.map(reach -> reach.mm(length)).orElse((length - (number - 1) * step) / 2);
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      double place = first + i * step;
      if (!(place > Workpiece.ON_EDGE_MM && place < length - Workpiece.ON_EDGE_MM)) {
        throw refused(
            piece,
            "number %d would lie past the end of it, which is %s long"
                .formatted(i + 1, Words.length(length, Unit.CM)),
            "Take fewer, or lay them nearer to one another");
      }
      places.add(of.drawn(place));
    }
    places.sort(Comparator.naturalOrder());
    return places;
  }

  /** With the grain or across it, whichever is squarer to the edge; into the piece. */
  private static Point inward(Workpiece piece, Path line) {
    Point chord = line.end().minus(line.start());
    Point grain = Grainwise.direction(piece);
    Point way = Math.abs(chord.dot(grain)) <= Math.abs(chord.cross(grain)) ? grain : grain.left();
    return way.dot(chord.left()) < 0 ? way.times(-1) : way;
  }

  /** The place on the edge that lies straight above or below a point. */
  private Point beside(Workpiece piece, WorkEdge of, Point point) {
    Point inward = inward(piece, of.line());
    return of.line().crossings(point, point.plus(inward)).stream()
        .map(of.line()::at)
        .min(Comparator.comparingDouble(point::distance))
        .orElseThrow(
            () ->
                refused(
                    piece,
                    "a box pleat would reach past the end of it",
                    "Move it from the corner, or make it shallower"));
  }

  private Workpiece folded(Workpiece piece, String name, String mark, Point inward, int cut) {
    Workpiece opened = opened(piece, name, piece.mark(mark), inward, first(piece, cut));
    if (kind != Kind.INVERTED) {
      return opened;
    }
    Intake one =
        opened.edge(edge).edge().intakes().stream()
            .filter(i -> i.name().equals(name))
            .findFirst()
            .orElseThrow();
    return opened(opened, name, one.second().outer(), inward, false);
  }

  /** Whether the next cut is folded to the leg that comes first along the edge. */
  private boolean first(Workpiece piece, int cut) {
    return switch (kind) {
      case BOX -> cut % 2 == 1;
      case INVERTED -> true;
      case KNIFE, TUCK -> {
        WorkEdge of = piece.edge(edge);
        Point along = of.line().end().minus(of.line().start());
        Point middle = of.line().at(of.line().length() / 2);
        double side = along.dot(piece.mark(foldedTowards.orElseThrow()).minus(middle));
        if (Math.abs(side) < Workpiece.ON_EDGE_MM) {
          throw refused(
              piece,
              "mark " + foldedTowards.get() + " lies on neither side of its middle",
              "Name a mark that lies to one side");
        }
        yield side < 0;
      }
    };
  }

  private Workpiece opened(
      Workpiece piece, String name, Point place, Point inward, boolean towardsFirst) {
    Perimeter outline = new Perimeter(piece);
    double from = outline.place(edge, piece.edge(edge).line().nearest(place));
    Point start = outline.at(from);
    Point end = end(piece, start, inward);
    double to = outline.place(end).orElseThrow();
    String other = Opening.growing(piece, to, "the line of " + name);
    if (other.equals(edge)) {
      throw refused(
          piece, "the line of " + name + " comes back to the same edge", "Choose another edge");
    }
    double folds = longMm.orElse(start.distance(end));
    if (folds > start.distance(end)) {
      throw refused(
          piece,
          name
              + " would be longer than the piece, which is %s there"
                  .formatted(Words.length(start.distance(end), Unit.CM)),
          "Make long: shorter, or leave it out");
    }
    Point shift = inward.left().times(-2 * depthMm);
    Opening.Moved moved =
        Opening.between(piece, from, to).moved(new Motion(false, 0, shift.x(), shift.y()));
    Point inner = start.plus(inward.times(folds));
    Intake.Leg first = leg(start, inner, moved.ofRest());
    Intake.Leg second = leg(start, inner, moved.ofPart());
    Intake pleat = new Intake(name, made(), first, second, towardsFirst);
    WorkEdge longer = moved.piece().edge(edge);
    return Darts.with(moved.piece(), longer.with(longer.edge().with(pleat)));
  }

  private static Intake.Leg leg(Point outer, Point inner, Motion motion) {
    return new Intake.Leg(motion.apply(outer), motion.apply(inner));
  }

  /** Where a line into the piece first meets its outline again. */
  private Point end(Workpiece piece, Point start, Point inward) {
    return piece.edges().stream()
        .flatMap(e -> e.line().crossings(start, start.plus(inward)).stream().map(e.line()::at))
        .filter(p -> inward.dot(p.minus(start)) > Workpiece.ON_EDGE_MM)
        .min(Comparator.comparingDouble(start::distance))
        .orElseThrow(
            () -> refused(piece, "a pleat's line does not cross the piece", "Choose another edge"));
  }

  private InputException refused(Workpiece piece, String what, String remedy) {
    return new InputException(Problem.onEdge(piece.name(), edge, what, remedy));
  }
}
