package ellwand.pattern.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Cut;
import ellwand.pattern.Design;
import ellwand.pattern.Draft;
import ellwand.pattern.Finish;
import ellwand.pattern.Grain;
import ellwand.pattern.Notch;
import ellwand.pattern.Outlined;
import ellwand.pattern.Sizes;
import ellwand.pattern.Start;
import ellwand.pattern.Step;
import ellwand.pattern.Workpiece;
import ellwand.pattern.Written;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** A half bodice front and back to alter, and what comes of that. */
final class Bodice {

  /** Within this, mm or mm², nothing was lost but digits. */
  static final double EXACT = 1e-6;

  private Bodice() {}

  /** Mm; centre front on the fold, 26 cm from waist to neck; side seam slanting. */
  static Draft front(boolean clockwise) {
    return half("front", 260, 15, clockwise);
  }

  static Draft back(boolean clockwise) {
    return half("back", 295, 0, clockwise);
  }

  private static Draft half(String name, double neckMm, double slant, boolean clockwise) {
    List<Draft.Node> nodes =
        new ArrayList<>(
            List.of(
                node("waist centre", 0, 0),
                node("neck centre", neckMm, 0),
                curve("neck shoulder", 320, 60, neckMm, 35, (neckMm + 320) / 2, 60),
                node("shoulder tip", 290, 135),
                curve("underarm", 160, 155 + slant, 240, 105, 160, 125),
                node("waist side", 0, 155)));
    if (clockwise) {
      nodes =
          new ArrayList<>(
              List.of(
                  node("waist centre", 0, 0),
                  node("waist side", 0, 155),
                  node("underarm", 160, 155 + slant),
                  curve("shoulder tip", 290, 135, 160, 125, 240, 105),
                  node("neck shoulder", 320, 60),
                  curve("neck centre", neckMm, 0, (neckMm + 320) / 2, 60, neckMm, 35)));
    }
    String centre = "centre " + name;
    return new Draft(
        name,
        nodes,
        List.of(
            edge(centre, "waist centre", "neck centre", clockwise, 0),
            edge("neckline", "neck centre", "neck shoulder", clockwise, 6),
            edge("shoulder", "neck shoulder", "shoulder tip", clockwise, 15),
            edge("armhole", "shoulder tip", "underarm", clockwise, 7),
            edge("side seam", "underarm", "waist side", clockwise, 20),
            edge("waist", "waist side", "waist centre", clockwise, 30)),
        10,
        Optional.of(centre),
        Grain.ALONG,
        List.of(new Notch("armhole", 70, 1, 3), new Notch("side seam", 50, 2, 3)),
        List.of(),
        List.of(new Cut("main", 1, Cut.How.FOLD)));
  }

  private static Draft.NamedEdge edge(
      String name, String from, String to, boolean clockwise, double mm) {
    return new Draft.NamedEdge(
        name, clockwise ? to : from, clockwise ? from : to, OptionalDouble.of(mm), false);
  }

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(Optional.of(name), new Point(x, y), Optional.empty());
  }

  private static Draft.Node curve(
      String name, double x, double y, double ax, double ay, double bx, double by) {
    return new Draft.Node(
        Optional.of(name),
        new Point(x, y),
        Optional.of(new Draft.Curve(new Point(ax, ay), new Point(bx, by))));
  }

  /** The same under another name. */
  static Draft named(Draft draft, String name) {
    return new Draft(
        name,
        draft.nodes(),
        draft.namedEdges(),
        draft.allowance(),
        draft.fold(),
        draft.grain(),
        draft.notches(),
        draft.innerLines(),
        draft.cuts());
  }

  /** Which of several outlined pieces comes out how. */
  static Workpiece made(String name, Outlined... pieces) {
    return design(Sizes.only("one size"), pieces).making("one size").piece(name);
  }

  static Design design(Sizes sizes, Outlined... pieces) {
    return new Design("bodice", Unit.CM, sizes, List.of(pieces), List.of(), List.of(), List.of());
  }

  /** A drawn piece, altered. */
  static Outlined altered(Draft draft, Alteration... steps) {
    return outlined(draft.name(), new Start.Drawn(draft), steps);
  }

  /** A copy of another, altered. */
  static Outlined copy(String name, String of, Optional<String> part, Alteration... steps) {
    return outlined(name, new Start.Copy(of, part), steps);
  }

  static Outlined outlined(String name, Start start, Alteration... steps) {
    List<Step> written = new ArrayList<>();
    for (int i = 0; i < steps.length; i++) {
      written.add(new Step(steps[i], Optional.of(new Written("job.yaml", i + 1))));
    }
    return new Outlined(
        name, start, written, Finish.cut(List.of()), Optional.empty(), Optional.empty());
  }

  static Workpiece after(Draft draft, Alteration... steps) {
    return made(draft.name(), altered(draft, steps));
  }

  static MarkPoint mark(String name, String edge, double mm) {
    return new MarkPoint(name, new MarkPoint.OnEdge(edge, new Reach.Mm(mm)));
  }

  static Redraw curve(String edge, String from, String to, String... through) {
    return new Redraw(
        List.of(edge),
        Optional.ofNullable(from),
        Optional.ofNullable(to),
        Arrays.asList(through),
        Redraw.Shape.CURVE,
        Optional.empty(),
        Optional.empty());
  }

  static Redraw line(String edge, String from, String to, String... through) {
    return new Redraw(
        Collections.singletonList(edge),
        Optional.ofNullable(from),
        Optional.ofNullable(to),
        Arrays.asList(through),
        Redraw.Shape.LINE,
        Optional.empty(),
        Optional.empty());
  }

  static DrawnLine lineFrom(String from, String to, Redraw.Shape shape) {
    return new DrawnLine(from, to, List.of(), shape, Optional.empty(), Optional.empty());
  }

  static double length(Workpiece piece, String edge) {
    return piece.edge(edge).line().length();
  }

  static double area(Workpiece piece) {
    return Outline.of(Inside.ring(piece)).area();
  }

  static void assertAt(double x, double y, Point point) {
    assertEquals(0, point.distance(new Point(x, y)), EXACT, point::toString);
  }

  static Workpiece plain(boolean clockwise) {
    return after(front(clockwise));
  }

  static Set<String> names(Workpiece piece) {
    Set<String> names = new TreeSet<>();
    piece.edges().forEach(e -> names.add(e.name()));
    return names;
  }
}
