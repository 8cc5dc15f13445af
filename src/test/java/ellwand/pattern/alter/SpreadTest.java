package ellwand.pattern.alter;

import static ellwand.pattern.alter.Altered.area;
import static ellwand.pattern.alter.Altered.front;
import static ellwand.pattern.alter.Altered.half;
import static ellwand.pattern.alter.Altered.length;
import static ellwand.pattern.alter.Altered.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ellwand.pattern.Alteration;
import ellwand.pattern.Draft;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import ellwand.units.Area;
import ellwand.units.Unit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SpreadTest {

  private static final double MEASURED = 0.02;

  private static MarkPoint mark(String name, String edge, double share) {
    return new MarkPoint(
        name, new MarkPoint.OnEdge(edge, new Reach.Share((int) (share * 1000), 1000)));
  }

  private static void refused(String message, Draft draft, Alteration... steps) {
    InputException e = assertThrows(InputException.class, () -> Altered.piece(draft, steps));
    assertEquals(message, e.getMessage());
  }

  /** The wedge is an isosceles triangle on the opening with the slash as its legs. */
  @Property(tries = 80)
  void aHingedSlashAddsJustItsWedge(
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double from,
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double to,
      @ForAll @DoubleRange(min = 5, max = 150) double by,
      @ForAll boolean onFold) {
    Workpiece before =
        work(onFold ? half() : front(), mark("a", "waist", from), mark("b", "neckline", to));
    double slash = before.mark("a").distance(before.mark("b"));
    Workpiece after = new Spread("a", "b", by, 0, 0).on(before, name -> null);
    assertEquals(length(before, "waist") + by, length(after, "waist"), MEASURED);
    double height = Math.sqrt(slash * slash - by * by / 4);
    assertEquals(area(before) + by * height / 2, area(after), 0.5);
    for (String edge : new String[] {"neckline", "side", "armhole", "shoulder seam", "middle"}) {
      assertEquals(length(before, edge), length(after, edge), MEASURED, edge);
    }
    assertEquals(before.edges().size(), after.edges().size());
  }

  /** Both ends open: an isosceles trapezium. */
  @Property(tries = 80)
  void aSlashOpenedAtBothEndsAddsATrapezium(
      @ForAll @DoubleRange(min = 5, max = 100) double by,
      @ForAll @DoubleRange(min = 0, max = 60) double other) {
    Workpiece before = work(front(), mark("a", "waist", 0.5), mark("b", "shoulder seam", 0.5));
    double slash = before.mark("a").distance(before.mark("b"));
    Workpiece after = new Spread("a", "b", by, other, 0).on(before, name -> null);
    assertEquals(length(before, "waist") + by, length(after, "waist"), MEASURED);
    assertEquals(length(before, "shoulder seam") + other, length(after, "shoulder seam"), MEASURED);
    double height = Math.sqrt(slash * slash - (by - other) * (by - other) / 4);
    assertEquals(area(before) + (by + other) / 2 * height, area(after), 0.5);
  }

  @Property(tries = 30)
  void slashesShareItOutBetweenTwoEdges(@ForAll @IntRange(min = 1, max = 5) int slashes) {
    Workpiece before = work(front());
    Workpiece after =
        new Spread("waist", "shoulder seam", 120, 0, slashes).on(before, name -> null);
    assertEquals(length(before, "waist") + 120, length(after, "waist"), MEASURED);
    assertEquals(length(before, "shoulder seam"), length(after, "shoulder seam"), MEASURED);
    assertEquals(before.marks().keySet(), after.marks().keySet());
    assertTrue(area(after) > area(before) + 120 * 100);
  }

  /** By hand: a rectangle of 20 by 30 cm gains a triangle on 10 cm, its height root(30² - 5²). */
  @Test
  void whatItComesToIsTold() {
    Draft panel = Altered.rectangle(300, 200);
    Workpiece before = work(panel, mark("foot", "bottom", 0.5), mark("head", "top", 0.5));
    Spread spread = new Spread("foot", "head", 100, 0, 0);
    Workpiece after = spread.on(before, name -> null);
    assertEquals(600 + 5 * Math.sqrt(900 - 25), area(after) / 100, 1e-3);
    assertEquals(
        "foot spread by 10.0 cm: top 20.0 cm, bottom 30.0 cm, "
            + new Area(area(after)).show(Unit.CM),
        spread.words(after, Unit.CM));
  }

  /** Notches of an edge that opens stay where they were cut. */
  @Test
  void notchesGoWithTheirPart() {
    Workpiece before = work(front(), mark("a", "waist", 0.5), mark("b", "neckline", 0.5));
    Workpiece after = new Spread("a", "b", 40, 0, 0).on(before, name -> null);
    // 150 from the side and beyond the slash at 85.
    assertEquals(190, after.edge("waist").notches().get(0).atMm(), 0.01);
  }

  @Test
  void whatCannotBeIsRefused() {
    refused(
        "piece front: the line along which it is cut would leave the piece. Choose marks between"
            + " which a straight line stays inside.",
        front(),
        mark("a", "neckline", 0.1),
        mark("b", "neckline", 0.9),
        new Spread("a", "b", 10, 0, 0));
    refused(
        "piece front: mark neck lies at a corner, where nothing can be opened. Move it along the"
            + " edge that is to become longer.",
        front(),
        mark("a", "waist", 0.5),
        new Spread("neck", "a", 10, 0, 0));
    refused(
        "piece front: mark a does not lie on its outline. Mark a place on an edge: {mark: a, on:"
            + " .., at: ..}.",
        front(),
        new MarkPoint("a", new MarkPoint.ByGrain("waist middle", 50, 50)),
        new Spread("a", "neck", 10, 0, 0));
    refused(
        "piece front, edge waist: slashes run from one edge to another. Name two edges.",
        front(),
        new Spread("waist", "waist", 10, 0, 3));
    refused(
        "piece front: a slash 20.6 cm long cannot be opened so far. Open it less, or in more"
            + " slashes.",
        front(),
        mark("a", "waist", 0.5),
        mark("b", "armhole", 0.5),
        new Spread("a", "b", 300, 0, 0));
    refused(
        "piece front, edge middle: it is the fold, which must stay straight, and would be cut"
            + " through. Choose another edge, or unfold the piece first.",
        half(),
        mark("a", "middle", 0.5),
        mark("b", "side", 0.5),
        new Spread("b", "a", 10, 0, 0));
  }

  @Test
  void aSpreadOpens() {
    InputException e = assertThrows(InputException.class, () -> new Spread("a", "b", -10, 0, 0));
    assertEquals(
        "a spread opens the piece. Write by: above 0, or name the ends the other way round.",
        e.getMessage());
  }
}
