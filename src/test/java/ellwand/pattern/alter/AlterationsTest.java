package ellwand.pattern.alter;

import static ellwand.pattern.alter.Bodice.EXACT;
import static ellwand.pattern.alter.Bodice.after;
import static ellwand.pattern.alter.Bodice.altered;
import static ellwand.pattern.alter.Bodice.area;
import static ellwand.pattern.alter.Bodice.assertAt;
import static ellwand.pattern.alter.Bodice.back;
import static ellwand.pattern.alter.Bodice.front;
import static ellwand.pattern.alter.Bodice.length;
import static ellwand.pattern.alter.Bodice.made;
import static ellwand.pattern.alter.Bodice.mark;
import static ellwand.pattern.alter.Bodice.names;
import static ellwand.pattern.alter.Bodice.plain;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.GradeRule;
import ellwand.pattern.Sizes;
import ellwand.pattern.Workpiece;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What geometry says of each alteration; pieces drawn either way round. */
class AlterationsTest {

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void marksAreMeasuredAsDrawn(boolean clockwise) {
    Workpiece piece =
        after(
            front(clockwise),
            mark("a", "centre front", 100),
            new MarkPoint("half", new MarkPoint.OnEdge("waist", new Reach.Share(1, 2))),
            new MarkPoint("b", new MarkPoint.Along("a", "centre front", new Reach.Mm(-30))),
            new MarkPoint("out", new MarkPoint.SquareTo("a", "centre front", 20)),
            new MarkPoint("in", new MarkPoint.SquareTo("a", "centre front", -20)),
            new MarkPoint("on", new MarkPoint.Towards("waist centre", "waist side", 40)),
            new MarkPoint(
                "third",
                new MarkPoint.Between("waist centre", "neck centre", new Reach.Share(1, 4))),
            new MarkPoint("met", new MarkPoint.Meets("out", "in", "side seam")),
            new MarkPoint("top", new MarkPoint.ByGrain("in", 50, -10)));
    boolean back = clockwise;
    assertAt(back ? 160 : 100, 0, piece.mark("a"));
    assertAt(0, 77.5, piece.mark("half"));
    assertAt(back ? 190 : 70, 0, piece.mark("b"));
    assertAt(back ? 160 : 100, -20, piece.mark("out"));
    assertAt(back ? 160 : 100, 20, piece.mark("in"));
    assertAt(0, 40, piece.mark("on"));
    assertAt(65, 0, piece.mark("third"));
    double x = back ? 160 : 100;
    assertAt(x, 155 + 15 * x / 160, piece.mark("met"));
    assertAt(x + 50, 10, piece.mark("top"));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aLineRedrawnToAMarkCutsTheEdgeBesideIt(boolean clockwise) {
    Workpiece piece =
        after(
            front(clockwise),
            new MarkPoint("v", new MarkPoint.Towards("waist centre", "neck centre", 140)),
            Bodice.line(
                "neckline", clockwise ? "neck shoulder" : "v", clockwise ? "v" : "neck shoulder"));
    assertEquals(140, length(piece, "centre front"), EXACT);
    assertEquals(Math.hypot(180, 60), length(piece, "neckline"), EXACT);
    assertEquals(names(plain(clockwise)), names(piece));
    assertEquals(6, piece.edge("neckline").edge().allowanceMm());
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aRedrawnCurveMeetsTheFoldSquareAndOtherEdgesAsAsked(boolean clockwise) {
    Redraw neck = Bodice.curve("neckline", null, null);
    Workpiece piece = after(front(clockwise), neck);
    Path line = piece.edge("neckline").line();
    assertEquals(0, Math.abs(line.startDirection().x()), 1e-9, "the fold runs along x");
    Redraw asked =
        new Redraw(
            List.of("armhole"),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Redraw.Shape.CURVE,
            Optional.of(Manner.squareTo(clockwise ? "side seam" : "shoulder")),
            Optional.of(Manner.squareTo(clockwise ? "shoulder" : "side seam")));
    Path armhole = after(front(clockwise), asked).edge("armhole").line();
    Path shoulder = piece.edge("shoulder").line();
    Path side = piece.edge("side seam").line();
    assertEquals(0, armhole.startDirection().dot(shoulder.endDirection()), 1e-9);
    assertEquals(0, armhole.endDirection().dot(side.startDirection()), 1e-9);
  }

  @Test
  void aCornerMovedOffItsEdgesTakesTheEdgeBesideItAlong() {
    Workpiece piece =
        after(
            front(false),
            new MarkPoint("low", new MarkPoint.ByGrain("underarm", -20, 10)),
            Bodice.curve("armhole", null, "low"));
    assertAt(140, 180, piece.edge("side seam").line().start());
    assertEquals(1, piece.edge("side seam").line().segments().size());
    assertEquals(Math.hypot(140, 25), length(piece, "side seam"), EXACT);
    // The notch keeps its share of the seam.
    double was = Math.hypot(160, 15);
    assertEquals(
        50 / was * Math.hypot(140, 25), piece.edge("side seam").notches().get(0).atMm(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {30, 7.5, -20})
  void lengtheningAddsExactlyThatMuchAlongTheGrain(double by) {
    for (boolean clockwise : List.of(false, true)) {
      Workpiece old = plain(clockwise);
      Workpiece piece =
          after(
              front(clockwise),
              new MarkPoint("hip", new MarkPoint.Towards("waist centre", "neck centre", 80)),
              new Lengthen(by, "hip", false));
      assertEquals(260 + by, length(piece, "centre front"), EXACT);
      // Ruled anew from end to end.
      assertEquals(Math.hypot(160 + by, 15), length(piece, "side seam"), EXACT);
      for (String edge : List.of("neckline", "shoulder", "armhole", "waist")) {
        assertEquals(length(old, edge), length(piece, edge), EXACT, edge);
      }
      assertAt(160 + by, 170, piece.mark("underarm"));
      assertEquals(names(old), names(piece));
    }
  }

  @Test
  void aCurvedEdgeIsDrawnOnSmoothlyWhereItWasCut() {
    Workpiece piece =
        after(
            front(false),
            new MarkPoint("chest", new MarkPoint.OnEdge("armhole", new Reach.Share(1, 2))),
            new Lengthen(15, "chest", false));
    Path armhole = piece.edge("armhole").line();
    Point before = armhole.startDirection();
    for (double mm = 0.5; mm < armhole.length(); mm += 0.5) {
      Point now = armhole.tangent(mm).direction();
      assertTrue(
          Math.abs(Math.toDegrees(Math.atan2(before.cross(now), before.dot(now)))) < 3,
          "no corner at " + mm);
      before = now;
    }
    assertEquals(275, length(piece, "centre front"), EXACT);
  }

  @Test
  void lengtheningAlongTheGrainMakesWiderAndInEverySize() {
    Sizes sizes =
        new Sizes(
            List.of("S", "M"),
            "S",
            Map.of(
                "front",
                Map.of(
                    "neck centre", new GradeRule.Step(new Point(10, 0)),
                    "waist side", new GradeRule.Step(new Point(0, 8)))));
    var design =
        Bodice.design(
            sizes,
            altered(
                front(false),
                new MarkPoint("half", new MarkPoint.OnEdge("waist", new Reach.Share(1, 2))),
                new Lengthen(20, "half", true),
                mark("hip", "centre front", 60),
                new Lengthen(25, "hip", false)));
    assertEquals(175, length(design.making("S").piece("front"), "waist"), EXACT);
    assertEquals(183, length(design.making("M").piece("front"), "waist"), EXACT);
    assertEquals(285, length(design.making("S").piece("front"), "centre front"), EXACT);
    assertEquals(295, length(design.making("M").piece("front"), "centre front"), EXACT);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aFacingsOuterEdgeIsTheEdgeItFacesAndItsInnerEdgeIsAsFarOffAsItIsDeep(boolean clockwise) {
    Workpiece old = plain(clockwise);
    Workpiece facing = after(front(clockwise), new Facing(List.of("neckline"), 40));
    assertEquals(old.edge("neckline"), facing.edge("neckline"));
    assertEquals(Optional.of("centre front"), facing.fold());
    assertEquals(40, length(facing, "centre front"), 1e-3);
    Path outer = old.edge("neckline").line();
    for (Point p : facing.edge(Facing.INNER).line().flattened(0.1)) {
      double mm = outer.nearest(p);
      if (mm > 0.1 && mm < outer.length() - 0.1) {
        assertEquals(40, outer.at(mm).distance(p), 0.05);
      }
    }
  }

  @Test
  void aFacingRoundACornerKeepsItsDepthOnBothSides() {
    Workpiece facing =
        after(
            front(false),
            new MarkPoint("v", new MarkPoint.Towards("waist centre", "neck centre", 140)),
            Bodice.line("neckline", "v", "neck shoulder"),
            new Extend("centre front", 15, Extend.Ends.SQUARE),
            new Facing(List.of("waist", "centre front", "neckline"), 40));
    Path inner = facing.edge(Facing.INNER).line();
    double least = Double.MAX_VALUE;
    for (String edge : List.of("waist", "centre front", "neckline")) {
      Path outer = facing.edge(edge).line();
      for (Point p : inner.flattened(0.1)) {
        least = Math.min(least, outer.at(outer.nearest(p)).distance(p));
      }
    }
    assertEquals(40, least, 0.05);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aSquareStripAddsItsWidthAndDropsTheFold(boolean clockwise) {
    Workpiece piece = after(front(clockwise), new Extend("centre front", 15, Extend.Ends.SQUARE));
    assertEquals(area(plain(clockwise)) + 260 * 15, area(piece), 1e-6);
    assertEquals(260, length(piece, "centre front"), EXACT);
    assertEquals(155 + 15, length(piece, "waist"), EXACT);
    assertEquals(Optional.empty(), piece.fold());
    assertAt(0, 0, piece.innerLines().get(0).line().start());
  }

  @Test
  void aMirroredStripFitsWhenItIsTurnedBack() {
    Workpiece old = plain(false);
    Workpiece piece = after(front(false), new Extend("centre front", 40, Extend.Ends.MIRRORED));
    Point a = new Point(0, 0);
    Point b = new Point(1, 0);
    for (String edge : List.of("neckline", "waist")) {
      Path own = old.edge(edge).line();
      for (Point p : piece.edge(edge).line().flattened(0.01)) {
        Point back = p.y() < 0 ? p.mirrored(a, b) : p;
        assertEquals(0, own.at(own.nearest(back)).distance(back), 1e-3, edge);
      }
    }
    assertEquals(-40, piece.edge("centre front").line().start().y(), 1e-3);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void truedEdgesAreAsLongAsWhatTheyJoin(boolean clockwise) {
    for (Optional<String> at : List.of(Optional.of("waist side"), Optional.of("underarm"))) {
      Workpiece trued =
          made(
              "front",
              Bodice.outlined("back", new ellwand.pattern.Start.Drawn(back(false))),
              altered(
                  front(clockwise),
                  new TrueLength("side seam", OtherEdge.of("back.side seam"), 12, at)));
      assertEquals(160 + 12, length(trued, "side seam"), 1e-4);
      assertEquals(names(plain(false)), names(trued));
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aTruedRunMakesA180DegreesWithItsNeighbour(boolean clockwise) {
    Workpiece back = after(back(false));
    for (String edge : List.of("neckline", "armhole")) {
      Workpiece trued =
          made(
              "front",
              Bodice.outlined("back", new ellwand.pattern.Start.Drawn(back(false))),
              altered(
                  front(clockwise),
                  new TrueRun(edge, "shoulder", OtherEdge.of("back." + edge), "shoulder")));
      assertEquals(
          180, corner(trued, edge, "shoulder") + corner(back, edge, "shoulder"), 1e-6, edge);
    }
  }

  private static double corner(Workpiece piece, String edge, String seam) {
    boolean before = piece.beside(edge, 1).name().equals(seam);
    Path first = piece.edge(before ? edge : seam).line();
    Path second = piece.edge(before ? seam : edge).line();
    Point in = first.endDirection();
    Point out = second.startDirection();
    return 180 - Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
  }
}
