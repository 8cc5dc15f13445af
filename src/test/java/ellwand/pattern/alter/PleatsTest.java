package ellwand.pattern.alter;

import static ellwand.pattern.alter.Altered.area;
import static ellwand.pattern.alter.Altered.front;
import static ellwand.pattern.alter.Altered.length;
import static ellwand.pattern.alter.Altered.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.pattern.Alteration;
import ellwand.pattern.Edge;
import ellwand.pattern.Intake;
import ellwand.pattern.Piece;
import ellwand.pattern.Workpiece;
import ellwand.problem.InputException;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PleatsTest {

  private static final double MEASURED = 0.02;

  private static Pleats evenly(Pleats.Kind kind, int number, double depth) {
    boolean oneWay = kind == Pleats.Kind.KNIFE || kind == Pleats.Kind.TUCK;
    return new Pleats(
        kind,
        "waist",
        number,
        depth,
        Optional.empty(),
        Optional.empty(),
        kind == Pleats.Kind.TUCK ? Optional.of(60.0) : Optional.empty(),
        oneWay ? Optional.of("waist middle") : Optional.empty());
  }

  private static Pleats at(Pleats.Kind kind, int number, double depth, double first, double step) {
    return new Pleats(
        kind,
        "waist",
        number,
        depth,
        Optional.of(new Reach.Mm(first)),
        Optional.of(step),
        Optional.empty(),
        Optional.empty());
  }

  private static void refused(String message, Alteration... steps) {
    InputException e = assertThrows(InputException.class, () -> Altered.piece(front(), steps));
    assertEquals(message, e.getMessage());
  }

  /** A knife pleat or tuck lies threefold: twice its depth is added. */
  @Property(tries = 40)
  void knifePleatsAndTucksAddTwiceTheirDepth(
      @ForAll @IntRange(min = 1, max = 5) int number,
      @ForAll @DoubleRange(min = 4, max = 14) double depth,
      @ForAll boolean tucks) {
    Pleats pleats = evenly(tucks ? Pleats.Kind.TUCK : Pleats.Kind.KNIFE, number, depth);
    Workpiece before = work(front());
    Workpiece after = work(front(), pleats);
    assertEquals(length(before, "waist") + number * 2 * depth, length(after, "waist"), MEASURED);
    assertEquals(170, Altered.piece(front(), pleats).edge("waist").sewnMm(), MEASURED);
    assertEquals(number, after.edge("waist").edge().intakes().size());
  }

  @Property(tries = 30)
  void boxAndInvertedPleatsAddFourTimesTheirDepth(
      @ForAll @IntRange(min = 1, max = 2) int number,
      @ForAll @DoubleRange(min = 4, max = 14) double depth,
      @ForAll boolean box) {
    Pleats pleats = evenly(box ? Pleats.Kind.BOX : Pleats.Kind.INVERTED, number, depth);
    Workpiece after = work(front(), pleats);
    assertEquals(170 + number * 4 * depth, length(after, "waist"), MEASURED);
    assertEquals(170, Altered.piece(front(), pleats).edge("waist").sewnMm(), MEASURED);
  }

  /** The waist lies square to the grain: a pleat there is a strip as long as the piece. */
  @Test
  void aPleatAddsAStrip() {
    Pleats pleat =
        new Pleats(
            Pleats.Kind.KNIFE,
            "waist",
            1,
            20,
            Optional.of(new Reach.Mm(150)),
            Optional.empty(),
            Optional.empty(),
            Optional.of("waist side"));
    Workpiece before = work(front());
    Workpiece after = work(front(), pleat);
    Intake intake = after.edge("waist").edge().intakes().get(0);
    double strip = intake.first().outer().distance(intake.first().inner());
    assertEquals(area(before) + 40 * strip, area(after), 0.1);
    assertEquals(length(before, "neckline") + 40, length(after, "neckline"), MEASURED);
    assertEquals(Intake.Kind.PLEAT, intake.kind());
  }

  /** Folded, an inverted pleat's edges meet; a box pleat's face is twice as wide as it is deep. */
  @Test
  void boxAndInvertedPleatsAreTwoFolds() {
    List<Intake> inverted =
        work(front(), at(Pleats.Kind.INVERTED, 1, 20, 85, 10)).edge("waist").edge().intakes();
    assertEquals(List.of(true, false), inverted.stream().map(Intake::towardsFirst).toList());
    assertEquals(
        0, inverted.get(0).second().outer().distance(inverted.get(1).first().outer()), 1e-6);
    List<Intake> box =
        work(front(), at(Pleats.Kind.BOX, 1, 20, 85, 10)).edge("waist").edge().intakes();
    assertEquals(List.of(false, true), box.stream().map(Intake::towardsFirst).toList());
    assertEquals(40, box.get(0).second().outer().distance(box.get(1).first().outer()), 1e-3);
  }

  /** Its two cuts lie on one another, on a curve not quite. */
  @Test
  void anInvertedPleatFoldsInACurvedEdge() {
    for (int i = 1; i < 40; i++) {
      Pleats pleat =
          new Pleats(
              Pleats.Kind.INVERTED,
              "neckline",
              1,
              3,
              Optional.of(new Reach.Share(20 + i, 80)),
              Optional.empty(),
              Optional.of(15.0),
              Optional.empty());
      assertEquals(2, work(front(), pleat).edge("neckline").edge().intakes().size());
    }
  }

  @Test
  void tucksAreSewnAsLongAsIsSaid() {
    Intake tuck =
        work(front(), evenly(Pleats.Kind.TUCK, 1, 5)).edge("waist").edge().intakes().get(0);
    assertEquals(60, tuck.first().outer().distance(tuck.first().inner()), 1e-6);
    assertEquals(Intake.Kind.TUCK, tuck.kind());
    assertEquals("tuck 1", tuck.name());
  }

  @Test
  void pleatsKeepTheirSpacingOnTheFinishedEdge() {
    Edge waist = Altered.piece(front(), at(Pleats.Kind.INVERTED, 2, 10, 50, 70)).edge("waist");
    List<Intake> folds = waist.intakes();
    double from = waist.line().nearest(folds.get(1).second().outer());
    double to = waist.line().nearest(folds.get(2).first().outer());
    assertEquals(70, to - from, MEASURED);
  }

  @Test
  void everyEdgeKeepsItsAllowance() {
    Piece before = Altered.piece(front());
    Piece after = Altered.piece(front(), evenly(Pleats.Kind.KNIFE, 4, 10));
    for (Edge edge : before.edges()) {
      assertEquals(edge.allowance(), after.edge(edge.name()).allowance());
    }
    assertEquals(12, after.edge("waist").allowanceMm());
  }

  @Test
  void whatCannotBeIsRefused() {
    refused(
        "piece front, edge waist: number 3 would lie past the end of it, which is 17.0 cm long."
            + " Take fewer, or lay them nearer to one another.",
        at(Pleats.Kind.INVERTED, 3, 10, 50, 70));
    refused(
        "piece front, edge waist: what pleat 1 folds away reaches past the end of the edge. Fold it"
            + " the other way, make it narrower, or move it farther from the corner.",
        at(Pleats.Kind.INVERTED, 1, 20, 10, 70));
    // Half way along the waist, at y = 85, the shoulder lies at x = 290 - 24 x 30 / 85.
    refused(
        "piece front, edge waist: tuck 1 would be longer than the piece, which is 28.2 cm there."
            + " Make long: shorter, or leave it out.",
        new Pleats(
            Pleats.Kind.TUCK,
            "waist",
            1,
            5,
            Optional.empty(),
            Optional.empty(),
            Optional.of(400.0),
            Optional.of("waist side")));
  }

  @Test
  void whatIsMissingIsSaid() {
    missing(
        "it is not said to which side they are folded. Give folded towards: with a mark.",
        Pleats.Kind.KNIFE,
        1,
        Optional.empty(),
        Optional.empty());
    missing(
        "a box or inverted pleat is folded to both sides. Take folded towards: out.",
        Pleats.Kind.BOX,
        1,
        Optional.empty(),
        Optional.of("neck"));
    missing(
        "it is not said how far the tucks are sewn. Give long:, for example long: 8 cm.",
        Pleats.Kind.TUCK,
        1,
        Optional.empty(),
        Optional.of("neck"));
    missing(
        "it is not said how far from the first the next lies. Give spacing:, or leave at: out to"
            + " share them out evenly.",
        Pleats.Kind.BOX,
        2,
        Optional.of(new Reach.Mm(20)),
        Optional.empty());
    missing(
        "0 pleats cannot be folded. Write 1 to 200.",
        Pleats.Kind.BOX,
        0,
        Optional.empty(),
        Optional.empty());
  }

  private static void missing(
      String message, Pleats.Kind kind, int number, Optional<Reach> at, Optional<String> towards) {
    InputException e =
        assertThrows(
            InputException.class,
            () ->
                new Pleats(
                    kind, "waist", number, 10, at, Optional.empty(), Optional.empty(), towards));
    assertEquals(message, e.getMessage());
  }
}
