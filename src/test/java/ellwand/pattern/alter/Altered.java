package ellwand.pattern.alter;

import ellwand.geometry.Outline;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Cut;
import ellwand.pattern.Design;
import ellwand.pattern.Draft;
import ellwand.pattern.Finish;
import ellwand.pattern.Grain;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Notch;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.Sizes;
import ellwand.pattern.Start;
import ellwand.pattern.Step;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A bodice front and what becomes of it, for tests. */
final class Altered {

  private static final Sizes SIZES = Sizes.only("one size");

  private Altered() {}

  /** A whole front, top towards +x: neck, two shoulders, two armholes, two sides, waist. */
  static Draft front() {
    return draft(Optional.empty());
  }

  /** The left half of it on the fold. */
  static Draft half() {
    return draft(Optional.of("middle"));
  }

  private static Draft draft(Optional<String> fold) {
    List<Draft.Node> nodes = new ArrayList<>();
    List<Draft.NamedEdge> edges = new ArrayList<>();
    nodes.add(node("waist middle", 0, 0));
    nodes.add(node("neck middle", 230, 0));
    nodes.add(
        new Draft.Node(
            Optional.of("neck"),
            new Point(290, 55),
            Optional.of(new Draft.Curve(new Point(230, 32), new Point(256, 55)))));
    nodes.add(node("shoulder", 266, 140));
    nodes.add(
        new Draft.Node(
            Optional.of("underarm"),
            new Point(155, 175),
            Optional.of(new Draft.Curve(new Point(215, 122), new Point(162, 130)))));
    nodes.add(node("waist side", 0, 170));
    edges.add(edge("middle", "waist middle", "neck middle", OptionalDouble.empty()));
    edges.add(edge("neckline", "neck middle", "neck", OptionalDouble.of(7)));
    edges.add(edge("shoulder seam", "neck", "shoulder", OptionalDouble.empty()));
    edges.add(edge("armhole", "shoulder", "underarm", OptionalDouble.of(8)));
    edges.add(edge("side", "underarm", "waist side", OptionalDouble.empty()));
    edges.add(edge("waist", "waist side", "waist middle", OptionalDouble.of(12)));
    return new Draft(
        "front",
        nodes,
        edges,
        10,
        fold,
        Grain.ALONG,
        List.of(new Notch("waist", 150, 1, 3), new Notch("armhole", 60, 1, 3)),
        List.<InnerLine>of(),
        List.of(new Cut("main", 1, fold.isPresent() ? Cut.How.FOLD : Cut.How.WHOLE)));
  }

  private static Draft.Node node(String name, double x, double y) {
    return new Draft.Node(Optional.of(name), new Point(x, y), Optional.empty());
  }

  private static Draft.NamedEdge edge(
      String name, String from, String to, OptionalDouble allowance) {
    return new Draft.NamedEdge(name, from, to, allowance, false);
  }

  /** Its bottom lies along y at x = 0, its top at x = high. */
  static Draft rectangle(double high, double wide) {
    return new Draft(
        "panel",
        List.of(node("a", 0, 0), node("b", high, 0), node("c", high, wide), node("d", 0, wide)),
        List.of(
            edge("top", "b", "c", OptionalDouble.empty()),
            edge("bottom", "d", "a", OptionalDouble.empty())),
        10,
        Optional.empty(),
        Grain.ALONG,
        List.of(),
        List.of(),
        List.of(new Cut("main", 1, Cut.How.WHOLE)));
  }

  /** The same points in the other order, so that every edge is drawn the other way. */
  static Draft backwards(Draft draft) {
    List<Draft.Node> nodes = new ArrayList<>();
    int n = draft.nodes().size();
    for (int i = 0; i < n; i++) {
      Draft.Node node = draft.nodes().get((n - i) % n);
      Optional<Draft.Curve> curve =
          draft
              .nodes()
              .get((n - i + 1) % n)
              .arriving()
              .map(c -> new Draft.Curve(c.control2(), c.control1()));
      nodes.add(new Draft.Node(node.name(), node.at(), i == 0 ? Optional.empty() : curve));
    }
    // The last line leads from the second point back to the first, and is straight here.
    List<Draft.NamedEdge> edges =
        draft.namedEdges().stream()
            .map(
                e -> new Draft.NamedEdge(e.name(), e.to(), e.from(), e.allowance(), e.turnedBack()))
            .toList();
    return new Draft(
        draft.name(),
        nodes,
        edges,
        draft.allowance(),
        draft.fold(),
        draft.grain(),
        List.of(),
        List.of(),
        draft.cuts());
  }

  /** In work, after these steps. */
  static Workpiece work(Draft draft, Alteration... steps) {
    Workpiece piece = new Start.Drawn(draft).in(draft.name(), "one size", SIZES, name -> null);
    for (Alteration step : steps) {
      piece = step.on(piece, name -> null);
    }
    return piece;
  }

  /** As it is cut, after these steps. */
  static Piece piece(Draft draft, Alteration... steps) {
    Outlined outlined =
        new Outlined(
            draft.name(),
            new Start.Drawn(draft),
            Arrays.stream(steps).map(Step::new).toList(),
            Finish.cut(draft.cuts()),
            Optional.empty(),
            Optional.empty());
    Design design =
        new Design("style", Unit.CM, SIZES, List.of(outlined), List.of(), List.of(), List.of());
    return design.in("one size").drawn().get(0);
  }

  /** Enclosed by the edges of a piece in work, square mm. */
  static double area(Workpiece piece) {
    List<Point> ring = new ArrayList<>();
    for (WorkEdge edge : piece.edges()) {
      ring.addAll(edge.line().flattened(1e-4));
    }
    return Outline.of(ring).area();
  }

  static double length(Workpiece piece, String edge) {
    return piece.edge(edge).line().length();
  }
}
