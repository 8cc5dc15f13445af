package ellwand.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.geometry.Segment;
import ellwand.pattern.Cut;
import ellwand.pattern.Edge;
import ellwand.pattern.Grain;
import ellwand.pattern.Intake;
import ellwand.pattern.Piece;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is marked on cloth for a dart: its legs on the cutting line, its lines and its point. */
class IntakeMarksTest {

  private static final Point POINT = new Point(0, 300);

  /** 40 wide and 100 deep, in an edge at y = 400. */
  private static Piece upright(double allowance, double right, double left) {
    double half = Math.toDegrees(Math.atan(0.2));
    return FoldedAway.darted(
        POINT,
        90 - half,
        2 * half,
        Math.hypot(100, 20),
        new Point(right, 400),
        new Point(left, 400),
        0,
        allowance,
        true);
  }

  @Test
  void legsHaveNotchesInLineWithThem() {
    CutPiece cut = Cutter.cut(upright(15, 200, -200), 1, 1);
    assertEquals(2, cut.notches().size());
    for (CutPiece.Stroke notch : cut.notches()) {
      assertEquals(0, cut.cutting().distance(notch.from()), 1e-6);
      assertEquals(3, notch.from().distance(notch.to()), 1e-6);
      Point along = notch.from().minus(notch.to()).unit();
      assertEquals(0, along.cross(notch.from().minus(POINT)), 1e-6);
    }
  }

  @Test
  void whereNothingIsAllowedThereIsNoNotch() {
    assertEquals(List.of(), Cutter.cut(upright(0, 200, -200), 1, 1).notches());
  }

  /** Common practice: the drill mark stands 1 cm short of the point. */
  @Test
  void theDrillMarkStandsShortOfThePoint() {
    List<CutPiece.Drawn> arms =
        Cutter.cut(upright(15, 200, -200), 1, 1).innerLines().stream()
            .filter(line -> line.name().equals("dart, drill mark"))
            .toList();
    assertEquals(2, arms.size());
    for (CutPiece.Drawn arm : arms) {
      Point middle = arm.points().get(0).towards(arm.points().get(1), 0.5);
      assertEquals(0, middle.distance(new Point(0, 310)), 1e-6);
    }
  }

  @Test
  void legsAndFoldAreDrawnAndStretchedWithTheCloth() {
    Piece piece = upright(15, 200, -200);
    CutPiece cut = Cutter.cut(piece, 1.1, 1.05);
    CutPiece.Drawn legs = cut.innerLines().get(0);
    assertEquals("dart", legs.name());
    // Across the grain, so that y lies across the cloth as drawn.
    assertEquals(0, legs.points().get(1).distance(new Point(0, 300 * 1.1)), 1e-6);
    CutPiece.Drawn fold = cut.innerLines().get(1);
    assertEquals("dart, fold", fold.name());
    assertTrue(fold.points().get(0).y() > 400);
  }

  /** A half back: the fold lies along x, its waist across at x = 400 with a dart in it. */
  @Test
  void aHalfPieceOpensWithItsDartOnBothSides() {
    Point first = new Point(400, 60);
    Point second = new Point(400, 80);
    Point point = new Point(300, 70);
    Intake dart =
        new Intake(
            "dart",
            Intake.Kind.DART,
            new Intake.Leg(first, point),
            new Intake.Leg(second, point),
            true);
    Point centre = new Point(400, 0);
    Point side = new Point(400, 150);
    Edge waist =
        new Edge(
                "waist",
                new Path(
                    List.of(
                        new Segment.Line(centre, first),
                        new Segment.Line(first, second),
                        new Segment.Line(second, side))),
                15,
                false)
            .with(dart)
            .shaped();
    Piece piece =
        new Piece(
            "back",
            List.of(
                new Edge("centre", Path.line(new Point(0, 0), centre), 0, false),
                waist,
                new Edge("side", Path.line(side, new Point(0, 150)), 15, false),
                new Edge("hem", Path.line(new Point(0, 150), new Point(0, 0)), 15, false)),
            Optional.of("centre"),
            Grain.ALONG,
            List.of(),
            List.of(),
            List.of(new Cut("main", 1, Cut.How.FOLD)));
    CutPiece open = Cutter.cut(piece, 1, 1).opened();
    assertEquals(4, open.notches().size());
    assertEquals(2, open.innerLines().stream().filter(l -> l.name().equals("dart")).count());
    assertTrue(open.symmetric());
    assertEquals(130, piece.edge("waist").sewnMm(), 1e-6);
  }

  @Test
  void aMouthAtTheCornerIsRefused() {
    InputException e = assertThrows(InputException.class, () -> upright(15, 25, -200));
    assertEquals(
        "what dart folds away reaches past the end of the edge. Fold it the other way, make it"
            + " narrower, or move it farther from the corner.",
        e.getMessage());
  }

  @Test
  void legsOfDifferentLengthsAreRefused() {
    InputException e =
        assertThrows(
            InputException.class,
            () ->
                new Intake(
                    "dart",
                    Intake.Kind.DART,
                    new Intake.Leg(new Point(0, 0), new Point(50, 10)),
                    new Intake.Leg(new Point(0, 30), new Point(50, 10)),
                    true));
    assertTrue(e.getMessage().startsWith("one leg of dart is 2.9 mm longer than the other."));
  }
}
