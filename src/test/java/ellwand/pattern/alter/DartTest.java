package ellwand.pattern.alter;

import static ellwand.pattern.alter.Altered.area;
import static ellwand.pattern.alter.Altered.front;
import static ellwand.pattern.alter.Altered.half;
import static ellwand.pattern.alter.Altered.length;
import static ellwand.pattern.alter.Altered.piece;
import static ellwand.pattern.alter.Altered.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.geometry.Path;
import ellwand.geometry.Point;
import ellwand.pattern.Alteration;
import ellwand.pattern.Asks;
import ellwand.pattern.Design;
import ellwand.pattern.Draft;
import ellwand.pattern.Edge;
import ellwand.pattern.Finish;
import ellwand.pattern.InnerLine;
import ellwand.pattern.Intake;
import ellwand.pattern.Outlined;
import ellwand.pattern.Piece;
import ellwand.pattern.Sizes;
import ellwand.pattern.Start;
import ellwand.pattern.Step;
import ellwand.pattern.WorkEdge;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DartTest {

  private static final double EXACT = 1e-6;

  /** Lengths are measured on chords within a thousandth of a mm. */
  private static final double MEASURED = 0.01;

  private static DrawDart waistDart(double at, double width, double depth) {
    return new DrawDart(
        "dart",
        "waist",
        new Reach.Mm(at),
        width,
        Optional.of(depth),
        Optional.empty(),
        "waist middle");
  }

  private static DrawDart toPoint(double at, double width, String point) {
    return new DrawDart(
        "dart",
        "waist",
        new Reach.Mm(at),
        width,
        Optional.empty(),
        Optional.of(point),
        "waist middle");
  }

  private static MarkPoint mark(String name, String edge, int over, int under) {
    return new MarkPoint(name, new MarkPoint.OnEdge(edge, new Reach.Share(over, under)));
  }

  private static Intake dart(Workpiece piece) {
    return Darts.find(piece, "dart").dart();
  }

  private static void refused(String message, Alteration... steps) {
    InputException e = assertThrows(InputException.class, () -> piece(front(), steps));
    assertEquals(message, e.getMessage());
  }

  /** By hand: the waist lies at x = 0, 170 long, so the dart's point lies at x = depth. */
  @Test
  void aDartStandsSquareToItsEdge() {
    Intake dart = dart(work(front(), waistDart(85, 30, 140)));
    assertEquals(0, dart.first().inner().distance(new Point(140, 85)), EXACT);
    assertEquals(0, dart.first().outer().distance(new Point(0, 100)), EXACT);
    assertEquals(0, dart.second().outer().distance(new Point(0, 70)), EXACT);
    // The waist runs from the side to the middle, so its end lies beyond the second leg.
    assertFalse(dart.towardsFirst());
    assertEquals(new Point(140, 85), work(front(), waistDart(85, 30, 140)).mark("dart"));
  }

  @Test
  void theSewnEdgeLeavesItOut() {
    Edge waist = piece(front(), waistDart(85, 30, 140)).edge("waist");
    assertEquals(140, waist.sewnMm(), MEASURED);
    assertTrue(waist.line().length() > 170);
  }

  @Test
  void notchesStayAtTheirPlaces() {
    Piece piece = piece(front(), waistDart(85, 30, 140));
    double at =
        piece.notches().stream()
            .filter(n -> n.edge().equals("waist"))
            .findFirst()
            .orElseThrow()
            .atMm();
    // 150 from the side, that is at y = 20, beyond the dart.
    assertEquals(0, piece.edge("waist").line().at(at).distance(new Point(0, 20)), MEASURED);
  }

  /** What matches a stripe is measured past a dart as on the edge before it was drawn. */
  @Test
  void marksStayAtTheirPlaces() {
    Outlined outlined =
        new Outlined(
            "front",
            new Start.Drawn(front()),
            List.of(new Step(waistDart(85, 30, 140))),
            Finish.cut(front().cuts()),
            Optional.empty(),
            Optional.of(
                new Asks.Place("waist @ 15 cm", Optional.of(0.0), Optional.empty(), false)));
    Piece piece =
        new Design(
                "style",
                Unit.CM,
                Sizes.only("one size"),
                List.of(outlined),
                List.of(),
                List.of(),
                List.of())
            .in("one size")
            .drawn()
            .get(0);
    assertEquals(0, piece.asks().marks().get(0).on(piece).distance(new Point(0, 20)), MEASURED);
  }

  /** The nearer leg is drawn out to the length of the other; the edge beside it goes with it. */
  @Test
  void aPointAsideMakesTheShorterLegLonger() {
    Workpiece piece =
        work(
            front(),
            new MarkPoint("bust", new MarkPoint.ByGrain("waist middle", 140, 80)),
            toPoint(85, 30, "bust"));
    Intake dart = dart(piece);
    double leg = Math.hypot(140, 20);
    assertEquals(leg, dart.first().outer().distance(dart.first().inner()), EXACT);
    assertEquals(leg, dart.second().outer().distance(dart.second().inner()), EXACT);
    assertEquals(0, dart.first().outer().distance(new Point(0, 100)), EXACT);
    // Out to the other side of the edge, in line with the leg.
    assertTrue(dart.second().outer().x() < 0);
    assertEquals(
        0,
        dart.second()
            .outer()
            .minus(new Point(140, 80))
            .cross(new Point(0, 70).minus(new Point(140, 80))),
        1e-3);
    assertEquals(0, piece.edge("waist").line().end().distance(new Point(0, 0)), EXACT);
  }

  @Test
  void edgesDrawnTheOtherWayHaveTheSameDarts() {
    DrawDart dart = waistDart(60, 30, 140);
    DrawDart other = waistDart(170 - 60, 30, 140);
    Intake one = dart(work(front(), dart));
    Intake same = dart(work(Altered.backwards(front()), other));
    assertEquals(0, one.first().outer().distance(same.first().outer()), EXACT);
    assertEquals(one.towardsFirst(), same.towardsFirst());
  }

  @Property(tries = 60)
  void movingADartKeepsItsAngleAndEveryEdge(
      @ForAll @DoubleRange(min = 8, max = 45) double width,
      @ForAll @DoubleRange(min = 60, max = 110) double at,
      @ForAll @DoubleRange(min = 0.25, max = 0.75) double share,
      @ForAll boolean onFold) {
    DrawDart drawn = waistDart(at, width, 130);
    for (String edge : List.of("shoulder seam", "armhole", "side", "neckline")) {
      MarkPoint mark = mark("to", edge, (int) (share * 100), 100);
      String towards =
          edge.equals("side") ? "waist side" : edge.equals("armhole") ? "underarm" : "neck middle";
      Workpiece before = work(onFold ? half() : front(), drawn, mark);
      Workpiece after = new MoveDart("dart", "to", towards).on(before, name -> null);
      assertEquals(dart(before).angleDegrees(), dart(after).angleDegrees(), EXACT);
      assertEquals(edge, Darts.find(after, "dart").edge().name());
      for (WorkEdge other : before.edges()) {
        assertEquals(
            other.edge().sewnMm(),
            after.edge(other.name()).edge().sewnMm(),
            MEASURED,
            other.name());
      }
      // What is there when all darts are folded is there afterwards.
      assertEquals(area(before) - wedge(before), area(after) - wedge(after), 0.1);
      if (onFold) {
        assertEquals(before.edge("middle").line(), after.edge("middle").line());
      }
    }
  }

  /** Between the legs of the dart, up to the straight line across, square mm. */
  private static double wedge(Workpiece piece) {
    Intake dart = dart(piece);
    Point a = dart.first().outer().minus(dart.first().inner());
    Point b = dart.second().outer().minus(dart.first().inner());
    return Math.abs(a.cross(b)) / 2;
  }

  /** A line across the dart at x = 50: its two ends turn with their parts and meet. */
  @Test
  void aLineAcrossAClosedDartLosesWhatTheDartTook() {
    Draft draft = front();
    Draft lined =
        new Draft(
            draft.name(),
            draft.nodes(),
            draft.namedEdges(),
            draft.allowance(),
            draft.fold(),
            draft.grain(),
            draft.notches(),
            List.of(new InnerLine("pocket", Path.line(new Point(50, 30), new Point(50, 150)))),
            draft.cuts());
    Workpiece piece =
        work(
            lined,
            waistDart(85, 30, 130),
            mark("to", "shoulder seam", 1, 2),
            new MoveDart("dart", "to", "neck"));
    List<InnerLine> parts = piece.innerLines();
    assertEquals(2, parts.size());
    Path one = parts.get(0).line();
    Path other = parts.get(1).line();
    assertEquals(0, one.end().distance(other.start()), MEASURED);
    // 120 less what the dart is wide there: 30 x 80 / 130.
    assertEquals(120 - 30 * 80 / 130.0, one.length() + other.length(), MEASURED);
  }

  @Test
  void closedIntoFlareTheHemGainsJustTheWedge() {
    // A skirt, turned round: its dart is in the shoulder seam, its hem is the waist.
    DrawDart drawn =
        new DrawDart(
            "dart",
            "shoulder seam",
            new Reach.Share(1, 2),
            12,
            Optional.of(90.0),
            Optional.empty(),
            "neck");
    Workpiece before = work(front(), drawn, mark("to", "waist", 1, 2));
    Workpiece after =
        new CloseDart("dart", Optional.of("to"), CloseDart.Into.FLARE, Optional.empty())
            .on(before, name -> null);
    double angle = Math.toRadians(dart(before).angleDegrees());
    double far = before.mark("to").distance(dart(before).first().inner());
    assertEquals(
        length(before, "waist") + 2 * far * Math.sin(angle / 2), length(after, "waist"), MEASURED);
    assertEquals(area(before) - wedge(before) + far * far * Math.sin(angle) / 2, area(after), 0.1);
    assertTrue(after.edge("shoulder seam").edge().intakes().isEmpty());
    assertEquals(
        before.edge("shoulder seam").edge().sewnMm(), length(after, "shoulder seam"), MEASURED);
  }

  @Test
  void closedIntoGathersTheSewnEdgeStaysAsLong() {
    Workpiece before = work(front(), waistDart(85, 30, 130), mark("to", "neckline", 1, 2));
    Workpiece elsewhere =
        new CloseDart("dart", Optional.of("to"), CloseDart.Into.GATHERS, Optional.of(60.0))
            .on(before, name -> null);
    assertEquals(
        before.edge("neckline").edge().sewnMm(),
        elsewhere.edge("neckline").edge().sewnMm(),
        MEASURED);
    assertTrue(length(elsewhere, "neckline") > length(before, "neckline") + 20);
    Workpiece there =
        new CloseDart("dart", Optional.empty(), CloseDart.Into.GATHERS, Optional.of(60.0))
            .on(before, name -> null);
    assertEquals(140, there.edge("waist").edge().sewnMm(), MEASURED);
    assertEquals(170, length(there, "waist"), MEASURED);
  }

  @Test
  void whatCannotBeIsRefused() {
    refused(
        "piece front, edge waist: the mouth of dart would reach past the end of it; it is 17.0 cm"
            + " long. Move it from the corner, or make it narrower.",
        waistDart(10, 30, 100));
    refused(
        "piece front, edge waist: the mouths of dart and dart would overlap. Move one of them, or"
            + " make it narrower.",
        waistDart(85, 30, 100),
        waistDart(100, 30, 100));
    refused(
        "piece front: it has no dart called dart. Draw it first: {dart: dart, on: .., at: ..,"
            + " width: .., depth: ..}.",
        new MoveDart("dart", "neck", "neck"));
    refused(
        "piece front, edge waist: dart would leave the piece. Let it end at a point inside, or make"
            + " it less deep.",
        waistDart(85, 30, 400));
    refused(
        "piece front: neck lies at a corner, where nothing can be opened. Move it along the edge"
            + " that is to become longer.",
        waistDart(85, 30, 100),
        new MoveDart("dart", "neck", "neck middle"));
    refused(
        "piece front, edge waist: the point of dart lies too far to one side of its mouth. Move the"
            + " point, or at:, so that both legs are about equally long.",
        new MarkPoint("bust", new MarkPoint.ByGrain("waist middle", 60, 10)),
        toPoint(110, 30, "bust"));
    refused(
        "piece front: mark dart lies on neither side of it, so it cannot be folded towards it. Name"
            + " a mark that lies to one side.",
        waistDart(85, 30, 100),
        mark("to", "shoulder seam", 1, 2),
        new MoveDart("dart", "to", "dart"));
    refused(
        "piece front, edge waist: what dart folds away reaches past the end of the edge. Fold it"
            + " the other way, make it narrower, or move it farther from the corner.",
        waistDart(170 - 17, 30, 100));
    // The piece whose middle is its fold stays whole there.
    InputException onFold =
        assertThrows(
            InputException.class,
            () ->
                piece(
                    half(),
                    waistDart(85, 30, 100),
                    mark("to", "middle", 1, 2),
                    new MoveDart("dart", "to", "neck")));
    assertEquals(
        "piece front, edge middle: it is the fold, which must stay straight, and would be cut"
            + " through. Choose another edge, or unfold the piece first.",
        onFold.getMessage());
  }

  /** Both halves of an unfolded piece have a dart; each can be moved by itself. */
  @Test
  void unfoldedDartsHaveNamesOfTheirOwn() {
    Workpiece piece =
        work(
            half(),
            waistDart(85, 30, 100),
            new Unfold("middle"),
            mark("to", "shoulder seam", 1, 2));
    assertEquals(
        List.of("dart", "other dart"),
        piece.edge("waist").edge().intakes().stream().map(Intake::name).sorted().toList());
    Workpiece moved = new MoveDart("dart", "to", "neck").on(piece, name -> null);
    assertEquals(
        List.of("other dart"),
        moved.edge("waist").edge().intakes().stream().map(Intake::name).toList());
    assertEquals("shoulder seam", Darts.find(moved, "dart").edge().name());
  }

  @Test
  void gathersNeedRoom() {
    DrawDart dart = waistDart(85, 30, 100);
    refused(
        "piece front, edge waist: 3.0 cm to be gathered away are as long as the stretch that is"
            + " gathered, or longer. Make over: longer.",
        dart,
        new CloseDart("dart", Optional.empty(), CloseDart.Into.GATHERS, Optional.of(20.0)));
    refused(
        "piece front, edge waist: the gathers would reach past the end of it. Make over: shorter,"
            + " or choose another place.",
        dart,
        new CloseDart("dart", Optional.empty(), CloseDart.Into.GATHERS, Optional.of(200.0)));
  }
}
