package ellwand.pattern.alter;

import static ellwand.pattern.alter.Bodice.EXACT;
import static ellwand.pattern.alter.Bodice.after;
import static ellwand.pattern.alter.Bodice.altered;
import static ellwand.pattern.alter.Bodice.area;
import static ellwand.pattern.alter.Bodice.assertAt;
import static ellwand.pattern.alter.Bodice.back;
import static ellwand.pattern.alter.Bodice.copy;
import static ellwand.pattern.alter.Bodice.front;
import static ellwand.pattern.alter.Bodice.length;
import static ellwand.pattern.alter.Bodice.lineFrom;
import static ellwand.pattern.alter.Bodice.made;
import static ellwand.pattern.alter.Bodice.names;
import static ellwand.pattern.alter.Bodice.plain;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Notch;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pieces cut apart, taped together and unfolded are as large as before, and as their edges were.
 */
class CutAndTapedTest {

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void cutApartAndTapedTogetherItIsTheOldPiece(boolean clockwise) {
    Alteration[] cut = {
      new MarkPoint("low", new MarkPoint.OnEdge("armhole", new Reach.Share(1, 3))),
      new MarkPoint("in", new MarkPoint.OnEdge("centre front", new Reach.Share(2, 3))),
      new CutApart("yoke", "body", "seam", lineFrom("low", "in", Redraw.Shape.CURVE))
    };
    Workpiece old = plain(clockwise);
    Workpiece yoke =
        made("top", altered(front(clockwise), cut), copy("top", "front", Optional.of("yoke")));
    Workpiece body =
        made("rest", altered(front(clockwise), cut), copy("rest", "front", Optional.of("body")));
    assertTrue(Inside.middle(yoke).x() > Inside.middle(body).x(), "the upper part comes first");
    assertEquals(area(old), area(yoke) + area(body), 0.5);
    assertEquals(length(yoke, "seam"), length(body, "seam"), EXACT);
    assertEquals(10, yoke.edge("seam").edge().allowanceMm());
    assertAt(notch(yoke, "seam").x(), notch(yoke, "seam").y(), notch(body, "seam"));
    Workpiece taped =
        made(
            "whole",
            altered(front(clockwise), cut),
            copy("rest", "front", Optional.of("body")),
            copy(
                "whole",
                "front",
                Optional.of("yoke"),
                new TapeTogether("seam", "rest", Optional.empty(), "seam", false)));
    assertEquals(names(old), names(taped));
    for (WorkEdge edge : old.edges()) {
      assertSame(edge, taped.edge(edge.name()));
    }
    assertEquals(old.fold(), taped.fold());
  }

  @Test
  void aMarkThatLiesOnACurveAsNearAsAPencilCanIsOnIt() {
    for (double along = 20; along < 80; along += 7.3) {
      Workpiece piece =
          after(
              front(false),
              new MarkPoint(
                  "in", new MarkPoint.Towards("waist centre", "neck centre", 150 + along)),
              new MarkPoint("out", new MarkPoint.ByGrain("in", 3, 10)),
              new MarkPoint("side", new MarkPoint.Meets("in", "out", "armhole")),
              new CutApart("yoke", "body", "seam", lineFrom("in", "side", Redraw.Shape.LINE)));
      assertEquals(2, piece.parts().size());
      after(
          front(false),
          new MarkPoint("in", new MarkPoint.Towards("waist centre", "neck centre", 150 + along)),
          new MarkPoint("out", new MarkPoint.ByGrain("in", 3, 10)),
          new MarkPoint("side", new MarkPoint.Meets("in", "out", "armhole")),
          Bodice.line("armhole", "side", null));
    }
  }

  private static Point notch(Workpiece piece, String edge) {
    WorkEdge of = piece.edge(edge);
    return of.line().at(of.notches().get(0).atMm());
  }

  private static void assertSame(WorkEdge one, WorkEdge other) {
    for (Point p : one.line().flattened(0.01)) {
      assertEquals(0, other.line().at(other.line().nearest(p)).distance(p), EXACT, one.name());
    }
    assertEquals(one.line().length(), other.line().length(), 1e-3, one.name());
    assertEquals(0, one.first().distance(other.first()), EXACT);
    assertEquals(one.edge().allowance(), other.edge().allowance());
    assertEquals(one.notches().size(), other.notches().size(), one.name());
    for (int i = 0; i < one.notches().size(); i++) {
      Notch notch = one.notches().get(i);
      assertEquals(notch.atMm(), other.notches().get(i).atMm(), 1e-3, one.name());
    }
  }

  @Test
  void tapedAcrossTheShoulderTheBackIsTurnedOver() {
    for (boolean clockwise : List.of(false, true)) {
      Workpiece taped =
          made(
              "front",
              Bodice.outlined("back", new ellwand.pattern.Start.Drawn(back(clockwise))),
              altered(
                  front(false),
                  new TapeTogether(
                      "shoulder",
                      "back",
                      Optional.empty(),
                      "shoulder",
                      // Drawn the other way the back's shoulder runs from tip to neck.
                      clockwise)));
      Workpiece back = after(back(false));
      assertEquals(
          length(plain(false), "neckline") + length(back, "neckline"),
          length(taped, "neckline"),
          1e-3);
      assertEquals(area(plain(false)) + area(back), area(taped), 0.5);
      assertTrue(names(taped).contains("back side seam"));
      assertEquals(Optional.of("centre front"), taped.fold());
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void unfoldedItIsTwiceAsLargeAndEdgesRunAcross(boolean clockwise) {
    Workpiece half = plain(clockwise);
    Workpiece whole = after(front(clockwise), new Unfold("centre front"));
    assertEquals(2 * area(half), area(whole), 1e-6);
    assertEquals(2 * length(half, "neckline"), length(whole, "neckline"), EXACT);
    assertEquals(length(half, "side seam"), length(whole, "other side seam"), EXACT);
    assertEquals(Optional.empty(), whole.fold());
    WorkEdge other = whole.edge("other armhole");
    Point mirrored = notch(whole, "armhole").mirrored(new Point(0, 0), new Point(1, 0));
    assertAt(mirrored.x(), mirrored.y(), notch(whole, "other armhole"));
    assertAt(160, -170, whole.mark("other underarm"));
    assertEquals(7, other.edge().allowanceMm());
  }
}
