package ellwand.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ellwand.cloth.Direction;
import ellwand.lay.Marker;
import ellwand.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class StatedTrulyTest {

  private final Marker marker = LegalMarkers.open(Direction.ANY_WAY);

  private List<String> told(double width, double length, double cloth, double share, double gap) {
    return Check.of(marker, new Stated(width, length, cloth, share, gap)).stream()
        .map(f -> f.sentence(Unit.CM))
        .toList();
  }

  /** By hand: 300x300 + 2 x 150x180 + 200x270 + 2 x 100x80 mm² on 1000 x 700 mm². */
  private static final double SHARE = 214000.0 / 700000;

  @Test
  void whatIsSoIsKept() {
    assertEquals(List.of(), told(1000, 700, 700, SHARE, 0));
    assertEquals(List.of(), told(1000, 700.009, 700, 0.3057, 0));
  }

  @Test
  void whatIsNotSoIsTold() {
    assertEquals(
        List.of("The file states a marker length of 69.0 cm, it is 70.0 cm."),
        told(1000, 690, 700, SHARE, 0));
    assertEquals(
        List.of("The file states a cloth length of 70.1 cm, it is 70.0 cm."),
        told(1000, 700, 701, SHARE, 0));
    assertEquals(
        List.of("The file states a marker width of 110.0 cm, it is 100.0 cm."),
        told(1100, 700, 700, SHARE, 0));
    assertEquals(
        List.of("The file states a gap between pieces of 0.5 cm, it is 0.0 cm."),
        told(1000, 700, 700, SHARE, 5));
    assertEquals(
        List.of("The file states a utilisation of 81.00 %, it is 30.57 %."),
        told(1000, 700, 700, 0.81, 0));
  }

  @Test
  void whatIsNoNumberIsTold() {
    assertEquals(5, told(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN).size());
    assertEquals(1, told(1000, Double.POSITIVE_INFINITY, 700, SHARE, 0).size());
  }
}
