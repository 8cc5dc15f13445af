package ellwand.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import ellwand.cutting.Cutter;
import ellwand.geometry.Box;
import ellwand.geometry.Motion;
import ellwand.geometry.Outline;
import ellwand.problem.InputException;
import ellwand.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BindingTest {

  private static final double IN = 25.4;

  /** The bias tape page of sewaquilt.com: length and width wanted, side of the square. */
  @ParameterizedTest
  @CsvSource({"250, 2, 23", "100, 3.5, 19"})
  void theSquareIsThePublishedOne(double length, double width, double side) {
    assertEquals(side * IN, Binding.squareSideMm(length * IN, width * IN, IN), 1e-6);
  }

  /** Same page: side of the square, width, length of strip. 648 in is 18 yd, computed. */
  @ParameterizedTest
  @CsvSource({"12, 2, 72", "36, 2, 648"})
  void theStripIsAsLongAsPublished(double side, double width, double length) {
    assertEquals(length * IN, Binding.stripLengthMm(side * IN * side * IN, width * IN), 1e-6);
    assertEquals(side * IN, Binding.squareSideMm(length * IN, width * IN, IN), 1e-6);
  }

  private static Binding binding(Binding.CutAs way, double length, double longest) {
    return new Binding("binding", length, 40, way, longest, 6, 10, List.of(Cut.parse("main", "1")));
  }

  @Test
  void stripsAddUpToTheLengthBetweenTheirJoins() {
    Binding binding = binding(Binding.CutAs.STRIPS, 1500, 600);
    assertEquals(3, binding.pieces());
    Piece piece = binding.piece();
    assertEquals(3, piece.cuts().get(0).count());
    assertEquals(1500, 3 * piece.edge("long edge").line().length(), 1e-9);
    assertEquals(3, binding(Binding.CutAs.STRIPS, 1800, 600).pieces());
    assertEquals(4, binding(Binding.CutAs.STRIPS, 1801, 600).pieces());
  }

  /** Turned by 45 degrees its ends lie along the thread, and it is as wide as it is cut. */
  @Test
  void aStripLiesOnTheBiasWithItsEndsAlongTheThread() {
    Piece piece = binding(Binding.CutAs.STRIPS, 500, 600).piece();
    assertEquals(Grain.BIAS, piece.grain());
    Outline cut = Cutter.cut(piece, 1, 1).cutting();
    assertEquals(40, cut.box().width(), 1e-9);
    // Between the two slanted ends, measured square to them, lie 500 / root 2 and two joins.
    Box turned = cut.moved(new Motion(false, 45, 0, 0)).box();
    assertEquals(500 / Math.sqrt(2) + 12, turned.length(), 40 / Math.sqrt(2) + 1e-6);
    assertEquals((500 + 12 * Math.sqrt(2)) * 40, cut.area(), 1e-6);
  }

  @Test
  void aSquareIsOnePiece() {
    Piece piece = binding(Binding.CutAs.SQUARE, 1500, 600).piece();
    // The root of 1500 x 40 is 244.9 mm: 25 cm.
    assertEquals(250 * 250, Cutter.cut(piece, 1, 1).cutting().area(), 1e-6);
    assertEquals(1, piece.cuts().get(0).count());
  }

  @Test
  void saysHowWideTheStripIsCut() {
    assertEquals(
        "binding: cut the square of 25.0 cm from corner to corner, sew the halves to a slanted"
            + " band, and cut that round and round 4.0 cm wide: about 156.3 cm of strip, of which"
            + " 150.0 cm are wanted",
        binding(Binding.CutAs.SQUARE, 1500, 600).sentence(Unit.CM));
    assertEquals(
        "binding: 3 strips 4.0 cm wide on the bias, joined at their slanted ends, allowance 0.6 cm,"
            + " to 150.0 cm in all",
        binding(Binding.CutAs.STRIPS, 1500, 600).sentence(Unit.CM));
    assertEquals(
        "binding: one strip 4.0 cm wide on the bias, 50.0 cm long",
        binding(Binding.CutAs.STRIPS, 500, 600).sentence(Unit.CM));
  }

  @Test
  void refusesAPairAndNoLength() {
    assertThrows(
        InputException.class,
        () ->
            new Binding(
                "b",
                100,
                40,
                Binding.CutAs.STRIPS,
                600,
                6,
                10,
                List.of(Cut.parse("main", "pair"))));
    assertThrows(InputException.class, () -> binding(Binding.CutAs.STRIPS, 0, 600));
  }
}
